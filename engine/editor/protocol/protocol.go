// Package protocol holds the types of the Language Server Protocol
// 3.17 that the editor's server uses (specification:
// microsoft.github.io/language-server-protocol, 3.17). It turns a
// text's bytes into positions. Lines count from 0. Characters
// count UTF-16 units, or bytes where a client asks for utf-8. It
// knows no formula.
package protocol

// Position is a place between two characters.
type Position struct {
	Line      int `json:"line"`
	Character int `json:"character"`
}

// Range is from one position to another, the end not in it.
type Range struct {
	Start Position `json:"start"`
	End   Position `json:"end"`
}

// Location is a range of one file.
type Location struct {
	URI   string `json:"uri"`
	Range Range  `json:"range"`
}

// TextEdit puts a text in the place of a range.
type TextEdit struct {
	Range   Range  `json:"range"`
	NewText string `json:"newText"`
}

// WorkspaceEdit holds the edits of some files, by address.
type WorkspaceEdit struct {
	Changes map[string][]TextEdit `json:"changes"`
}

// TextDocument names a file by its address.
type TextDocument struct {
	URI string `json:"uri"`
}

// AtPosition is the parameter of every request about one place.
type AtPosition struct {
	TextDocument TextDocument `json:"textDocument"`
	Position     Position     `json:"position"`
}

// InitializeParams says what the client can do.
type InitializeParams struct {
	Capabilities struct {
		General struct {
			PositionEncodings []string `json:"positionEncodings"`
		} `json:"general"`
		TextDocument struct {
			PublishDiagnostics struct {
				RelatedInformation bool `json:"relatedInformation"`
			} `json:"publishDiagnostics"`
			Completion struct {
				CompletionItem struct {
					SnippetSupport bool `json:"snippetSupport"`
				} `json:"completionItem"`
			} `json:"completion"`
		} `json:"textDocument"`
	} `json:"capabilities"`
}

// InitializeResult says what the server can do.
type InitializeResult struct {
	Capabilities Capabilities `json:"capabilities"`
	ServerInfo   ServerInfo   `json:"serverInfo"`
}

// ServerInfo names the server.
type ServerInfo struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

// Capabilities are the requests that the server answers.
type Capabilities struct {
	PositionEncoding           string            `json:"positionEncoding"`
	TextDocumentSync           SyncOptions       `json:"textDocumentSync"`
	HoverProvider              bool              `json:"hoverProvider"`
	CompletionProvider         CompletionOptions `json:"completionProvider"`
	DefinitionProvider         bool              `json:"definitionProvider"`
	InlayHintProvider          bool              `json:"inlayHintProvider"`
	CodeActionProvider         CodeActionOptions `json:"codeActionProvider"`
	RenameProvider             RenameOptions     `json:"renameProvider"`
	DocumentFormattingProvider bool              `json:"documentFormattingProvider"`
}

// SyncOptions says which changes of a text the server wants told.
type SyncOptions struct {
	OpenClose bool `json:"openClose"`
	Change    int  `json:"change"` // 2: edits, not whole texts
	Save      bool `json:"save"`
}

// CompletionOptions lists the characters that ask for a completion.
type CompletionOptions struct {
	TriggerCharacters []string `json:"triggerCharacters"`
}

// CodeActionOptions lists the kinds of action that the server offers.
type CodeActionOptions struct {
	CodeActionKinds []string `json:"codeActionKinds"`
}

// RenameOptions says whether a rename is asked for before it is made.
type RenameOptions struct {
	PrepareProvider bool `json:"prepareProvider"`
}

// DidOpen tells that a text was opened.
type DidOpen struct {
	TextDocument struct {
		URI     string `json:"uri"`
		Version int    `json:"version"`
		Text    string `json:"text"`
	} `json:"textDocument"`
}

// DidChange tells that a text was typed into.
type DidChange struct {
	TextDocument struct {
		URI     string `json:"uri"`
		Version int    `json:"version"`
	} `json:"textDocument"`
	ContentChanges []ContentChange `json:"contentChanges"`
}

