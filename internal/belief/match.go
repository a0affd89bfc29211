package belief

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"hearsay/internal/belief/linear"
	"hearsay/internal/belief/wording"
)

// Classes gives the number of classes of a model of n beliefs: each belief, sentences that none covers, asserting against
// denying each belief, and asserting against denying whatever the belief.
func Classes(n int) int { return 2*n + 2 }

// Matcher finds the belief that a sentence states or denies by what was learned from the corpus.
type Matcher struct {
	ids      []string
	model    *linear.Model
	concepts *wording.Concepts
	settings Calibration
}

// NewMatcher joins a model, trained on these beliefs in this order, with its calibration.
func NewMatcher(ids []string, model *linear.Model, concepts *wording.Concepts, settings Calibration) *Matcher {
	return &Matcher{ids, model, concepts, settings}
}

// Scored is a belief with how well a sentence fits it.
type Scored struct {
	Belief string
	Score  float64
}

// Match is what was found out about a sentence.
type Match struct {
	Ranked    []Scored // by the raw score, best first
	Foreign   float64  // raw score of "no belief covers it"
	Known     float64  // share of what the sentence consists of that the corpus has too
	Own       float64  // raw score of asserting against denying the best belief
	General   float64  // raw score of asserting against denying anything
	Question  bool
	Right     float64 // chance that the best belief is the right one
	Asserting float64 // chance that the sentence asserts the best belief
}

// Match finds the beliefs nearest to a sentence.
func (m *Matcher) Match(text string) Match {
	scores, known := m.model.Scores(wording.Features(text, m.concepts))
	n := len(m.ids)
	out := Match{Ranked: make([]Scored, n), Foreign: float64(scores[n]), Known: known, General: float64(scores[2*n+1]),
		Question: strings.Contains(text, "?")}
	for i, id := range m.ids {
		out.Ranked[i] = Scored{id, float64(scores[i])}
	}
	best := 0
	for i := range m.ids {
		if scores[i] > scores[best] {
			best = i
		}
	}
	out.Own = float64(scores[n+1+best])
	slices.SortStableFunc(out.Ranked, func(a, b Scored) int { return cmp.Compare(b.Score, a.Score) })
	return out.Calibrated(m.settings)
}

// Calibration turns scores into chances. It was fitted on sentences held out from training.
type Calibration struct {
	Right     []float64 `json:"right"`     // weights of RightEvidence
	Asserting []float64 `json:"asserting"` // weights of StanceEvidence
	Answer    float64   `json:"answer"`    // least chance of a right verdict to answer
	Near      float64   `json:"near"`      // least chance of a right belief to offer the nearest
}

// RightEvidence is what the chance of a right belief is computed from.
func (m Match) RightEvidence() []float64 {
	best, second := m.Ranked[0].Score, m.Ranked[0].Score-1
	if len(m.Ranked) > 1 {
		second = m.Ranked[1].Score
	}
	return []float64{1, best, best - second, best - m.Foreign, m.Known}
}

// StanceEvidence is what the chance of asserting is computed from.
func (m Match) StanceEvidence() []float64 {
	question := 0.0
	if m.Question {
		question = 1
	}
	return []float64{1, m.Own, m.General, question}
}

// chance gives the chance that a belief of this raw score is the right one, were it the best.
func (m *Matcher) chance(of Match, score float64) float64 {
	if score == of.Ranked[0].Score {
		return of.Right
	}
	return logistic(m.settings.Right, []float64{1, score, score - of.Ranked[0].Score, score - of.Foreign, of.Known})
}

// logistic gives the chance that follows from weighted evidence. Without weights it is even.
func logistic(weights, evidence []float64) float64 {
	var z float64
	for i, w := range weights {
		z += w * evidence[i]
	}
	return 1 / (1 + math.Exp(-z))
}

// Decision is what is said of a sentence, given its match.
type Decision struct {
	Answered   bool
	Far        bool // nothing the corpus covers is near
	Stance     Stance
	Verdict    Verdict // on the sentence as said; Unknown when not answered
	Given      Verdict // what the verdict is or would have been
	Confidence float64 // chance that belief and verdict are right
}

// Decide gives the verdict on a sentence whose best belief has verdict v. It answers only when it is sure enough of the
// belief and, where the verdict hangs on it, of the stance.
func (k Calibration) Decide(m Match, v Verdict) Decision {
	d := Decision{Stance: Asserts, Verdict: Unknown}
	sure := m.Asserting
	if m.Asserting < 0.5 {
		d.Stance, sure = Denies, 1-m.Asserting
	}
	if v == Depends {
		sure = 1
	}
	d.Confidence = m.Right * sure
	d.Answered = d.Confidence >= k.Answer
	d.Far = !d.Answered && m.Right < k.Near
	d.Given = v.On(d.Stance)
	if d.Answered {
		d.Verdict = d.Given
	}
	return d
}

// Calibrated gives the match with the chances that a calibration makes of it.
func (m Match) Calibrated(k Calibration) Match {
	m.Right, m.Asserting = logistic(k.Right, m.RightEvidence()), logistic(k.Asserting, m.StanceEvidence())
	return m
}
