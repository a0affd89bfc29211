// Package words owns the reading of plain language: which facts a description of a job states.
//
// What people call things stands in rules/facts.yaml (the words of each fact) and corpus/words.yaml (numbers, units, and the
// phrases that state a fact). The reader takes the text apart into words, numbers with units, times and sizes, finds the
// phrases, and gives each number to the fact that the words around it speak of. It guesses nothing: what fits two facts
// equally well, and what fits none, is listed as unread.
package words

import (
	"fmt"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// Reader reads descriptions of jobs. It is safe for use by several goroutines at once.
type Reader struct {
	v          *vocabulary
	d          *job.Dictionary
	facts      []*saying
	byPath     map[string]int
	byKind     map[quantity.Kind][]int // quantities and lists by what their unit measures
	bare       []int                   // quantities that people say without a unit
	roles      []string
	rolePoints []float64
	events     []string
	spans      []span
	echoed     [][2]int // facts that have the same value when their phrase is said
	index      [][]use  // patterns by the id of the first stem of their anchor
	patterns   int      // how many there are
}

// saying is one fact with how people state it.
type saying struct {
	*job.Fact
	kind      quantity.Kind
	parts     []int // the roles it plays, by their index; the first is what it is where none is said
	bare      string
	bareSaid  bool
	gated     bool            // its phrases mean it only where its context is spoken of
	gateUnits map[string]bool // units of a number that speaks of its context
	alone     float64
	units     map[string]float64
	takes     string
	plain     []float64
	in        map[string]bool
	topic     string
}

// New makes a reader from the dictionary of facts and the folder that holds words.yaml.
func New(d *job.Dictionary, fsys fs.FS) (*Reader, error) {
	v, y, err := loadVocabulary(fsys)
	if err != nil {
		return nil, err
	}
	r := &Reader{v: v, d: d, byPath: map[string]int{}, byKind: map[quantity.Kind][]int{}}
	for _, role := range y.Roles {
		r.roles = append(r.roles, role.Name)
		r.rolePoints = append(r.rolePoints, role.Value.Silent)
	}
	for _, f := range d.Facts() {
		s := &saying{Fact: f}
		s.kind, _ = quantity.KindOf(f.Unit)
		r.byPath[f.Path] = len(r.facts)
		r.facts = append(r.facts, s)
	}
	if err := r.learn(y); err != nil {
		return nil, fmt.Errorf("words.yaml: %w", err)
	}
	for i, s := range r.facts {
		if s.Kind == job.KindQuantity || s.Kind == job.KindList {
			r.byKind[s.kind] = append(r.byKind[s.kind], i)
			if s.bare != "" {
				r.bare = append(r.bare, i)
			}
		}
	}
	return r, nil
}

// learn takes in the phrases of words.yaml and the words of facts.yaml.
func (r *Reader) learn(y *vocabularyYAML) error {
	for i, role := range y.Roles {
		if err := r.add(role.Value.Before, use{target: i, role: useBefore}); err != nil {
			return err
		}
		if err := r.add(role.Value.After, use{target: i, role: useAfter}); err != nil {
			return err
		}
	}
	for i, e := range y.Events {
		r.events = append(r.events, e.Name)
		if err := r.add(e.Value, use{target: i, role: useEvent}); err != nil {
			return err
		}
	}
	if err := r.learnSpans(y); err != nil {
		return err
	}
	if err := r.add(y.Ignore, use{role: useIgnore}); err != nil {
		return err
	}
	for _, e := range y.Facts {
		if err := r.learnFact(y, e.Name, e.Value); err != nil {
			return fmt.Errorf("%s: %w", e.Name, err)
		}
	}
	for i, s := range r.facts {
		if err := r.add(s.Words, use{target: i, role: useNear}); err != nil {
			return fmt.Errorf("facts.yaml: %s: %w", s.Path, err)
		}
	}
	return nil
}

// learnSpans takes in the facts that are the time between two events, and the shares of a material.
func (r *Reader) learnSpans(y *vocabularyYAML) error {
	for _, sp := range y.Spans {
		fact, ok := r.byPath[sp.Fact]
		from, to := slices.Index(r.events, sp.From), slices.Index(r.events, sp.To)
		if !ok || from < 0 || to < 0 {
			return fmt.Errorf("the span of %s is not from one event to another", sp.Fact)
		}
		r.spans = append(r.spans, span{fact, from, to})
	}
	for i, e := range y.Echoes {
		one, ok1 := r.byPath[e.One]
		other, ok2 := r.byPath[e.Other]
		if !ok1 || !ok2 {
			return fmt.Errorf("%s and %s are not both facts", e.One, e.Other)
		}
		r.echoed = append(r.echoed, [2]int{one, other})
		if err := r.add(e.Said, use{target: i, role: useEcho}); err != nil {
			return err
		}
	}
	for path, phrases := range y.Shares {
		fact, ok := r.byPath[path]
		if !ok {
			return fmt.Errorf("%s is not a fact of facts.yaml", path)
		}
		if err := r.add(phrases, use{target: fact, role: useShare}); err != nil {
			return err
		}
	}
	return nil
}

func (r *Reader) learnFact(y *vocabularyYAML, path string, e sayingYAML) error {
	i, ok := r.byPath[path]
	if !ok {
		return fmt.Errorf("is not a fact of facts.yaml")
	}
	s := r.facts[i]
	s.bareSaid = e.BareSaid
	s.bare, s.alone, s.units, s.takes, s.topic, s.plain = e.Bare, e.Alone, e.Units, e.Takes, e.Topic, e.Plain
	if len(e.In) > 0 {
		s.in = set(e.In)
	}
	for name := range strings.FieldsSeq(e.Role) {
		k := slices.Index(r.roles, name)
		if k < 0 {
			return fmt.Errorf("no role is called %s", name)
		}
		s.parts = append(s.parts, k)
	}
	s.gated, s.gateUnits = len(e.Context) > 0, set(e.ContextUnits)
	topic, ok := y.Topics[e.Topic]
	if e.Topic != "" && !ok {
		return fmt.Errorf("no topic is called %s", e.Topic)
	}
	for _, list := range []struct {
		phrases []string
		role    byte
	}{{topic.Near, useNear}, {topic.Said, useSaid}, {e.Near, useNear}, {e.Said, useSaid}, {e.Never, useNever}, {e.Context, useContext}} {
		if err := r.add(list.phrases, use{target: i, role: list.role}); err != nil {
			return err
		}
	}
	for _, value := range e.Is {
		if err := r.checkValue(s, value.Name); err != nil {
			return err
		}
		if err := r.add(value.Value, use{target: i, role: useValue, value: value.Name}); err != nil {
			return err
		}
	}
	return nil
}

// checkValue refuses a value that the fact cannot have.
func (r *Reader) checkValue(s *saying, value string) error {
	return job.New().State(r.d, s.Path, value)
}

// add puts patterns into the index.
func (r *Reader) add(phrases []string, u use) error {
	for _, text := range phrases {
		p, err := r.v.parsePattern(text)
		if err != nil {
			return err
		}
		u.pattern, p.index = p, r.patterns
		r.patterns++
		e := &p.elements[p.anchor]
		first := e.first()
		slices.Sort(first)
		for _, id := range slices.Compact(first) {
			for int(id) >= len(r.index) {
				r.index = append(r.index, nil)
			}
			r.index[id] = append(r.index[id], u)
		}
	}
	return nil
}

func plainNumber(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// Read says which facts the text states. It takes any text and never fails; now is the time at which it was said, for
// words such as tomorrow.
func (r *Reader) Read(text string, now time.Time) Reading {
	if len(text) > longest {
		text = text[:longest]
	}
	rd := &reading{Reader: r, text: text, now: now, ts: scan(text)}
	rd.itemize()
	rd.polarity()
	rd.weigh()
	return rd.settle(rd.find())
}
