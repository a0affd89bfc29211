// Package job owns facts: the dictionary of what a job can state, the reading of jobs, and the check that what they
// state makes sense.
package job

import (
	"errors"
	"fmt"
	"io/fs"
	"sort"

	"github.com/agnivade/levenshtein"

	"hearsay/internal/document"
	"hearsay/internal/folder"
	"hearsay/internal/quantity"
)

// Kinds of facts.
const (
	KindQuantity = "quantity" // a number in Unit
	KindChoice   = "choice"   // one of Choices
	KindFlag     = "flag"     // yes or no
	KindList     = "list"     // several numbers in Unit
	KindSeries   = "series"   // hour by hour, one number per column
	KindDate     = "date"     // a day, YYYY-MM-DD
	KindTime     = "time"     // a time of day, kept as hours after midnight
	KindSize     = "size"     // several lengths in one, written "10 ft x 12 ft"
)

// Dictionary names every fact a job can state, once.
type Dictionary struct {
	Groups []*Group
	facts  map[string]*Fact
	closed []*Fact // flags and choices whose values imply something
}

// Group is one heading of the dictionary ("order", "weather").
type Group struct {
	Name  string
	About string
	Facts []*Fact
}

// Fact is one entry of the dictionary. Usual and Possible are in Unit.
type Fact struct {
	Path     string // group.name, as the rules read it
	Group    string
	Key      string // the part after the group
	Kind     string
	Unit     string
	Name     string
	Ask      string
	Usual    *Range
	Possible *Range
	Choices  []Choice
	Implies  []Implication
	Words    []string
	Apart    []Apart
	Gives    []string          // for KindSize: the facts it states, in order
	Columns  map[string]string // for KindSeries: column to unit
	Pack     string            // the pack that states it; "" for the built-in dictionary
	Place    int               // in the order of the dictionary, from 0
	Was      *Fact             // the fact that the pack changed; nil when it is new

	implies []impliesYAML // as written
}

// Choice is one value a fact of KindChoice can have.
type Choice struct {
	Value string
	Name  string
}

// Range is a closed interval.
type Range struct{ Low, High float64 }

// Contains says whether v lies in the range, its ends included.
func (r *Range) Contains(v float64) bool { return r == nil || v >= r.Low && v <= r.High }

// Implication says what follows from a stated value, where it is not stated otherwise.
type Implication struct {
	Is     []any // numbers are float64
	Above  *float64
	Below  *float64
	Stated bool
	Then   []Implied // by path
}

// Implied is one fact with the value that follows for it.
type Implied struct {
	Fact  *Fact
	Value any
	Text  string // as the dictionary writes it
}

// Apart says how far a quantity can lie from another one in its unit: beyond that one of the two is not so.
type Apart struct {
	From      string
	Low, High float64
}

type factYAML struct {
	Kind     string                   `yaml:"kind"`
	Unit     string                   `yaml:"unit"`
	Name     string                   `yaml:"name"`
	Ask      string                   `yaml:"ask"`
	Usual    []float64                `yaml:"usual"`
	Possible []float64                `yaml:"possible"`
	Choices  document.Ordered[string] `yaml:"choices"`
	Implies  []impliesYAML            `yaml:"implies"`
	Apart    []apartYAML              `yaml:"apart"`
	Words    []string                 `yaml:"words"`
	Gives    []string                 `yaml:"gives"`
	Columns  map[string]string        `yaml:"columns"`
}

type impliesYAML struct {
	Is     []any          `yaml:"is"`
	Above  *float64       `yaml:"above"`
	Below  *float64       `yaml:"below"`
	Stated bool           `yaml:"stated"`
	Then   map[string]any `yaml:"then"`
}

type apartYAML struct {
	From  string    `yaml:"from"`
	Range []float64 `yaml:"range"`
}

type groupYAML struct {
	About string                     `yaml:"about"`
	Facts document.Ordered[factYAML] `yaml:"facts"`
}

// LoadDictionary reads facts.yaml from the rules folder, with those of packs over it: a fact of the same name is changed, others
// are added to their group. It fails on an entry that could not be used: an unknown unit or kind, a range the wrong way
// round, an implication of a fact that does not exist.
func LoadDictionary(fsys fs.FS) (*Dictionary, error) {
	files, err := folder.Each(fsys, "facts.yaml")
	if err != nil || len(files) == 0 {
		return nil, fmt.Errorf("the dictionary of facts is missing: %w", errors.Join(err, fs.ErrNotExist))
	}
	d := &Dictionary{facts: map[string]*Fact{}}
	for _, f := range files {
		if err := d.read(f); err != nil {
			return nil, f.Wrap(err)
		}
	}
	return d, nil
}

func (d *Dictionary) read(f folder.File) error {
	groups, err := document.Read[groupYAML](f.Name, f.Text)
	if err != nil {
		return err
	}
	lines := map[string]int{}
	for _, g := range groups {
		group := d.group(g.Name, g.Value.About)
		for _, entry := range g.Value.Facts {
			fact := entry.Value.fact(g.Name, entry.Name)
			fact.Pack, lines[fact.Path] = f.Owner, entry.Line
			if err := group.put(fact); err != nil {
				return fmt.Errorf("%s: line %d: fact %s: %w", f.Name, entry.Line, fact.Path, err)
			}
		}
	}
	d.index()
	for _, fact := range d.Facts() {
		if err := d.checkFact(fact); err != nil {
			return fmt.Errorf("%s: line %d: fact %s: %w", f.Name, lines[fact.Path], fact.Path, err)
		}
	}
	return nil
}

// group finds a group, or adds it.
func (d *Dictionary) group(name, about string) *Group {
	for _, g := range d.Groups {
		if g.Name == name {
			return g
		}
	}
	g := &Group{Name: name, About: about}
	d.Groups = append(d.Groups, g)
	return g
}

