package crew

import (
	"fmt"
	"math"
	"strings"

	"hearsay/internal/release"
)

// Talk is a toolbox talk on one to four beliefs.
type Talk struct {
	Title    string        `json:"title"`
	Language string        `json:"language"`
	Minutes  int           `json:"minutes"` // reading aloud, showing and asking
	Lessons  []Lesson      `json:"lessons"`
	Made     *release.Made `json:"made,omitempty"` // by what it was made, on paper
	words    Words
}

// A talk is to be over in ten minutes, with as many beliefs as people take along.
const (
	mostBeliefs = 4
	mostMinutes = 10

	spokenWords   = 150 // read aloud in a minute
	showMinutes   = 0.6
	answerMinutes = 0.15 // for the crew's answer to a question
)

// Talk makes a talk. Where the beliefs are too many for ten minutes to say all of them at length, the reasons are told in
// their first sentences.
func (t *Trainer) Talk(title string, beliefs []string) (*Talk, error) {
	if n := len(beliefs); n == 0 || n > mostBeliefs {
		return nil, fmt.Errorf("a talk takes one to %d beliefs, not %d: choose fewer", mostBeliefs, n)
	}
	talk := &Talk{Title: title, Language: t.words.Language, words: t.words}
	if title == "" {
		talk.Title = t.words.Say("talk.title")
	}
	for _, id := range beliefs {
		l, err := t.Lesson(id)
		if err != nil {
			return nil, err
		}
		talk.Lessons = append(talk.Lessons, l)
	}
	for keep := 3; talk.length() > mostMinutes && keep >= 0; keep-- {
		for i := range talk.Lessons {
			talk.Lessons[i].Why = sentences(talk.Lessons[i].Why, keep)
		}
	}
	talk.Minutes = int(math.Ceil(talk.length()))
	return talk, nil
}

// length is how many minutes the talk takes.
func (t *Talk) length() float64 {
	var minutes float64
	for _, l := range t.Lessons {
		spoken := strings.Join(append([]string{l.Saying, l.Depends, l.Fact, l.Why, l.Do, l.Say, l.Remember}, l.Ask...), " ")
		minutes += float64(len(strings.Fields(spoken)))/spokenWords + float64(len(l.Ask))*answerMinutes
		if l.Show != "" {
			minutes += showMinutes
		}
	}
	return minutes
}

// sentences gives the first n sentences of a text.
func sentences(text string, n int) string {
	end := 0
	for ; n > 0; n-- {
		next := strings.Index(text[end:], ". ")
		if next < 0 {
			return text
		}
		end += next + 2
	}
	return strings.TrimSpace(text[:end])
}

// Beliefs lists what the talk is about.
func (t *Talk) Beliefs() []string {
	var ids []string
	for _, l := range t.Lessons {
		ids = append(ids, l.Belief)
	}
	return ids
}

// Say gives a sentence of the talk's language; its templates use it.
func (t *Talk) Say(key string, with ...string) string { return t.words.Say(key, with...) }

// Length says how long the talk takes.
func (t *Talk) Length() string { return t.words.Say("talk.minutes", "n", fmt.Sprint(t.Minutes)) }
