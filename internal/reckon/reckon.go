// Package reckon owns the numbers in a claim: what the facts it states come to, and whether a number it names is right.
package reckon

import (
	"fmt"
	"io/fs"
	"slices"
	"time"

	"hearsay/internal/belief"
	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/limit"
	"hearsay/internal/words"
)

// Reckoner computes what claims state. It is safe for use by several goroutines at once.
type Reckoner struct {
	facts   *job.Dictionary
	figures *figure.Set
	words   *words.Reader
	numbers map[string]float64 // number words
}

// New makes a reckoner from the rules (facts, limits) and the corpus (words.yaml).
func New(rules, corpus fs.FS) (*Reckoner, error) {
	facts, err := job.LoadDictionary(rules)
	if err != nil {
		return nil, err
	}
	limits, err := limit.Load(rules)
	if err != nil {
		return nil, err
	}
	figures, err := figure.New(limits)
	if err != nil {
		return nil, err
	}
	reader, err := words.New(facts, corpus)
	if err != nil {
		return nil, err
	}
	numbers, err := numberWords(corpus)
	return &Reckoner{facts, figures, reader, numbers}, err
}

// Reckoning is what the numbers of a claim come to.
type Reckoning struct {
	Understood []words.Read     // the facts that the claim states
	Figures    []*figure.Result // computed from them alone
	Claimed    []Claimed        // the numbers that the claim gives for what can be computed
}

// Empty tells that there is nothing to show.
func (r Reckoning) Empty() bool { return len(r.Figures) == 0 && len(r.Claimed) == 0 }

// Of reckons with what is said, as the entry that answers it tells: its figures are shown when the facts said give them, and
// its ranges say which numbers can be held against a figure.
func (r *Reckoner) Of(said string, e *belief.Entry, now time.Time) (Reckoning, error) {
	var out Reckoning
	if e == nil || len(e.Figures) == 0 && len(e.Ranges) == 0 {
		return out, nil
	}
	reading := r.words.Read(said, now)
	stated, _ := reading.Job(r.facts)
	out.Understood = reading.Facts
	if err := r.readAs(stated, e.Reads); err != nil {
		return out, fmt.Errorf("%s: %w", e.ID, err)
	}
	sheet := r.figures.Sheet(stated)
	for _, name := range e.Figures {
		if _, ok := r.figures.Find(name); !ok {
			return out, fmt.Errorf("%s: there is no figure %s; hearsay figure lists them", e.ID, name)
		}
		if result := sheet.Result(name); result.Known && r.hangsOn(name, stated) {
			out.Figures = append(out.Figures, result)
		}
	}
	for _, one := range e.Ranges {
		claimed, err := r.hold(said, one, stated)
		if err != nil {
			return out, fmt.Errorf("%s: %w", e.ID, err)
		}
		out.Claimed = append(out.Claimed, claimed...)
	}
	return out, nil
}

// readAs states a fact from another where the entry says that the sentence means it: a volume is that of the load.
func (r *Reckoner) readAs(j *job.Job, reads map[string]string) error {
	for _, as := range slices.Sorted(mapKeys(reads)) {
		f, ok := r.facts.Fact(as)
		if !ok {
			return fmt.Errorf("reads: there is no fact %s", as)
		}
		v, known := j.Value(reads[as])
		if _, stated := j.Value(as); stated || !known {
			continue
		}
		if err := j.State(r.facts, as, written(v, f)); err != nil {
			return err
		}
	}
	return nil
}

// written gives a value as a job file would write it.
func written(v any, f *job.Fact) any {
	if n, ok := v.(float64); ok {
		return fmt.Sprintf("%g %s", n, f.Unit)
	}
	return v
}

// hangsOn tells whether a figure was computed from anything that was said: a figure that needs nothing is no answer to it.
func (r *Reckoner) hangsOn(name string, j *job.Job) bool {
	return slices.ContainsFunc(r.figures.Needs(name), func(path string) bool { _, ok := j.Find(path); return ok })
}
