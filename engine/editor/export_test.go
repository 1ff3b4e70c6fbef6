package editor

// TextOf is the text of an open document.
func TextOf(s *Server, uri string) string {
	d, err := s.find(uri)
	if err != nil {
		return err.Error()
	}
	return string(d.text)
}
