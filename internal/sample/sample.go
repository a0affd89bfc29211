// Package sample owns random jobs: what benchmarks and comparisons with other programs judge, made from the dictionary alone.
package sample

import (
	"encoding/json"
	"io"
	"math/rand/v2"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// Job draws a job that states about share of 100 facts of the dictionary, in values that make sense one by one, and leaves
// out what would contradict the rest. The same numbers give the same job.
func Job(random *rand.Rand, b *rulebook.Book, share int) *job.Job {
	j := job.New()
	for _, f := range b.Facts.Facts() {
		if random.IntN(100) >= share {
			continue
		}
		value, ok := Value(random, f)
		if !ok {
			continue
		}
		next := j.Clone()
		if next.State(b.Facts, f.Path, value) == nil && agrees(b, next) {
			j = next
		}
	}
	return j
}

// Value draws a value for a fact, as it would be written in a job file; kinds that take more than a value give false.
func Value(random *rand.Rand, f *job.Fact) (any, bool) {
	switch f.Kind {
	case job.KindQuantity:
		v := f.Usual.Low + (f.Usual.High-f.Usual.Low)*float64(random.IntN(41))/40
		return map[string]any{"value": v, "unit": f.Unit}, true
	case job.KindList:
		var list []any
		for range 1 + random.IntN(6) {
			v := f.Possible.Low + (f.Possible.High/3-f.Possible.Low)*random.Float64()
			list = append(list, map[string]any{"value": v, "unit": f.Unit})
		}
		return list, true
	case job.KindChoice:
		return f.Choices[random.IntN(len(f.Choices))].Value, true
	case job.KindFlag:
		return random.IntN(2) == 0, true
	}
	return nil, false
}

// agrees says that no two facts contradict each other, and that the ways of computing a figure give the same.
func agrees(b *rulebook.Book, j *job.Job) bool {
	j = j.Clone()
	if j.Follow(b.Facts) != nil {
		return false
	}
	sheet := b.Figures.Sheet(j)
	for _, f := range b.Figures.Figures() {
		if len(f.Ways) > 1 && strings.Contains(sheet.Result(f.Name).Problem, "contradict") {
			return false
		}
	}
	return true
}

// Line writes what a job states as one line of `hearsay review --lines`.
func Line(w io.Writer, j *job.Job) error {
	facts := map[string]any{}
	for _, s := range j.Stated {
		if s.From != "" {
			continue
		}
		switch v := s.Value.(type) {
		case float64:
			facts[s.Fact.Path] = map[string]any{"value": v, "unit": s.Fact.Unit}
		case []float64:
			var list []any
			for _, one := range v {
				list = append(list, map[string]any{"value": one, "unit": s.Fact.Unit})
			}
			facts[s.Fact.Path] = list
		default:
			facts[s.Fact.Path] = v
		}
	}
	return json.NewEncoder(w).Encode(facts)
}