// ContentChange replaces a range, or the whole text where there
// is none.
type ContentChange struct {
	Range *Range `json:"range"`
	Text  string `json:"text"`
}

// AboutDocument is the parameter of what is about one text.
type AboutDocument struct {
	TextDocument TextDocument `json:"textDocument"`
}

// Severities of a diagnostic.
const (
	SeverityError       = 1
	SeverityWarning     = 2
	SeverityInformation = 3
	SeverityHint        = 4
)

// Diagnostic is a finding at its place.
type Diagnostic struct {
	Range              Range     `json:"range"`
	Severity           int       `json:"severity"`
	Code               string    `json:"code,omitempty"`
	Source             string    `json:"source"`
	Message            string    `json:"message"`
	RelatedInformation []Related `json:"relatedInformation,omitempty"`
}

// Related is another place that a finding speaks of.
type Related struct {
	Location Location `json:"location"`
	Message  string   `json:"message"`
}

// PublishDiagnostics sends all findings of a text.
type PublishDiagnostics struct {
	URI         string       `json:"uri"`
	Version     int          `json:"version"`
	Diagnostics []Diagnostic `json:"diagnostics"`
}

// Hover is the text shown for a place.
type Hover struct {
	Contents Markup `json:"contents"`
	Range    *Range `json:"range,omitempty"`
}

// Markup is a text and how it is read.
type Markup struct {
	Kind  string `json:"kind"` // plaintext: a name of a file may read as markup
	Value string `json:"value"`
}

// Kinds of a completion item.
const (
	KindFunction = 3
	KindField    = 5
	KindProperty = 10
	KindUnit     = 11
	KindValue    = 12
	KindKeyword  = 14
)

// CompletionItem is a word that can stand at a place.
type CompletionItem struct {
	Label            string    `json:"label"`
	Kind             int       `json:"kind"`
	Detail           string    `json:"detail,omitempty"`
	SortText         string    `json:"sortText,omitempty"`
	FilterText       string    `json:"filterText,omitempty"`
	InsertTextFormat int       `json:"insertTextFormat,omitempty"`
	TextEdit         *TextEdit `json:"textEdit,omitempty"`
}

// CompletionList holds the words that can stand at a place.
type CompletionList struct {
	IsIncomplete bool             `json:"isIncomplete"`
	Items        []CompletionItem `json:"items"`
}

// InlayHintParams asks for the hints of a range.
type InlayHintParams struct {
	TextDocument TextDocument `json:"textDocument"`
	Range        Range        `json:"range"`
}

// InlayHint is a figure shown within a line.
type InlayHint struct {
	Position    Position `json:"position"`
	Label       string   `json:"label"`
	PaddingLeft bool     `json:"paddingLeft"`
}

// CodeActionParams asks what can be done about a range.
type CodeActionParams struct {
	TextDocument TextDocument `json:"textDocument"`
	Range        Range        `json:"range"`
	Context      struct {
		Only []string `json:"only"`
	} `json:"context"`
}

// CodeAction is an edit that is offered.
type CodeAction struct {
	Title       string         `json:"title"`
	Kind        string         `json:"kind"`
	Diagnostics []Diagnostic   `json:"diagnostics,omitempty"`
	IsPreferred bool           `json:"isPreferred,omitempty"`
	Edit        *WorkspaceEdit `json:"edit,omitempty"`
}

// RenameParams asks for another name.
type RenameParams struct {
	AtPosition
	NewName string `json:"newName"`
}

// Prepared is the name that a rename would change.
type Prepared struct {
	Range       Range  `json:"range"`
	Placeholder string `json:"placeholder"`
}

// FormattingParams asks for a text laid out.
type FormattingParams struct {
	TextDocument TextDocument `json:"textDocument"`
}

// ShowMessage is a message to the user.
type ShowMessage struct {
	Type    int    `json:"type"`
	Message string `json:"message"`
}

// Errors of the protocol beside those of JSON-RPC.
const (
	CodeNotInitialized   = -32002
	CodeRequestCancelled = -32800
	CodeContentModified  = -32801
	CodeRequestFailed    = -32803
)
