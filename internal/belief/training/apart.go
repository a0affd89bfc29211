package training

import (
	"fmt"
	"math/rand/v2"

	"hearsay/internal/belief"
	"hearsay/internal/belief/linear"
)

// Beliefs that the model never learned are those of packs: a few sentences each, which nothing was learned from. To fit their
// chances, learned beliefs play that part in turn.
const (
	apartBeliefs   = 8 // every so many-th belief stands for those of a pack
	apartSentences = 3 // every so many-th sentence on other beliefs is tried on them
	apartSaid      = 10
	apartDenied    = 7
	stanceFolds    = 3
)

// calibrateApart fits the chances for beliefs that the model never learned.
func (s *Set) calibrateApart(k belief.Calibration) (belief.Calibration, error) {
	var err error
	if k.Apart, err = s.rightApart(k); err != nil {
		return k, err
	}
	k.ApartAsserting, err = s.stanceApart()
	return k, err
}

// rightApart fits the chance that the nearest such belief is the right one: the classes of some beliefs are not looked at, and
// they are found by a few sentences of two voices when the third speaks.
func (s *Set) rightApart(k belief.Calibration) ([]float64, error) {
	folds := s.ByVoice()
	m, err := s.leaveOut(folds, 0, k)
	if err != nil {
		return nil, err
	}
	apart := map[string]bool{}
	for i := 0; i < len(s.Beliefs); i += apartBeliefs {
		apart[s.Beliefs[i].ID] = true
	}
	sayings, err := belief.NewSayings(s.few(func(i int) bool { return apart[s.Sentences[i].Belief] && folds[i] != 0 }), s.Concepts)
	if err != nil {
		return nil, err
	}
	var right [][]float64
	var isRight []bool
	for i, x := range s.Sentences {
		if folds[i] != 0 || !apart[x.Belief] && i%apartSentences != 0 {
			continue
		}
		ranked, err := sayings.Rank(x.Text)
		if err != nil {
			return nil, err
		}
		if len(ranked) == 0 {
			continue
		}
		id := ranked[0].Belief
		match := m.Match(x.Text).Without(func(id string) bool { return apart[id] }, k)
		right = append(right, match.ApartEvidence(sayings.Likeness(x.Text, id, m)))
		isRight = append(isRight, id == x.Belief)
	}
	return fitLogistic(right, isRight), nil
}

// stanceApart fits the chance that a sentence asserts such a belief. What wrong sentences sound like is learned without the
// beliefs that play the part: of a pack's it is not known either.
func (s *Set) stanceApart() ([]float64, error) {
	folds, groups := s.AtRandom(stanceFolds), s.groups()
	var evidence [][]float64
	var asserts []bool
	for fold := range stanceFolds {
		for group := range apartBeliefs {
			apart := func(i int) bool { return groups[s.Sentences[i].Belief] == group+1 }
			m, err := s.wrongnessOf(func(i int) bool { return folds[i] != fold && !apart(i) })
			if err != nil {
				return nil, err
			}
			sayings, err := belief.NewSayings(s.few(func(i int) bool { return folds[i] != fold && apart(i) }), s.Concepts)
			if err != nil {
				return nil, err
			}
			for i, x := range s.Sentences {
				if folds[i] != fold || !apart(i) {
					continue
				}
				evidence = append(evidence, m.Match(x.Text).ApartStance(sayings.Likeness(x.Text, x.Belief, m), s.verdicts[x.Belief] == belief.Holds))
				asserts = append(asserts, x.Stance == belief.Asserts)
			}
		}
	}
	return fitLogistic(evidence, asserts), nil
}

// groups parts the beliefs that have a verdict into groups, from 1.
func (s *Set) groups() map[string]int {
	groups := map[string]int{}
	for i, b := range s.Beliefs {
		if b.Verdict != belief.Depends {
			groups[b.ID] = i%apartBeliefs + 1
		}
	}
	return groups
}

// few draws from the sentences that pass as many of each belief as a pack has.
func (s *Set) few(pass func(i int) bool) []belief.Sentence {
	type side struct {
		belief string
		stance belief.Stance
	}
	most := map[belief.Stance]int{belief.Asserts: apartSaid, belief.Denies: apartDenied}
	taken := map[side]int{}
	var out []belief.Sentence
	for _, i := range rand.New(rand.NewPCG(3, 5)).Perm(len(s.Sentences)) {
		x := s.Sentences[i]
		if k := (side{x.Belief, x.Stance}); pass(i) && taken[k] < most[x.Stance] {
			taken[k]++
			out = append(out, x)
		}
	}
	return out
}

// wrongnessOf learns from the sentences that pass what wrong ones sound like, and nothing else.
func (s *Set) wrongnessOf(pass func(i int) bool) (*belief.Matcher, error) {
	l, space := belief.NewLayout(s.Beliefs), linear.NewSpace(s.features)
	classes := make([]linear.Class, l.Classes())
	for i := range classes {
		classes[i].Weights = make([]float32, len(space.Hashes))
	}
	var rows []linear.Vector
	var wrong []bool
	for i, x := range s.Sentences {
		if pass(i) && s.judged(x) {
			rows = append(rows, space.Vector(s.features[i]))
			wrong = append(wrong, s.wrong(x))
		}
	}
	c := &classes[l.Wrong()]
	c.Weights, c.Offset = linear.Solve(rows, wrong, len(space.Hashes), broad())
	model, err := linear.Open(linear.Write(space, classes, keep))
	if err != nil {
		return nil, fmt.Errorf("what wrong sentences sound like: %w", err)
	}
	return belief.NewMatcher(l, model, s.Concepts, belief.Calibration{}), nil
}
