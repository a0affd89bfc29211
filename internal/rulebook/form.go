package rulebook

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"hearsay/internal/document"
)

// The form of a rule: it only compares. Partial evaluation is sound for this form and may mistake others, no number in it
// lacks a source, and since it neither calls nor walks through anything, judging it takes a time that can be told beforehand.

// comparing are what a rule may do with two things.
var comparing = []string{"eq", "equal", "neq", "gt", "gte", "lt", "lte", "internal.member_2"}

// mostWays is how many ways there may be for one rule to hold, every condition it refers to taken apart.
const mostWays = 500

// deepestBracket is how deep brackets may be nested in a rule file.
const deepestBracket = 12

// formError is where a rule breaks the form, and how to mend it.
func formError(at *ast.Location, format string, args ...any) error {
	return fmt.Errorf("%s:%d: %s", at.File, at.Row, fmt.Sprintf(format, args...))
}

// checkText holds the text of a rule file to its length and nesting, before it is parsed.
func checkText(name string, text []byte) error {
	if len(text) > mostRule {
		return fmt.Errorf("%s is too large: a rule file may have %d KB; one practice stands in each", name, mostRule>>10)
	}
	depth, line, quote := 0, 1, byte(0)
	for i := 0; i < len(text); i++ {
		c := text[i]
		switch {
		case c == '\n':
			line++
			if quote != '`' {
				quote = 0
			}
		case quote != 0:
			if c == '\\' && quote == '"' {
				i++
			} else if c == quote {
				quote = 0
			}
		case c == '"' || c == '`':
			quote = c
		case c == '#':
			for i+1 < len(text) && text[i+1] != '\n' {
				i++
			}
		case strings.IndexByte("([{", c) >= 0:
			depth++
		case strings.IndexByte(")]}", c) >= 0:
			depth--
		}
		if depth > deepestBracket {
			return fmt.Errorf("%s:%d: brackets are nested too deep: at most %d", name, line, deepestBracket)
		}
	}
	return nil
}

// form checks the modules of one package.
type form struct {
	rules map[string][]*ast.Rule // by the name that conditions refer to
	given map[string]bool        // names given in the rule at hand: most := data.limit.…
}

// checkForms holds modules to the form, with the line and the remedy where one breaks it.
func checkForms(modules map[string]*ast.Module) error {
	packages := map[string][]*ast.Module{}
	for _, name := range slices.Sorted(maps.Keys(modules)) {
		m := modules[name]
		packages[m.Package.Path.String()] = append(packages[m.Package.Path.String()], m)
	}
	for _, name := range slices.Sorted(maps.Keys(packages)) {
		if err := checkForm(packages[name]); err != nil {
			return err
		}
	}
	return nil
}

// checkForm holds the modules of one package to the form.
func checkForm(modules []*ast.Module) error {
	f := &form{rules: map[string][]*ast.Rule{}}
	for _, m := range modules {
		for _, i := range m.Imports {
			return formError(i.Location, "no import: refer to %s by its full path", i.Path)
		}
		for _, r := range m.Rules {
			name := string(r.Head.Ref()[0].Value.(ast.Var))
			f.rules[name] = append(f.rules[name], r)
		}
	}
	for _, m := range modules {
		for _, r := range m.Rules {
			if err := f.rule(r); err != nil {
				return err
			}
		}
	}
	for name, rules := range f.rules {
		if n := f.ways(name, map[string]bool{}); n > mostWays {
			return formError(rules[0].Location, "%s can hold in more than %d ways: split it into several practices", name, mostWays)
		}
	}
	return nil
}

func (f *form) rule(r *ast.Rule) error {
	switch {
	case r.Default:
		return formError(r.Location, "no default: a fact that nobody stated is unknown, not a default")
	case r.Else != nil:
		return formError(r.Else.Location, "no else: write a second rule of the same name")
	case len(r.Head.Args) > 0:
		return formError(r.Location, "no function: write the condition out, or leave the sum to a figure")
	}
	for _, t := range r.Head.Ref()[1:] {
		if s, ok := t.Value.(ast.String); !ok || !document.Printable(string(s)) {
			return formError(r.Location, "%s is no fixed name: write it as a text in quotes", t)
		}
	}
	if r.Head.Key != nil && r.Head.Ref()[len(r.Head.Ref())-1] != r.Head.Key {
		if s, ok := r.Head.Key.Value.(ast.String); !ok || !document.Printable(string(s)) {
			return formError(r.Location, "%s is no fixed text: a reason is written in quotes", r.Head.Key)
		}
	}
	f.given = map[string]bool{}
	for _, e := range r.Body {
		if err := f.expr(e); err != nil {
			return err
		}
	}
	if r.Head.Value == nil {
		return nil
	}
	return f.value(r.Location, r.Head.Value, true)
}

func (f *form) expr(e *ast.Expr) error {
	if len(e.With) > 0 {
		return formError(e.Location, "no with: a rule judges the job as it is")
	}
	switch terms := e.Terms.(type) {
	case *ast.Term:
		return f.operand(e.Location, terms)
	case []*ast.Term:
		name := terms[0].String()
		if v, ok := terms[1].Value.(ast.Var); ok && name == "assign" && len(terms) == 3 {
			if err := f.operand(e.Location, terms[2]); err != nil {
				return err
			}
			f.given[string(v)] = true
			return nil
		}
		if !slices.Contains(comparing, name) {
			return formError(e.Location, "%s cannot be called: a rule only compares (==, !=, <, <=, >, >=, in); arithmetic belongs in a figure", name)
		}
		for _, t := range terms[1:] {
			if err := f.value(e.Location, t, false); err != nil {
				return err
			}
		}
		return nil
	}
	return formError(e.Location, "no some and no every: refer to facts by their full path")
}

