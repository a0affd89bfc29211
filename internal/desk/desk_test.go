package desk_test

import (
	"strings"
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

// hears hears the numbers of a line only where the line names the fact.
func hears(line string) ([]desk.Said, []string) {
	if strings.Contains(line, "aggregate") && strings.Contains(line, "three quarter") {
		return []desk.Said{{Fact: "order.aggregate", Value: "0.75 in", Text: "aggregate size three quarter"}}, nil
	}
	return nil, nil
}

// until says that nobody knows until the fact is asked for.
func until(t *testing.T, d *desk.Desk, want string) {
	t.Helper()
	for fact := asked(t, d); fact != want; fact = asked(t, d) {
		_, err := d.Hear("he doesn't know")
		require.NoError(t, err)
	}
}

func TestPlainAnswersAreRead(t *testing.T) {
	for _, c := range []struct{ fact, line, understood string }{
		{"load.temperature", "about 60, I think", "concrete temperature at placing: 60 °F"},
		{"load.temperature", "it's 15 C", "concrete temperature at placing: 59 °F"},
		{"cold.accelerator", "he says no", "accelerator: none"},
		{"order.aggregate", "around three quarter", "largest aggregate size: 0.75 in"},
		{"order.aggregate", "beats me", "not known: largest aggregate size"},
		{"order.aggregate", "no", "not known: largest aggregate size"},
	} {
		b, err := rulebook.Load(rules.Files)
		require.NoError(t, err)
		j := job.New()
		for path, v := range patio {
			require.NoError(t, j.State(b.Facts, path, v))
		}
		require.NoError(t, j.Follow(b.Facts))
		d, err := desk.New(b, hears, j)
		require.NoError(t, err)
		until(t, d, c.fact)
		r, err := d.Hear(c.line)
		require.NoError(t, err)
		assert.Contains(t, r.Understood, c.understood, c.line)
	}
}

func TestYesToAChoiceIsAskedBack(t *testing.T) {
	d := at(t, patio)
	until(t, d, "cold.accelerator")
	r, err := d.Hear("Yes, sir.")
	require.NoError(t, err)
	require.Len(t, r.Problems, 1)
	assert.Contains(t, r.Problems[0], "calcium chloride")
	assert.Equal(t, "cold.accelerator", asked(t, d))
}

func TestBagsBesideAStrengthAreNoBasis(t *testing.T) {
	b, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	j := job.New()
	require.NoError(t, j.State(b.Facts, "order.strength", "4000 psi"))
	require.NoError(t, j.Follow(b.Facts))
	listen := func(string) ([]desk.Said, []string) {
		return []desk.Said{{Fact: "mix.cementitious", Value: "6 bags/yd3", Text: "six bag"}, {Fact: "order.basis", Value: "bags", Text: "six bag"}}, nil
	}
	d, err := desk.New(b, listen, j)
	require.NoError(t, err)
	r, err := d.Hear("six bag")
	require.NoError(t, err)
	assert.Empty(t, r.Problems)
	assert.Len(t, r.Understood, 1)
}
