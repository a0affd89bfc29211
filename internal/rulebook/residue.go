package rulebook

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/figure"
	"hearsay/internal/job"
)

// residue is one residual query: the conditions that must still hold for a practice to be wrong (or here).
type residue struct {
	reason  string
	exprs   []*ast.Expr
	support map[string][]*ast.Rule
	never   bool // a condition can no longer hold
}

// supportRules indexes the rules that partial evaluation set apart (negated helpers) by their full name.
func supportRules(modules []*ast.Module) map[string][]*ast.Rule {
	rules := map[string][]*ast.Rule{}
	for _, m := range modules {
		for _, r := range m.Rules {
			name := m.Package.Path.String() + "." + string(r.Head.Name)
			rules[name] = append(rules[name], r)
		}
	}
	return rules
}

// residue reads the binding of the reason out of a residual query, and drops the conditions that the known
// range of an unknown figure decides already.
func (c *court) residue(query ast.Body, support map[string][]*ast.Rule) residue {
	r := residue{support: support}
	for _, e := range query {
		if value, ok := reasonOf(e); ok {
			r.reason = value
			continue
		}
		switch c.decided(e) {
		case yes:
		case no:
			r.never = true
		default:
			r.exprs = append(r.exprs, e)
		}
	}
	return r
}

// reasonOf reads `reason = "…"` in either order.
func reasonOf(e *ast.Expr) (string, bool) {
	if !e.IsEquality() || e.Negated {
		return "", false
	}
	a, b := e.Operand(0).Value, e.Operand(1).Value
	if _, isVar := a.(ast.Var); !isVar {
		a, b = b, a
	}
	v, isVar := a.(ast.Var)
	text, isText := b.(ast.String)
	return string(text), isVar && isText && v == "reason"
}

type verdict int

const (
	open verdict = iota
	yes
	no
)

// decided judges a comparison of what is not known but bounded, a figure or a fact: where the whole of its range lies on one
// side of the number, or of the whole range of the other, the comparison is decided.
func (c *court) decided(e *ast.Expr) verdict {
	if e.Negated || !e.IsCall() || len(e.Operands()) != 2 {
		return open
	}
	if v, ok := c.decidedChoice(e); ok {
		return v
	}
	low, high, ok := c.bounds(e.Operand(0))
	least, most, ok2 := c.bounds(e.Operand(1))
	if !ok || !ok2 {
		return open
	}
	v := overlap(e.Operator().String(), low, high, least, most)
	if v == yes && (c.mayBeNone(c.termFact(e.Operand(0))) || c.mayBeNone(c.termFact(e.Operand(1)))) {
		return open // where there is no such value, nothing holds of it
	}
	return v
}

// decidedChoice judges a comparison of a choice with one value or with several.
func (c *court) decidedChoice(e *ast.Expr) (verdict, bool) {
	f, against := c.termFact(e.Operand(0)), e.Operand(1)
	if f == nil {
		f, against = c.termFact(e.Operand(1)), e.Operand(0)
	}
	if f == nil || c.stated(f.Path) {
		return open, false
	}
	left, ok := c.choices(f)
	if !ok {
		return open, false
	}
	var values []string
	add := func(t *ast.Term) {
		if s, isText := t.Value.(ast.String); isText {
			values = append(values, string(s))
		}
	}
	v := open
	switch op := e.Operator().String(); op {
	case "eq", "equal", "neq":
		if add(against); len(values) == 0 {
			return open, false
		}
		v = amongChoices(left, values)
		if op == "neq" {
			v = [...]verdict{open: open, yes: no, no: yes}[v]
		}
	case "internal.member_2":
		switch set := against.Value.(type) {
		case ast.Set:
			set.Foreach(add)
		case *ast.Array:
			set.Foreach(add)
		}
		v = amongChoices(left, values)
	default:
		return open, false
	}
	if v == yes && c.mayBeNone(f) {
		return open, true
	}
	return v, true
}

// termFact is the fact that a term names, or nil.
func (c *court) termFact(t *ast.Term) *job.Fact {
	if ref, ok := t.Value.(ast.Ref); ok {
		return c.factOf(ref)
	}
	return nil
}

// mayBeNone says that a fact may turn out to have no value in this job: it would say something that is not known yet.
func (c *court) mayBeNone(f *job.Fact) bool {
	if f == nil {
		return false
	}
	for _, i := range f.Implies {
		for _, then := range i.Then {
			if i.Stated && !c.stated(then.Fact.Path) {
				return true
			}
		}
	}
	return false
}

// overlap judges a comparison of one range with another.
func overlap(op string, low, high, least, most float64) verdict {
	switch op {
	case "gt":
		return side(low > most, high <= least)
	case "gte":
		return side(low >= most, high < least)
	case "lt":
		return side(high < least, low >= most)
	case "lte":
		return side(high <= least, low > most)
	}
	return open
}

func side(always, never bool) verdict {
	switch {
	case always:
		return yes
	case never:
		return no
	}
	return open
}

// bounds gives what a term can be: a number is itself, a bounded figure its range, an unknown quantity what is possible for it.
func (c *court) bounds(t *ast.Term) (low, high float64, ok bool) {
	switch v := t.Value.(type) {
	case ast.Number:
		f, ok := v.Float64()
		return f, f, ok
	case ast.Ref:
		words := refWords(v)
		if len(words) < 3 || words[0] != "input" {
			return 0, 0, false
		}
		if f := c.factOf(v); f != nil {
			return c.possible(f)
		}
		if words[1] != "figure" && words[1] != "range" {
			return 0, 0, false
		}
		r := c.sheet.Result(words[2])
		if words[1] == "figure" { // a rule that compares a figure compares its best value
			return r.BestLow, r.BestHigh, r.Bounded
		}
		return r.Low, r.High, r.Bounded
	}
	return 0, 0, false
}

