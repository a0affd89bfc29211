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
	"strconv"
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
	topics     map[string]topicYAML
	roles      []string
	rolePoints []float64
	events     []string
	spans      []span
	echoed     [][2]int // facts that have the same value when their phrase is said
	index      [][]use  // patterns by the id of the first stem of their anchor

	unsaidFacts []unsaid                   // what goes without saying
	unsaidWords map[string]map[string]bool // the words that speak of its subjects, by the name of their list
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
	needy     bool            // it is read only where one of the phrases it needs is said
	needyBare bool            // the same for a number without its unit alone
	alone     float64
	units     map[string]float64
	takes     string
	plain     []float64
	in        map[string]bool
	topic     string
}

// New makes a reader from the dictionary of facts and the folder that holds words.yaml.
func New(d *job.Dictionary, fsys fs.FS) (*Reader, error) {
	layers, err := loadLayers(fsys)
	if err != nil {
		return nil, err
	}
	v, err := newVocabulary(layers)
	if err != nil {
		return nil, err
	}
	r := &Reader{v: v, d: d, byPath: map[string]int{}, byKind: map[quantity.Kind][]int{}, topics: map[string]topicYAML{}}
	for _, f := range d.Facts() {
		s := &saying{Fact: f}
		s.kind, _ = quantity.KindOf(f.Unit)
		r.byPath[f.Path] = len(r.facts)
		r.facts = append(r.facts, s)
	}
	for _, l := range layers {
		if err := r.learn(&l.vocabularyYAML); err != nil {
			return nil, l.Wrap(fmt.Errorf("%s: %w", l.Name, err))
		}
	}
	if err := r.learnWords(); err != nil {
		return nil, err
	}
	if err := r.loadUnsaid(fsys); err != nil {
		return nil, err
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

func plainNumber(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// Read says which facts the text states. It takes any text and never fails; now is the time at which it was said, for
// words such as tomorrow.
func (r *Reader) Read(text string, now time.Time) Reading {
	if len(text) > longest {
		text = text[:longest]
	}
	rd := &reading{Reader: r, text: text, now: now, ts: scan(text)}
	rd.itemize()
	rd.corrections()
	rd.shareOfStrength()
	rd.boxRange()
	rd.millimeters()
	rd.squareFeet()
	rd.polarity()
	rd.weigh()
	return rd.settle(rd.find())
}
