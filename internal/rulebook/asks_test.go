package rulebook_test

import (
	"context"
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// TestEveryFactAskedForMatters: for every fact that an open practice asks for there are two jobs that differ in that fact
// alone and come out differently. (Second promise.) They are looked for at the ends of the fact, at its usual values and
// around every number that an open condition compares with; where the answer hangs on other facts, too, these are stated first.
// It holds a few of the questions met, the same in each run; HEARSAY_THOROUGH=1 holds all of hundreds of jobs, drawn anew.
func TestEveryFactAskedForMatters(t *testing.T) {
	b := load(t)
	jobs := rapid.Custom(func(t *rapid.T) *job.Job { return randomJob(t, b) })
	first, many, most := 1, 3, 15
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		first, many, most = rand.IntN(1<<30), 200, 1<<30
	}
	shuffle := rand.New(rand.NewPCG(uint64(first), 1))
	tried, unfound := map[string]bool{}, 0
	for seed := range many {
		j := jobs.Example(first + seed)
		review, err := b.Judge(context.Background(), j)
		require.NoError(t, err)
		var questions []question
		for _, one := range review.Judgements {
			for _, fact := range one.Asks {
				questions = append(questions, question{t, b, one.Practice.ID, fact, rand.New(rand.NewPCG(7, uint64(first+seed)))})
			}
		}
		shuffle.Shuffle(len(questions), func(i, k int) { questions[i], questions[k] = questions[k], questions[i] })
		for _, q := range questions[:min(most, len(questions))] {
			if key := q.practice + " " + q.fact; !tried[key] {
				tried[key] = true
				if !q.matters(j) {
					t.Logf("%s asks for %s, and no value of it was found that changes anything: %v\nin %s", q.practice, q.fact, opens(q.judge(j)), stated(j))
					if severalAtOnce[q.practice] == "" {
						unfound++
					}
				}
			}
		}
	}
	// The search is no proof: a narrow window may be missed now and then, while a fault gives many.
	require.NotEmpty(t, tried)
	require.LessOrEqual(t, unfound, 1+len(tried)/25, "of %d questions %d change nothing that could be found", len(tried), unfound)
}

// severalAtOnce are the practices whose questions may go without a pair of jobs, and why: what they compare hangs on so many
// facts that values at which one of them decides are seldom met.
var severalAtOnce = map[string]string{
	"delivery/yield-short":      "three facts must agree to within 2 %, and most values contradict each other",
	"order/unfit-strength":      "the greatest of a dozen limits: its range is reckoned at ends that no one use reaches",
	"moisture/covered-too-soon": "a range over nine facts, of which most move it little",
	"cold/blanket-too-thin":     "a run through a night, of which each fact moves the cover needed a little",
	"cold/no-protection":        "a run through a night, of which each fact moves the hours a little",
	"water/over-limit":          "mix, water and load together, within a few thousandths of the ratio",
	"water/for-slump":           "mix, water and load together, within a few thousandths of the ratio",
	"finish/evaporation-high":   "air, concrete, wind and humidity together",
	"steel/too-little":          "sides, joints, friction and steel together",
}

// TestTheBestQuestionComesFirst: what settles a grave practice alone comes before what is one of many things that a slight
// one lacks; each open fact is asked for once, and what nobody knows not at all.
func TestTheBestQuestionComesFirst(t *testing.T) {
	b := load(t)
	open := func(id, severity string, facts ...string) *rulebook.Judgement {
		return &rulebook.Judgement{Practice: &rulebook.Practice{ID: id, Severity: severity}, Status: rulebook.Ask,
			Open: []rulebook.Open{{Facts: facts}}, Asks: facts}
	}
	r := &rulebook.Review{Job: job.New(), Judgements: []*rulebook.Judgement{
		open("a/slight", "mind", "cure.days", "finish.final", "load.age", "order.air"),
		open("a/grave", "stop", "order.strength"),
		open("a/middling", "fix", "load.age", "weather.low"),
	}}
	var asked []string
	for _, q := range b.Questions(r) {
		asked = append(asked, q.Fact)
	}
	assert.Equal(t, []string{"order.strength", "load.age", "weather.low", "cure.days", "finish.final", "order.air"}, asked)
	r.Job.NotKnown = []string{"order.strength"}
	assert.Equal(t, "load.age", b.Questions(r)[0].Fact)
}

// question is a fact that a practice asks for.
type question struct {
	t        *testing.T
	b        *rulebook.Book
	practice string
	fact     string
	random   *rand.Rand
}

// matters looks for two values of the fact that give different answers, first in the job as it is, then with other facts that
// are asked for stated so that the answer still hangs on this one.
func (q question) matters(j *job.Job) bool {
	for range 40 {
		for more, ok := j, true; ok; {
			one := q.judge(more)
			if q.differs(more, one) {
				return true
			}
			more, ok = q.narrowed(more, one)
		}
	}
	return false
}

func (q question) judge(j *job.Job) *rulebook.Judgement {
	one, err := q.b.JudgeOne(context.Background(), j, q.practice)
	require.NoError(q.t, err)
	return one
}

