package crew

import (
	"testing"
	"time"

	"github.com/open-spaced-repetition/go-fsrs/v3"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/store"
)

var monday = time.Date(2026, 3, 2, 7, 0, 0, 0, time.UTC)

// The scheduler's own published example: the days between reviews, each held on the day it falls due.
// Source: go-fsrs 3.3.1, test of the long-term scheduler, with the default weights of FSRS-5.
func TestTheScheduleIsThePublishedOne(t *testing.T) {
	ratings := []bool{true, true, true, true, true, true, false, false, true, true, true, true, true}
	want := []uint64{3, 11, 35, 101, 269, 669, 12, 2, 5, 12, 26, 55, 112}
	var reviews []Review
	at := time.Date(2022, 11, 29, 12, 30, 0, 0, time.UTC)
	for i, right := range ratings {
		reviews = append(reviews, Review{at, right})
		card := schedule(reviews)
		assert.Equal(t, want[i], card.ScheduledDays, "review %d", i+1)
		at = card.Due
	}
	assert.InDelta(t, 111.9726, schedule(reviews).Stability, 0.0001)
	assert.Equal(t, fsrs.Review, schedule(reviews).State)
}

func session(code string, day int, beliefs ...string) store.CrewSession {
	return store.CrewSession{Code: code, Crew: "north", Beliefs: beliefs, Held: monday.AddDate(0, 0, day), Present: []string{"Ana", "Luis"}}
}

func answer(code, person, belief string, right bool) store.CrewAnswer {
	return store.CrewAnswer{Code: code, Person: person, Belief: belief, Correct: right}
}

func TestProgress(t *testing.T) {
	const b = "water/extra-evaporates"
	m := Remember([]store.CrewSession{session("A", 0, b, "joints/spacing-any"), session("B", 7, b), session("C", 30, b)}, []store.CrewAnswer{
		answer("A", "Ana", b, false), answer("A", "Luis", b, true), answer("A", "Luis", b, false),
		answer("B", "ana", b, true), answer("B", "Luis", b, true), answer("C", "Ana", b, false)})
	assert.Equal(t, []Progress{{Belief: b, Told: 2, Asked: 2, First: 2, Now: 1, Back: 1}, {Belief: "joints/spacing-any", Told: 2}}, m.Progress())
	assert.Equal(t, map[string]int{b: 3}, m.Rank())
}

func TestWhatIsWrongFallsDueSoonerAndWhatWasOnlyToldTheNextDay(t *testing.T) {
	m := Remember([]store.CrewSession{session("A", 0, "cure/let-it-dry", "joints/spacing-any")}, []store.CrewAnswer{
		answer("A", "Ana", "cure/let-it-dry", false), answer("A", "Luis", "cure/let-it-dry", true)})
	due := map[string]time.Time{}
	for _, d := range m.Due(monday.AddDate(1, 0, 0)) {
		due[d.Person+" "+d.Belief] = d.Due
	}
	assert.Equal(t, monday.AddDate(0, 0, 1), due["ana joints/spacing-any"])
	assert.Equal(t, monday.AddDate(0, 0, 3), due["luis cure/let-it-dry"])
	assert.Equal(t, monday.AddDate(0, 0, 1), due["ana cure/let-it-dry"])
	assert.Empty(t, m.Due(monday))
}

// A crew over a season: it meets on Mondays, is asked what is due that day, and one of them forgets a thing once.
func TestASeason(t *testing.T) {
	const b = "finish/work-the-water-in"
	sessions := []store.CrewSession{session("S0", 0, b)}
	answers := []store.CrewAnswer{answer("S0", "Ana", b, true), answer("S0", "Luis", b, true)}
	asked := map[string][]int{"ana": {0}, "luis": {0}}
	for week := 1; week <= 30; week++ {
		at := monday.AddDate(0, 0, 7*week)
		due := Remember(sessions, answers).Due(at)
		if len(due) == 0 {
			continue
		}
		code := time.Duration(week).String()
		s := session(code, 7*week, b)
		sessions = append(sessions, s)
		for _, d := range due {
			asked[d.Person] = append(asked[d.Person], week)
			answers = append(answers, answer(code, d.Person, b, d.Person != "ana" || len(asked["ana"]) != 3))
		}
	}
	gaps := func(weeks []int) []int {
		var g []int
		for i := 1; i < len(weeks); i++ {
			g = append(g, weeks[i]-weeks[i-1])
		}
		return g
	}
	luis, ana := gaps(asked["luis"]), gaps(asked["ana"])
	for i := 1; i < len(luis); i++ {
		assert.Greater(t, luis[i], luis[i-1], "what is known is asked ever more rarely: %v", luis)
	}
	require.Greater(t, len(ana), len(luis), "who forgot is asked more often: %v and %v", ana, luis)
	assert.Equal(t, 1, ana[2], "and again the week after")
}
