package rulebook

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// A term gives its value for a court. What is left open of it plain_open.go takes apart.
type term struct {
	value   func(*court) value
	options func(*court) []option // nil where there is one, which is the term itself
	written *ast.Term             // as the rule has it; nil where it has options
}

func constant(v value, written *ast.Term) term {
	return term{value: func(*court) value { return v }, written: written}
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
