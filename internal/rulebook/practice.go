// Package rulebook owns the practices: it loads the rules, judges a job with them by partial evaluation, says on what an
// open answer hangs, and finds what a finding rests on. It is the only package that imports Open Policy Agent.
package rulebook

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"runtime"
	"slices"
	"sort"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"golang.org/x/sync/errgroup"

	"hearsay/internal/limit"
)

// Practice is one thing done right or wrong, as its rule file describes it.
type Practice struct {
	ID       string `json:"id"` // topic/name
	Topic    string `json:"topic"`
	Title    string `json:"title"`    // what is wrong, as a short sentence without full stop
	Why      string `json:"why"`      // why it matters, in words a homeowner accepts
	Do       string `json:"do"`       // what to do instead
	Stage    string `json:"stage"`    // order, before, during, after
	Severity string `json:"severity"` // stop, fix, mind
	// Numbers names the numbers of the rule's `number` document in the order to print them.
	Numbers []string `json:"numbers,omitempty"`
	// Costs names the figures that say what it costs, shown where the prices they need are given.
	Costs []string `json:"costs,omitempty"`
	// Cautions are ids of cautions.yaml.
	Cautions []string `json:"cautions,omitempty"`
	// Act says that no change of the order mends it: something must happen at the site first.
	Act bool `json:"act,omitempty"`
	// Engineer says that it is for a licensed engineer to decide.
	Engineer bool     `json:"engineer,omitempty"`
	Reads    []string `json:"reads"`  // facts and figures the rule reads ("order.slump", "figure.wcm")
	Limits   []string `json:"limits"` // limits the rule reads ("limit.water.most_ratio")
	File     string   `json:"file"`
	Pack     string   `json:"pack,omitempty"`     // the pack that wrote it; "" for the built-in book
	Replaces bool     `json:"replaces,omitempty"` // the pack wrote it in the place of another
	Off      string   `json:"off,omitempty"`      // why a pack switched it off, and which
	module   *ast.Module
	text     []byte       // of its file
	hangs    []string     // facts its judgement can hang on
	hangsAt  []int        // their places in the dictionary
	figures  []string     // figures its rule reads
	below    []string     // these and the figures that they need
	rests    []limit.Cite // what it rests on where it does not concern a job
	limits   []limit.Cite // the limits it reads
}

// Stages and severities in their order.
var (
	Stages     = []string{"order", "before", "during", "after"}
	Severities = []string{"stop", "fix", "mind"}
)

// Caution is a warning shown where work can hurt somebody.
type Caution struct {
	ID     string `yaml:"-" json:"id"`
	Text   string `yaml:"text" json:"text"`
	Source string `yaml:"source" json:"source"`
	Where  string `yaml:"where" json:"where,omitempty"`
	Basis  string `yaml:"basis" json:"basis"`
	Pack   string `yaml:"-" json:"pack,omitempty"` // the pack that wrote it; "" for the built-in book
}

// readAll reads every file of a rules folder that judging depends on, tests included.
func readAll(fsys fs.FS) (map[string][]byte, error) {
	texts := map[string][]byte{}
	for _, pattern := range []string{"*/*.rego", "*.yaml", "limits/*.yaml"} {
		files, err := fs.Glob(fsys, pattern)
		if err != nil {
			return nil, err
		}
		for _, file := range files {
			if texts[file], err = fs.ReadFile(fsys, file); err != nil {
				return nil, err
			}
		}
	}
	return texts, nil
}

// parse reads every rule and helper module, several at a time; tests wait until they are run. Practices lie two folders deep;
// a practice's package is practice.<topic>["<name>"], whatever the file says otherwise is an error.
func parse(texts map[string][]byte) (modules map[string]*ast.Module, practices []*Practice, err error) {
	modules = map[string]*ast.Module{}
	var lock sync.Mutex
	var group errgroup.Group
	group.SetLimit(runtime.GOMAXPROCS(0))
	for _, file := range slices.Sorted(maps.Keys(texts)) {
		if path.Ext(file) != ".rego" || isTest(file) {
			continue
		}
		group.Go(func() error {
			m, err := ast.ParseModuleWithOpts(file, string(texts[file]), ast.ParserOptions{RegoVersion: ast.RegoV1, ProcessAnnotation: true})
			if err != nil {
				return unread(err)
			}
			var p *Practice
			if path.Dir(file) != "trade" {
				if p, err = describe(file, m); err != nil {
					return fmt.Errorf("%s:%d: %w", file, rowOf(texts[file], about(err)), err)
				}
				p.text = texts[file]
			}
			lock.Lock()
			defer lock.Unlock()
			modules[file] = m
			if p != nil {
				practices = append(practices, p)
			}
			return nil
		})
	}
	if err := group.Wait(); err != nil {
		return nil, nil, err
	}
	sort.Slice(practices, func(i, j int) bool { return practices[i].ID < practices[j].ID })
	return modules, practices, nil
}

// unread says where and why rules cannot be read or compiled, by the first error alone: the others mostly come of it.
func unread(err error) error {
	var all ast.Errors
	if !errors.As(err, &all) || len(all) == 0 || all[0].Location == nil {
		return err
	}
	hint := ""
	if all[0].Code == ast.ParseErr {
		hint = ": this cannot be read as Rego, where rules are written as `here if …` and `wrong contains \"…\" if { … }`"
	}
	return fmt.Errorf("%s:%d: %s%s", all[0].Location.File, all[0].Location.Row, all[0].Message, hint)
}

