package rulebook_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// absurd writes a value of the shape of another, with this number for each of its numbers.
func absurd(v any, n float64) string {
	switch v := v.(type) {
	case map[string]any:
		var cells []string
		for k, cell := range v {
			cells = append(cells, fmt.Sprintf("%q: %s", k, absurd(cell, n)))
		}
		return "{" + strings.Join(cells, ", ") + "}"
	case string:
		return fmt.Sprintf("%q", v)
	}
	return fmt.Sprintf("%g", n)
}

// TestAbsurdLimitsDoNoHarm: a pack that sets every limit to an absurd number makes no judgement panic or take for ever.
func TestAbsurdLimitsDoNoHarm(t *testing.T) {
	files, err := filepath.Glob("../../testdata/jobs/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	numbers := []float64{0, -1, 1e300}
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		numbers = append(numbers, 1e-300, -1e300, 1, 1e6)
	} else {
		files = files[:2]
	}
	plain := load(t)
	for _, n := range numbers {
		t.Run(fmt.Sprint(n), func(t *testing.T) {
			topics := map[string]string{"pack.yaml": head}
			for _, l := range plain.Limits.Limits() {
				topics["rules/limits/"+l.Topic+".yaml"] += fmt.Sprintf("%s: {value: %s, unit: %q, what: x, source: trade, basis: memory}\n", l.Name, absurd(l.Value, n), l.Unit)
			}
			b, err := rulebook.Load(rules.Files, pack(t, topics))
			require.NoError(t, err)
			for _, file := range files {
				text, err := os.ReadFile(file)
				require.NoError(t, err)
				j, _, err := job.Read(b.Facts, file, text)
				require.NoError(t, err)
				start := time.Now()
				_, err = b.Judge(context.Background(), j)
				require.NoError(t, err)
				require.Less(t, time.Since(start), 10*time.Second)
			}
		})
	}
}
