package training

import (
	"hearsay/internal/belief"
	"hearsay/internal/belief/wording"
)

// Least chances at which the model answers, and at which it offers what is near. They were chosen on sentences held out by
// voice and on sentences that no belief covers; the measuring command shows what they give.
const (
	answerAt = 0.60
	nearAt   = 0.15
)

// Learn makes the model file of a corpus: the weights from all of it, the chances from what each voice says when the model
// has learned from the two others.
func Learn(c *belief.Corpus) ([]byte, error) {
	head, err := c.Head()
	if err != nil {
		return nil, err
	}
	sentences, err := c.Sentences()
	if err != nil {
		return nil, err
	}
	concepts := wording.NewConcepts(head.Concepts)
	set := NewSet(head.Beliefs, sentences, concepts)
	held, err := set.Validate(set.ByVoice(), []int{0, 1, 2})
	if err != nil {
		return nil, err
	}
	if head.Calibration, err = set.calibrateApart(Calibrated(held)); err != nil {
		return nil, err
	}
	return belief.EncodeModel(head, set.Weights())
}

// Calibrated fits the chances to sentences held out, and sets the thresholds.
func Calibrated(held []Held) belief.Calibration {
	k := fit(held)
	k.Answer, k.Near = answerAt, nearAt
	return k
}
