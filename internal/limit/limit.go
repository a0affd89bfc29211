// Package limit owns the numbers that the rules and the figures compare with, each with its source, and the works cited.
package limit

import (
	"errors"
	"fmt"
	"io/fs"
	"math"
	"path"
	"sort"
	"strings"

	"hearsay/internal/document"
	"hearsay/internal/folder"
	"hearsay/internal/quantity"
)

// What a limit rests on.
const (
	Published = "published"       // seen in the work named, or in a page that reports it
	Practice  = "common practice" // a fact of the trade without one published source
	Memory    = "memory"          // recalled from the work named, not seen there
)

// Limit is one number, or one table of numbers, with where it comes from.
type Limit struct {
	Topic     string
	Name      string
	Value     any    // float64, or a table: map[string]any of the same, keyed by what the condition names
	Unit      string // "" for a plain ratio
	What      string // a noun phrase: "largest water-cement ratio"
	Condition string
	Cite
	Pack string // the pack that set it, "" for the built-in book
	Was  *Limit // the limit the pack changed; nil when it is new
}

// Path is the name the rules read it by, without "data.".
func (l *Limit) Path() string { return "limit." + l.Topic + "." + l.Name }

// Cite names a work, the place in it, its edition and what the number rests on.
type Cite struct {
	Source  string `yaml:"source" json:"source"` // id in sources.yaml
	Where   string `yaml:"where" json:"where,omitempty"`
	Edition string `yaml:"edition" json:"edition,omitempty"`
	Basis   string `yaml:"basis" json:"basis"`
	// Limit is the path of the limit that is cited, where a pack set it; "" for what is built in.
	Limit string `yaml:"-" json:"-"`
}

// Work is one entry of sources.yaml.
type Work struct {
	ID     string `yaml:"-" json:"id"`
	Title  string `yaml:"title" json:"title"`
	By     string `yaml:"by" json:"by"`
	Number string `yaml:"number" json:"number,omitempty"`
	Pack   string `yaml:"-" json:"pack,omitempty"` // the pack that names it, "" for the built-in list
	Was    *Work  `yaml:"-" json:"-"`              // the work of the same id that the pack names anew; nil when it is new
}

// Book holds every limit and every work.
type Book struct {
	limits map[string]*Limit
	works  map[string]*Work
}

type limitYAML struct {
	Value     any    `yaml:"value"`
	Unit      string `yaml:"unit"`
	What      string `yaml:"what"`
	Condition string `yaml:"condition"`
	Source    string `yaml:"source"`
	Where     string `yaml:"where"`
	Edition   string `yaml:"edition"`
	Basis     string `yaml:"basis"`
}

// Load reads sources.yaml and every file of limits/, with those of packs over them: a limit of the same name is changed, others
// are added. It fails on a limit without source or basis, with an unknown source or basis, or with a value that is not a
// number or a table of numbers.
func Load(fsys fs.FS) (*Book, error) {
	b := &Book{limits: map[string]*Limit{}, works: map[string]*Work{}}
	if err := b.loadWorks(fsys); err != nil {
		return nil, err
	}
	names, err := fs.Glob(fsys, "limits/*.yaml")
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		files, err := folder.Each(fsys, name)
		if err != nil {
			return nil, err
		}
		for _, f := range files {
			if err := b.loadTopic(f); err != nil {
				return nil, f.Wrap(err)
			}
		}
	}
	return b, nil
}

// LoadWorks reads the works cited alone, for what needs no limits.
func LoadWorks(fsys fs.FS) (*Book, error) {
	b := &Book{limits: map[string]*Limit{}, works: map[string]*Work{}}
	return b, b.loadWorks(fsys)
}

func (b *Book) loadWorks(fsys fs.FS) error {
	files, err := folder.Each(fsys, "sources.yaml")
	if err != nil || len(files) == 0 {
		return fmt.Errorf("the list of works is missing: %w", errors.Join(err, fs.ErrNotExist))
	}
	for _, f := range files {
		works, err := document.Read[Work](f.Name, f.Text)
		if err != nil {
			return f.Wrap(err)
		}
		for _, w := range works {
			if w.Value.Title == "" || w.Value.By == "" {
				return f.Wrap(fmt.Errorf("%s: line %d: %s: a work needs its title and by whom it is", f.Name, w.Line, w.Name))
			}
			w.Value.ID, w.Value.Pack, w.Value.Was = w.Name, f.Owner, b.works[w.Name]
			b.works[w.Name] = &w.Value
		}
	}
	return nil
}

