package files

import (
	"errors"
	"slices"
	"time"
)

// errLocked says that another process has the lock of a folder.
var errLocked = errors.New("another forebake is writing in this folder; run the command again " +
	"when it has ended")

const (
	lockWait  = 5 * time.Second // the longest that a lock is waited for: a write takes milliseconds
	lockPause = 5 * time.Millisecond
)

// locks are the locks of some folders.
type locks struct {
	free []func()
	held map[string]bool // by folder; false where the system has no locks
}

// lock takes the locks of folders in order of name, so that two
// processes never wait for each other. A second process waits, and then
// finds the files changed.
func lock(dirs []string) (*locks, error) {
	dirs = slices.Clone(dirs)
	slices.Sort(dirs)
	l := &locks{held: map[string]bool{}}
	for _, dir := range slices.Compact(dirs) {
		until := time.Now().Add(lockWait)
		for {
			free, held, err := lockFolder(dir)
			if errors.Is(err, errLocked) && time.Now().Before(until) {
				time.Sleep(lockPause)
				continue
			}
			if err != nil {
				l.unlock()
				return nil, err
			}
			if l.held[dir] = held; held {
				l.free = append(l.free, free)
			}
			break
		}
	}
	return l, nil
}

func (l *locks) unlock() {
	for _, free := range slices.Backward(l.free) {
		free()
	}
}