// put adds a fact, in the place of one of the same name: that must be of the same kind and unit, as the rules and figures read it.
func (g *Group) put(f *Fact) error {
	for i, old := range g.Facts {
		if old.Path != f.Path {
			continue
		}
		if f.Pack != "" && (old.Kind != f.Kind || old.Unit != f.Unit) {
			return fmt.Errorf("it must stay a %s in unit %q, as the rules and figures read it", old.Kind, old.Unit)
		}
		f.Was, g.Facts[i] = old, f
		return nil
	}
	g.Facts = append(g.Facts, f)
	return nil
}

// index rebuilds what is found by path.
func (d *Dictionary) index() {
	d.facts, d.closed = map[string]*Fact{}, nil
	for place, f := range d.Facts() {
		d.facts[f.Path], f.Place = f, place
		if len(f.implies) > 0 && (f.Kind == KindFlag || f.Kind == KindChoice) {
			d.closed = append(d.closed, f)
		}
	}
}

func (y factYAML) fact(group, key string) *Fact {
	f := &Fact{Path: group + "." + key, Group: group, Key: key, Kind: y.Kind, Unit: y.Unit, Name: y.Name, Ask: y.Ask,
		Usual: pair(y.Usual), Possible: pair(y.Possible), Words: y.Words, Gives: y.Gives, Columns: y.Columns}
	for _, c := range y.Choices {
		f.Choices = append(f.Choices, Choice{Value: c.Name, Name: c.Value})
	}
	for _, a := range y.Apart {
		if r := pair(a.Range); r != nil {
			f.Apart = append(f.Apart, Apart{From: a.From, Low: r.Low, High: r.High})
		}
	}
	f.implies = y.Implies
	return f
}

func pair(v []float64) *Range {
	if len(v) != 2 {
		return nil
	}
	return &Range{v[0], v[1]}
}

// Fact finds an entry by its path ("order.slump").
func (d *Dictionary) Fact(path string) (*Fact, bool) {
	f, ok := d.facts[path]
	return f, ok
}

// Facts lists every entry in the order of the file.
func (d *Dictionary) Facts() []*Fact {
	var all []*Fact
	for _, g := range d.Groups {
		all = append(all, g.Facts...)
	}
	return all
}

// Paths lists every path, sorted.
func (d *Dictionary) Paths() []string {
	paths := make([]string, 0, len(d.facts))
	for p := range d.facts {
		paths = append(paths, p)
	}
	sort.Strings(paths)
	return paths
}

// Nearest gives the path that looks most like the one asked for, or "" when none is near.
func (d *Dictionary) Nearest(path string) string {
	best, near := len(path)/2+1, ""
	for _, p := range d.Paths() {
		f := d.facts[p]
		n := min(levenshtein.ComputeDistance(path, p), levenshtein.ComputeDistance(path, f.Key)+1)
		if n < best {
			best, near = n, p
		}
	}
	return near
}

// Choice finds the choice with this value or plain name, case and spacing aside.
func (f *Fact) Choice(text string) (Choice, bool) {
	want := plain(text)
	for _, c := range f.Choices {
		if plain(c.Value) == want || plain(c.Name) == want {
			return c, true
		}
	}
	return Choice{}, false
}

func (d *Dictionary) checkFact(f *Fact) error {
	if f.Name == "" {
		return fmt.Errorf("has no name")
	}
	switch f.Kind {
	case KindQuantity, KindList:
		if _, ok := quantity.KindOf(f.Unit); !ok {
			return fmt.Errorf("unit %q is not known", f.Unit)
		}
	case KindChoice:
		if len(f.Choices) < 2 {
			return fmt.Errorf("a choice needs at least two choices")
		}
	case KindFlag, KindSeries, KindDate, KindTime:
	case KindSize:
		for _, p := range f.Gives {
			if _, ok := d.facts[p]; !ok {
				return fmt.Errorf("gives %s, which is not a fact", p)
			}
		}
		return nil
	default:
		return fmt.Errorf("kind %q is not one of quantity, choice, flag, list, series, date, time, size", f.Kind)
	}
	if f.Ask == "" {
		return fmt.Errorf("has no question")
	}
	for _, a := range f.Apart {
		if other, ok := d.facts[a.From]; !ok || other.Unit != f.Unit || f.Kind != KindQuantity {
			return fmt.Errorf("is held apart from %s, which is no quantity in its unit", a.From)
		}
	}
	return d.readImplications(f)
}

// readImplications reads what the values of a fact imply, once every fact is known.
func (d *Dictionary) readImplications(f *Fact) error {
	f.Implies = nil
	for _, y := range f.implies {
		i := Implication{Above: y.Above, Below: y.Below, Stated: y.Stated}
		for _, v := range y.Is {
			i.Is = append(i.Is, asFloat(v))
		}
		for _, path := range sortedKeys(y.Then) {
			target, ok := d.facts[path]
			if !ok {
				return fmt.Errorf("implies %s, which is not a fact", path)
			}
			value, err := target.read(y.Then[path])
			if err != nil {
				return fmt.Errorf("implies %s: %w", path, err)
			}
			i.Then = append(i.Then, Implied{Fact: target, Value: value, Text: fmt.Sprint(y.Then[path])})
		}
		f.Implies = append(f.Implies, i)
	}
	return nil
}

// asFloat makes a float64 of the kinds in which YAML gives a number, and leaves anything else.
func asFloat(v any) any {
	switch n := v.(type) {
	case int:
		return float64(n)
	case int64:
		return float64(n)
	case uint64:
		return float64(n)
	}
	return v
}
