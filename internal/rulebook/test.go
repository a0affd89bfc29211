package rulebook

import (
	"context"
	"errors"
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

// RunTests runs the Rego tests that stand beside the rules, packs' included. They may call more than rules may, and nothing that
// reaches out of them.
func (b *Book) RunTests() ([]TestResult, error) {
	var results []TestResult
	err := bounded(context.Background(), mostTestTime, func(ctx context.Context) error {
		var err error
		results, err = b.runTests(ctx)
		return err
	})
	if errors.Is(err, errTooMuch) {
		return nil, fmt.Errorf("the tests of the rules: %w", err)
	}
	return results, err
}

// testBuiltins are the functions that a test may call beside those of rules: sums, sets and texts, of what it is given.
var testBuiltins = []string{"count", "sum", "max", "min", "plus", "minus", "mul", "div", "round", "ceil", "floor", "abs", "and", "or", "union", "intersection",
	"object.union", "object.get", "object.keys", "concat", "contains", "startswith", "endswith", "lower", "upper", "is_number", "is_string",
	"is_boolean", "is_object", "is_array", "is_set", "type_name", "internal.member_3"}

func (b *Book) runTests(ctx context.Context) ([]TestResult, error) {
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
	store := inmem.NewFromObject(map[string]any{"limit": b.Limits.Data()})
	compiler := ast.NewCompiler().WithCapabilities(allowed(testBuiltins...))
	var results []TestResult
	err := storage.Txn(ctx, store, storage.TransactionParams{}, func(txn storage.Transaction) error {
		run, err := tester.NewRunner().SetCompiler(compiler).SetStore(store).SetModules(modules).SetTimeout(testTime).RunTests(ctx, txn)
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
