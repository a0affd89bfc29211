package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// deaf hears nothing in what is said, so that only answers to the question asked are taken.
func deaf(string) ([]desk.Said, []string) { return nil, nil }

func at(t *testing.T, facts map[string]any) *desk.Desk {
	t.Helper()
	b, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	j := job.New()
	for path, v := range facts {
		require.NoError(t, j.State(b.Facts, path, v))
	}
	require.NoError(t, j.Follow(b.Facts))
	d, err := desk.New(b, deaf, j)
	require.NoError(t, err)
	return d
}

func asked(t *testing.T, d *desk.Desk) string {
	t.Helper()
	q, ok := d.Next()
	require.True(t, ok)
	return q.Fact
}

var patio = map[string]any{"member.use": "patio", "member.length": "16 ft", "member.width": "20 ft", "member.thickness": "4 in"}

// What the order names is asked for before anything else that bears on it, and whether there is an accelerator before how much.
func TestTheOrderItselfIsAskedForFirst(t *testing.T) {
	d := at(t, patio)
	seen := map[string]bool{}
	for range 6 {
		fact := asked(t, d)
		assert.NotEqual(t, "cold.chloride_dose", fact)
		assert.False(t, seen[fact], "%s is asked for twice", fact)
		seen[fact] = true
		r, err := d.Hear("don't know")
		require.NoError(t, err)
		assert.NotEmpty(t, r.Understood)
	}
}

func TestABareAnswerIsTaken(t *testing.T) {
	d := at(t, patio)
	for fact := asked(t, d); fact != "cold.accelerator"; fact = asked(t, d) {
		_, err := d.Hear("don't know")
		require.NoError(t, err)
	}
	r, err := d.Hear("Nope.")
	require.NoError(t, err)
	assert.Contains(t, r.Understood, "accelerator: none")
	v, _ := d.Job.Value("cold.chloride_dose")
	assert.Equal(t, 0.0, v, "where there is none, none is dosed")
}

func TestWhatIsWrongIsSaidOnceAndTakenBack(t *testing.T) {
	d := at(t, map[string]any{"member.use": "patio", "exposure.freezes": true, "exposure.wet": "often"})
	require.NoError(t, d.Put(desk.Said{Fact: "order.entrained_air", Value: false, Text: "no air"}, &desk.Reply{}))
	assert.NotEmpty(t, d.Wrong())
	var r desk.Reply
	require.NoError(t, d.Put(desk.Said{Fact: "order.slump", Value: "4 in", Text: "4"}, &r))
	assert.Empty(t, r.Wrong, "it was said before")
	require.NoError(t, d.Put(desk.Said{Fact: "order.entrained_air", Value: true, Text: "with air"}, &r))
	assert.Contains(t, r.Mended, "order/no-air-outdoors")
}
