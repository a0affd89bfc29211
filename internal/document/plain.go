package document

import (
	"fmt"
	"strings"
	"unicode"

	"go.yaml.in/yaml/v3"
)

// deepest is how deep a file from outside may be nested.
const deepest = 30

// Plain refuses a YAML file from outside that is not what it seems: with aliases, by which a small file grows without end,
// nested beyond reason, or with characters that do not print.
func Plain(file string, text []byte) error {
	var root yaml.Node
	if err := yaml.Unmarshal(text, &root); err != nil {
		return fmt.Errorf("%s: %w", file, Plainly(err))
	}
	if err := plain(&root, 0); err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	return nil
}

// Printable says that a text holds no character that steers a terminal, nor one that turns the direction of writing about, by
// which it could show as something else than it is.
func Printable(text string) bool {
	return !strings.ContainsFunc(text, func(r rune) bool {
		return unicode.IsControl(r) && r != '\n' && r != '\t' && r != '\r' || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
}

func plain(n *yaml.Node, depth int) error {
	switch {
	case n.Kind == yaml.AliasNode || n.Anchor != "":
		return fmt.Errorf("line %d: anchors and aliases (& and *) are not read here: write it out", n.Line)
	case n.Kind == yaml.ScalarNode && !Printable(n.Value):
		return fmt.Errorf("line %d: a character stands there that steers a terminal or turns the line about: take it out", n.Line)
	case depth > deepest:
		return fmt.Errorf("line %d: nested too deep", n.Line)
	}
	for _, c := range n.Content {
		if err := plain(c, depth+1); err != nil {
			return err
		}
	}
	return nil
}
