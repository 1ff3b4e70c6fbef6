package formula

// VerbWords are the words for verbs, for tests that add one.
var VerbWords = stepWords()