// value checks what is compared, or what a rule gives: an object of values stands only in what a rule gives, a set of texts
// only behind in.
func (f *form) value(at *ast.Location, t *ast.Term, given bool) error {
	var err error
	each := func(t *ast.Term) {
		if err == nil {
			err = f.operand(at, t)
		}
	}
	switch v := t.Value.(type) {
	case ast.Object:
		if !given {
			return formError(at, "an object cannot be compared: compare its parts")
		}
		v.Foreach(func(k, x *ast.Term) { each(k); each(x) })
		return err
	case *ast.Array:
		if !given {
			return formError(at, "a list cannot be compared: write a set, {…}, behind in")
		}
		v.Foreach(each)
		return err
	case ast.Set:
		if given {
			return formError(at, "a rule gives no set: give a number, a text, or an object of them")
		}
		v.Foreach(each)
		return err
	}
	return f.operand(at, t)
}

// operand checks a text, a flag, the number 0 or 1, a path, or another rule of the module.
func (f *form) operand(at *ast.Location, t *ast.Term) error {
	switch v := t.Value.(type) {
	case ast.String:
		if !document.Printable(string(v)) {
			return formError(at, "a character stands in %s that does not print: take it out", t)
		}
		return nil
	case ast.Boolean:
		return nil
	case ast.Number:
		if v.String() != "0" && v.String() != "1" {
			return formError(at, "the number %s has no source: put it into rules/limits/ and compare with data.limit.<topic>.<name>", v)
		}
		return nil
	case ast.Var:
		if f.given[string(v)] {
			return nil
		}
		return f.path(at, ast.Ref{t})
	case ast.Ref:
		return f.path(at, v)
	case ast.Call:
		return formError(at, "%s cannot be called: a rule only compares; arithmetic belongs in a figure", v[0])
	}
	return formError(at, "%s cannot stand here: a rule compares facts, figures, limits and texts", t)
}

func (f *form) path(at *ast.Location, ref ast.Ref) error {
	head, ok := ref[0].Value.(ast.Var)
	if !ok {
		return formError(at, "%s is no path of a fact or a limit", ref)
	}
	words := refWords(ref)
	switch {
	case head == "input" && len(ref) >= 3 && len(ref) <= 4:
	case head == "data" && len(words) > 1 && words[1] == "trade" && len(ref) == 3:
	case head == "data" && len(words) > 1 && words[1] == "limit" && len(ref) >= 4 && len(ref) <= 8:
		return f.keys(at, ref)
	case f.rules[string(head)] != nil && len(ref) <= 2:
		if f.composed(string(head)) {
			return formError(at, "%s gives a list or an object, which nothing in the file may refer to: refer to its parts", head)
		}
	default:
		return formError(at, "%s is no path that a rule reads: input.<group>.<fact>, input.figure.<name>, data.limit.<topic>.<name>, data.trade.<condition>, or a rule of this file", ref)
	}
	for _, t := range ref[1:] {
		if _, ok := t.Value.(ast.String); !ok {
			return formError(at, "%s goes through %s: refer to facts by their full path", ref, t)
		}
	}
	return nil
}

// composed says whether a rule gives something with parts. What refers to parts of parts can double in size with each step.
func (f *form) composed(name string) bool {
	return slices.ContainsFunc(f.rules[name], func(r *ast.Rule) bool {
		if r.Head.Value == nil {
			return false
		}
		switch r.Head.Value.Value.(type) {
		case ast.Object, *ast.Array, ast.Set:
			return true
		}
		return false
	})
}

// keys checks a path into a table of limits: its keys are texts or facts.
func (f *form) keys(at *ast.Location, ref ast.Ref) error {
	for _, t := range ref[1:] {
		switch v := t.Value.(type) {
		case ast.String:
		case ast.Ref:
			if v[0].Value.Compare(ast.Var("input")) != 0 {
				return formError(at, "%s is looked up by %s: a table is looked up by a fact", ref, v)
			}
			if err := f.path(at, v); err != nil {
				return err
			}
		default:
			return formError(at, "%s goes through %s: name the limit in full, or look it up by a fact", ref, t)
		}
	}
	return nil
}

// ways counts in how many ways a rule can hold, taking apart the rules it refers to, up to one more than mostWays.
func (f *form) ways(name string, within map[string]bool) int {
	if within[name] {
		return 1 // a circle, which the compiler refuses
	}
	within[name] = true
	defer delete(within, name)
	sum := 0
	for _, r := range f.rules[name] {
		product := 1
		count := func(v ast.Var) bool {
			if f.rules[string(v)] != nil && product <= mostWays {
				product *= f.ways(string(v), within)
			}
			return false
		}
		ast.WalkVars(r.Body, count)
		if r.Head.Value != nil {
			ast.WalkVars(r.Head.Value, count)
		}
		if sum += product; sum > mostWays {
			return mostWays + 1
		}
	}
	return max(sum, 1)
}
