// Package editor answers an editor while a formula is being typed: a
// server of the Language Server Protocol 3.17 over standard input
// and output.
//
// It judges the editor's texts, saved or not, by the run of check, so
// both answer alike. A half-typed text is made readable first
// (package tolerant). It writes no file: changes of a text go to the
// editor as edits.
package editor

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"sync"
	"time"

	"github.com/sourcegraph/jsonrpc2"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/files"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// Server serves one client. Make one with New.
type Server struct {
	// Today is the day that waivers are held against.
	Today time.Time

	disk     files.Texts // below the open texts
	conn     *jsonrpc2.Conn
	encoding protocol.Encoding
	related  bool // the client shows related places
	snippets bool // the client takes a completion with a place for the cursor

	mutex    sync.Mutex // holds what is below, to judging; never held for long
	state    state
	open     map[string]*document // by address
	running  map[jsonrpc2.ID]context.CancelFunc
	answers  sync.WaitGroup // requests that are being answered
	clean    bool           // shutdown came before exit
	changing bool           // a house or rule file was typed into since the engine was made
	waiting  []waiting      // texts whose findings are to be sent

	judging sync.Mutex         // holds what is below: one text is judged at a time
	engine  *engine.Engine     // for the house and rule files as they stand
	stamp   string             // of the files that the engine has read
	judged  map[string]*answer // by address

	sending  sync.Mutex // of findings, so that none follow the closing of their text
	wake     chan struct{}
	finished chan struct{}
}

// waiting is a text whose findings must be sent, with or without
// its trials.
type waiting struct {
	uri    string
	trials bool
}

// state is how far the protocol's life is.
type state uint8

const (
	fresh state = iota
	serving
	ending
)

// New makes a server.
func New() *Server {
	return &Server{disk: files.Disk{}, encoding: protocol.UTF16, open: map[string]*document{},
		judged: map[string]*answer{}, running: map[jsonrpc2.ID]context.CancelFunc{},
		wake: make(chan struct{}, 1), finished: make(chan struct{})}
}

// Serve answers until the client says exit or closes its end. It
// reports whether the client said shutdown before, as the protocol
// asks: if not, the exit status is 1.
func (s *Server) Serve(ctx context.Context, in io.ReadCloser, out io.WriteCloser) bool {
	ctx, end := context.WithCancel(ctx)
	defer end()
	stream := jsonrpc2.NewBufferedStream(duplex{in, out}, jsonrpc2.VSCodeObjectCodec{})
	s.conn = jsonrpc2.NewConn(ctx, stream, inOrder{s})
	go s.publishing(ctx)
	select {
	case <-s.conn.DisconnectNotify():
	case <-s.finished:
		_ = s.conn.Close()
	case <-ctx.Done():
		_ = s.conn.Close()
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return s.clean
}

// duplex is the two ends of a client as one.
type duplex struct {
	io.ReadCloser
	out io.WriteCloser
}

func (d duplex) Write(p []byte) (int, error) { return d.out.Write(p) }

func (d duplex) Close() error { return errors.Join(d.ReadCloser.Close(), d.out.Close()) }

// inOrder takes notifications one by one, since each edit depends on
// the one before, and answers requests beside them.
type inOrder struct{ *Server }

// Handle takes one message.
func (s inOrder) Handle(ctx context.Context, conn *jsonrpc2.Conn, req *jsonrpc2.Request) {
	if req.Notif {
		s.notified(ctx, req)
		return
	}
	ctx, cancel := context.WithCancel(ctx)
	var of protocol.AboutDocument
	if req.Params != nil && json.Unmarshal(*req.Params, &of) == nil {
		if d, err := s.find(of.TextDocument.URI); err == nil {
			ctx = context.WithValue(ctx, asked{}, d)
		}
	}
	s.mutex.Lock()
	s.running[req.ID] = cancel
	served := s.state == serving
	s.mutex.Unlock()
	answer := func() {
		result, err := s.answer(ctx, req)
		cancelled := ctx.Err() != nil
		s.mutex.Lock()
		delete(s.running, req.ID)
		s.mutex.Unlock()
		cancel()
		var coded *jsonrpc2.Error
		switch {
		case cancelled:
			coded = &jsonrpc2.Error{Code: protocol.CodeRequestCancelled, Message: "cancelled"}
		case err != nil && !errors.As(err, &coded):
			coded = &jsonrpc2.Error{Code: protocol.CodeRequestFailed, Message: err.Error()}
		}
		if coded != nil {
			_ = conn.ReplyWithError(context.Background(), req.ID, coded)
			return
		}
		_ = conn.Reply(context.Background(), req.ID, result)
	}
	switch {
	case req.Method == "shutdown":
		s.answers.Wait() // what was asked before is answered before
		answer()
	case !served: // what follows counts on it
		answer()
	default:
		s.answers.Go(answer)
	}
}

// method is one request that the server answers.
type method func(s *Server, ctx context.Context, params json.RawMessage) (any, error)

// with makes a method of a function that takes the parameters as
// a type.
func with[T any](f func(s *Server, ctx context.Context, params *T) (any, error)) method {
	return func(s *Server, ctx context.Context, params json.RawMessage) (any, error) {
		var p T
		if err := json.Unmarshal(params, &p); err != nil {
			return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidParams, Message: err.Error()}
		}
		return f(s, ctx, &p)
	}
}