// differs says whether two values of the fact leave something else open, or come out otherwise. Where the rest of the job
// leaves a fact one value only, it is asked for in vain but not wrongly.
func (q question) differs(j *job.Job, one *rulebook.Judgement) bool {
	f, _ := q.b.Facts.Fact(q.fact)
	seen, possible := map[string]bool{}, 0
	for _, v := range q.values(f, one) {
		with, ok := q.with(j, f, v)
		if !ok {
			continue
		}
		possible++
		after := q.judge(with)
		seen[fmt.Sprint(after.Status, after.Reasons, opens(after))] = true
		if len(seen) > 1 {
			return true
		}
	}
	return possible < 2
}

func (q question) with(j *job.Job, f *job.Fact, v any) (*job.Job, bool) {
	with := j.Clone()
	return with, with.State(q.b.Facts, f.Path, v) == nil && with.Follow(q.b.Facts) == nil && !contradicts(q.b, with)
}

// narrowed states one of the other facts asked for with a value that leaves the answer hanging on this one.
func (q question) narrowed(j *job.Job, one *rulebook.Judgement) (*job.Job, bool) {
	others := slices.DeleteFunc(slices.Clone(one.Asks), func(ask string) bool { return ask == q.fact })
	q.random.Shuffle(len(others), func(i, k int) { others[i], others[k] = others[k], others[i] })
	for _, other := range others {
		f, _ := q.b.Facts.Fact(other)
		values := q.values(f, one)
		q.random.Shuffle(len(values), func(i, k int) { values[i], values[k] = values[k], values[i] })
		values = values[:min(3, len(values))]
		if f.Kind == job.KindQuantity { // what is usual agrees best with the rest
			for range 3 {
				values = append([]any{map[string]any{"value": q.between(f.Usual), "unit": f.Unit}}, values...)
			}
		}
		for _, v := range values {
			if next, ok := q.with(j, f, v); ok && slices.Contains(q.judge(next).Asks, q.fact) {
				return next, true
			}
		}
	}
	return nil, false
}

// values lists the values of a fact to try: every flag and choice; of a quantity the ends, usual values, and values around each
// number that an open condition names.
func (q question) values(f *job.Fact, one *rulebook.Judgement) []any {
	var values []any
	quantity := func(v float64) any { return map[string]any{"value": v, "unit": f.Unit} }
	switch f.Kind {
	case job.KindFlag:
		return []any{true, false}
	case job.KindChoice:
		for _, c := range f.Choices {
			values = append(values, c.Value)
		}
	case job.KindQuantity:
		at := []float64{f.Possible.Low, f.Possible.High, f.Usual.Low, f.Usual.High, (f.Usual.Low + f.Usual.High) / 2, q.between(f.Usual), q.between(f.Usual), q.between(f.Possible)}
		for _, limit := range numbersIn(one) {
			at = append(at, limit, limit-0.01*max(1, limit), limit+0.01*max(1, limit))
		}
		for _, v := range at {
			if f.Possible.Contains(v) {
				values = append(values, quantity(v))
			}
		}
	case job.KindList:
		for _, r := range []float64{0.1, 0.3, 0.6, 1} {
			v := f.Possible.Low + r*(f.Possible.High-f.Possible.Low)
			values = append(values, []any{quantity(v), quantity(v), quantity(v)}, []any{quantity(f.Possible.Low), quantity(v), quantity(v)})
		}
	case job.KindSeries:
		for range 6 {
			values = append(values, randomSeries(q.random, f))
		}
	case job.KindTime:
		values = []any{"0:00", "6:00", "12:00", "18:00"}
	case job.KindDate:
		values = []any{"2026-01-15", "2026-07-15"}
	}
	return values
}

func (q question) between(r *job.Range) float64 { return r.Low + (r.High-r.Low)*q.random.Float64() }

// randomSeries writes the hours of a forecast.
func randomSeries(random *rand.Rand, f *job.Fact) any {
	most := map[string]float64{"F": 100, "%": 100, "mph": 30, "in/h": 0.5}
	var rows []any
	for hour := range 24 {
		row := map[string]any{"hour": hour}
		for _, column := range slices.Sorted(maps.Keys(f.Columns)) {
			unit := f.Columns[column]
			row[column] = map[string]any{"value": most[unit] * random.Float64(), "unit": unit}
		}
		rows = append(rows, row)
	}
	return rows
}

var inBraces = regexp.MustCompile(`\{?(-?[0-9][0-9.e+]*)`)

// numbersIn finds the numbers that the open conditions of a judgement name.
func numbersIn(one *rulebook.Judgement) []float64 {
	var numbers []float64
	for _, o := range one.Open {
		for _, m := range inBraces.FindAllStringSubmatch(strings.Join(o.Conditions, " "), -1) {
			if v, err := strconv.ParseFloat(m[1], 64); err == nil && !slices.Contains(numbers, v) {
				numbers = append(numbers, v)
			}
		}
	}
	return numbers
}
