package rulebook_test

import (
	"io/fs"
	"os"
	"path"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/rules"
)

// TestRulesCompareOnly holds every rule to the form that partial evaluation judges soundly and that leaves no number
// without a source: no number but 0 and 1, no arithmetic, no imports, and none of the constructs that it mistakes.
func TestRulesCompareOnly(t *testing.T) {
	files := load(t).Modules()
	for name, m := range files {
		t.Run(name, func(t *testing.T) {
			for _, i := range m.Imports {
				assert.Failf(t, "import", "line %d: refer to %s by its full path", i.Location.Row, i.Path)
			}
			for _, r := range m.Rules {
				assert.False(t, r.Default, "line %d: no default", r.Location.Row)
				checkRule(t, r)
			}
		})
	}
}

var arithmetic = map[string]bool{"plus": true, "minus": true, "mul": true, "div": true, "rem": true, "round": true, "ceil": true, "floor": true, "sum": true, "count": true}

func checkRule(t *testing.T, r *ast.Rule) {
	ast.WalkTerms(r, func(term *ast.Term) bool {
		switch v := term.Value.(type) {
		case ast.Number:
			assert.Contains(t, []string{"0", "1"}, v.String(), "line %d: a number belongs in limits/", term.Location.Row)
		case ast.Call:
			assert.False(t, arithmetic[v[0].String()], "line %d: %s belongs in a figure", term.Location.Row, v[0])
		case *ast.SetComprehension, *ast.ArrayComprehension, *ast.ObjectComprehension:
			assert.Fail(t, "comprehension", "line %d: no comprehension", term.Location.Row)
		}
		return false
	})
	ast.WalkExprs(r, func(e *ast.Expr) bool {
		assert.Empty(t, e.With, "line %d: no with", e.Location.Row)
		assert.False(t, e.IsEvery(), "line %d: no every", e.Location.Row)
		if e.IsCall() {
			assert.False(t, arithmetic[e.Operator().String()], "line %d: %s belongs in a figure", e.Location.Row, e.Operator())
		}
		return false
	})
}

// TestEveryPracticeIsWhole holds each practice to having its rules, its Rego test and its two jobs in their places.
func TestEveryPracticeIsWhole(t *testing.T) {
	b := load(t)
	for _, p := range b.Practices() {
		t.Run(p.ID, func(t *testing.T) {
			text, err := fs.ReadFile(rules.Files, p.File)
			require.NoError(t, err)
			for _, want := range []string{"\nhere ", "\nwrong contains "} {
				assert.Contains(t, string(text), want, "the rule lacks it")
			}
			if !p.Act {
				assert.Contains(t, string(text), "\nmend[", "the rule says nothing that puts it right")
			}
			assert.True(t, p.Act || len(p.Numbers) > 0 || !strings.Contains(string(text), "\nnumber["), "numbers are given but not named in the metadata")
			_, err = fs.Stat(rules.Files, strings.TrimSuffix(p.File, ".rego")+"_test.rego")
			assert.NoError(t, err, "no Rego test stands beside it")
			_, err = os.Stat(path.Join("../../testdata/practices", p.ID+".yaml"))
			assert.NoError(t, err, "it has no two jobs in testdata/practices")
		})
	}
}

// TestRulesAreFormatted holds every rule file to the standard formatting of Rego.
func TestRulesAreFormatted(t *testing.T) {
	files, err := fs.Glob(rules.Files, "*/*.rego")
	require.NoError(t, err)
	for _, f := range files {
		text, err := fs.ReadFile(rules.Files, f)
		require.NoError(t, err)
		formatted, err := format.SourceWithOpts(f, text, format.Opts{RegoVersion: ast.RegoV1})
		require.NoError(t, err, f)
		assert.Equal(t, string(formatted), string(text), "%s is not formatted: run `go tool opa fmt -w rules`", f)
	}
}
