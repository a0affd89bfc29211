package cli_test

import (
	"flag"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var writeDependencies = flag.Bool("write-dependencies", false, "rewrite testdata/dependencies.txt")

// TestDependenciesAreFrozen compares the modules in the binary with the list kept beside it, so that none comes in unseen.
func TestDependenciesAreFrozen(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{.Path}}{{end}}", "hearsay/cmd/hearsay").Output()
	require.NoError(t, err)
	modules := strings.Fields(string(out))
	slices.Sort(modules)
	got := strings.Join(slices.Compact(modules), "\n") + "\n"
	if *writeDependencies {
		require.NoError(t, os.WriteFile("testdata/dependencies.txt", []byte(got), 0o644))
	}
	want, err := os.ReadFile("testdata/dependencies.txt")
	require.NoError(t, err)
	assert.Equal(t, string(want), got, "the binary has other modules: look at each, then run go test ./internal/cli -run Frozen -write-dependencies")
}
