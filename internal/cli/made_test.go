package cli

import (
	"os"
	"testing"

	"github.com/spf13/cobra"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestEveryCommandIsAskedByWhatItAnswers: the script made.txtar runs every command there is, so that none answers without its
// version and the revision of the rulebook. The server's answers are looked at in its own test.
func TestEveryCommandIsAskedByWhatItAnswers(t *testing.T) {
	script, err := os.ReadFile("testdata/script/made.txtar")
	require.NoError(t, err)
	a := &app{}
	var walk func(c *cobra.Command)
	walk = func(c *cobra.Command) {
		if c.Runnable() && c.CommandPath() != "hearsay serve" {
			assert.Contains(t, string(script), "exec "+c.CommandPath(), "run it in made.txtar and look for its version and revision")
			if c.Flags().Lookup("format") != nil {
				assert.Contains(t, string(script), c.CommandPath()+" --", "run it in each format")
			}
		}
		for _, sub := range c.Commands() {
			walk(sub)
		}
	}
	walk(a.root())
	assert.Contains(t, string(script), "exec hearsay completion bash")
}
