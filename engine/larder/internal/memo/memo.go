// Package memo keeps what was found out of texts. Formulas name the same
// foods again and again, and each name is asked about many times.
package memo

import "sync"

// most is how many texts are kept; those after them are found anew.
const most = 4096

// Of keeps one answer for each text. The zero value is empty. It serves
// several goroutines.
type Of[T any] struct {
	mu    sync.Mutex
	known map[string]T
}

// Get gives the answer for a text, which find gives the first time. Two
// goroutines may both find it: find has to give the same each time.
func (m *Of[T]) Get(text string, find func(text string) T) T {
	m.mu.Lock()
	out, ok := m.known[text]
	m.mu.Unlock()
	if ok {
		return out
	}
	out = find(text)
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.known == nil {
		m.known = map[string]T{}
	}
	if len(m.known) < most {
		m.known[text] = out
	}
	return out
}

// Forget empties it: the answers hold no longer.
func (m *Of[T]) Forget() {
	m.mu.Lock()
	defer m.mu.Unlock()
	clear(m.known)
}