// about is what an error in a description begins with, by which its line is found.
func about(err error) string {
	word, _, _ := strings.Cut(strings.TrimPrefix(err.Error(), "its custom metadata has "), " ")
	if word == "its" {
		word = "package"
	}
	return strings.TrimSuffix(word, ":")
}

func isTest(file string) bool { return strings.HasSuffix(file, "_test.rego") }

func describe(file string, m *ast.Module) (*Practice, error) {
	topic, name := path.Dir(file), strings.TrimSuffix(path.Base(file), ".rego")
	if !slices.Equal(refWords(m.Package.Path), []string{"data", "practice", topic, name}) {
		return nil, fmt.Errorf("its package must be practice.%s[%q], to match where it lies", topic, name)
	}
	p := &Practice{ID: topic + "/" + name, Topic: topic, File: file, module: m}
	for _, a := range m.Annotations {
		if a.Scope != "package" {
			continue
		}
		p.Title = a.Title
		if err := p.custom(a.Custom); err != nil {
			return nil, err
		}
	}
	return p, p.check()
}

// custom reads the custom part of the metadata, refusing a key it does not know.
func (p *Practice) custom(values map[string]any) error {
	for key, value := range values {
		text, isText := value.(string)
		list, isList := texts(value)
		flag, isFlag := value.(bool)
		switch {
		case key == "stage" && isText:
			p.Stage = text
		case key == "severity" && isText:
			p.Severity = text
		case key == "why" && isText:
			p.Why = text
		case key == "do" && isText:
			p.Do = text
		case key == "numbers" && isList:
			p.Numbers = list
		case key == "costs" && isList:
			p.Costs = list
		case key == "cautions" && isList:
			p.Cautions = list
		case key == "act" && isFlag:
			p.Act = flag
		case key == "engineer" && isFlag:
			p.Engineer = flag
		default:
			return fmt.Errorf("its custom metadata has %s: %v, which is not known there: the keys are stage, severity, why, do, numbers, costs, cautions, act and engineer", key, value)
		}
	}
	return nil
}

func texts(value any) ([]string, bool) {
	items, ok := value.([]any)
	list := make([]string, len(items))
	for i, item := range items {
		list[i] = fmt.Sprint(item)
	}
	return list, ok
}

func (p *Practice) check() error {
	switch {
	case p.Title == "":
		return fmt.Errorf("has no title: begin the file with a METADATA block of scope package")
	case !contains(Stages, p.Stage):
		return fmt.Errorf("stage %q is none of %s", p.Stage, strings.Join(Stages, ", "))
	case !contains(Severities, p.Severity):
		return fmt.Errorf("severity %q is none of %s", p.Severity, strings.Join(Severities, ", "))
	case p.Why == "" || p.Do == "":
		return fmt.Errorf("has no why or no do")
	}
	return nil
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// reads finds what a rule reads, through the helper rules of trade/ it refers to: facts and figures as dotted paths,
// and limits. Strings that name a figure ({"yours": "figure.wcm"}) or
// an end of its range count.
func (p *Practice) findReads(helpers map[string][]*ast.Rule) {
	reads, limits, seen := map[string]bool{}, map[string]bool{}, map[string]bool{}
	var walk func(x any)
	follow := func(helper string) {
		if seen[helper] {
			return
		}
		seen[helper] = true
		for _, rule := range helpers[helper] {
			walk(rule)
		}
	}
	walk = func(x any) {
		ast.WalkTerms(x, func(t *ast.Term) bool {
			switch v := t.Value.(type) {
			case ast.String:
				if name, _, ok := cutRange(string(v)); ok {
					reads["figure."+name] = true
				}
			case ast.Ref:
				words := refWords(v)
				switch {
				case len(words) >= 3 && words[0] == "input":
					reads[factPath(words)] = true
				case len(words) >= 4 && words[0] == "data" && words[1] == "limit":
					limits[strings.Join(words[1:4], ".")] = true
				case len(words) >= 3 && words[0] == "data" && words[1] == "trade":
					follow(words[2])
				}
			case ast.Var: // a helper that another helper names without its path
				follow(string(v))
			}
			return false
		})
	}
	walk(p.module)
	p.Reads, p.Limits = keys(reads), keys(limits)
}

// factPath turns the words of an input reference into a fact path or a figure: input.range.x.low reads figure.x.
func factPath(words []string) string {
	if words[1] == "range" {
		return "figure." + words[2]
	}
	return words[1] + "." + words[2]
}

// refWords gives the constant words a reference begins with.
func refWords(r ast.Ref) []string {
	var words []string
	for i, t := range r {
		switch v := t.Value.(type) {
		case ast.Var:
			if i > 0 {
				return words
			}
			words = append(words, string(v))
		case ast.String:
			words = append(words, string(v))
		default:
			return words
		}
	}
	return words
}

func keys(set map[string]bool) []string {
	list := make([]string, 0, len(set))
	for k := range set {
		list = append(list, k)
	}
	sort.Strings(list)
	return list
}
