package rulebook

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/document"
	"hearsay/rules"
)

// TestEveryLimitIsHeld: a number of a limit that is changed, to either side of what it is, makes some held job come out
// otherwise, and a published example or a job of testdata/limits tells so. Each number of every table counts.
func TestEveryLimitIsHeld(t *testing.T) {
	b, err := Load(rules.Files)
	require.NoError(t, err)
	edges := readEdges(t)
	if *updateLimits != "" {
		edges = updated(t, b, edges)
		writeEdges(t, edges)
	}
	var group sync.WaitGroup
	var lock sync.Mutex
	count := map[string]int{}
	for part := range 2 {
		own, err := newBench(b)
		require.NoError(t, err)
		group.Go(func() {
			h := newHolders(t, own, edges)
			for i, c := range own.cells() {
				if i%2 != part {
					continue
				}
				for _, up := range []bool{true, false} {
					by, tried := h.holds(c, up)
					lock.Lock()
					count[by]++
					count["changes computed"] += tried
					lock.Unlock()
					assert.NotEmpty(t, by, "nothing notices %s (%v) being %s: %s", c.name(), c.value, map[bool]string{true: "more", false: "less"}[up], remedy)
				}
			}
		})
	}
	group.Wait()
	t.Log(count)
}

const remedy = "let a rule or figure read it, or take it away; `go test ./internal/rulebook -run EveryLimit -update-limits` looks for a job that shows it"

// TestHeldJobsHold: each job of testdata/limits comes to what is written there, and holds a number that there is.
func TestHeldJobsHold(t *testing.T) {
	b, err := Load(rules.Files)
	require.NoError(t, err)
	own, err := newBench(b)
	require.NoError(t, err)
	there := map[string]bool{}
	for _, c := range own.cells() {
		there[c.name()] = true
	}
	edges := readEdges(t)
	for _, name := range slices.Sorted(maps.Keys(edges)) {
		assert.True(t, there[name], "%s is no number of a limit", name)
		for _, e := range edges[name] {
			checks, err := own.checks(e)
			require.NoError(t, err, name)
			require.NotEmpty(t, checks, name)
			for _, c := range checks {
				assert.Equal(t, c.want, own.come(c), "%s: %s%s %v", name, c.Practice, c.Figure, c.facts)
			}
		}
	}
}

func (b *bench) cells() []cell {
	var all []cell
	for _, l := range b.book.Limits.Limits() {
		all = append(all, cellsOf(l)...)
	}
	return all
}

// holders are what can notice a changed number: its own jobs, those of the other numbers of its table, and published examples.
type holders struct {
	*bench
	own      map[string][]check
	examples map[string][]exampleYAML // by limit
	table    map[string][]check       // by limit: those of the other numbers of its table too
}

func newHolders(t *testing.T, b *bench, edges map[string][]edge) *holders {
	h := &holders{b, map[string][]check{}, map[string][]exampleYAML{}, map[string][]check{}}
	for name, list := range edges {
		for _, e := range list {
			checks, err := b.checks(e)
			if !assert.NoError(t, err, name) {
				continue
			}
			h.keep(name, checks)
		}
	}
	text, err := rules.Files.ReadFile("examples.yaml")
	assert.NoError(t, err)
	entries, err := document.Read[exampleYAML]("examples.yaml", text)
	assert.NoError(t, err)
	for _, e := range entries {
		j, err := b.jobOf(e.Value.Facts)
		assert.NoError(t, err)
		for _, cite := range b.book.Figures.Sheet(j).Result(e.Value.Figure).Cites {
			if cite.Limit != "" {
				h.examples[cite.Limit] = append(h.examples[cite.Limit], e.Value)
			}
		}
	}
	return h
}

func (h *holders) keep(name string, checks []check) {
	limit, _, _ := strings.Cut(name, " / ")
	h.own[name] = append(h.own[name], checks...)
	h.table["limit."+limit] = append(h.table["limit."+limit], checks...)
}

// holds says what notices a number changed to one side, "" when nothing does, and how many outcomes were computed for it.
func (h *holders) holds(c cell, up bool) (by string, tried int) {
	for _, v := range c.changes(up) {
		h.with(c, v, func() {
			for _, one := range h.own[c.name()] {
				tried++
				if got := h.come(one); got != one.want && got != unsaid {
					by = "a job of its own"
					return
				}
			}
			for _, one := range h.table[c.path] {
				tried++
				if got := h.come(one); got != one.want && got != unsaid {
					by = "a job of another number of its table"
					return
				}
			}
			for _, e := range h.examples[c.path] {
				tried++
				if one, err := h.book.example("", e); err == nil && !one.Good {
					by = "a published example"
					return
				}
			}
		})
		if by != "" {
			return by, tried
		}
	}
	return "", tried
}

// updated keeps the edges that still hold their numbers and looks for others where none does.
func updated(t *testing.T, b *Book, old map[string][]edge) map[string][]edge {
	own, err := newBench(b)
	require.NoError(t, err)
	b.hangings()
	start := time.Now()
	h, s, all := newHolders(t, own, nil), newSearch(t, own), map[string][]edge{}
	for _, c := range own.cells() {
		name := c.name()
		if topic, _, _ := strings.Cut(name, "."); *updateLimits != "all" && topic != *updateLimits || time.Since(start) > 8*time.Minute {
			if old[name] != nil {
				all[name] = old[name]
			}
			continue
		}
		for _, e := range s.filled(old[name]) {
			if checks, err := own.checks(e); err == nil && !slices.ContainsFunc(checks, func(one check) bool { return own.come(one) != one.want }) {
				all[name] = append(all[name], e)
				h.keep(name, checks)
			}
		}
		if h.both(c) && (len(own.readers[c.path]) == 0 || len(all[name]) > 0) {
			continue
		}
		found := h.look(s, c)
		if len(found) > 0 {
			all[name] = found
		}
		fmt.Println(name, c.value, len(found), h.both(c), time.Since(start).Round(time.Second))
	}
	return all
}

// filled computes anew what jobs come to: after a figure was changed, and where one was written by hand with "gives: ?".
func (s *search) filled(edges []edge) []edge {
	var all []edge
	for _, e := range edges {
		if e.Job != nil {
			if one, ok := s.at(e, e.Job); ok {
				e.Gives = one.want
			}
		}
		all = append(all, e)
	}
	return all
}

// look tries each manner of holding a number, the plainest first, until both of its sides are held.
func (h *holders) look(s *search, c cell) []edge {
	var found []edge
	for _, way := range []func(cell) []edge{s.ofRule, s.ofFigure, s.ofWorking} {
		s.deadline = time.Now().Add(*searchTime)
		for _, e := range way(c) {
			if checks, err := s.checks(e); err == nil {
				found = append(found, e)
				h.keep(c.name(), checks)
			}
		}
		if len(found) > 0 && h.both(c) {
			break
		}
	}
	return found
}

func (h *holders) both(c cell) bool {
	up, _ := h.holds(c, true)
	down, _ := h.holds(c, false)
	return up != "" && down != ""
}
