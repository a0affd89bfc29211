// Package crew owns lessons, quizzes and who has heard what: talks out of the corpus, questions whose answers are computed,
// and when a crew should hear a thing again.
package crew

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"slices"
	"strings"

	"hearsay/internal/belief"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Trainer makes talks and quizzes in one language. It is safe for use by several goroutines at once.
type Trainer struct {
	corpus  *belief.Corpus
	book    *rulebook.Book // only quizzes with numbers need it
	files   fs.FS          // of the corpus, with what is translated of it
	words   Words
	printer printer
}

// Languages are those that talks and quizzes can be made in.
func Languages() []string { return []string{"en", "es"} }

// NewTrainer makes a trainer. files is the corpus with its translations; book may be nil, and then no question has numbers.
func NewTrainer(files fs.FS, book *rulebook.Book, language string, system quantity.System) (*Trainer, error) {
	if !slices.Contains(Languages(), language) {
		return nil, fmt.Errorf("language %q is not known: write one of %s", language, strings.Join(Languages(), ", "))
	}
	c, err := belief.Read(files)
	if err != nil {
		return nil, err
	}
	w, err := readWords(language)
	if err != nil {
		return nil, err
	}
	return &Trainer{corpus: c, book: book, files: files, words: w, printer: printer{system, w}}, nil
}

// Words gives the trainer's language.
func (t *Trainer) Words() Words { return t.words }

// Revision names the state of the corpus that it works from.
func (t *Trainer) Revision() string { return t.corpus.Revision() }

// Beliefs lists every belief in alphabetical order.
func (t *Trainer) Beliefs() []string { return t.corpus.IDs() }

// Choice says which beliefs a talk or a quiz is about. Those of Beliefs are taken as they stand; otherwise every belief that
// fits all that is given, in the order of Rank, Most of them.
type Choice struct {
	Beliefs   []string
	Topic     string         // a folder of the corpus, or a topic of an entry
	Season    string         // cold or hot
	Practices []string       // those wrong on a job
	Only      []string       // out of these alone, where it is not nil
	Rank      map[string]int // higher first: what a crew keeps getting wrong
	Seed      uint64         // orders what ranks the same; 0: as the alphabet has it
	Most      int            // 0: all
}

// ErrNothing says that no belief fits.
var ErrNothing = errors.New("no belief fits that choice")

// Choose gives the beliefs that fit. It fails with ErrNothing, or on a belief that does not exist.
func (t *Trainer) Choose(c Choice) ([]string, error) {
	if len(c.Beliefs) > 0 {
		for _, id := range c.Beliefs {
			if _, err := t.corpus.Entry(id); err != nil {
				return nil, fmt.Errorf("%w; `hearsay crew beliefs` lists them", err)
			}
		}
		return c.Beliefs, nil
	}
	var fit []string
	for _, id := range t.corpus.IDs() {
		e, err := t.corpus.Entry(id)
		if err != nil {
			return nil, err
		}
		if c.fits(e) {
			fit = append(fit, id)
		}
	}
	if len(fit) == 0 {
		return nil, ErrNothing
	}
	if c.Seed != 0 {
		random(c.Seed).Shuffle(len(fit), func(i, j int) { fit[i], fit[j] = fit[j], fit[i] })
	}
	slices.SortStableFunc(fit, func(a, b string) int { return c.Rank[b] - c.Rank[a] })
	if c.Most > 0 {
		fit = fit[:min(c.Most, len(fit))]
	}
	return fit, nil
}

func (c Choice) fits(e *belief.Entry) bool {
	topic, _, _ := strings.Cut(e.ID, "/")
	switch {
	case c.Only != nil && !slices.Contains(c.Only, e.ID):
	case c.Topic != "" && !strings.EqualFold(topic, c.Topic) && !slices.ContainsFunc(e.Topics, func(s string) bool { return strings.EqualFold(s, c.Topic) }):
	case c.Season != "" && e.Season != c.Season:
	case c.Practices != nil && !slices.ContainsFunc(e.Practices, func(p string) bool { return slices.Contains(c.Practices, p) }):
	default:
		return true
	}
	return false
}

// random is a source of numbers that gives the same ones for the same seed on every machine.
func random(seed uint64) *rand.Rand { return rand.New(rand.NewPCG(seed, 0x68656172736179)) }
