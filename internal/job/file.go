package job

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// Problem is one thing in a job that cannot be used, with the place it stands at.
type Problem struct {
	File   string
	Line   int
	Column int
	Text   string
}

func (p Problem) Error() string {
	if p.Line == 0 {
		return p.File + ": " + p.Text
	}
	return fmt.Sprintf("%s:%d:%d: %s", p.File, p.Line, p.Column, p.Text)
}

// Problems is every thing wrong with one job, in the order of the file.
type Problems []Problem

func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// Read reads a job from YAML (or JSON, which is YAML): groups of facts as the dictionary names them, and optionally
// title, about and say. Name is used in errors. On error it is a Problems with every problem found. say is the free
// text of the job, which the reader of words turns into facts.
func Read(d *Dictionary, name string, text []byte) (j *Job, say string, err error) {
	file, err := parser.ParseBytes(text, 0)
	if err != nil {
		return nil, "", Problems{syntax(name, err)}
	}
	r := &reader{d: d, name: name, job: New()}
	if len(file.Docs) == 0 || file.Docs[0].Body == nil {
		return nil, "", Problems{{File: name, Text: "the job is empty: state at least one fact (`hearsay facts` lists them)"}}
	}
	r.top(file.Docs[0].Body)
	if len(r.problems) == 0 {
		if err := r.job.Follow(d); err != nil {
			r.contradiction(err)
		}
	}
	if len(r.problems) > 0 {
		return nil, "", r.problems
	}
	return r.job, r.say, nil
}

type reader struct {
	d        *Dictionary
	name     string
	job      *Job
	say      string
	problems Problems
}

func syntax(name string, err error) Problem {
	p := Problem{File: name, Text: "this is not YAML: " + firstLine(err.Error())}
	var s *yaml.SyntaxError
	if errors.As(err, &s) && s.GetToken() != nil {
		p.Text = "this is not YAML: " + s.GetMessage()
		p.Line, p.Column = s.GetToken().Position.Line, s.GetToken().Position.Column
	}
	return p
}

func firstLine(s string) string { return strings.SplitN(s, "\n", 2)[0] }

func (r *reader) problem(n ast.Node, format string, args ...any) {
	p := Problem{File: r.name, Text: fmt.Sprintf(format, args...)}
	if t := n.GetToken(); t != nil {
		p.Line, p.Column = t.Position.Line, t.Position.Column
	}
	r.problems = append(r.problems, p)
}

func entries(n ast.Node) ([]*ast.MappingValueNode, bool) {
	switch m := n.(type) {
	case *ast.MappingNode:
		return m.Values, true
	case *ast.MappingValueNode:
		return []*ast.MappingValueNode{m}, true
	}
	return nil, false
}

func (r *reader) top(body ast.Node) {
	groups, ok := entries(body)
	if !ok {
		r.problem(body, "a job is groups of facts, for example\n  order:\n    strength: 4000 psi")
		return
	}
	for _, g := range groups {
		key := keyText(g)
		switch key {
		case "title":
			r.job.Title = scalarText(g.Value)
		case "about":
			r.job.About = scalarText(g.Value)
		case "say":
			r.say = scalarText(g.Value)
		case "not_known":
			r.notKnown(g.Value)
		default:
			r.group(key, g)
		}
	}
}

func (r *reader) group(key string, g *ast.MappingValueNode) {
	if strings.Contains(key, ".") {
		r.fact(key, g)
		return
	}
	if !r.isGroup(key) {
		r.problem(g.Key, "%v", unknownGroup(r.d, key))
		return
	}
	facts, ok := entries(g.Value)
	if !ok {
		r.problem(g.Value, "%s is a group of facts: write its facts below it, indented", key)
		return
	}
	for _, f := range facts {
		r.fact(key+"."+keyText(f), f)
	}
}

// notKnown reads the list of facts that nobody could tell.
func (r *reader) notKnown(n ast.Node) {
	var paths []string
	if err := yaml.NodeToValue(n, &paths); err != nil {
		r.problem(n, "not_known is a list of facts, for example [order.air]")
		return
	}
	for _, p := range paths {
		if _, ok := r.d.Fact(p); !ok {
			r.problem(n, "not_known: %v", unknownFact(r.d, p))
		}
	}
	r.job.NotKnown = paths
}

