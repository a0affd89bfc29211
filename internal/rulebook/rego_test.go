package rulebook_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/rulebook"
	"hearsay/rules"
)

func load(t testing.TB) *rulebook.Book {
	t.Helper()
	b, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	return b
}

// TestRego runs every test that stands beside a rule, each as a test of its own.
func TestRego(t *testing.T) {
	results, err := load(t).RunTests()
	require.NoError(t, err)
	require.NotEmpty(t, results, "no Rego test was run")
	for _, r := range results {
		t.Run(r.Name, func(t *testing.T) { assert.Empty(t, r.Failure) })
	}
}
