// Package sample owns random jobs: what benchmarks and comparisons with other programs judge, made from the dictionary
// alone; and bundles of a rulebook, for what follows one.
package sample

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"slices"
	"strings"

	"hearsay/internal/folder"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// Bundle gives the built-in rulebook with a pack of these files over it as a bundle, signed where there is a key, and its revision.
func Bundle(pack folder.Memory, key *rulebook.Key) (file []byte, revision string, err error) {
	p, err := rulebook.OpenPack(pack, nil)
	if err != nil {
		return nil, "", err
	}
	b, err := rulebook.Load(rules.Files, p)
	if err != nil {
		return nil, "", err
	}
	var out bytes.Buffer
	err = b.WriteBundle(&out, key)
	return out.Bytes(), b.Revision(), err
}

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
		if next.State(b.Facts, f.Path, value) == nil && agrees(b, j, next) {
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

// agrees says that no two facts contradict each other, and that the ways of computing a figure give the same, where they did
// before the last fact was stated.
func agrees(b *rulebook.Book, before, j *job.Job) bool {
	before, j = before.Clone(), j.Clone()
	if before.Follow(b.Facts) != nil || j.Follow(b.Facts) != nil {
		return false
	}
	isNew := func(path string) bool {
		_, was := before.Value(path)
		_, is := j.Value(path)
		return is && !was
	}
	sheet := b.Figures.Sheet(j).Tersely()
	for _, f := range b.Figures.Figures() {
		if len(f.Ways) > 1 && slices.ContainsFunc(b.Figures.Needs(f.Name), isNew) && strings.Contains(sheet.Result(f.Name).Problem, "contradict") {
			return false
		}
	}
	return true
}

// Near draws a job like another: it states about keep of 100 of its facts, every quantity moved by up to 3 %, as the orders
// of one plant resemble each other. Hourly series are left out.
func Near(random *rand.Rand, b *rulebook.Book, j *job.Job, keep int) *job.Job {
	near := job.New()
	for _, s := range j.Stated {
		if s.From != "" || random.IntN(100) >= keep {
			continue
		}
		if v, ok := s.Value.(float64); ok && s.Fact.Kind == job.KindQuantity {
			s.Value = v * (0.97 + 0.06*random.Float64())
		}
		if value, ok := written(s); ok {
			next := near.Clone()
			if next.State(b.Facts, s.Fact.Path, value) == nil {
				near = next
			}
		}
	}
	return near
}

// Line writes what a job states as one line of `hearsay review --lines`.
func Line(w io.Writer, j *job.Job) error {
	facts := map[string]any{}
	for _, s := range j.Stated {
		if value, ok := written(s); ok && s.From == "" {
			facts[s.Fact.Path] = value
		}
	}
	return json.NewEncoder(w).Encode(facts)
}

// written gives a fact as a job file has it.
func written(s job.Stated) (any, bool) {
	switch v := s.Value.(type) {
	case float64:
		if s.Fact.Kind == job.KindTime {
			return fmt.Sprintf("%d:%02d", int(v), int(v*60+0.5)%60), true
		}
		return map[string]any{"value": v, "unit": s.Fact.Unit}, true
	case []float64:
		var list []any
		for _, one := range v {
			list = append(list, map[string]any{"value": one, "unit": s.Fact.Unit})
		}
		return list, true
	case []map[string]float64:
		return nil, false
	}
	return s.Value, true
}
