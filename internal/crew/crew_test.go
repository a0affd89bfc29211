package crew

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/belief"
)

func TestEveryBeliefMakesALesson(t *testing.T) {
	tr := trainer(t, "en")
	for _, id := range tr.Beliefs() {
		l, err := tr.Lesson(id)
		require.NoError(t, err)
		for name, text := range map[string]string{"fact": l.Fact, "show": l.Show, "remember": l.Remember, "say": l.Say} {
			assert.NotEmpty(t, text, "%s has nothing to %s", id, name)
			assert.NotContains(t, text, "{", "%s: %s", id, name)
		}
		assert.GreaterOrEqual(t, len(l.Ask), 2, "%s has too few questions", id)
	}
}

func TestATalkFitsTenMinutes(t *testing.T) {
	tr := trainer(t, "en")
	ids := tr.Beliefs()
	length := func(id string) float64 {
		l, err := tr.Lesson(id)
		require.NoError(t, err)
		return (&Talk{Lessons: []Lesson{l}}).length()
	}
	slices.SortFunc(ids, func(a, b string) int {
		if length(a) > length(b) {
			return -1
		}
		return 1
	})
	for n := 1; n <= mostBeliefs; n++ { // the longest there are
		talk, err := tr.Talk("", ids[:n])
		require.NoError(t, err)
		assert.LessOrEqual(t, talk.Minutes, mostMinutes, "%d beliefs", n)
		t.Logf("%d beliefs: %.1f min", n, talk.length())
	}
	_, err := tr.Talk("", ids[:5])
	assert.Error(t, err)
}

func TestChoosing(t *testing.T) {
	tr := trainer(t, "en")
	water, err := tr.Choose(Choice{Topic: "water"})
	require.NoError(t, err)
	assert.Contains(t, water, "water/wash-water-no-matter")
	cold, err := tr.Choose(Choice{Season: "cold", Most: 4})
	require.NoError(t, err)
	assert.Len(t, cold, 4)
	wrong, err := tr.Choose(Choice{Practices: []string{"steel/instead-of-joints"}})
	require.NoError(t, err)
	assert.Contains(t, wrong, "steel/prevents-cracks")
	ranked, err := tr.Choose(Choice{Topic: "water", Rank: map[string]int{"water/wetter-is-stronger": 3}, Most: 1})
	require.NoError(t, err)
	assert.Equal(t, []string{"water/wetter-is-stronger"}, ranked)
	_, err = tr.Choose(Choice{Topic: "no such topic"})
	assert.ErrorIs(t, err, ErrNothing)
	_, err = tr.Choose(Choice{Beliefs: []string{"water/no-such"}})
	assert.Error(t, err)
}

func TestAQuizIsTheSameForTheSameSeedAndAsksNothingTwice(t *testing.T) {
	tr := trainer(t, "en")
	beliefs, err := tr.Choose(Choice{Topic: "water"})
	require.NoError(t, err)
	plan := Plan{Beliefs: beliefs, Questions: 40, Seed: 11}
	a, err := tr.Quiz(plan)
	require.NoError(t, err)
	b, err := tr.Quiz(plan)
	require.NoError(t, err)
	assert.Equal(t, a.Questions, b.Questions)
	seen := map[string]bool{}
	numbers := 0
	for _, q := range a.Questions {
		assert.False(t, seen[q.ID], "%s is asked twice", q.ID)
		seen[q.ID] = true
		if q.Kind != "verdict" {
			numbers++
		}
	}
	assert.Greater(t, numbers, 5)
	plan.Asked, plan.Seed = func(id string) bool { return seen[id] }, 11
	c, err := tr.Quiz(plan)
	require.NoError(t, err)
	for _, q := range c.Questions {
		assert.False(t, seen[q.ID], "%s was asked before", q.ID)
	}
	plan.Beliefs, plan.Asked = beliefs[:1], func(string) bool { return true }
	_, err = tr.Quiz(plan)
	assert.True(t, errors.Is(err, ErrAllAsked))
}

func TestTheKeyOfASayingIsTheVerdictOnIt(t *testing.T) {
	tr := trainer(t, "en")
	sides := map[string]int{}
	for i, id := range tr.Beliefs() {
		e, err := tr.corpus.Entry(id)
		require.NoError(t, err)
		q, err := tr.verdictQuestion(random(uint64(i)), id, func(string) bool { return true })
		require.NoError(t, err)
		want := e.Verdict
		for _, s := range e.Denied["crew"] {
			if strings.HasSuffix(q.ID, ": "+s) {
				want = e.Verdict.On(belief.Denies)
			}
		}
		assert.Equal(t, tr.words.Say("verdict."+string(want)), q.Options[q.Key].Text, q.Text)
		sides[string(want)]++
	}
	assert.Greater(t, sides["myth"], 20)
	assert.Greater(t, sides["holds"], 20, "myth would be the safe guess")
}
