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
	IDs       []string // of the beliefs, in the order of the classes
	Sentences []belief.Sentence
	features  [][]wording.Feature
}

// NewSet reads the sentences' features.
func NewSet(ids []string, sentences []belief.Sentence, concepts *wording.Concepts) *Set {
	s := &Set{IDs: ids, Sentences: sentences, features: make([][]wording.Feature, len(sentences))}
	for i, x := range sentences {
		s.features[i] = wording.Features(x.Text, concepts)
	}
	return s
}

// Subset keeps the sentences that pass.
func (s *Set) Subset(pass func(i int) bool) *Set {
	out := &Set{IDs: s.IDs}
	for i := range s.Sentences {
		if pass(i) {
			out.Sentences = append(out.Sentences, s.Sentences[i])
			out.features = append(out.features, s.features[i])
		}
	}
	return out
}

// Weights trains the classes of package belief: one for each belief and one for sentences that none covers; for each
// belief what tells asserting it from denying it; and what tells asserting from denying whatever the belief.
func (s *Set) Weights() []byte {
	space := linear.NewSpace(s.features)
	rows := make([]linear.Vector, len(s.features))
	for i, fs := range s.features {
		rows[i] = space.Vector(fs)
	}
	n := len(s.IDs)
	classes := make([]linear.Class, belief.Classes(n))
	var jobs []func()
	solve := func(into *linear.Class, options linear.Options, rows []linear.Vector, side func(i int) bool) {
		jobs = append(jobs, func() {
			sides := make([]bool, len(rows))
			for i := range rows {
				sides[i] = side(i)
			}
			into.Weights, into.Offset = linear.Solve(rows, sides, len(space.Hashes), options)
		})
	}
	said, denied := make([]linear.Class, n), make([]linear.Class, n)
	for b, id := range append(s.IDs[:n:n], "") {
		solve(&classes[b], linear.DefaultOptions(), rows, func(i int) bool { return s.Sentences[i].Belief == id })
		if id == "" {
			continue
		}
		for stance, into := range map[belief.Stance]*linear.Class{belief.Asserts: &said[b], belief.Denies: &denied[b]} {
			solve(into, linear.DefaultOptions(), rows, func(i int) bool { return s.Sentences[i].Belief == id && s.Sentences[i].Stance == stance })
		}
	}
	own := s.Subset(func(i int) bool { return s.Sentences[i].Belief != "" })
	ownRows := make([]linear.Vector, 0, len(rows))
	for i := range rows {
		if s.Sentences[i].Belief != "" {
			ownRows = append(ownRows, rows[i])
		}
	}
	general := linear.DefaultOptions()
	general.C, general.Balance = 0.1, true
	solve(&classes[len(classes)-1], general, ownRows, func(i int) bool { return own.Sentences[i].Stance == belief.Asserts })
	together(jobs)
	for b := range n {
		classes[n+1+b] = minus(said[b], denied[b])
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
