package training

import "hearsay/internal/belief"

// Every so many-th belief stands for those of a pack, and every so many-th sentence of the voice left out is tried on them.
const (
	apartBeliefs   = 8
	apartSentences = 3
)

// calibrateApart fits the chances for beliefs that the model never learned. Some of the learned ones play that part: their
// classes are not looked at, and they are found by the sentences of two voices when the third speaks.
func (s *Set) calibrateApart(k belief.Calibration) (belief.Calibration, error) {
	folds := s.ByVoice()
	m, err := s.leaveOut(folds, 0, k)
	if err != nil {
		return k, err
	}
	apart := map[string]belief.Verdict{}
	for i := 0; i < len(s.Beliefs); i += apartBeliefs {
		apart[s.Beliefs[i].ID] = s.Beliefs[i].Verdict
	}
	var known []belief.Sentence
	for i, x := range s.Sentences {
		if _, ok := apart[x.Belief]; ok && folds[i] != 0 {
			known = append(known, x)
		}
	}
	sayings, err := belief.NewSayings(known, s.Concepts)
	if err != nil {
		return k, err
	}
	var right, stance [][]float64
	var isRight, asserts []bool
	for i, x := range s.Sentences {
		_, own := apart[x.Belief]
		if folds[i] != 0 || !own && i%apartSentences != 0 {
			continue
		}
		ranked, err := sayings.Rank(x.Text)
		if err != nil {
			return k, err
		}
		if len(ranked) == 0 {
			continue
		}
		id := ranked[0].Belief
		match := m.Match(x.Text).Without(func(id string) bool { _, ok := apart[id]; return ok }, k)
		like := sayings.Likeness(x.Text, id, m)
		right = append(right, match.ApartEvidence(like))
		isRight = append(isRight, id == x.Belief)
		if id == x.Belief {
			general := match.Wrong
			if apart[id] == belief.Holds {
				general = -general
			}
			stance = append(stance, []float64{1, like.Said - like.Denied, general})
			asserts = append(asserts, x.Stance == belief.Asserts)
		}
	}
	k.Apart, k.ApartAsserting = fitLogistic(right, isRight), fitLogistic(stance, asserts)
	return k, nil
}