// distinct drops every residue that holds only where another one holds too, so that nothing is asked that could not
// matter.
func (c *court) distinct(residues []residue) []residue {
	conditions := make([][]condition, len(residues))
	for i, r := range residues {
		for _, e := range r.exprs {
			conditions[i] = append(conditions[i], c.condition(e))
		}
	}
	var kept []residue
	for i, r := range residues {
		idle := false
		for k := range residues {
			if k != i && within(conditions[k], conditions[i]) && (k < i || !within(conditions[i], conditions[k])) {
				idle = true
			}
		}
		if !idle {
			kept = append(kept, r)
		}
	}
	return kept
}

// condition is an expression as others are held against it: by its text and, where it compares something with a number or
// with a figure known as a range, by what is compared, how, and with what.
type condition struct {
	text        string
	what, op    string
	least, most float64
}

func (c *court) condition(e *ast.Expr) condition {
	one := condition{text: withoutIndex(e)}
	if e.Negated || !e.IsCall() || len(e.Operands()) != 2 {
		return one
	}
	if _, isRef := e.Operand(0).Value.(ast.Ref); isRef {
		if least, most, ok := c.bounds(e.Operand(1)); ok {
			one.what, one.op, one.least, one.most = e.Operand(0).String(), e.Operator().String(), least, most
		}
	}
	return one
}

// implies says that b holds wherever a does: they are the same, or a asks for more of the same thing.
func (a condition) implies(b condition) bool {
	if a.text == b.text {
		return true
	}
	if a.what == "" || a.what != b.what || a.op != b.op {
		return false
	}
	switch a.op {
	case "gt", "gte":
		return a.least >= b.most
	case "lt", "lte":
		return a.most <= b.least
	}
	return false
}

// within says that each condition of a follows from one of b.
func within(a, b []condition) bool {
	return !slices.ContainsFunc(a, func(x condition) bool {
		return !slices.ContainsFunc(b, func(y condition) bool { return y.implies(x) })
	})
}

// withoutIndex writes an expression so that equal ones compare equal wherever they stand in their query.
func withoutIndex(e *ast.Expr) string {
	c := e.CopyWithoutTerms()
	c.Terms, c.Index = e.Terms, 0
	return c.String()
}

// explain puts a residue into words and lists the facts it hangs on.
func (c *court) explain(r residue) Open {
	o := Open{Reason: r.reason}
	facts := map[string]bool{}
	for _, e := range r.exprs {
		o.Conditions = append(o.Conditions, c.say(e, r.support))
		before, below := len(o.NoFigure), map[string]bool{}
		c.hangsOn(e, r.support, below, &o, map[string]bool{})
		if len(o.NoFigure) == before { // a condition on a figure that cannot be computed is settled by no fact
			maps.Copy(facts, below)
		}
	}
	o.Facts = keys(facts)
	return o
}

// hangsOn collects the facts below an expression: those it names, those that its figures lack, and those of the support
// rules it refers to.
func (c *court) hangsOn(x any, support map[string][]*ast.Rule, facts map[string]bool, o *Open, seen map[string]bool) {
	ast.WalkRefs(x, func(ref ast.Ref) bool {
		words := refWords(ref)
		switch {
		case len(words) >= 3 && words[0] == "input" && (words[1] == "figure" || words[1] == "range"):
			result := c.sheet.Result(words[2])
			if result.Problem != "" {
				o.NoFigure = append(o.NoFigure, fmt.Sprintf("the %s cannot be computed: %s", result.Figure.Title, result.Problem))
			}
			for _, f := range c.lacks(x, words) {
				facts[f] = true
			}
		case len(words) >= 3 && words[0] == "input":
			if path := factPath(words); !c.stated(path) {
				facts[path] = true
			}
		default:
			name := strings.TrimSuffix(ref.String(), " ")
			if rules, ok := support[name]; ok && !seen[name] {
				seen[name] = true
				for _, rule := range rules {
					c.hangsOn(rule.Body, support, facts, o, seen)
				}
			}
		}
		return false
	})
}

func (c *court) stated(path string) bool {
	_, ok := c.job.Value(path)
	return ok
}

// lacks lists the facts that a figure still lacks to settle an expression: where it is compared with a number, only those
// that could bring it to the other side.
func (c *court) lacks(x any, words []string) []string {
	name, lacks := words[2], c.sheet.Lacks
	if words[1] == "figure" { // a rule that compares a figure compares its best value
		lacks = c.sheet.LacksForBest
	}
	e, ok := x.(*ast.Expr)
	if !ok || !e.IsCall() || len(e.Operands()) != 2 {
		return lacks(name)
	}
	limit, right := e.Operand(1).Value.(ast.Number)
	left := false
	if !right {
		limit, left = e.Operand(0).Value.(ast.Number)
	}
	at, isFloat := limit.Float64()
	op := e.Operator().String()
	if !left && !right || !isFloat || op != "gt" && op != "gte" && op != "lt" && op != "lte" {
		return lacks(name)
	}
	strict := (op == "gt" || op == "lte") == right
	return c.sheet.LacksTo(name, func(v figure.Value) bool {
		value := v.Best
		if words[1] == "range" && len(words) > 3 {
			value = map[string]float64{"low": v.Low, "high": v.High}[words[3]]
		}
		return value > at || !strict && value == at
	})
}
