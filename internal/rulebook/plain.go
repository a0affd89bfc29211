package rulebook

import (
	"github.com/open-policy-agent/opa/v1/ast"
)

// plain is a practice whose rule has the form that a rule may take: comparisons of facts, figures and limits, joined by
// "and" and "or". Such a rule is judged here, without the evaluator: the same answer some fifty times sooner, only the figures on
// which it hangs are computed, and what stays open keeps the conditions that partial evaluation would leave. Everything
// else is Open Policy Agent's, whose partial evaluation says what is right: a test holds the two to each other, word for word.
type plain struct {
	here    clause
	reasons []plainReason
	numbers map[string][]plainNumber
	mends   map[string][]plainValue
}

type plainReason struct {
	text string
	when clause
}

type plainNumber struct {
	when  clause
	sides []plainSide
}

type plainSide struct {
	name string
	read term
}

type plainValue struct {
	when  clause
	value term
	items []term // of a list, which has no value of its own
}

// plains reads every practice that is plain; the others are left out.
func (b *Book) plains() map[string]*plain {
	r := &plainReader{limits: b.Limits.Data(), rules: b.rulesByName(), read: map[string]*term{}}
	plains := map[string]*plain{}
	for _, p := range b.practices {
		if one, ok := r.practice(p); ok {
			plains[p.ID] = one
		}
	}
	return plains
}

// rulesByName gathers the rules of every module by package and name.
func (b *Book) rulesByName() map[string][]*ast.Rule {
	rules := map[string][]*ast.Rule{}
	for _, m := range b.modules {
		for _, rule := range m.Rules {
			name := ruleName(m.Package.Path, string(rule.Head.Ref()[0].Value.(ast.Var)))
			rules[name] = append(rules[name], rule)
		}
	}
	return rules
}

func ruleName(pkg ast.Ref, name string) string { return pkg.String() + "." + name }

func (r *plainReader) practice(p *Practice) (*plain, bool) {
	one := &plain{numbers: map[string][]plainNumber{}, mends: map[string][]plainValue{}}
	scope := &plainScope{pkg: p.module.Package.Path}
	here, ok := r.named(scope, "here")
	if !ok {
		return nil, false
	}
	one.here = truthy(here)
	for _, rule := range p.module.Rules {
		head := rule.Head.Ref()
		switch name := string(head[0].Value.(ast.Var)); {
		case rule.Else != nil || rule.Default || len(rule.Head.Args) > 0:
			return nil, false
		case name == "wrong":
			text, isText := rule.Head.Key, false
			if text != nil {
				_, isText = text.Value.(ast.String)
			}
			when, ok := r.body(scope.inner(), rule.Body)
			if !isText || !ok {
				return nil, false
			}
			one.reasons = append(one.reasons, plainReason{string(text.Value.(ast.String)), when})
		case len(head) == 2:
			if !r.entry(one, scope.inner(), name, rule) {
				return nil, false
			}
		}
	}
	return one, true
}

// entry reads one line of the number or the mend document.
func (r *plainReader) entry(one *plain, scope *plainScope, document string, rule *ast.Rule) bool {
	key, isText := rule.Head.Ref()[1].Value.(ast.String)
	when, ok := r.body(scope, rule.Body)
	if !isText || !ok {
		return false
	}
	switch value := rule.Head.Value.Value.(type) {
	case ast.Object:
		var sides []plainSide
		value.Foreach(func(k, v *ast.Term) {
			side, isText := k.Value.(ast.String)
			read, isPlain := r.term(scope, v)
			ok = ok && isText && isPlain
			sides = append(sides, plainSide{string(side), read})
		})
		one.numbers[string(key)] = append(one.numbers[string(key)], plainNumber{when, sides})
		return ok && document == "number"
	case *ast.Array:
		items := []term{}
		value.Foreach(func(v *ast.Term) {
			read, isPlain := r.term(scope, v)
			ok = ok && isPlain
			items = append(items, read)
		})
		one.mends[string(key)] = append(one.mends[string(key)], plainValue{when: when, items: items})
	default:
		read, isPlain := r.term(scope, rule.Head.Value)
		ok = ok && isPlain
		one.mends[string(key)] = append(one.mends[string(key)], plainValue{when: when, value: read})
	}
	return ok && document == "mend"
}
