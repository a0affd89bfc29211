package rulebook

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// plainReader turns the conditions and terms of rules into functions of a court. It reads the form that the package
// comment of a practice describes, and refuses any other.
type plainReader struct {
	limits map[string]any
	rules  map[string][]*ast.Rule // by package and name
	read   map[string]*term       // rules read so far; nil while one is being read
}

// plainScope is where a name is looked up: the variables of a body, then the rules of its package.
type plainScope struct {
	pkg  ast.Ref
	vars map[ast.Var]term
}

func (s *plainScope) inner() *plainScope { return &plainScope{pkg: s.pkg, vars: map[ast.Var]term{}} }

// named reads the rules of one name: their value is that of any whose body holds.
func (r *plainReader) named(scope *plainScope, name string) (term, bool) {
	full := ruleName(scope.pkg, name)
	if t, ok := r.read[full]; ok {
		if t == nil {
			return term{}, false
		}
		return *t, true
	}
	r.read[full] = nil
	var ways []plainValue
	for _, rule := range r.rules[full] {
		if rule.Head.Key != nil || rule.Head.Value == nil || rule.Else != nil || rule.Default || len(rule.Head.Args) > 0 || len(rule.Head.Ref()) != 1 {
			return term{}, false
		}
		inner := scope.inner()
		when, ok := r.body(inner, rule.Body)
		if !ok {
			return term{}, false
		}
		value, ok := r.term(inner, rule.Head.Value)
		if !ok {
			return term{}, false
		}
		ways = append(ways, plainValue{when: when, value: value})
	}
	if len(ways) == 0 {
		return term{}, false
	}
	t := anyOf(ways)
	r.read[full] = &t
	return t, true
}

// body reads conditions that must all hold.
func (r *plainReader) body(scope *plainScope, body ast.Body) (clause, bool) {
	var all []clause
	for _, e := range body {
		one, ok := r.expr(scope, e)
		if !ok {
			return clause{}, false
		}
		all = append(all, one)
	}
	return allOf(all), true
}

func (r *plainReader) expr(scope *plainScope, e *ast.Expr) (clause, bool) {
	if len(e.With) > 0 {
		return clause{}, false
	}
	var one clause
	switch terms := e.Terms.(type) {
	case *ast.Term:
		if b, isFlag := terms.Value.(ast.Boolean); isFlag && bool(b) && !e.Negated {
			return allOf(nil), true
		}
		t, ok := r.term(scope, terms)
		if !ok {
			return clause{}, false
		}
		one = truthy(t)
	case []*ast.Term:
		var ok bool
		if one, ok = r.call(scope, terms); !ok {
			return clause{}, false
		}
	default:
		return clause{}, false
	}
	if e.Negated && e.IsCall() && e.Operator().String() != "equal" { // the evaluator reads both sides first: they must be there
		return allOf([]clause{sidesDefined(r, scope, e), negated(one)}), true
	}
	if e.Negated {
		return negated(one), true
	}
	return one, true
}

func sidesDefined(r *plainReader, scope *plainScope, e *ast.Expr) clause {
	var all []clause
	for _, side := range e.Operands() {
		if t, ok := r.term(scope, side); ok {
			all = append(all, defined(t))
		}
	}
	return allOf(all)
}

func (r *plainReader) call(scope *plainScope, terms []*ast.Term) (clause, bool) {
	if len(terms) != 3 {
		return clause{}, false
	}
	op := terms[0].String()
	switch op {
	case "assign":
		name, isVar := terms[1].Value.(ast.Var)
		t, ok := r.term(scope, terms[2])
		if !isVar || !ok {
			return clause{}, false
		}
		scope.vars[name] = t
		return defined(t), true
	case "internal.member_2":
		t, ok := r.term(scope, terms[1])
		set, isSet := terms[2].Value.(ast.Set)
		if !ok || !isSet || !set.IsGround() {
			return clause{}, false
		}
		var items []value
		set.Foreach(func(item *ast.Term) {
			if read, isPlain := r.term(scope, item); isPlain {
				items = append(items, read.value(nil))
			} else {
				ok = false
			}
		})
		return among(t, items, terms[2]), ok
	}
	a, ok := r.term(scope, terms[1])
	b, ok2 := r.term(scope, terms[2])
	if !ok || !ok2 || !slices.Contains([]string{"equal", "neq", "gt", "gte", "lt", "lte"}, op) {
		return clause{}, false
	}
	return compared(terms[0], a, b), true
}

func (r *plainReader) term(scope *plainScope, t *ast.Term) (term, bool) {
	switch v := t.Value.(type) {
	case ast.Boolean:
		return constant(value{kind: flag, flag: bool(v)}, t), true
	case ast.String:
		return constant(value{kind: text, text: string(v)}, t), true
	case ast.Number:
		f, ok := v.Float64()
		return constant(value{kind: number, number: f}, t), ok
	case ast.Var:
		if local, ok := scope.vars[v]; ok {
			return local, true
		}
		return r.named(scope, string(v))
	case ast.Ref:
		return r.ref(scope, t, v)
	}
	return term{}, false
}

func (r *plainReader) ref(scope *plainScope, written *ast.Term, ref ast.Ref) (term, bool) {
	words := refWords(ref)
	whole := len(words) == len(ref)
	switch {
	case whole && len(words) == 3 && words[0] == "input" && words[1] == "figure":
		return figureTerm(words[2], written), true
	case whole && len(words) == 4 && words[0] == "input" && words[1] == "range" && (words[3] == "low" || words[3] == "high"):
		return rangeTerm(words[2], words[3] == "low", written), true
	case whole && len(words) == 3 && words[0] == "input" && words[1] != "range":
		return factTerm(words[1]+"."+words[2], written), true
	case whole && len(words) == 3 && words[0] == "data" && words[1] == "trade":
		return r.named(&plainScope{pkg: ref[:2]}, words[2])
	case len(words) >= 3 && words[0] == "data" && words[1] == "limit":
		return r.limit(scope, ref, words)
	}
	return term{}, false
}

// limit reads a limit, of which the keys of a table may be facts.
func (r *plainReader) limit(scope *plainScope, ref ast.Ref, words []string) (term, bool) {
	var at any = r.limits
	for _, w := range words[2:] {
		table, _ := at.(map[string]any)
		at = table[w]
	}
	var keys []term
	for _, k := range ref[len(words):] {
		key, ok := r.term(scope, k)
		if !ok {
			return term{}, false
		}
		keys = append(keys, key)
	}
	return tableTerm(at, keys), true
}
