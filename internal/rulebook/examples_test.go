package rulebook_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/rules"
)

// TestWorkedExamples holds each published example that `hearsay doctor` shows to its printed result.
func TestWorkedExamples(t *testing.T) {
	examples, err := load(t).Examples(rules.Files)
	require.NoError(t, err)
	require.NotEmpty(t, examples)
	for _, e := range examples {
		t.Run(e.Name, func(t *testing.T) {
			assert.True(t, e.Good, "%s, %s: printed %v %s, computed %v %s", e.Source, e.Where, e.Printed, e.Unit, e.Computed, e.Problem)
		})
	}
}
