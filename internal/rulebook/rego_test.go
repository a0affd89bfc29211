package rulebook_test

import (
	"context"
	"testing"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
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
	b := load(t)
	modules := map[string]*ast.Module{}
	ruleFiles, testFiles := b.Modules()
	for name, m := range ruleFiles {
		modules[name] = m
	}
	for name, m := range testFiles {
		modules[name] = m
	}
	ctx := context.Background()
	store := inmem.NewFromObject(map[string]any{"limit": b.Limits.Data()})
	err := storage.Txn(ctx, store, storage.TransactionParams{}, func(txn storage.Transaction) error {
		results, err := tester.NewRunner().SetCompiler(ast.NewCompiler()).SetStore(store).SetModules(modules).
			SetTimeout(20*time.Second).RunTests(ctx, txn)
		require.NoError(t, err)
		n := 0
		for r := range results {
			n++
			t.Run(r.Package+"/"+r.Name, func(t *testing.T) {
				require.NoError(t, r.Error)
				require.True(t, r.Pass(), "%s fails at %s", r.Name, r.Location)
			})
		}
		require.Positive(t, n, "no Rego test was run")
		return nil
	})
	require.NoError(t, err)
}
