package run

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// Houses loads and caches house files, each with its packs. It opens
// each of their files once. It is safe for concurrent use.
type Houses struct {
	Shipped fs.FS       // the packs in the program
	Version string      // of the program; a pack may ask for at least one
	Texts   files.Texts // where the texts of house and rule files come from

	mutex   sync.Mutex
	nearest map[string]string        // the house file of a folder; "" for none
	loads   map[string]func() loaded // by path of the house file; "" for none
	texts   map[string]func() text   // by path
	opened  map[string]bool          // the paths of all texts that were asked for
}

// Loaded is a house with its rules in force.
type Loaded struct {
	House     *house.House
	Rules     *rule.Set
	Unchecked []finding.Unchecked // food-safety packs that the house leaves out
}

type loaded struct {
	*Loaded
	problems source.Problems
}

type text struct {
	bytes []byte
	err   error
}

var (
	houseFile = files.Kind{Name: "a house file", Limit: source.MaxFileBytes}
	ruleFile  = files.Kind{Name: "a rule file", Limit: rule.MaxPackBytes}
)

// keep gives or makes the value of a name. Of several callers one makes
// it, and the others wait.
func keep[T any](mutex *sync.Mutex, kept *map[string]func() T, name string, make func() T) T {
	mutex.Lock()
	if *kept == nil {
		*kept = map[string]func() T{}
	}
	get := (*kept)[name]
	if get == nil {
		get = sync.OnceValue(make)
		(*kept)[name] = get
	}
	mutex.Unlock()
	return get()
}

// Load gives a folder's house, with its rules.
func (h *Houses) Load(dir string) (*Loaded, source.Problems) {
	h.mutex.Lock()
	path, seen := h.nearest[dir]
	if !seen {
		if h.nearest == nil {
			h.nearest = map[string]string{}
		}
		path = Nearest(dir)
		h.nearest[dir] = path
	}
	h.mutex.Unlock()
	return h.LoadFile(path)
}

// LoadFile gives a house file's house, with its rules; "" is the house
// without a file.
func (h *Houses) LoadFile(path string) (*Loaded, source.Problems) {
	l := keep(&h.mutex, &h.loads, path, func() (out loaded) {
		out.Loaded, out.problems = h.load(path, false)
		return out
	})
	return l.Loaded, l.problems
}

// LoadTrials gives a house file's house with its rules' trials, which a
// check leaves unread.
func (h *Houses) LoadTrials(path string) (*Loaded, source.Problems) { return h.load(path, true) }

func (h *Houses) load(path string, trials bool) (*Loaded, source.Problems) {
	in := house.Default()
	if path != "" {
		var problems source.Problems
		if in, problems = h.readHouse(path, nil); len(problems) > 0 {
			return nil, problems
		}
	}
	packs, problems := h.readPacks(in, trials)
	if len(problems) > 0 {
		return nil, problems
	}
	left := h.leftOut(in)
	set, problems := rule.Join(packs, in, left.packOf)
	if len(problems) > 0 {
		return nil, problems
	}
	return &Loaded{House: in, Rules: set, Unchecked: left.safety(in.PacksAt)}, nil
}

// Nearest finds the nearest house file upward from a folder; ""
// for none.
func Nearest(dir string) string {
	abs, err := filepath.Abs(dir)
	if err != nil {
		return ""
	}
	for at, shown := abs, dir; ; {
		candidate := filepath.Join(at, house.FileName)
		if info, err := os.Stat(candidate); err == nil && !info.IsDir() {
			return filepath.Join(shown, house.FileName)
		}
		parent := filepath.Dir(at)
		if parent == at {
			return ""
		}
		at, shown = parent, filepath.Join(shown, "..")
	}
}

// MaxJoined is how many house files may include each other by like.
const MaxJoined = 16

// read reads a file once, however many houses and inputs ask for it: a
// folder of formulas may hold their rules.
func (h *Houses) read(path string, kind files.Kind) ([]byte, error) {
	h.mutex.Lock()
	if h.opened == nil {
		h.opened = map[string]bool{}
	}
	h.opened[filepath.Clean(path)] = true
	h.mutex.Unlock()
	t := keep(&h.mutex, &h.texts, filepath.Clean(path), func() (out text) {
		out.bytes, out.err = h.Texts.Read(path, kind)
		return out
	})
	var large *files.TooLarge
	switch {
	case !errors.As(t.err, &large):
		return t.bytes, t.err
	case large.Size <= kind.Limit: // another caller took it for a smaller kind, and has not read it
		return h.Texts.Read(path, kind)
	}
	return nil, &files.TooLarge{Size: large.Size, Kind: kind}
}

// Opened lists the formula, house and rule files that were read,
// by name.
func (h *Houses) Opened() []string { return slices.Sorted(maps.Keys(h.opened)) }

// forget drops a formula file's text: those of a large collection are
// not kept.
func (h *Houses) forget(path string) {
	h.mutex.Lock()
	delete(h.texts, filepath.Clean(path))
	h.mutex.Unlock()
}

// readHouse reads a house file and those that it includes by like.
// chain holds the files on the way to it.
func (h *Houses) readHouse(path string, chain []string) (*house.House, source.Problems) {
	name := filepath.ToSlash(path)
	text, err := h.read(path, houseFile)
	if err != nil {
		return nil, source.Problems{{Text: fmt.Sprintf("%s: %s", name, err)}}
	}
	chain = append(chain, name)
	return house.Read(source.New(name, text),
		func(like string, at source.Place) (*house.House, source.Problems) {
			other, fault := likeFile(path, like, chain)
			if fault != "" {
				return nil, source.Problems{{Place: at, Text: fault}}
			}
			return h.readHouse(other, chain)
		})
}

// likeFile finds the file of a like in the house file at path, or says
// why it cannot be used.
func likeFile(path, like string, chain []string) (file, fault string) {
	file = filepath.FromSlash(like)
	if !filepath.IsAbs(file) {
		file = filepath.Join(filepath.Dir(path), file)
	}
	info, err := os.Stat(file)
	if err == nil && info.IsDir() {
		file = filepath.Join(file, house.FileName)
		info, err = os.Stat(file)
	}
	shown := filepath.ToSlash(file)
	if err != nil || info.IsDir() {
		return "", fmt.Sprintf("no house file at %s; like names one, such as \"../house.hcl\"",
			shown)
	}
	for _, before := range chain {
		if was, err := os.Stat(filepath.FromSlash(before)); err == nil && os.SameFile(was, info) {
			return "", "house files include each other in a circle: " +
				strings.Join(append(chain, shown), ", ") + "; take out one like"
		}
	}
	if len(chain) >= MaxJoined {
		return "", fmt.Sprintf(
			"%d house files include each other by like; %d is the most",
			len(chain)+1,
			MaxJoined,
		)
	}
	return file, ""
}