func (r *reader) isGroup(key string) bool {
	for _, g := range r.d.Groups {
		if g.Name == key {
			return true
		}
	}
	return false
}

func unknownGroup(d *Dictionary, key string) error {
	var names []string
	for _, g := range d.Groups {
		for _, f := range g.Facts {
			if f.Key == key {
				return fmt.Errorf("%q stands outside its group: write %s below %s", key, f.Key, f.Group)
			}
		}
		names = append(names, g.Name)
	}
	return fmt.Errorf("no group is called %q: the groups are %s", key, strings.Join(names, ", "))
}

func (r *reader) fact(path string, n *ast.MappingValueNode) {
	if _, ok := r.d.Fact(path); !ok {
		r.problem(n.Key, "%v", unknownFact(r.d, path))
		return
	}
	var written any
	if err := yaml.NodeToValue(n.Value, &written); err != nil {
		r.problem(n.Value, "%s cannot be read: %v", path, firstLine(err.Error()))
		return
	}
	if written == nil {
		return // a fact left open is a fact not stated
	}
	t := n.Key.GetToken().Position
	s := Stated{Text: sourceText(n.Value, written), Line: t.Line, Column: t.Column}
	if err := r.job.state(r.d, s, path, written); err != nil {
		r.problem(n.Key, "%s: %v", path, err)
	}
}

func (r *reader) contradiction(err error) {
	p := Problem{File: r.name, Text: err.Error()}
	var c *Contradiction
	var i *Impossible
	var all []Stated
	switch {
	case errors.As(err, &c):
		all = []Stated{c.Other, c.One}
	case errors.As(err, &i):
		all = i.Against
	}
	if at := slices.IndexFunc(all, func(s Stated) bool { return s.Line > 0 }); at >= 0 {
		p.Line, p.Column = all[at].Line, all[at].Column
	}
	r.problems = append(r.problems, p)
}

func keyText(n *ast.MappingValueNode) string { return strings.Trim(n.Key.String(), `"'`) }

func scalarText(n ast.Node) string {
	var text any
	if err := yaml.NodeToValue(n, &text); err != nil || text == nil {
		return ""
	}
	return strings.TrimSpace(fmt.Sprint(text))
}

func sourceText(n ast.Node, written any) string {
	if s, ok := written.(string); ok {
		return s
	}
	return strings.TrimSpace(n.String())
}

// ReadJSON reads a job from one JSON object, as lines of bulk input have them: {"order": {"slump": "4 in"}} or
// {"order.slump": "4 in"}, or {"say": "…"}. It is the quick way in for many jobs; positions are not kept.
func ReadJSON(d *Dictionary, name string, line []byte) (j *Job, say string, err error) {
	var object map[string]any
	if err := json.Unmarshal(line, &object); err != nil {
		return nil, "", Problems{{File: name, Text: "this is not a JSON object: " + err.Error()}}
	}
	j = sized(2 * len(object))
	var problems Problems
	add := func(path string, value any) {
		if value == nil {
			return
		}
		if err := j.State(d, path, value); err != nil {
			problems = append(problems, Problem{File: name, Text: path + ": " + err.Error()})
		}
	}
	for _, key := range slices.Sorted(maps.Keys(object)) { // the same line gives the same job
		value := object[key]
		group, nested := value.(map[string]any)
		switch {
		case key == "say" || key == "title" || key == "about":
			if key == "say" {
				say = fmt.Sprint(value)
			} else if key == "title" {
				j.Title = fmt.Sprint(value)
			}
		case nested && !strings.Contains(key, "."):
			for _, k := range slices.Sorted(maps.Keys(group)) {
				add(key+"."+k, group[k])
			}
		default:
			add(key, value)
		}
	}
	if len(problems) == 0 {
		if err := j.Follow(d); err != nil {
			problems = append(problems, Problem{File: name, Text: err.Error()})
		}
	}
	if len(problems) > 0 {
		return nil, "", problems
	}
	return j, say, nil
}
