package rulebook

import (
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// search looks for edges that hold a number. It starts from the jobs of the practices and the sample jobs, moves single facts
// and then several, and leaves out of what it finds every fact that is not needed.
type search struct {
	*bench
	random   *rand.Rand
	pool     []map[string]any            // jobs as facts, numbers in the units of the facts
	own      map[string][]map[string]any // the two jobs of each practice
	reads    map[string][]reading        // by limit: which figure reads it in which job of the pool
	looked   bool
	deadline time.Time // for the number looked at
}

type reading struct {
	figure string
	facts  map[string]any
}

func newSearch(t *testing.T, b *bench) *search {
	s := &search{bench: b, random: rand.New(rand.NewPCG(3, 5)), own: map[string][]map[string]any{}, reads: map[string][]reading{}}
	for _, p := range b.book.practices {
		text, err := os.ReadFile(filepath.Join("../../testdata/practices", p.ID+".yaml"))
		require.NoError(t, err)
		var two map[string]any
		require.NoError(t, yaml.Unmarshal(text, &two))
		for _, name := range []string{"wrong", "right"} {
			one, err := yaml.Marshal(two[name])
			require.NoError(t, err)
			facts := s.read(t, p.ID, one)
			s.own[p.ID] = append(s.own[p.ID], facts)
			s.pool = append(s.pool, facts)
		}
	}
	files, err := filepath.Glob("../../testdata/jobs/*.yaml")
	require.NoError(t, err)
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		s.pool = append(s.pool, s.read(t, file, text))
	}
	for range 40 {
		s.pool = append(s.pool, s.draw(map[string]any{}, s.paths(), 10+s.random.IntN(60)))
	}
	return s
}

func (s *search) read(t *testing.T, name string, text []byte) map[string]any {
	j, _, err := job.Read(s.book.Facts, name, text)
	require.NoError(t, err)
	return writtenFacts(j)
}

// writtenFacts gives the facts of a job as a file would state them.
func writtenFacts(j *job.Job) map[string]any {
	facts := map[string]any{}
	for _, st := range j.Stated {
		if st.From == "" {
			facts[st.Fact.Path] = writtenValue(st.Fact, st.Value)
		}
	}
	return facts
}

// only keeps those of these facts that a job states or that follow from what it states.
func only(j *job.Job, paths []string) map[string]any {
	some := map[string]any{}
	for _, path := range paths {
		if st, ok := j.Find(path); ok {
			some[path] = writtenValue(st.Fact, st.Value)
		}
	}
	return some
}

func writtenValue(f *job.Fact, v any) any {
	switch v := v.(type) {
	case float64:
		if f.Kind == job.KindTime {
			return fmt.Sprintf("%02d:%02d", int(v), int(math.Round(v*60))%60)
		}
		return quantityText(v, f.Unit)
	case []float64:
		var list []any
		for _, n := range v {
			list = append(list, quantityText(n, f.Unit))
		}
		return list
	case []map[string]float64:
		var rows []any
		for _, r := range v {
			row := map[string]any{}
			for column, n := range r {
				row[column] = quantityText(n, f.Columns[column])
			}
			rows = append(rows, row)
		}
		return rows
	}
	return v
}

// quantityText writes a number with its unit; to so many digits that it reads well.
func quantityText(v float64, unit string) string {
	return strings.TrimSpace(five(v) + " " + quantity.Symbol(unit))
}

func (s *search) paths() []string { return s.book.Facts.Paths() }

// draw states random values for a share of these facts, one after the other, keeping the job free of contradictions.
func (s *search) draw(base map[string]any, paths []string, share int) map[string]any {
	facts := maps.Clone(base)
	for _, path := range paths {
		if s.random.IntN(100) >= share {
			continue
		}
		if v, ok := s.value(path); ok {
			next := maps.Clone(facts)
			next[path] = v
			if _, err := s.jobOf(next); err == nil {
				facts = next
			}
		}
	}
	return facts
}

func (s *search) value(path string) (any, bool) {
	f, _ := s.book.Facts.Fact(path)
	switch f.Kind {
	case job.KindQuantity:
		r := f.Usual
		if r == nil || s.random.IntN(5) == 0 && f.Possible != nil {
			r = f.Possible
		}
		if r == nil {
			return nil, false
		}
		return quantityText(toDigits(r.Low+(r.High-r.Low)*s.random.Float64(), 2), f.Unit), true
	case job.KindChoice:
		return f.Choices[s.random.IntN(len(f.Choices))].Value, true
	case job.KindFlag:
		return s.random.IntN(2) == 0, true
	}
	return nil, false
}

// shrink leaves out every fact without which the edge still holds what it held.
func (s *search) shrink(facts map[string]any, good func(map[string]any) bool) map[string]any {
	for _, path := range slices.Sorted(maps.Keys(facts)) {
		less := maps.Clone(facts)
		delete(less, path)
		if good(less) {
			facts = less
		}
	}
	return facts
}

// shows says whether some change of a number on one side of it changes what these jobs come to.
func (s *search) shows(c cell, up bool, checks ...check) bool {
	for _, v := range c.changes(up) {
		caught := false
		s.with(c, v, func() {
			caught = slices.ContainsFunc(checks, func(one check) bool {
				got := s.come(one)
				return got != one.want && got != unsaid
			})
		})
		if caught {
			return true
		}
	}
	return false
}

// at gives one job of an edge with what it comes to by the limits as they stand.
func (s *search) at(e edge, facts map[string]any) (check, bool) {
	j, err := s.jobOf(facts)
	if err != nil {
		return check{}, false
	}
	one := check{edge: e, facts: facts, job: j}
	one.want = s.come(one)
	one.known = e.Figure == "" || s.book.Figures.Sheet(j).Result(e.Figure).Known
	return one, one.want != unsaid && one.want != "nothing"
}
