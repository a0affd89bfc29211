package rulebook

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// A clause says whether it holds for a court, and where it is unsettled, in which ways it still can. What is left open of them
// plain_open.go takes apart.
type clause struct {
	truth func(*court) truth
	ways  func(*court) []way // of a clause that is unsettled
}

type truth int8

const (
	unsettled truth = iota
	holds
	fails
)

func truthOf(b bool) truth {
	if b {
		return holds
	}
	return fails
}

// when is a clause that a term decides by its value alone.
func when(t term, decide func(value) truth, open func(*court, option) *ast.Expr) clause {
	return clause{
		truth: func(c *court) truth { return decide(t.value(c)) },
		ways: func(c *court) []way {
			var ways []way
			for _, o := range t.open(c) {
				switch decide(o.value) {
				case holds:
					ways = append(ways, o.when)
				case unsettled:
					ways = append(ways, o.when.and(open(c, o)))
				}
			}
			return ways
		},
	}
}

func truthy(t term) clause {
	return when(t, func(v value) truth {
		switch v.kind {
		case unknown:
			return unsettled
		case absent:
			return fails
		case flag:
			return truthOf(v.flag)
		}
		return holds
	}, func(_ *court, o option) *ast.Expr { return ast.NewExpr(o.written) })
}

func defined(t term) clause {
	return when(t, func(v value) truth {
		if v.kind == unknown {
			return unsettled
		}
		return truthOf(v.kind != absent)
	}, func(_ *court, o option) *ast.Expr { return ast.NewExpr(o.written) })
}

func negated(one clause) clause {
	return clause{
		truth: func(c *court) truth {
			switch one.truth(c) {
			case holds:
				return fails
			case fails:
				return holds
			}
			return unsettled
		},
		ways: func(c *court) []way { return c.noneOf(one.ways(c)) },
	}
}

// allOf holds where every clause does. One that fails settles it, whatever is not known of the others.
func allOf(all []clause) clause {
	return clause{
		truth: func(c *court) truth {
			result := holds
			for _, one := range all {
				switch one.truth(c) {
				case fails:
					return fails
				case unsettled:
					result = unsettled
				}
			}
			return result
		},
		ways: func(c *court) []way {
			ways := []way{nil}
			for _, one := range all {
				if one.truth(c) == unsettled {
					ways = c.product(ways, one.ways(c))
				}
			}
			return ways
		},
	}
}

func among(t term, items []value, written *ast.Term) clause {
	return when(t, func(v value) truth {
		if v.kind == unknown {
			return v.among(items)
		}
		return truthOf(slices.ContainsFunc(items, v.same))
	}, func(_ *court, o option) *ast.Expr { return ast.Member.Expr(o.written, written) })
}

func compared(op *ast.Term, a, b term) clause {
	name := op.String()
	return clause{
		truth: func(c *court) truth {
			x := a.value(c)
			if x.kind == absent {
				return fails
			}
			return compare(name, x, b.value(c))
		},
		ways: func(c *court) []way {
			var ways []way
			for _, x := range a.open(c) {
				for _, y := range b.open(c) {
					together := x.when.join(y.when)
					switch compare(name, x.value, y.value) {
					case holds:
						ways = append(ways, together)
					case unsettled:
						ways = append(ways, together.and(ast.NewExpr([]*ast.Term{op, x.written, y.written})))
					}
				}
			}
			return ways
		},
	}
}
