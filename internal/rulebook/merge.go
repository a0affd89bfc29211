package rulebook

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/job"
)

// A limit looked up by a choice that is not stated gives a residue for each value of the choice. Where these differ in nothing
// but the value, and it can have no other, the choice does not matter and is not asked for.

// merged joins the residues that differ in the value of a choice alone and name every value that it can have.
func (c *court) merged(residues []residue) []residue {
	for {
		joined, ok := c.joinOnce(residues)
		if !ok {
			return residues
		}
		residues = joined
	}
}

type mergeGroup struct {
	fact   *job.Fact
	values []string
	of     []int // residues, by their place
	rest   []*ast.Expr
}

func (c *court) joinOnce(residues []residue) ([]residue, bool) {
	groups := map[string]*mergeGroup{}
	for i, r := range residues {
		for k, e := range r.exprs {
			f, value, ok := c.choiceIs(e)
			if !ok {
				continue
			}
			rest := slices.Delete(slices.Clone(r.exprs), k, k+1)
			key := groupKey(r.reason, f, rest)
			if groups[key] == nil {
				groups[key] = &mergeGroup{fact: f, rest: rest}
			}
			g := groups[key]
			g.values, g.of = append(g.values, value), append(g.of, i)
			left, _ := c.choices(f)
			if len(g.values) < len(left) || amongChoices(left, g.values) != yes || c.mayBeNone(f) {
				continue
			}
			kept := residues[:0:0]
			for n, other := range residues {
				if !slices.Contains(g.of, n) {
					kept = append(kept, other)
				}
			}
			return append(kept, residue{reason: r.reason, exprs: g.rest, support: r.support}), true
		}
	}
	return nil, false
}

func groupKey(reason string, f *job.Fact, rest []*ast.Expr) string {
	texts := make([]string, len(rest))
	for i, e := range rest {
		texts[i] = withoutIndex(e)
	}
	slices.Sort(texts)
	return reason + "\n" + f.Path + "\n" + strings.Join(texts, "\n")
}

// choiceIs reads `fact = "value"` in either order.
func (c *court) choiceIs(e *ast.Expr) (*job.Fact, string, bool) {
	if e.Negated || !e.IsEquality() && !e.IsCall() || e.IsCall() && len(e.Operands()) != 2 {
		return nil, "", false
	}
	if op := e.Operator().String(); op != "eq" && op != "equal" {
		return nil, "", false
	}
	f, value := c.termFact(e.Operand(0)), e.Operand(1)
	if f == nil {
		f, value = c.termFact(e.Operand(1)), e.Operand(0)
	}
	text, isText := value.Value.(ast.String)
	if f == nil || f.Kind != job.KindChoice || !isText || c.stated(f.Path) {
		return nil, "", false
	}
	return f, string(text), true
}