// methods are the requests that are answered while serving.
var methods = map[string]method{
	"textDocument/hover":         with((*Server).hover),
	"textDocument/completion":    with((*Server).complete),
	"textDocument/definition":    with((*Server).definition),
	"textDocument/inlayHint":     with((*Server).hints),
	"textDocument/codeAction":    with((*Server).actions),
	"textDocument/prepareRename": with((*Server).prepareRename),
	"textDocument/rename":        with((*Server).rename),
	"textDocument/formatting":    with((*Server).format),
}

// answer answers a request.
func (s *Server) answer(ctx context.Context, req *jsonrpc2.Request) (any, error) {
	s.mutex.Lock()
	at := s.state
	s.mutex.Unlock()
	params := json.RawMessage("null")
	if req.Params != nil {
		params = *req.Params
	}
	switch {
	case req.Method == "initialize" && at == fresh:
		return with((*Server).initialize)(s, ctx, params)
	case at == fresh:
		return nil, &jsonrpc2.Error{Code: protocol.CodeNotInitialized,
			Message: "initialize comes first"}
	case at == ending || req.Method == "initialize":
		return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeInvalidRequest,
			Message: "not after shutdown, and initialize comes once"}
	case req.Method == "shutdown":
		s.mutex.Lock()
		s.state, s.clean = ending, true
		s.mutex.Unlock()
		return nil, nil
	}
	m, known := methods[req.Method]
	if !known {
		return nil, &jsonrpc2.Error{Code: jsonrpc2.CodeMethodNotFound,
			Message: fmt.Sprintf("no method %q", req.Method)}
	}
	return m(s, ctx, params)
}

func (s *Server) initialize(_ context.Context, p *protocol.InitializeParams) (any, error) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	s.state = serving
	for _, e := range p.Capabilities.General.PositionEncodings {
		e := protocol.Encoding(e)
		if e == protocol.UTF8 || e == protocol.UTF16 { // in the client's order
			s.encoding = e
			break
		}
	}
	s.related = p.Capabilities.TextDocument.PublishDiagnostics.RelatedInformation
	s.snippets = p.Capabilities.TextDocument.Completion.CompletionItem.SnippetSupport
	return protocol.InitializeResult{
		ServerInfo: protocol.ServerInfo{Name: "forebake", Version: engine.Version},
		Capabilities: protocol.Capabilities{
			PositionEncoding: string(s.encoding),
			TextDocumentSync: protocol.SyncOptions{OpenClose: true, Change: 2, Save: true},
			HoverProvider:    true,
			CompletionProvider: protocol.CompletionOptions{
				TriggerCharacters: []string{"\"", "{", " ", "."}},
			DefinitionProvider: true,
			InlayHintProvider:  true,
			CodeActionProvider: protocol.CodeActionOptions{
				CodeActionKinds: []string{"quickfix"}},
			RenameProvider:             protocol.RenameOptions{PrepareProvider: true},
			DocumentFormattingProvider: true,
		},
	}, nil
}

// notified takes a notification. Unknown ones are ignored, as the
// protocol asks.
func (s *Server) notified(ctx context.Context, req *jsonrpc2.Request) {
	params := json.RawMessage("{}")
	if req.Params != nil {
		params = *req.Params
	}
	switch req.Method {
	case "exit":
		close(s.finished)
	case "$/cancelRequest":
		var p struct {
			ID jsonrpc2.ID `json:"id"`
		}
		if json.Unmarshal(params, &p) == nil {
			s.mutex.Lock()
			if cancel := s.running[p.ID]; cancel != nil {
				cancel()
			}
			s.mutex.Unlock()
		}
	case "textDocument/didOpen":
		var p protocol.DidOpen
		if json.Unmarshal(params, &p) == nil {
			s.opened(ctx, &p)
		}
	case "textDocument/didChange":
		var p protocol.DidChange
		if json.Unmarshal(params, &p) == nil {
			s.changed(&p)
		}
	case "textDocument/didSave", "workspace/didChangeWatchedFiles":
		s.publishAll(true)
	case "textDocument/didClose":
		var p protocol.AboutDocument
		if json.Unmarshal(params, &p) == nil {
			s.closed(ctx, p.TextDocument.URI)
		}
	}
}

