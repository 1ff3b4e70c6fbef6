package editor

import "forebake/engine/files"

// TextOf is the text of an open document.
func TextOf(s *Server, uri string) string {
	d, err := s.find(uri)
	if err != nil {
		return err.Error()
	}
	return string(d.text)
}

// ReadFrom has the server read what is not open from elsewhere than
// the disk.
func ReadFrom(s *Server, texts files.Texts) { s.disk = texts }

// Kept is how many answers the server keeps.
func Kept(s *Server) int {
	s.judging.Lock()
	defer s.judging.Unlock()
	return len(s.judged)
}
