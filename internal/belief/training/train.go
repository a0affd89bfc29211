// Package training learns from the corpus what tells beliefs apart and what tells asserting from denying, and writes it
// down as the model that package belief carries.
package training

import (
	"sync"

	"hearsay/internal/belief"
	"hearsay/internal/belief/linear"
	"hearsay/internal/belief/wording"
)

// Share of the weights of a class that is kept in the model. Ten per cent lose nothing that cross-validation could see;
// five cost about half a per cent of right answers.
const keep = 0.10

// Set is what is learned from.
type Set struct {
	Beliefs   []belief.Learned // in the order of the classes
	Sentences []belief.Sentence
	Concepts  *wording.Concepts
	features  [][]wording.Feature
	verdicts  map[string]belief.Verdict
}

// NewSet reads the sentences' features.
func NewSet(beliefs []belief.Learned, sentences []belief.Sentence, concepts *wording.Concepts) *Set {
	s := &Set{Beliefs: beliefs, Concepts: concepts, Sentences: sentences, features: make([][]wording.Feature, len(sentences)), verdicts: map[string]belief.Verdict{}}
	for _, b := range beliefs {
		s.verdicts[b.ID] = b.Verdict
	}
	for i, x := range sentences {
		s.features[i] = wording.Features(x.Text, concepts)
	}
	return s
}

// Subset keeps the sentences that pass.
func (s *Set) Subset(pass func(i int) bool) *Set {
	out := &Set{Beliefs: s.Beliefs, Concepts: s.Concepts, verdicts: s.verdicts}
	for i := range s.Sentences {
		if pass(i) {
			out.Sentences = append(out.Sentences, s.Sentences[i])
			out.features = append(out.features, s.features[i])
		}
	}
	return out
}

// wrong says whether a sentence is; judged, whether its belief has a verdict by which that can be said.
func (s *Set) wrong(x belief.Sentence) bool { return s.verdicts[x.Belief].On(x.Stance) == belief.Myth }
func (s *Set) judged(x belief.Sentence) bool {
	return x.Belief != "" && s.verdicts[x.Belief] != belief.Depends
}

// broad suits a class that is to hold for beliefs it never saw.
func broad() linear.Options {
	o := linear.DefaultOptions()
	o.C, o.Balance = 0.1, true
	return o
}

// Weights trains the classes of a belief.Layout and packs them.
func (s *Set) Weights() []byte {
	space := linear.NewSpace(s.features)
	rows := make([]linear.Vector, len(s.features))
	for i, fs := range s.features {
		rows[i] = space.Vector(fs)
	}
	l := belief.NewLayout(s.Beliefs)
	classes := make([]linear.Class, l.Classes())
	said, denied := make([]linear.Class, len(s.Beliefs)), make([]linear.Class, len(s.Beliefs))
	var jobs []func()
	// side parts the sentences in two, those it does not take are left out.
	solve := func(into *linear.Class, options linear.Options, take, side func(x belief.Sentence) bool) {
		jobs = append(jobs, func() {
			var taken []linear.Vector
			var sides []bool
			for i, x := range s.Sentences {
				if take(x) {
					taken = append(taken, rows[i])
					sides = append(sides, side(x))
				}
			}
			into.Weights, into.Offset = linear.Solve(taken, sides, len(space.Hashes), options)
		})
	}
	all := func(belief.Sentence) bool { return true }
	for i, b := range s.Beliefs {
		solve(&classes[i], linear.DefaultOptions(), all, func(x belief.Sentence) bool { return x.Belief == b.ID })
		solve(&said[i], linear.DefaultOptions(), all, func(x belief.Sentence) bool { return x.Belief == b.ID && x.Stance == belief.Asserts })
		solve(&denied[i], linear.DefaultOptions(), all, func(x belief.Sentence) bool { return x.Belief == b.ID && x.Stance == belief.Denies })
	}
	solve(&classes[l.Foreign()], linear.DefaultOptions(), all, func(x belief.Sentence) bool { return x.Belief == "" })
	solve(&classes[l.Wrong()], broad(), s.judged, s.wrong)
	together(jobs)
	for i := range s.Beliefs {
		classes[l.Stance()+i] = minus(said[i], denied[i])
	}
	return linear.Write(space, classes, keep)
}

func minus(a, b linear.Class) linear.Class {
	for i := range a.Weights {
		a.Weights[i] -= b.Weights[i]
	}
	return linear.Class{Weights: a.Weights, Offset: a.Offset - b.Offset}
}

// together runs the jobs on two goroutines: each holds the weights of one class, and the caches hold two.
func together(jobs []func()) {
	next := make(chan func())
	var wait sync.WaitGroup
	for range 2 {
		wait.Go(func() {
			for job := range next {
				job()
			}
		})
	}
	for _, j := range jobs {
		next <- j
	}
	close(next)
	wait.Wait()
}
