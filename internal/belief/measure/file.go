package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"slices"

	"hearsay/internal/belief"
)

// result is one sentence, its right answer, and the answer given.
type result struct {
	text, voice string
	belief      string // empty: no belief covers it
	also        []string
	stance      belief.Stance // where it is known
	wanted      belief.Verdict
	near        []string
	decision    belief.Decision
}

func (r result) accepts(id string) bool { return id == r.belief || slices.Contains(r.also, id) }

func answerFile(c *belief.Corpus, file string) ([]result, error) {
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	var out []result
	lines := bufio.NewScanner(f)
	for n := 1; lines.Scan(); n++ {
		var want struct {
			Text    string         `json:"text"`
			ID      *string        `json:"id"`
			Verdict belief.Verdict `json:"verdict"`
			Also    []string       `json:"also"`
			Voice   string         `json:"voice"`
		}
		if err := json.Unmarshal(lines.Bytes(), &want); err != nil {
			return nil, fmt.Errorf("%s:%d: %w", file, n, err)
		}
		a, err := c.Answer(want.Text)
		if err != nil {
			return nil, err
		}
		r := result{text: want.Text, voice: want.Voice, also: want.Also, wanted: want.Verdict,
			decision: a.Decision}
		if want.ID != nil {
			r.belief = *want.ID
		}
		for _, near := range a.Near {
			r.near = append(r.near, near.Belief)
		}
		out = append(out, r)
	}
	return out, lines.Err()
}
