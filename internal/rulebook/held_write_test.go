package rulebook

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"
)

const heldHead = `# Each number of rules/limits/%s.yaml held from outside, by small jobs: what a practice says of two that lie close to
# either side of it, or what a figure, a number of a finding or a correction comes to. Nothing here is computed from the limits;
# after one is changed on purpose, -update-limits looks for jobs anew for what no longer holds it, and leaves the rest.
`

// writeEdges writes the files, numbers in the order of their names.
func writeEdges(t *testing.T, held map[string][]edge) {
	require.NoError(t, os.MkdirAll(heldFolder, 0o755))
	topics := map[string]*strings.Builder{}
	for _, name := range slices.Sorted(maps.Keys(held)) {
		topic, rest, _ := strings.Cut(name, ".")
		if topics[topic] == nil {
			topics[topic] = &strings.Builder{}
			fmt.Fprintf(topics[topic], heldHead, topic)
		}
		fmt.Fprintf(topics[topic], "%s:\n", flow(t, rest))
		for _, e := range held[name] {
			fmt.Fprintf(topics[topic], "  - {%s}\n", strings.Join(e.parts(t), ", "))
		}
	}
	for topic, text := range topics {
		if *updateLimits != "all" && *updateLimits != topic {
			continue
		}
		require.NoError(t, os.WriteFile(filepath.Join(heldFolder, topic+".yaml"), []byte(text.String()), 0o644))
	}
}

func (e edge) parts(t *testing.T) []string {
	var parts []string
	for _, part := range []struct {
		key  string
		text string
	}{{"practice", e.Practice}, {"figure", e.Figure}, {"line", e.Line}, {"number", e.Number}, {"mend", e.Mend}} {
		if part.text != "" {
			parts = append(parts, part.key+": "+flow(t, part.text))
		}
	}
	for _, part := range []struct {
		key   string
		facts map[string]any
	}{{"wrong", e.Wrong}, {"right", e.Right}, {"not here", e.NotHere}, {"job", e.Job}} {
		if part.facts != nil {
			parts = append(parts, part.key+": "+flow(t, part.facts))
		}
	}
	if e.Job != nil {
		parts = append(parts, "gives: "+flow(t, e.Gives))
	}
	return parts
}

// flow writes a value on one line.
func flow(t *testing.T, v any) string {
	switch v := v.(type) {
	case map[string]any:
		var parts []string
		for _, k := range slices.Sorted(maps.Keys(v)) {
			parts = append(parts, flow(t, k)+": "+flow(t, v[k]))
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case []any:
		var parts []string
		for _, one := range v {
			parts = append(parts, flow(t, one))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case bool:
		return map[bool]string{true: "yes", false: "no"}[v]
	case string:
		if v == "yes" || v == "no" {
			return v
		}
		if strings.ContainsAny(v, ",{}[]:#\"'") {
			return fmt.Sprintf("%q", v)
		}
	}
	text, err := yaml.Marshal(v)
	require.NoError(t, err)
	return strings.TrimSpace(string(text))
}
