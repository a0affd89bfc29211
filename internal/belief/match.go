package belief

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"hearsay/internal/belief/linear"
	"hearsay/internal/belief/wording"
)

// Layout tells which class of a model is which. A model has, one after the other: a class for each belief, in their order; one
// for sentences that none covers; for each belief, asserting it against denying it; and sentences that are wrong against
// those that are right, whatever the belief.
type Layout struct{ beliefs []Learned }

// NewLayout gives the layout of a model of these beliefs.
func NewLayout(beliefs []Learned) Layout { return Layout{beliefs} }

// Classes gives the number of classes.
func (l Layout) Classes() int { return l.Wrong() + 1 }

// Foreign is the class of sentences that no belief covers.
func (l Layout) Foreign() int { return len(l.beliefs) }

// Stance is the first class of asserting against denying.
func (l Layout) Stance() int { return l.Foreign() + 1 }

// Wrong is the class of wrong sentences against right ones.
func (l Layout) Wrong() int { return l.Stance() + len(l.beliefs) }

// Matcher finds the belief that a sentence states or denies by what was learned from the corpus.
type Matcher struct {
	Layout
	model    *linear.Model
	concepts *wording.Concepts
	settings Calibration
}

// NewMatcher joins a model, trained on these beliefs in this order, with its calibration.
func NewMatcher(layout Layout, model *linear.Model, concepts *wording.Concepts, settings Calibration) *Matcher {
	return &Matcher{layout, model, concepts, settings}
}

// Scored is a belief with how well a sentence fits it.
type Scored struct {
	Belief string
	Score  float64 // raw: above zero speaks for it
	Chance float64 // that it is the right one
}

// Match is what was found out about a sentence.
type Match struct {
	Ranked    []Scored // by the raw score, best first
	Foreign   float64  // raw score of "no belief covers it"
	Known     float64  // share of what the sentence consists of that the corpus has too
	Own       float64  // raw score of asserting against denying the best belief
	Wrong     float64  // raw score of being wrong, whatever the belief
	General   float64  // the same as asserting against denying the best belief
	Question  bool
	Right     float64 // chance that the best belief is the right one
	Asserting float64 // chance that the sentence asserts the best belief
}

// Match finds the beliefs nearest to a sentence.
func (m *Matcher) Match(text string) Match {
	scores, known := m.model.Scores(wording.Features(text, m.concepts))
	out := Match{Ranked: make([]Scored, len(m.beliefs)), Foreign: float64(scores[m.Layout.Foreign()]), Known: known, Question: strings.Contains(text, "?")}
	best := 0
	for i, b := range m.beliefs {
		out.Ranked[i] = Scored{Belief: b.ID, Score: float64(scores[i])}
		if scores[i] > scores[best] {
			best = i
		}
	}
	slices.SortStableFunc(out.Ranked, func(a, b Scored) int { return cmp.Compare(b.Score, a.Score) })
	sign := 1.0 // asserting what holds is right: the other way about than asserting a myth
	if m.beliefs[best].Verdict == Holds {
		sign = -1
	}
	out.Own = float64(scores[m.Layout.Stance()+best])
	out.Wrong = float64(scores[m.Layout.Wrong()])
	out.General = sign * out.Wrong
	return out.Calibrated(m.settings)
}

// Calibration turns scores into chances. It was fitted on sentences held out from training.
type Calibration struct {
	Right          []float64 `json:"right"`           // weights of RightEvidence
	Asserting      []float64 `json:"asserting"`       // weights of StanceEvidence
	Apart          []float64 `json:"apart"`           // weights of ApartEvidence
	ApartAsserting []float64 `json:"apart_asserting"` // weights of ApartStance
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
	Confidence float64 // chance that belief and verdict are right, by sentences of voices that the model had not heard
	Trust      float64 // what decides whether to answer
}

// answerAt is the least trust at which a claim is answered. It was chosen on sentences held out by voice and on sentences that
// no belief covers; the measuring command shows what others would give.
const answerAt = 0.70

// Decide gives the verdict on a sentence whose best belief has verdict v. It answers only when it is sure enough of the
// belief and, where the verdict hangs on it, of the stance.
func (m Match) Decide(v Verdict) Decision {
	d := Decision{Stance: Asserts, Verdict: Unknown}
	sure := m.Asserting
	if m.Asserting < 0.5 {
		d.Stance, sure = Denies, 1-m.Asserting
	}
	if v == Depends {
		sure = 1
	}
	d.Confidence = m.Right * sure
	// The chance of the belief is understated: it was fitted on voices not heard, and the model has heard all three. The chance
	// of the stance is not. Taking the root of the first gives, held out, a fourth fewer opposite verdicts for as many answers.
	d.Trust = math.Sqrt(m.Right) * sure
	d.Answered = d.Trust >= answerAt
	d.Far = !d.Answered && m.Foreign > m.Ranked[0].Score
	d.Given = v.On(d.Stance)
	if d.Answered {
		d.Verdict = d.Given
	}
	return d
}

// Calibrated gives the match with the chances that a calibration makes of it.
func (m Match) Calibrated(k Calibration) Match {
	m.Right, m.Asserting = logistic(k.Right, m.RightEvidence()), logistic(k.Asserting, m.StanceEvidence())
	best := m.Ranked[0].Score
	for i := range m.Ranked {
		score := m.Ranked[i].Score
		m.Ranked[i].Chance = logistic(k.Right, []float64{1, score, score - best, score - m.Foreign, m.Known})
	}
	m.Ranked[0].Chance = m.Right
	return m
}

// Apart gives the match with a belief put first that the model never learned, found by how like the sentence is to its
// sentences. Holds tells whether the verdict on that belief is that it holds.
func (m Match) Apart(id string, like Likeness, holds bool, k Calibration) Match {
	m.Right = logistic(k.Apart, m.ApartEvidence(like))
	m.Asserting = logistic(k.ApartAsserting, m.ApartStance(like, holds))
	m.Foreign = math.Inf(-1)
	rest := slices.DeleteFunc(slices.Clone(m.Ranked), func(s Scored) bool { return s.Belief == id }) // learned before a pack replaced it
	m.Ranked = slices.Insert(rest, 0, Scored{Belief: id, Score: like.Best(), Chance: m.Right})
	return m
}

// ApartEvidence is what the chance of a belief is computed from that the model never learned.
func (m Match) ApartEvidence(like Likeness) []float64 {
	return []float64{1, like.Best(), m.Ranked[0].Chance}
}

// ApartStance is what the chance of asserting such a belief is computed from.
func (m Match) ApartStance(like Likeness, holds bool) []float64 {
	general := m.Wrong - like.Usual
	if holds { // asserting what holds is right
		general = -general
	}
	return []float64{1, like.Said - like.Denied, like.Turned, general, like.Wrongness, like.Negation}
}

// wrong is the raw score of being wrong, whatever the belief.
func (m *Matcher) wrong(features []wording.Feature) float64 {
	scores, _ := m.model.Scores(features)
	return float64(scores[m.Layout.Wrong()])
}

// Without gives the match without some beliefs.
func (m Match) Without(drop func(id string) bool, k Calibration) Match {
	kept := slices.DeleteFunc(slices.Clone(m.Ranked), func(s Scored) bool { return drop(s.Belief) })
	if len(kept) == 0 || len(kept) == len(m.Ranked) {
		return m
	}
	m.Ranked = kept
	return m.Calibrated(k)
}
