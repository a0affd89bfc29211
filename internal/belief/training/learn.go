package training

import (
	"hearsay/internal/belief"
	"hearsay/internal/belief/wording"
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
	if head.Calibration, err = set.calibrateApart(Calibrate(held)); err != nil {
		return nil, err
	}
	return belief.EncodeModel(head, set.Weights())
}
