package document

import (
	"fmt"

	"go.yaml.in/yaml/v3"
)

// deepest is how deep a file from outside may be nested.
const deepest = 30

// Plain refuses a YAML file from outside that is not what it seems: with aliases, by which a small file grows without end,
// or nested beyond reason.
func Plain(file string, text []byte) error {
	var root yaml.Node
	if err := yaml.Unmarshal(text, &root); err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	if err := plain(&root, 0); err != nil {
		return fmt.Errorf("%s: %w", file, err)
	}
	return nil
}

func plain(n *yaml.Node, depth int) error {
	switch {
	case n.Kind == yaml.AliasNode || n.Anchor != "":
		return fmt.Errorf("line %d: anchors and aliases (& and *) are not read here: write it out", n.Line)
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
