package editor_test

import (
	"context"
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/sourcegraph/jsonrpc2"

	"forebake/engine/editor"
)

type (
	object = map[string]any
	list   = []any
)

// client is the other end of a server, with what it has been sent.
type client struct {
	t     testing.TB
	s     *editor.Server
	conn  *jsonrpc2.Conn
	ended chan bool
	sent  chan object // publishDiagnostics
}

// start begins a server and says initialize.
func start(t testing.TB, capabilities object) *client {
	t.Helper()
	fromClient, toServer := io.Pipe()
	fromServer, toClient := io.Pipe()
	c := &client{t: t, ended: make(chan bool, 1), sent: make(chan object, 4096)}
	s := editor.New()
	c.s = s
	s.Today = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)
	go func() { c.ended <- s.Serve(context.Background(), fromClient, toClient) }()
	c.conn = jsonrpc2.NewConn(context.Background(),
		jsonrpc2.NewBufferedStream(ends{fromServer, toServer}, jsonrpc2.VSCodeObjectCodec{}), c)
	t.Cleanup(func() { _ = c.conn.Close() })
	if capabilities != nil {
		var got object
		c.call("initialize", object{"capabilities": capabilities}, &got)
		c.notify("initialized", object{})
	}
	return c
}

type ends struct {
	io.ReadCloser
	out io.WriteCloser
}

func (e ends) Write(p []byte) (int, error) { return e.out.Write(p) }
func (e ends) Close() error                { _ = e.ReadCloser.Close(); return e.out.Close() }

// Handle takes what the server sends unasked.
func (c *client) Handle(_ context.Context, _ *jsonrpc2.Conn, req *jsonrpc2.Request) {
	var p object
	if req.Method == "textDocument/publishDiagnostics" && json.Unmarshal(*req.Params, &p) == nil {
		c.sent <- p
	}
}

func (c *client) call(method string, params, into any) {
	c.t.Helper()
	if err := c.try(method, params, into); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

func (c *client) try(method string, params, into any) error {
	ctx, cancel := context.WithTimeout(context.Background(), 5*time.Minute)
	defer cancel()
	return c.conn.Call(ctx, method, params, into)
}

func (c *client) notify(method string, params any) {
	c.t.Helper()
	if err := c.conn.Notify(context.Background(), method, params); err != nil {
		c.t.Fatal(err)
	}
}

// open opens a text and gives the diagnostics that come of it.
func (c *client) open(path, text string) []diagnostic {
	c.t.Helper()
	c.notify("textDocument/didOpen", object{"textDocument": object{
		"uri": uri(path), "languageId": "hcl", "version": 1, "text": text}})
	return c.next(path, 1)
}

// change sends edits and gives the diagnostics that come of them.
func (c *client) change(path string, version int, changes ...any) []diagnostic {
	c.t.Helper()
	c.notify("textDocument/didChange", object{"textDocument": object{
		"uri": uri(path), "version": version}, "contentChanges": changes})
	return c.next(path, version)
}

type diagnostic struct {
	Range    rng
	Severity int
	Code     string
	Message  string

	RelatedInformation []struct {
		Location struct{ Range rng }
		Message  string
	}
}

type pos struct{ Line, Character int }

type rng struct{ Start, End pos }

// next waits for the diagnostics of a version of a text.
func (c *client) next(path string, version int) []diagnostic {
	c.t.Helper()
	for {
		select {
		case p := <-c.sent:
			text, _ := json.Marshal(p)
			var got struct {
				URI         string
				Version     int
				Diagnostics []diagnostic
			}
			if err := json.Unmarshal(text, &got); err != nil {
				c.t.Fatal(err)
			}
			if got.URI == uri(path) && got.Version == version {
				return got.Diagnostics
			}
		case <-time.After(5 * time.Minute):
			c.t.Fatalf("no diagnostics of %s", path)
		}
	}
}

func uri(path string) string { return "file://" + filepath.ToSlash(path) }

// demo gives the path and the text of a demo formula.
func demo(t testing.TB, name string) (path, text string) {
	t.Helper()
	path, err := filepath.Abs(filepath.Join("../../formulas", name))
	if err != nil {
		t.Fatal(err)
	}
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return path, string(b)
}

// textOf is the text of a document as the server has it.
func (c *client) textOf(path string) string { return editor.TextOf(c.s, uri(path)) }
