// Package schema writes the JSON Schema of an output from the type that
// is printed, so that the two cannot part. Tests alone use it: they
// hold the files in formulas/schemas to it.
package schema

import (
	"bytes"
	"encoding"
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
)

// Draft is the address of the published draft that the schemas are of.
const Draft = "https://json-schema.org/draft/2020-12/schema"

// Of gives the schema of a value's type. Keys that may be left out are
// not required. An unknown key is no fault: a new key does not change
// the format.
func Of(title string, v any) []byte {
	s := typeOf(reflect.TypeOf(v))
	s["$schema"] = Draft
	s["title"] = title
	text, err := json.MarshalIndent(s, "", "  ")
	if err != nil {
		panic(err) // a map of texts
	}
	return append(text, '\n')
}

// Hold fails a test where a schema file is not that of a value's type.
// With UPDATE_SCHEMAS=1 it writes the file.
func Hold(t testing.TB, path, title string, v any) {
	t.Helper()
	want := Of(title, v)
	if os.Getenv("UPDATE_SCHEMAS") == "1" {
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, want, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(path); err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s is not the schema of what is printed; UPDATE_SCHEMAS=1 writes it (%v)",
			path, err)
	}
}

var marshaler = reflect.TypeFor[encoding.TextMarshaler]()

func typeOf(t reflect.Type) map[string]any {
	if t.Implements(marshaler) {
		return map[string]any{"type": "string"}
	}
	switch t.Kind() {
	case reflect.Pointer:
		return map[string]any{"anyOf": []any{typeOf(t.Elem()), map[string]any{"type": "null"}}}
	case reflect.Slice:
		return map[string]any{"type": []string{"array", "null"}, "items": typeOf(t.Elem())}
	case reflect.Map:
		return map[string]any{"type": "object", "additionalProperties": typeOf(t.Elem())}
	case reflect.String:
		return map[string]any{"type": "string"}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	case reflect.Int, reflect.Int64:
		return map[string]any{"type": "integer"}
	case reflect.Float64:
		return map[string]any{"type": "number"}
	case reflect.Struct:
		return object(t)
	}
	return map[string]any{} // anything
}

func object(t reflect.Type) map[string]any {
	properties, required := map[string]any{}, []string{}
	for i := range t.NumField() {
		f := t.Field(i)
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		if f.Anonymous && name == "" {
			inner := object(f.Type)
			for key, s := range inner["properties"].(map[string]any) {
				properties[key] = s
			}
			required = append(required, inner["required"].([]string)...)
			continue
		}
		if name == "" || name == "-" {
			continue
		}
		properties[name] = typeOf(f.Type)
		if !strings.Contains(options, "omitempty") {
			required = append(required, name)
		}
	}
	return map[string]any{"type": "object", "properties": properties, "required": required}
}
