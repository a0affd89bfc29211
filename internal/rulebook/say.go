package rulebook

import (
	"fmt"
	"sort"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/figure"
	"hearsay/internal/job"
)

// say puts one residual expression into plain words: `input.weather.low < 32` reads "the overnight low is below {32 F}".
func (c *court) say(e *ast.Expr, support map[string][]*ast.Rule) string {
	if e.Negated {
		positive := *e
		positive.Negated = false
		return c.sayNot(&positive, support)
	}
	if e.IsCall() {
		return c.sayCall(e)
	}
	if t, ok := e.Terms.(*ast.Term); ok {
		return c.sayTrue(t, support)
	}
	return e.String()
}

func (c *court) sayNot(e *ast.Expr, support map[string][]*ast.Rule) string {
	text := c.say(e, support)
	if strings.HasPrefix(text, "not so: ") {
		return strings.TrimPrefix(text, "not so: ")
	}
	return "not so: " + text
}

func (c *court) sayTrue(t *ast.Term, support map[string][]*ast.Rule) string {
	ref, ok := t.Value.(ast.Ref)
	if !ok {
		return t.String()
	}
	if rules, ok := support[ref.String()]; ok {
		var ways []string
		for _, rule := range rules {
			var parts []string
			for _, e := range rule.Body {
				parts = append(parts, c.say(e, support))
			}
			ways = append(ways, strings.Join(parts, " and "))
		}
		return strings.Join(ways, ", or ")
	}
	return c.name(ref)
}

var comparisons = map[string]string{
	"gt": "is above", "gte": "is at least", "lt": "is below", "lte": "is at most", "neq": "is not", "eq": "is", "equal": "is",
}

// mirrored is what a comparison becomes when its sides change places.
var mirrored = map[string]string{"gt": "lt", "gte": "lte", "lt": "gt", "lte": "gte"}

func (c *court) sayCall(e *ast.Expr) string {
	op := e.Operator().String()
	if op == "internal.member_2" && len(e.Operands()) == 2 {
		return c.sayMember(e.Operand(0), e.Operand(1))
	}
	words, ok := comparisons[op]
	if !ok || len(e.Operands()) != 2 {
		return e.String()
	}
	a, b := e.Operand(0), e.Operand(1)
	if _, isRef := a.Value.(ast.Ref); !isRef {
		a, b = b, a
		if m, ok := mirrored[op]; ok {
			words = comparisons[m]
		}
	}
	ref, isRef := a.Value.(ast.Ref)
	if !isRef {
		return e.String()
	}
	f := c.factOf(ref)
	if f != nil && f.Kind == job.KindFlag {
		return sayFlag(f, words, b)
	}
	return fmt.Sprintf("the %s %s %s", c.name(ref), words, c.value(ref, b))
}

func sayFlag(f *job.Fact, words string, value *ast.Term) string {
	yes := value.Value.Compare(ast.Boolean(true)) == 0
	if yes == (words == "is") {
		return f.Name
	}
	return "not so: " + f.Name
}

func (c *court) sayMember(item, set *ast.Term) string {
	ref, ok := item.Value.(ast.Ref)
	if !ok {
		return item.String() + " is one of " + set.String()
	}
	var values []string
	add := func(t *ast.Term) { values = append(values, c.value(ref, t)) }
	switch s := set.Value.(type) {
	case ast.Set:
		s.Foreach(add)
	case *ast.Array:
		s.Foreach(add)
	}
	sort.Strings(values)
	return fmt.Sprintf("the %s is %s", c.name(ref), orList(values))
}

func orList(values []string) string {
	if len(values) < 2 {
		return strings.Join(values, "")
	}
	return strings.Join(values[:len(values)-1], ", ") + " or " + values[len(values)-1]
}

// name gives the plain name of a fact or figure that a reference leads to.
func (c *court) name(ref ast.Ref) string {
	if f := c.factOf(ref); f != nil {
		return f.Name
	}
	words := refWords(ref)
	if f := c.figureOf(ref); f != nil {
		switch {
		case words[1] == "range" && len(words) > 3 && words[3] == "low":
			return "least " + f.Title
		case words[1] == "range":
			return "largest " + f.Title
		}
		return f.Title
	}
	if len(words) >= 4 && words[1] == "limit" {
		if l, ok := c.book.Limits.Find(strings.Join(words[1:4], ".")); ok {
			return l.What
		}
	}
	return ref.String()
}

func (c *court) factOf(ref ast.Ref) *job.Fact {
	words := refWords(ref)
	if len(words) < 3 || words[0] != "input" {
		return nil
	}
	f, _ := c.book.Facts.Fact(factPath(words))
	return f
}

func (c *court) figureOf(ref ast.Ref) *figure.Figure {
	words := refWords(ref)
	if len(words) < 3 || words[0] != "input" || words[1] != "figure" && words[1] != "range" {
		return nil
	}
	f, _ := c.book.Figures.Find(words[2])
	return f
}

// value prints what a fact or figure is compared with, in its unit.
func (c *court) value(ref ast.Ref, t *ast.Term) string {
	unit := ""
	if f := c.factOf(ref); f != nil {
		if s, ok := t.Value.(ast.String); ok {
			if choice, ok := f.Choice(string(s)); ok {
				return choice.Name
			}
		}
		unit = f.Unit
	} else if f := c.figureOf(ref); f != nil {
		unit = f.Unit
	}
	switch v := t.Value.(type) {
	case ast.Number:
		n, _ := v.Float64()
		return figure.Q(n, unit).String()
	case ast.Ref:
		return "the " + c.name(v)
	case ast.String:
		return string(v)
	}
	return t.String()
}
