package rulebook

import (
	"context"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
)

// evaluate judges by partial evaluation: what is not known is handed to the evaluator as unknown. No residue: right. An
// unconditional result: wrong. A residue: ask, and the residue says on what.
func (c *court) evaluate(ctx context.Context, one *Judgement) error {
	p := one.Practice
	q, err := c.book.single(ctx, p)
	if err != nil {
		return err
	}
	input, err := c.input(p, false)
	if err != nil {
		return err
	}
	known := evaluation{input: input, unknowns: c.unknowns(p)}
	if !one.Concerns { // otherwise it is known already that it concerns the job
		here, err := c.partial(ctx, q.here, known)
		if err != nil || len(here) == 0 {
			return err
		}
		one.Concerns = slices.ContainsFunc(here, certain)
	}
	wrong, err := c.partial(ctx, q.wrong, known)
	if err != nil {
		return err
	}
	c.settle(one, wrong)
	return nil
}

// settle reads what a practice comes out as from what is left of the ways in which it is wrong.
func (c *court) settle(one *Judgement, wrong []residue) {
	reasons := map[string]bool{}
	for _, r := range wrong {
		if certain(r) {
			reasons[r.reason] = true
		}
	}
	switch {
	case len(reasons) > 0:
		one.Status, one.Reasons, one.Concerns = Wrong, keys(reasons), true
	case len(wrong) > 0:
		c.ask(one, wrong)
	default:
		one.Status = Right
	}
}

// evaluation is what the evaluator is given: what is known, and what is not.
type evaluation struct {
	input    ast.Value
	unknowns []*ast.Term
}

// partial runs a partial query and reads its residual queries. No residue: it can never hold.
func (c *court) partial(ctx context.Context, q rego.PreparedPartialQuery, e evaluation) ([]residue, error) {
	result, err := q.Partial(ctx, rego.EvalParsedInput(e.input), rego.EvalParsedUnknowns(e.unknowns))
	if err != nil {
		return nil, err
	}
	support := supportRules(result.Support)
	var residues []residue
	for _, query := range result.Queries {
		if r := c.residue(query, support); !r.never {
			residues = append(residues, r)
		}
	}
	return c.merged(residues), nil
}

// input gives what is known of what a practice reads, as its rule reads it. With bounded, the ranges of figures that are
// known as a range only are there too.
func (c *court) input(p *Practice, bounded bool) (ast.Value, error) {
	groups := map[string]map[string]any{"figure": {}, "range": {}}
	for _, path := range p.Reads {
		if name, ok := cutFigure(path); ok {
			r := c.sheet.Result(name)
			if r.Known {
				groups["figure"][name] = r.Best
			}
			if r.Known || bounded && r.Bounded {
				groups["range"][name] = map[string]any{"low": r.Low, "high": r.High}
			}
		} else if v, ok := c.job.Value(path); ok {
			f, _ := c.book.Facts.Fact(path)
			if groups[f.Group] == nil {
				groups[f.Group] = map[string]any{}
			}
			groups[f.Group][f.Key] = v
		}
	}
	return ast.InterfaceToValue(groups)
}
