// Package document owns the reading of the YAML files that hold what the trade knows: entries in the order of the file, with
// a key that does not belong there refused at its line.
package document

import (
	"fmt"
	"reflect"
	"strings"

	"go.yaml.in/yaml/v3"
)

// Entry is one named entry of a mapping.
type Entry[T any] struct {
	Name  string
	Line  int // in the file
	Value T
}

// Ordered is a mapping whose order counts. It can be a field of a struct that is read.
type Ordered[T any] []Entry[T]

// Read reads a file that is one mapping of names to entries.
func Read[T any](file string, text []byte) (Ordered[T], error) {
	var o Ordered[T]
	if err := yaml.Unmarshal(text, &o); err != nil {
		return nil, fmt.Errorf("%s: %w", file, Plainly(err))
	}
	return o, nil
}

// UnmarshalYAML reads the mapping in its order. A name that stands twice and a key that T does not have are errors.
func (o *Ordered[T]) UnmarshalYAML(n *yaml.Node) error {
	if n.Kind != yaml.MappingNode {
		return fmt.Errorf("line %d: a mapping of names to entries is wanted here", n.Line)
	}
	allowed := keysOf(reflect.TypeFor[T]())
	seen := map[string]bool{}
	for i := 0; i < len(n.Content); i += 2 {
		key, value := n.Content[i], n.Content[i+1]
		if seen[key.Value] {
			return fmt.Errorf("line %d: %s stands twice", key.Line, key.Value)
		}
		seen[key.Value] = true
		if err := checkKeys(value, allowed); err != nil {
			return err
		}
		e := Entry[T]{Name: key.Value, Line: key.Line}
		if err := value.Decode(&e.Value); err != nil {
			return within(key, Plainly(err))
		}
		*o = append(*o, e)
	}
	return nil
}

// within names the entry that an error stands in, after its line; where the error tells no line, that is the entry's.
func within(key *yaml.Node, err error) error {
	if line, rest, ok := strings.Cut(err.Error(), ": "); ok && strings.HasPrefix(line, "line ") {
		return fmt.Errorf("%s: %s: %s", line, key.Value, rest)
	}
	return fmt.Errorf("line %d: %s: %w", key.Line, key.Value, err)
}

// keysOf lists the keys a struct takes; nil for anything else, which takes any.
func keysOf(t reflect.Type) map[string]bool {
	if t.Kind() != reflect.Struct {
		return nil
	}
	keys := map[string]bool{}
	for f := range t.Fields() {
		name, _, _ := strings.Cut(f.Tag.Get("yaml"), ",")
		keys[name] = true
	}
	return keys
}

func checkKeys(n *yaml.Node, allowed map[string]bool) error {
	if allowed == nil || n.Kind != yaml.MappingNode {
		return nil
	}
	for i := 0; i < len(n.Content); i += 2 {
		if key := n.Content[i]; !allowed[key.Value] {
			return fmt.Errorf("line %d: %q does not belong here", key.Line, key.Value)
		}
	}
	return nil
}
