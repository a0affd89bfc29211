package rulebook

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// A term gives its value for a court; a clause says whether it holds there. What is left open of them plain_open.go takes apart.
type term struct {
	value   func(*court) value
	options func(*court) []option // nil where there is one, which is the term itself
	written *ast.Term             // as the rule has it; nil where it has options
}

type clause struct {
	truth func(*court) truth
	ways  func(*court) []way // of a clause that is unsettled
}

type kind int8

const (
	absent  kind = iota // undefined: what hangs on it does not hold
	unknown             // not stated, not computed: what hangs on it is left open
	number
	text
	flag
	other // a list or a table: not for comparing
)

type value struct {
	kind    kind
	number  float64
	text    string
	flag    bool
	bounded bool     // of what is unknown: it lies from low to high
	perhaps bool     // of what is unknown: it may turn out to be nothing at all
	left    []string // of a choice that is unknown: what it can be
	low     float64
	high    float64
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

func constant(v value, written *ast.Term) term {
	return term{value: func(*court) value { return v }, written: written}
}

func valueOf(v any) value {
	if f, ok := asFloat(v); ok {
		return value{kind: number, number: f}
	}
	switch v := v.(type) {
	case string:
		return value{kind: text, text: v}
	case bool:
		return value{kind: flag, flag: v}
	case nil:
		return value{}
	}
	return value{kind: other}
}

// missing is what a fact or figure that is not known counts as: unknown while judging; nothing at all for the numbers and
// mends, which are made of what is known.
func (c *court) missing() value {
	if c.closed {
		return value{kind: absent}
	}
	return value{kind: unknown}
}

func factTerm(path string, written *ast.Term) term {
	return term{written: written, value: func(c *court) value {
		if v, ok := c.job.Value(path); ok {
			return valueOf(v)
		}
		f, ok := c.book.Facts.Fact(path)
		if !ok || c.ruledOut(f) {
			return value{kind: absent}
		}
		v := c.missing()
		if left, ok := c.choices(f); ok && v.kind == unknown {
			return value{kind: unknown, left: left, perhaps: c.mayBeNone(f)}
		}
		low, high, bounded := c.possible(f)
		if v.kind == absent || !bounded {
			return v
		}
		return value{kind: unknown, bounded: true, perhaps: c.mayBeNone(f), low: low, high: high}
	}}
}

func figureTerm(name string, written *ast.Term) term {
	return term{written: written, value: func(c *court) value {
		r := c.sheet.Result(name)
		if r.Known {
			return value{kind: number, number: r.Best}
		}
		v := c.missing()
		v.bounded, v.low, v.high = r.Bounded, r.BestLow, r.BestHigh // a rule that compares a figure compares its best value
		return v
	}}
}

func rangeTerm(name string, low bool, written *ast.Term) term {
	return term{written: written, value: func(c *court) value {
		r := c.sheet.Result(name)
		switch {
		case !r.Known && (!c.closed || !r.Bounded):
			v := c.missing()
			v.bounded, v.low, v.high = r.Bounded, r.Low, r.High
			return v
		case low:
			return value{kind: number, number: r.Low}
		}
		return value{kind: number, number: r.High}
	}}
}

func tableTerm(at any, keys []term) term {
	if len(keys) == 0 {
		return constant(valueOf(at), writtenOf(at))
	}
	return term{
		value: func(c *court) value {
			at := at
			for _, key := range keys {
				k := key.value(c)
				table, _ := at.(map[string]any)
				if k.kind == unknown {
					if k.left != nil && !slices.ContainsFunc(k.left, func(one string) bool { return table[one] != nil }) {
						return value{kind: absent}
					}
					return value{kind: unknown}
				}
				if at = table[k.text]; at == nil || k.kind != text {
					return value{kind: absent}
				}
			}
			return valueOf(at)
		},
		options: func(c *court) []option { return entries(c, at, keys) },
	}
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

// anyOf is the value of the first way that holds. While a way before it is open so is the value, unless all say yes alike.
func anyOf(ways []plainValue) term {
	return term{
		value: func(c *court) value {
			open := false
			for _, way := range ways {
				switch way.when.truth(c) {
				case holds:
					switch v := way.value.value(c); {
					case v.kind == absent:
					case open && v.kind != flag:
						return value{kind: unknown}
					default:
						return v
					}
				case unsettled:
					open = true
				}
			}
			if open {
				return value{kind: unknown}
			}
			return value{kind: absent}
		},
		options: func(c *court) []option {
			var options []option
			for _, one := range ways {
				options = append(options, one.options(c)...)
			}
			return options
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

func compare(op string, x, y value) truth {
	switch {
	case x.kind == absent || y.kind == absent:
		return fails
	case x.kind == unknown && y.kind == text && (op == "equal" || op == "neq"):
		return x.is(op, y)
	case x.kind == unknown || y.kind == unknown:
		return x.against(op, y)
	case x.kind != y.kind || x.kind == other:
		return unsettled
	case op == "equal":
		return truthOf(x.same(y))
	case op == "neq":
		return truthOf(!x.same(y))
	case x.kind != number:
		return unsettled
	case op == "gt":
		return truthOf(x.number > y.number)
	case op == "gte":
		return truthOf(x.number >= y.number)
	case op == "lt":
		return truthOf(x.number < y.number)
	}
	return truthOf(x.number <= y.number)
}

func (v value) same(other value) bool {
	return v.kind == other.kind && v.number == other.number && v.text == other.text && v.flag == other.flag
}

// is compares a choice that is unknown with one value.
func (v value) is(op string, other value) truth {
	t := v.among([]value{other})
	if op == "equal" || t == unsettled {
		return t
	}
	if t == fails && !v.perhaps {
		return holds
	}
	if t == holds {
		return fails
	}
	return unsettled
}

// among says whether a choice that is unknown is one of some values.
func (v value) among(items []value) truth {
	if v.left == nil {
		return unsettled
	}
	var values []string
	for _, item := range items {
		values = append(values, item.text)
	}
	switch amongChoices(v.left, values) {
	case yes:
		if !v.perhaps {
			return holds
		}
	case no:
		return fails
	}
	return unsettled
}

// against compares what is not known but bounded: where the whole of its range lies on one side it is settled.
func (v value) against(op string, other value) truth {
	low, high, ok := v.bounds()
	least, most, ok2 := other.bounds()
	if !ok || !ok2 {
		return unsettled
	}
	t := [...]truth{open: unsettled, yes: holds, no: fails}[overlap(op, low, high, least, most)]
	if t == holds && (v.perhaps || other.perhaps) {
		return unsettled
	}
	return t
}

func (v value) bounds() (low, high float64, ok bool) {
	if v.kind == number {
		return v.number, v.number, true
	}
	return v.low, v.high, v.bounded
}
