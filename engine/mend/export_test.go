package mend

// Undone mends a formula, and gives the text without each change in
// turn; nil where the others need it.
func (m *Mender) Undone(name string, text []byte, index int) (now []byte, each [][]byte, _ error) {
	base, err := m.begin(name, text, index)
	if err != nil {
		return nil, nil, err
	}
	v, changes := m.passes(base)
	for i := range changes {
		var left []byte
		if w := m.replayed(base, without(changes, i)); w != nil {
			left = w.text
		}
		each = append(each, left)
	}
	return v.text, each, nil
}
