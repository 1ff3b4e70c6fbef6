package jsontext

import (
	"bytes"
	"encoding/json"
	"iter"
	"testing"
)

func each[T any](list []T) iter.Seq[any] {
	return func(yield func(any) bool) {
		for _, one := range list {
			yield(one)
		}
	}
}

// TestWriteIntoIsWrite holds the object written item by item to the
// same object written as a whole, whatever the items hold.
func TestWriteIntoIsWrite(t *testing.T) {
	type object struct {
		A    string           `json:"a"`
		Some []map[string]any `json:"some"`
		None []string         `json:"none"`
		More []string         `json:"more"`
		Z    int              `json:"z"`
	}
	some := []map[string]any{
		{"k": "\n  \"more\": []", "deep": map[string]any{"list": []any{1, "two", []any{}}}},
		{},
		{"bidi": "a\u202eb", "some": []any{}},
	}
	more := []string{"x", "\"more\": []", "<&>"}
	for _, n := range []int{0, 1, 3} {
		var whole, parts bytes.Buffer
		if err := Write(&whole, object{"\n  \"some\": []", some[:n], []string{}, more[:n],
			7}); err != nil {
			t.Fatal(err)
		}
		err := WriteInto(
			&parts,
			object{"\n  \"some\": []", []map[string]any{}, []string{}, []string{}, 7},
			List{Indent: "  ", Key: "some", Items: each(some[:n])},
			List{Indent: "  ", Key: "none", Items: each(more[:0])},
			List{Indent: "  ", Key: "more", Items: each(more[:n])},
		)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(whole.Bytes(), parts.Bytes()) || !json.Valid(parts.Bytes()) {
			t.Errorf("%d items: as a whole\n%s\nitem by item\n%s", n, whole.Bytes(), parts.Bytes())
		}
	}
	gone := List{Indent: "  ", Key: "gone", Items: each(more)}
	if err := WriteInto(&bytes.Buffer{}, object{}, gone); err == nil {
		t.Error("a list that the object does not have was taken")
	}
}
