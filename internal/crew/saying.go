package crew

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"hearsay/internal/belief"
)

// verdicts are the choices of a question on what is said, in this order always.
var verdicts = [...]belief.Verdict{belief.Myth, belief.Holds, belief.Depends}

// saying is a sentence to be judged.
type saying struct {
	text   string
	stance belief.Stance
}

// sayings are the sentences about a belief that a crew can be asked to judge: the belief itself, and the way crews say or
// deny it. Where the answer depends, only the belief itself is asked: a sentence may state the condition along. Questions are
// left out, and so are the sentences of the corpus in another language, which are not translated.
func (t *Trainer) sayings(e *belief.Entry, l Lesson) []saying {
	list := []saying{{l.Saying, belief.Asserts}}
	if e.Verdict == belief.Depends {
		return list
	}
	if t.words.Language != "en" {
		if e.Verdict == belief.Myth {
			list = append(list, saying{l.Say, belief.Denies})
		}
		return list
	}
	for _, s := range e.Said["crew"] {
		list = append(list, saying{s, belief.Asserts})
	}
	for _, s := range e.Denied["crew"] {
		list = append(list, saying{s, belief.Denies})
	}
	kept := list[:0]
	for _, s := range list {
		if !strings.Contains(s.text, "?") {
			kept = append(kept, s)
		}
	}
	return kept
}

// verdictQuestion asks whether a sentence is a myth, holds or depends. Sentences that say the belief and sentences that deny
// it come up equally often, so that "myth" is not the safe guess.
func (t *Trainer) verdictQuestion(r *rand.Rand, id string, fresh func(string) bool) (*Question, error) {
	e, err := t.corpus.Entry(id)
	if err != nil {
		return nil, err
	}
	l, err := t.Lesson(id)
	if err != nil {
		return nil, err
	}
	var open [2][]saying
	for _, s := range t.sayings(e, l) {
		if !fresh(sayingID(id, s.text)) {
			continue
		}
		side := 0
		if s.stance == belief.Denies {
			side = 1
		}
		open[side] = append(open[side], s)
	}
	side := r.IntN(2)
	if len(open[side]) == 0 {
		side = 1 - side
	}
	if len(open[side]) == 0 {
		return nil, ErrAllAsked
	}
	s := open[side][r.IntN(len(open[side]))]
	q := &Question{ID: sayingID(id, s.text), Belief: id, Kind: "verdict", Text: t.words.Say("quiz.saying", "saying", capital(s.text))}
	right := e.Verdict.On(s.stance)
	for i, v := range verdicts {
		q.Options = append(q.Options, Option{Text: t.words.Say("verdict." + string(v))})
		if v == right {
			q.Key = i
		}
	}
	if l.Depends != "" {
		q.Why = append(q.Why, t.words.Say("depends", "on", l.Depends))
	}
	q.Why = append(q.Why, l.Fact)
	return q, nil
}

func sayingID(belief, text string) string { return fmt.Sprintf("%s: %s", belief, text) }
