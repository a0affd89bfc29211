package rulebook

import (
	"maps"
	"slices"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
)

// What an answer that stays open hangs on: the conditions that are left, as partial evaluation gives them.

// way is one way an open clause can hold: conditions that must all do. An empty one holds as it is.
type way []*ast.Expr

func (w way) and(e *ast.Expr) way { return append(w[:len(w):len(w)], e) }

// mostOpen is in how many ways an answer may be open that is worked out here; beyond that it is left to the evaluator, whose time
// is limited.
const mostOpen = 2000

// product joins each way of one clause with each way of another.
func (c *court) product(a, b []way) []way {
	if len(a)*len(b) > mostOpen {
		c.tooMany = true
		return nil
	}
	var all []way
	for _, x := range a {
		for _, y := range b {
			all = append(all, x.join(y))
		}
	}
	return all
}

func (w way) join(other way) way { return append(w[:len(w):len(w)], other...) }

// mostFailures is in how many ways none of several may hold, so that each is said; where there are more they are said together.
const mostFailures = 16

// noneOf gives the ways in which none of some ways holds: of each, one condition that does not.
func (c *court) noneOf(ways []way) []way {
	failures := 1
	for _, w := range ways {
		failures *= len(w)
	}
	if failures > mostFailures {
		return []way{{complement(c.setApart(ways))}}
	}
	none := []way{nil}
	for _, w := range ways {
		var fail []way
		for _, e := range w {
			fail = append(fail, way{complement(e)})
		}
		none = c.product(none, fail)
	}
	return none
}

// setApart makes one condition of several ways, as partial evaluation does: the rules of a name.
func (c *court) setApart(ways []way) *ast.Expr {
	name := ast.Ref{ast.DefaultRootDocument, ast.StringTerm("apart"), ast.StringTerm(strconv.Itoa(len(c.apart)))}
	if c.apart == nil {
		c.apart = map[string][]*ast.Rule{}
	}
	for _, w := range ways {
		c.apart[name.String()] = append(c.apart[name.String()], &ast.Rule{Body: ast.Body(w)})
	}
	return ast.NewExpr(ast.NewTerm(name))
}

func complement(e *ast.Expr) *ast.Expr {
	not := e.CopyWithoutTerms()
	not.Terms, not.Negated = e.Terms, !e.Negated
	return not
}

// option is one value that a term can have, and the conditions on which it has it.
type option struct {
	when    way
	value   value
	written *ast.Term
}

// open lists the values a term can have in this job.
func (t term) open(c *court) []option {
	v := t.value(c)
	switch {
	case v.kind == absent:
		return nil
	case v.kind != unknown:
		return []option{{value: v, written: v.written()}}
	case t.options != nil:
		return t.options(c)
	}
	return []option{{value: v, written: t.written}}
}

// options lists the values that one rule of a name can give.
func (v plainValue) options(c *court) []option {
	var conditions []way
	switch v.when.truth(c) {
	case fails:
		return nil
	case holds:
		conditions = []way{nil}
	default:
		conditions = v.when.ways(c)
	}
	var options []option
	for _, w := range conditions {
		for _, o := range v.value.open(c) {
			options = append(options, option{when: w.join(o.when), value: o.value, written: o.written})
		}
	}
	return options
}

// entries lists the entries of a table that its keys can lead to.
func entries(c *court, at any, keys []term) []option {
	if len(keys) == 0 {
		v := valueOf(at)
		return []option{{value: v, written: v.written()}}
	}
	table, _ := at.(map[string]any)
	k := keys[0].value(c)
	var options []option
	for _, name := range slices.Sorted(maps.Keys(table)) {
		switch k.kind {
		case unknown:
			if k.left != nil && !slices.Contains(k.left, name) {
				continue
			}
			is := way{ast.Equal.Expr(keys[0].written, ast.StringTerm(name))}
			for _, o := range entries(c, table[name], keys[1:]) {
				options = append(options, option{when: is.join(o.when), value: o.value, written: o.written})
			}
		case text:
			if k.text == name {
				options = append(options, entries(c, table[name], keys[1:])...)
			}
		}
	}
	return options
}

func (v value) written() *ast.Term {
	switch v.kind {
	case number:
		return ast.FloatNumberTerm(v.number)
	case text:
		return ast.StringTerm(v.text)
	case flag:
		return ast.BooleanTerm(v.flag)
	}
	return nil
}

func writtenOf(at any) *ast.Term { return valueOf(at).written() }
