package words

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"regexp"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"hearsay/internal/document"
	"hearsay/internal/folder"
	"hearsay/internal/job"
)

// unsaidYAML is corpus/unsaid.yaml, whose head says what its lines mean.
type unsaidYAML struct {
	Words      map[string][]string         `yaml:"words"`
	Conditions document.Ordered[[]string]  `yaml:"conditions"`
	Taken      document.Ordered[takenYAML] `yaml:"taken"`
}

type takenYAML struct {
	Fact    string   `yaml:"fact"`
	Is      string   `yaml:"is"`
	Like    string   `yaml:"like"`
	Since   string   `yaml:"since"`
	Instead string   `yaml:"instead"`
	When    []string `yaml:"when"`
}

// unsaid is a fact that is taken for granted.
type unsaid struct {
	fact    *job.Fact
	value   string
	like    *job.Fact // the fact whose value it takes; nil where it has its own
	since   string    // the fact whose words it is taken from
	instead string    // a value that is taken so although it was said
	note    string    // completes "It is taken as"
	when    condition
}

// condition says whether something is known of a description.
type condition func(known) bool

// unsaidReader reads the conditions of one unsaid.yaml.
type unsaidReader struct {
	d     *job.Dictionary
	words map[string]map[string]bool
	named map[string]condition
}

// loadUnsaid reads what goes without saying: unsaid.yaml of the corpus, and those of packs after it.
func (r *Reader) loadUnsaid(fsys fs.FS) error {
	files, err := folder.Each(fsys, "unsaid.yaml")
	if err != nil {
		return err
	}
	u := &unsaidReader{d: r.d, words: map[string]map[string]bool{}, named: map[string]condition{}}
	for _, f := range files {
		taken, err := u.file(f)
		if err != nil {
			return f.Wrap(fmt.Errorf("%s: %w", f.Name, err))
		}
		r.unsaidFacts = append(r.unsaidFacts, taken...)
	}
	r.unsaidWords = u.words
	return nil
}

func (r *unsaidReader) file(f folder.File) ([]unsaid, error) {
	var y unsaidYAML
	decode := yaml.NewDecoder(bytes.NewReader(f.Text))
	decode.KnownFields(true)
	if err := decode.Decode(&y); err != nil && !errors.Is(err, io.EOF) {
		return nil, err
	}
	for name, list := range y.Words {
		r.words[name] = set(list)
	}
	for _, c := range y.Conditions {
		one, err := r.all(c.Value)
		if err != nil {
			return nil, fmt.Errorf("line %d: condition %s: %w", c.Line, c.Name, err)
		}
		r.named[c.Name] = one
	}
	var all []unsaid
	for _, t := range y.Taken {
		u, err := r.taken(t.Name, t.Value)
		if err != nil {
			return nil, fmt.Errorf("line %d: %s: %w", t.Line, t.Name, err)
		}
		all = append(all, u)
	}
	return all, nil
}

func (r *unsaidReader) taken(note string, y takenYAML) (u unsaid, err error) {
	u = unsaid{note: note, value: y.Is, since: y.Since, instead: y.Instead}
	if u.fact, err = r.fact(y.Fact); err != nil {
		return u, err
	}
	if y.Like != "" {
		if u.like, err = r.fact(y.Like); err != nil {
			return u, err
		}
		if u.like.Unit != u.fact.Unit || u.like.Kind != u.fact.Kind {
			return u, fmt.Errorf("%s and %s are not in one unit", y.Fact, y.Like)
		}
	} else if _, err := u.fact.Read(y.Is); err != nil {
		return u, err
	}
	if _, err := r.fact(y.Since); err != nil {
		return u, err
	}
	u.when, err = r.all(y.When)
	return u, err
}

func (r *unsaidReader) fact(path string) (*job.Fact, error) {
	if f, ok := r.d.Fact(path); ok {
		return f, nil
	}
	return nil, fmt.Errorf("%q is no fact; the nearest is %s", path, r.d.Nearest(path))
}

// all reads lines that must all hold.
func (r *unsaidReader) all(lines []string) (condition, error) {
	var all []condition
	for _, line := range lines {
		var any []condition
		for _, text := range strings.Split(line, " or ") {
			one, err := r.one(strings.TrimSpace(text))
			if err != nil {
				return nil, fmt.Errorf("%q: %w", line, err)
			}
			any = append(any, one)
		}
		all = append(all, func(k known) bool { return slices.ContainsFunc(any, func(c condition) bool { return c(k) }) })
	}
	return func(k known) bool { return !slices.ContainsFunc(all, func(c condition) bool { return !c(k) }) }, nil
}

// compares is a line that compares a fact with values, with a quantity or with another fact.
var compares = regexp.MustCompile(`^(\S+\.\S+) *(=|<|>) *(.+)$`)

func (r *unsaidReader) one(text string) (condition, error) {
	if named, ok := r.named[text]; ok {
		return named, nil
	}
	for _, word := range []string{"not ", "no "} {
		if rest, ok := strings.CutPrefix(text, word); ok {
			one, err := r.one(rest)
			return func(k known) bool { return !one(k) }, err
		}
	}
	if name, ok := strings.CutPrefix(text, "says "); ok {
		list, ok := r.words[name]
		if !ok {
			return nil, fmt.Errorf("there is no list of words called %s", name)
		}
		return func(k known) bool { return k.speaks(list) }, nil
	}
	if m := compares.FindStringSubmatch(text); m != nil {
		return r.compare(m[1], m[2], m[3])
	}
	f, err := r.fact(text)
	if err != nil {
		return nil, err
	}
	return func(k known) bool { return k.knows(f.Path) }, nil
}

func (r *unsaidReader) compare(path, op, with string) (condition, error) {
	f, err := r.fact(path)
	if err != nil {
		return nil, err
	}
	if op == "=" {
		var values []any
		for _, text := range strings.Split(with, "|") {
			v, err := f.Read(strings.TrimSpace(text))
			if err != nil {
				return nil, err
			}
			values = append(values, v)
		}
		return func(k known) bool {
			v, ok := k.j.Value(path)
			return ok && slices.Contains(values, v)
		}, nil
	}
	bound := func(known) (float64, bool) { return 0, false }
	if other, ok := r.d.Fact(with); ok && other.Unit == f.Unit {
		bound = func(k known) (float64, bool) { return k.number(with) }
	} else {
		v, err := f.Read(with)
		if err != nil {
			return nil, err
		}
		n, isNumber := v.(float64)
		bound = func(known) (float64, bool) { return n, isNumber }
	}
	return func(k known) bool {
		v, told := k.number(path)
		than, ok := bound(k)
		return told && ok && (op == "<" && v < than || op == ">" && v > than)
	}, nil
}
