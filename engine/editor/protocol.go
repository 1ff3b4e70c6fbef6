package editor

// The types of the Language Server Protocol 3.17 that this server reads and writes, by the
// published specification (microsoft.github.io/language-server-protocol, 3.17). Lines count from 0.
// Characters count UTF-16 units, or bytes where a client asks for utf-8.

type position struct {
	Line      int `json:"line"`
	Character int `json:"character"`
}

type span struct {
	Start position `json:"start"`
	End   position `json:"end"`
}

type location struct {
	URI   string `json:"uri"`
	Range span   `json:"range"`
}

type textEdit struct {
	Range   span   `json:"range"`
	NewText string `json:"newText"`
}

type workspaceEdit struct {
	Changes map[string][]textEdit `json:"changes"`
}

type textDocument struct {
	URI string `json:"uri"`
}

// atPosition is the parameter of every request about one place.
type atPosition struct {
	TextDocument textDocument `json:"textDocument"`
	Position     position     `json:"position"`
}

type initializeParams struct {
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

type initializeResult struct {
	Capabilities capabilities `json:"capabilities"`
	ServerInfo   serverInfo   `json:"serverInfo"`
}

type serverInfo struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

type capabilities struct {
	PositionEncoding           string            `json:"positionEncoding"`
	TextDocumentSync           syncOptions       `json:"textDocumentSync"`
	HoverProvider              bool              `json:"hoverProvider"`
	CompletionProvider         completionOptions `json:"completionProvider"`
	DefinitionProvider         bool              `json:"definitionProvider"`
	InlayHintProvider          bool              `json:"inlayHintProvider"`
	CodeActionProvider         codeActionOptions `json:"codeActionProvider"`
	RenameProvider             renameOptions     `json:"renameProvider"`
	DocumentFormattingProvider bool              `json:"documentFormattingProvider"`
}

type syncOptions struct {
	OpenClose bool `json:"openClose"`
	Change    int  `json:"change"` // 2: edits, not whole texts
	Save      bool `json:"save"`
}

type completionOptions struct {
	TriggerCharacters []string `json:"triggerCharacters"`
}

type codeActionOptions struct {
	CodeActionKinds []string `json:"codeActionKinds"`
}

type renameOptions struct {
	PrepareProvider bool `json:"prepareProvider"`
}

type didOpen struct {
	TextDocument struct {
		URI     string `json:"uri"`
		Version int    `json:"version"`
		Text    string `json:"text"`
	} `json:"textDocument"`
}

type didChange struct {
	TextDocument struct {
		URI     string `json:"uri"`
		Version int    `json:"version"`
	} `json:"textDocument"`
	ContentChanges []contentChange `json:"contentChanges"`
}

// contentChange replaces a range, or the whole text where there is none.
type contentChange struct {
	Range *span  `json:"range"`
	Text  string `json:"text"`
}

type aboutDocument struct {
	TextDocument textDocument `json:"textDocument"`
}

// Severities of a diagnostic.
const (
	severityError       = 1
	severityWarning     = 2
	severityInformation = 3
	severityHint        = 4
)

type diagnostic struct {
	Range              span      `json:"range"`
	Severity           int       `json:"severity"`
	Code               string    `json:"code,omitempty"`
	Source             string    `json:"source"`
	Message            string    `json:"message"`
	RelatedInformation []related `json:"relatedInformation,omitempty"`
}

type related struct {
	Location location `json:"location"`
	Message  string   `json:"message"`
}

type publishDiagnostics struct {
	URI         string       `json:"uri"`
	Version     int          `json:"version"`
	Diagnostics []diagnostic `json:"diagnostics"`
}

type hover struct {
	Contents markup `json:"contents"`
	Range    *span  `json:"range,omitempty"`
}

type markup struct {
	Kind  string `json:"kind"` // plaintext: a name of a file may read as markup
	Value string `json:"value"`
}

// Kinds of a completion item.
const (
	kindFunction = 3
	kindField    = 5
	kindProperty = 10
	kindUnit     = 11
	kindValue    = 12
	kindKeyword  = 14
)

type completionItem struct {
	Label            string    `json:"label"`
	Kind             int       `json:"kind"`
	Detail           string    `json:"detail,omitempty"`
	SortText         string    `json:"sortText,omitempty"`
	FilterText       string    `json:"filterText,omitempty"`
	InsertTextFormat int       `json:"insertTextFormat,omitempty"`
	TextEdit         *textEdit `json:"textEdit,omitempty"`
}

type completionList struct {
	IsIncomplete bool             `json:"isIncomplete"`
	Items        []completionItem `json:"items"`
}

type inlayHintParams struct {
	TextDocument textDocument `json:"textDocument"`
	Range        span         `json:"range"`
}

type inlayHint struct {
	Position    position `json:"position"`
	Label       string   `json:"label"`
	PaddingLeft bool     `json:"paddingLeft"`
}

type codeActionParams struct {
	TextDocument textDocument `json:"textDocument"`
	Range        span         `json:"range"`
	Context      struct {
		Only []string `json:"only"`
	} `json:"context"`
}

type codeAction struct {
	Title       string         `json:"title"`
	Kind        string         `json:"kind"`
	Diagnostics []diagnostic   `json:"diagnostics,omitempty"`
	IsPreferred bool           `json:"isPreferred,omitempty"`
	Edit        *workspaceEdit `json:"edit,omitempty"`
}

type renameParams struct {
	atPosition
	NewName string `json:"newName"`
}

type prepared struct {
	Range       span   `json:"range"`
	Placeholder string `json:"placeholder"`
}

type formattingParams struct {
	TextDocument textDocument `json:"textDocument"`
}

type showMessage struct {
	Type    int    `json:"type"`
	Message string `json:"message"`
}

// Errors of the protocol beside those of JSON-RPC.
const (
	codeNotInitialized   = -32002
	codeRequestCancelled = -32800
	codeContentModified  = -32801
	codeRequestFailed    = -32803
)