func (b *Book) loadTopic(f folder.File) error {
	entries, err := document.Read[limitYAML](f.Name, f.Text)
	if err != nil {
		return err
	}
	topic := strings.TrimSuffix(path.Base(f.Name), ".yaml")
	for _, e := range entries {
		name, y := e.Name, e.Value
		l := &Limit{Topic: topic, Name: name, Unit: y.Unit, What: y.What, Condition: y.Condition,
			Cite: Cite{Source: y.Source, Where: y.Where, Edition: y.Edition, Basis: y.Basis}}
		if l.Value, err = numbers(y.Value); err == nil {
			err = b.check(l)
		}
		if err == nil && f.Owner != "" {
			err = b.lay(l, f.Owner)
		}
		if err != nil {
			return fmt.Errorf("%s: line %d: limit %s: %w", f.Name, e.Line, name, err)
		}
		b.limits[l.Path()] = l
	}
	return nil
}

// lay puts a limit of a pack in the place of another.
func (b *Book) lay(l *Limit, pack string) error {
	l.Pack, l.Was, l.Cite.Limit = pack, b.limits[l.Path()], l.Path()
	_, known := quantity.Known(l.Unit)
	switch {
	case l.Was == nil && !known:
		return fmt.Errorf("unit %q is not known: write one such as in, psi or lb/yd3, or none for a plain ratio", l.Unit)
	case l.Was == nil:
		return nil
	case l.Was.Unit != l.Unit:
		return fmt.Errorf("its unit must stay %q, as the rules read it", l.Was.Unit)
	case shape(l.Was.Value) != shape(l.Value):
		return fmt.Errorf("it must stay %s, as the rules read it", shape(l.Was.Value))
	}
	return nil
}

func shape(v any) string {
	if _, ok := v.(map[string]any); ok {
		return "a table"
	}
	return "one number"
}

func (b *Book) check(l *Limit) error {
	if l.What == "" {
		return fmt.Errorf("does not say what it is: give `what` as a noun phrase, such as \"largest slump\"")
	}
	return b.CheckCite(l.Cite)
}

// CheckCite fails when a citation names no work of the list or no basis.
func (b *Book) CheckCite(c Cite) error {
	if _, ok := b.works[c.Source]; !ok {
		return fmt.Errorf("source %q is not in sources.yaml: `hearsay sources` lists the built-in works, and yours go into rules/sources.yaml", c.Source)
	}
	switch c.Basis {
	case Published, Practice, Memory:
		return nil
	}
	return fmt.Errorf("basis %q is none of published, common practice, memory", c.Basis)
}

// numbers turns a decoded YAML value into float64 or nested tables of float64.
func numbers(v any) (any, error) {
	switch n := v.(type) {
	case string:
		return nil, fmt.Errorf("value %q is no number: write the number alone, and what it is measured in as its unit", n)
	case float64:
		if math.IsNaN(n) || math.IsInf(n, 0) {
			return nil, fmt.Errorf("value %v is no number to compare with", n)
		}
		return n, nil
	case int64:
		return float64(n), nil
	case uint64:
		return float64(n), nil
	case int:
		return float64(n), nil
	case map[string]any:
		table := map[string]any{}
		for k, cell := range n {
			c, err := numbers(cell)
			if err != nil {
				return nil, err
			}
			table[k] = c
		}
		return table, nil
	case map[any]any:
		table := map[string]any{}
		for k, cell := range n {
			c, err := numbers(cell)
			if err != nil {
				return nil, err
			}
			table[fmt.Sprint(k)] = c
		}
		return table, nil
	}
	return nil, fmt.Errorf("value %v is neither a number nor a table of numbers", v)
}

// Find gives the limit with this path ("limit.water.most_ratio"); a path into a table finds the table.
func (b *Book) Find(p string) (*Limit, bool) {
	if l, ok := b.limits[p]; ok {
		return l, true
	}
	parts := strings.SplitN(p, ".", 4)
	if len(parts) < 4 {
		return nil, false
	}
	l, ok := b.limits[strings.Join(parts[:3], ".")]
	return l, ok
}

// Limits lists all limits by path.
func (b *Book) Limits() []*Limit {
	all := make([]*Limit, 0, len(b.limits))
	for _, l := range b.limits {
		all = append(all, l)
	}
	sort.Slice(all, func(i, j int) bool { return all[i].Path() < all[j].Path() })
	return all
}

// Work finds a cited work by its id.
func (b *Book) Work(id string) (*Work, bool) {
	w, ok := b.works[id]
	return w, ok
}

// Works lists all works by id.
func (b *Book) Works() []*Work {
	all := make([]*Work, 0, len(b.works))
	for _, w := range b.works {
		all = append(all, w)
	}
	sort.Slice(all, func(i, j int) bool { return all[i].ID < all[j].ID })
	return all
}

// Data gives the limits as the rules read them: {topic: {name: value}}.
func (b *Book) Data() map[string]any {
	data := map[string]any{}
	for _, l := range b.limits {
		topic, ok := data[l.Topic].(map[string]any)
		if !ok {
			topic = map[string]any{}
			data[l.Topic] = topic
		}
		topic[l.Name] = l.Value
	}
	return data
}