func (s *Server) opened(ctx context.Context, p *protocol.DidOpen) {
	path, err := pathOf(p.TextDocument.URI)
	if err != nil {
		_ = s.conn.Notify(ctx, "window/showMessage",
			protocol.ShowMessage{Type: protocol.SeverityWarning, Message: err.Error()})
		return
	}
	d := &document{uri: p.TextDocument.URI, path: path, version: p.TextDocument.Version,
		text: []byte(p.TextDocument.Text)}
	d.kind = tolerant.KindOf(d.path, d.text)
	s.mutex.Lock()
	s.open[d.uri] = d
	s.note(d)
	s.mutex.Unlock()
	s.touched(d)
}

func (s *Server) changed(p *protocol.DidChange) {
	s.mutex.Lock()
	d := s.open[p.TextDocument.URI]
	if d == nil {
		s.mutex.Unlock()
		return
	}
	next := *d // answers that are under way keep the text that they began with
	for _, c := range p.ContentChanges {
		next.change(s.encoding, c)
	}
	next.version, next.kind = p.TextDocument.Version, tolerant.KindOf(next.path, next.text)
	s.open[next.uri] = &next
	s.note(d)
	s.note(&next)
	s.mutex.Unlock()
	s.touched(d, &next)
}

func (s *Server) closed(ctx context.Context, uri string) {
	s.mutex.Lock()
	d := s.open[uri]
	delete(s.open, uri)
	if d != nil {
		s.note(d)
	}
	s.mutex.Unlock()
	if d == nil {
		return
	}
	s.sending.Lock()
	_ = s.conn.Notify(ctx, "textDocument/publishDiagnostics",
		protocol.PublishDiagnostics{URI: uri, Diagnostics: []protocol.Diagnostic{}})
	s.sending.Unlock()
	if d.kind != tolerant.FormulaFile {
		s.touched(d)
	}
}

// note records a change of a house or rule file, together with the
// change: no answer may mix the new text and the old engine. The mutex
// is held.
func (s *Server) note(d *document) {
	s.changing = s.changing || d.kind != tolerant.FormulaFile
}

// touched asks for the findings of a changed text. A house or rule file
// counts for all texts.
func (s *Server) touched(states ...*document) {
	for _, d := range states {
		if d.kind != tolerant.FormulaFile {
			s.publishAll(false)
			return
		}
	}
	s.ask(waiting{states[0].uri, false})
}

// kitchen gives the engine over the current texts. It is cached until a
// house or rule file changes, so a keystroke in a formula reads no pack
// again. Closed texts are forgotten. judging is held.
func (s *Server) kitchen() *engine.Engine {
	s.mutex.Lock()
	held, rest := s.texts()
	changed := s.changing
	s.changing = false
	for uri := range s.judged {
		if s.open[uri] == nil { // closed
			delete(s.judged, uri)
		}
	}
	s.mutex.Unlock()
	if !changed && s.engine != nil && s.engine.Stamp(held) == s.stamp {
		return s.engine
	}
	clear(s.judged)
	s.engine = engine.New()
	s.engine.Workers, s.engine.Today = 1, s.Today
	s.engine.Texts = files.Held{Texts: rest, Below: s.disk}
	return s.engine
}

// texts gives the open texts by path, and those that are no formulas.
// The mutex is held.
func (s *Server) texts() (held, rest map[string][]byte) {
	held, rest = map[string][]byte{}, map[string][]byte{}
	for _, d := range s.open {
		held[d.path] = d.text
		if d.kind != tolerant.FormulaFile {
			rest[d.path] = d.text
		}
	}
	return held, rest
}

// asked is the key of a request's document, as it was then.
type asked struct{}

// current gives a request's document. One typed into since is refused:
// the request's places are those of the old text.
func (s *Server) current(ctx context.Context, uri string) (*document, error) {
	d, err := s.find(uri)
	if err == nil {
		err = ctx.Err()
	}
	if then, ok := ctx.Value(asked{}).(*document); ok && err == nil && then != d {
		err = &jsonrpc2.Error{Code: protocol.CodeContentModified, Message: "the text has changed"}
	}
	return d, err
}

// find gives an open document.
func (s *Server) find(uri string) (*document, error) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	d := s.open[uri]
	if d == nil {
		return nil, fmt.Errorf("%s is not open", source.Safe(uri))
	}
	return d, nil
}
