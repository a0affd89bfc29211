package rulebook

import (
	"context"
	"fmt"
	"maps"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
)

// TestResult is one Rego test that was run. Failure is empty where it passed.
type TestResult struct {
	Name    string
	Failure string
}

// testTime is how long one Rego test may take.
const testTime = 20 * time.Second

// RunTests runs the Rego tests that stand beside the rules, packs' included.
func (b *Book) RunTests() ([]TestResult, error) {
	modules := maps.Clone(b.modules)
	for name, text := range b.texts {
		if !isTest(name) || strings.Count(name, "/") != 1 { // the texts of a pack are there under its name, too
			continue
		}
		m, err := ast.ParseModuleWithOpts(name, string(text), ast.ParserOptions{RegoVersion: ast.RegoV1})
		if err != nil {
			return nil, err
		}
		modules[name] = m
	}
	ctx := context.Background()
	store := inmem.NewFromObject(map[string]any{"limit": b.Limits.Data()})
	var results []TestResult
	err := storage.Txn(ctx, store, storage.TransactionParams{}, func(txn storage.Transaction) error {
		run, err := tester.NewRunner().SetCompiler(ast.NewCompiler()).SetStore(store).SetModules(modules).SetTimeout(testTime).RunTests(ctx, txn)
		if err != nil {
			return err
		}
		for r := range run {
			one := TestResult{Name: r.Package + "." + r.Name}
			switch {
			case r.Error != nil:
				one.Failure = r.Error.Error()
			case !r.Pass():
				one.Failure = fmt.Sprintf("it does not hold, at %s", r.Location)
			}
			results = append(results, one)
		}
		return nil
	})
	return results, err
}
