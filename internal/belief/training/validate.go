package training

import (
	"fmt"
	"math/rand/v2"

	"hearsay/internal/belief"
	"hearsay/internal/belief/linear"
)

// Held is a sentence that was held out of training, and what the model then made of it.
type Held struct {
	belief.Sentence
	belief.Match
}

// ByVoice gives the fold of each sentence for leaving out one voice at a time.
func (s *Set) ByVoice() []int {
	names := belief.VoiceNames()
	folds := make([]int, len(s.Sentences))
	for i, x := range s.Sentences {
		for f, name := range names {
			if x.Voice == name {
				folds[i] = f
			}
		}
	}
	return folds
}

// AtRandom gives each sentence one of n folds by chance, the same at every run.
func (s *Set) AtRandom(n int) []int {
	rng := rand.New(rand.NewPCG(7, 11))
	folds := make([]int, len(s.Sentences))
	for i := range folds {
		folds[i] = rng.IntN(n)
	}
	return folds
}

// leaveOut trains on everything but one fold.
func (s *Set) leaveOut(folds []int, fold int, settings belief.Calibration) (*belief.Matcher, error) {
	model, err := linear.Open(s.Subset(func(i int) bool { return folds[i] != fold }).Weights())
	if err != nil {
		return nil, fmt.Errorf("fold %d: %w", fold, err)
	}
	return belief.NewMatcher(belief.NewLayout(s.Beliefs), model, s.Concepts, settings), nil
}

// Validate trains without each of the folds named in turn and gives the matches of what was left out.
func (s *Set) Validate(folds []int, leave []int) ([]Held, error) {
	var out []Held
	for _, fold := range leave {
		m, err := s.leaveOut(folds, fold, belief.Calibration{})
		if err != nil {
			return nil, err
		}
		for i, x := range s.Sentences {
			if folds[i] == fold {
				out = append(out, Held{x, m.Match(x.Text)})
			}
		}
	}
	return out, nil
}

// Calibrate fits the chances to sentences held out.
func Calibrate(held []Held) belief.Calibration {
	var right, stance [][]float64
	var isRight, asserts []bool
	for _, h := range held {
		ok := h.Ranked[0].Belief == h.Belief
		right = append(right, h.RightEvidence())
		isRight = append(isRight, ok)
		if ok {
			stance = append(stance, h.StanceEvidence())
			asserts = append(asserts, h.Stance == belief.Asserts)
		}
	}
	return belief.Calibration{Right: fitLogistic(right, isRight), Asserting: fitLogistic(stance, asserts)}
}
