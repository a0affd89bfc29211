package crew

import (
	"encoding/json"
	"errors"
	"fmt"
	"math/rand/v2"

	"hearsay/internal/release"
)

// Quiz is a list of questions with their answers.
type Quiz struct {
	Title     string        `json:"title"`
	Language  string        `json:"language"`
	Seed      uint64        `json:"seed"`           // the same seed and choice give the same quiz
	Code      string        `json:"code,omitempty"` // of the session it is kept as
	Questions []Question    `json:"questions"`
	Made      *release.Made `json:"made,omitempty"` // by what it was made, on paper
	words     Words
}

// Question is one question with its choices, one of which is right.
type Question struct {
	ID      string   `json:"id"`     // what is asked, with its numbers: nothing is asked twice
	Belief  string   `json:"belief"` // topic/name: what the answer tells about
	Kind    string   `json:"kind"`   // "verdict", or the figure that gives the answer
	Text    string   `json:"text"`
	Options []Option `json:"options"`
	Key     int      `json:"key"` // of Options, from 0
	Why     []string `json:"why"` // the explanation; for a number, its working
	Unit    string   `json:"unit,omitempty"`
}

// Option is one choice.
type Option struct {
	Text  string  `json:"text"`
	Value float64 `json:"value,omitempty"` // of a number, in the question's unit
	Slip  string  `json:"slip,omitempty"`  // for a wrong one, the mistake that leads to it
}

// Letter is how a choice is named on paper.
func Letter(option int) string { return string(rune('A' + option)) }

// KeyLetter names the right choice.
func (q Question) KeyLetter() string { return Letter(q.Key) }

// ErrAllAsked says that a question about these beliefs with new numbers was not found.
var ErrAllAsked = errors.New("every question on these beliefs has been asked; choose further beliefs or leave the crew out")

// Plan says what a quiz is to be.
type Plan struct {
	Title     string
	Beliefs   []string // asked about, in turn
	Questions int
	Seed      uint64
	Asked     func(id string) bool // what was asked before and is not to be asked again; nil: nothing
}

// Quiz makes a quiz: for each belief in turn a question on what is said, or one with numbers where a figure belongs to it.
// The same plan gives the same quiz.
func (t *Trainer) Quiz(p Plan) (*Quiz, error) {
	if len(p.Beliefs) == 0 || p.Questions < 1 {
		return nil, errors.New("a quiz takes at least one belief and one question")
	}
	z := &Quiz{Title: p.Title, Language: t.words.Language, Seed: p.Seed, words: t.words}
	if z.Title == "" {
		z.Title = t.words.Say("quiz.title")
	}
	r := random(p.Seed)
	asked := map[string]bool{}
	fresh := func(id string) bool { return !asked[id] && (p.Asked == nil || !p.Asked(id)) }
	for dry := 0; len(z.Questions) < p.Questions; {
		turn := len(z.Questions) + dry
		q, err := t.question(r, p.Beliefs[turn%len(p.Beliefs)], turn/len(p.Beliefs)%2 == 1, fresh)
		if errors.Is(err, ErrAllAsked) {
			if dry++; dry > len(p.Beliefs) {
				return nil, err
			}
			continue
		}
		if err != nil {
			return nil, err
		}
		asked[q.ID] = true
		z.Questions, dry = append(z.Questions, *q), 0
	}
	return z, nil
}

// question makes one question on a belief that has not been asked: with numbers where they are wanted and there are some.
func (t *Trainer) question(r *rand.Rand, id string, numbers bool, fresh func(string) bool) (*Question, error) {
	first, second := t.verdictQuestion, t.numberQuestion
	if numbers {
		first, second = second, first
	}
	q, err := first(r, id, fresh)
	if errors.Is(err, ErrAllAsked) {
		q, err = second(r, id, fresh)
	}
	return q, err
}

// Say gives a sentence of the quiz's language; its templates use it.
func (z *Quiz) Say(key string, with ...string) string { return z.words.Say(key, with...) }

// SeedText names the quiz so that it can be made again.
func (z *Quiz) SeedText() string { return fmt.Sprint(z.Seed) }

// ReadQuiz reads the questions of a quiz that was kept as JSON.
func ReadQuiz(text []byte) (*Quiz, error) {
	var z Quiz
	if err := json.Unmarshal(text, &z); err != nil {
		return nil, fmt.Errorf("the quiz cannot be read: %w", err)
	}
	var err error
	z.words, err = readWords(z.Language)
	return &z, err
}
