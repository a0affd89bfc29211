package figure_test

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/figure"
	"hearsay/internal/limit"
	"hearsay/rules"
)

// facts is a job as figures see it: values in the units of the dictionary.
type facts map[string]any

func (f facts) Value(path string) (any, bool) {
	v, ok := f[path]
	return v, ok
}

// loaded reads the limits once: a set of figures is never changed.
var loaded = sync.OnceValues(func() (*figure.Set, error) {
	limits, err := limit.Load(rules.Files)
	if err != nil {
		return nil, err
	}
	return figure.New(limits)
})

func figures(t testing.TB) *figure.Set {
	t.Helper()
	set, err := loaded()
	require.NoError(t, err)
	return set
}

// known computes a figure that must come out.
func known(t testing.TB, name string, f facts) *figure.Result {
	t.Helper()
	r := figures(t).Sheet(f).Result(name)
	require.True(t, r.Known, "%s is not known: lacks %v %s", name, r.Missing, r.Problem)
	return r
}

func TestUnknownFigureSaysWhatItLacks(t *testing.T) {
	r := figures(t).Sheet(facts{"mix.water": 280.0}).Result("wcm")
	assert.False(t, r.Known)
	assert.Equal(t, []string{"mix.wcm"}, r.Missing, "the way that lacks fewest is the one asked for")
}

func TestContradictingWaysAreSaid(t *testing.T) {
	r := figures(t).Sheet(facts{"mix.water": 280.0, "mix.cementitious": 560.0, "mix.wcm": 0.45}).Result("wcm")
	assert.False(t, r.Known)
	assert.Contains(t, r.Problem, "contradict")
}

// TestEveryFigureIsWhole holds each figure to a title, a method, a source and a unit that can be printed.
func TestEveryFigureIsWhole(t *testing.T) {
	for _, f := range figures(t).Figures() {
		assert.NotEmpty(t, f.Title, f.Name)
		assert.NotEmpty(t, f.Method, f.Name)
		assert.NotEmpty(t, f.Ways, f.Name)
	}
}

// A reader can redo the sum from the working: 270 lb of water on 600 lb of cement is 0.450.
func TestWorkingLetsTheSumBeRedone(t *testing.T) {
	r := known(t, "wcm", facts{"mix.water": 270.0, "mix.cementitious": 600.0})
	assert.Equal(t, []string{"w/cm = {270 lb/yd3} / {600 lb/yd3} = 0.450"}, r.Working)
}
