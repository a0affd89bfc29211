package rulebook_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// draws sets how many random jobs are drawn here, and many times as many where HEARSAY_THOROUGH asks for them. They are drawn
// anew in each run; a job that breaks a promise is written below testdata/rapid, from where the next runs try it first.
func draws(t *testing.T, few, many int) {
	t.Helper()
	before := flag.Lookup("rapid.checks").Value.String()
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		few = many
	}
	require.NoError(t, flag.Set("rapid.checks", fmt.Sprint(few)))
	t.Cleanup(func() { _ = flag.Set("rapid.checks", before) })
}

// forget takes one stated fact after the other out of a job, in random order, and gives the jobs on the way.
func forget(t *rapid.T, d *job.Dictionary, j *job.Job, atOnce int) []*job.Job {
	var paths []string
	for _, s := range j.Stated {
		if s.From == "" {
			paths = append(paths, s.Fact.Path)
		}
	}
	jobs := []*job.Job{j}
	for drop := range slices.Chunk(rapid.Permutation(paths).Draw(t, "forgotten"), max(1, atOnce)) {
		less := jobs[len(jobs)-1].Clone()
		for _, path := range drop {
			less.Drop(path)
		}
		require.NoError(t, less.Follow(d))
		jobs = append(jobs, less)
	}
	return jobs
}

// TestLearningNeverContradicts: what is wrong, right or not here stays so whatever else is learned. (First promise.) A job
// is drawn and its facts forgotten by and by; each answer on the way must be the one that the fuller job gives, or open.
func TestLearningNeverContradicts(t *testing.T) {
	b := load(t)
	draws(t, 10, 1500)
	rapid.Check(t, func(t *rapid.T) {
		learning(t, b, forget(t, b.Facts, randomJob(t, b), rapid.IntRange(1, 40).Draw(t, "forgotten at once")))
	})
}

// learning fails where an answer about one of these jobs is not that about the job before it, of which more is known.
func learning(t *rapid.T, b *rulebook.Book, jobs []*job.Job) {
	more, err := b.Judge(context.Background(), jobs[0])
	require.NoError(t, err)
	for i, j := range jobs[1:] {
		less, err := b.Judge(context.Background(), j)
		require.NoError(t, err)
		for k, one := range less.Judgements {
			if text := reversed(one, more.Judgements[k]); text != "" {
				t.Fatalf("%s %s\nless: %s\nmore: %s", one.Practice.ID, text, stated(j), stated(jobs[i]))
			}
		}
		more = less
	}
}

// reversed says how what is known with more facts contradicts what was said with fewer; "" where it does not. An answer may
// become open again: what was learned says the same as what was known in another way, a little otherwise, and the answer hangs
// on that little; or it leaves a figure that has several ways with a wider range. A practice that no fact can make wrong is right whether or not
// it concerns the job, and may turn out not to.
func reversed(less, more *rulebook.Judgement) string {
	known := []string{rulebook.Wrong, rulebook.Right, rulebook.Ask, rulebook.NotHere}
	switch {
	case !slices.Contains(known, less.Status):
		return fmt.Sprintf("is %q, which is no answer", less.Status)
	case (less.Status == rulebook.Ask) != (len(less.Open) > 0), (less.Status == rulebook.Wrong) != (len(less.Reasons) > 0):
		return fmt.Sprintf("is %s with the reasons %v, open %v", less.Status, less.Reasons, opens(less))
	case less.Status == rulebook.Ask || more.Status == rulebook.Ask:
		return ""
	case less.Status == rulebook.Right && !less.Concerns && more.Status == rulebook.NotHere:
		return ""
	case less.Status != more.Status:
		return fmt.Sprintf("is %s %v when less is known, and %s %v %v when more is known", less.Status, less.Reasons, more.Status, more.Reasons, opens(more))
	case less.Concerns && !more.Concerns:
		return "certainly concerns the job when less is known, and not when more is known"
	}
	for _, r := range less.Reasons {
		if !slices.Contains(more.Reasons, r) {
			return fmt.Sprintf("is wrong because %q when less is known, and not when more is known", r)
		}
	}
	return ""
}

func stated(j *job.Job) string {
	var text strings.Builder
	for _, s := range j.Stated {
		value := fmt.Sprint(s.Value)
		if len(value) > 60 {
			value = value[:60] + "…"
		}
		if s.From != "" {
			value += " from " + s.From
		}
		fmt.Fprintf(&text, "%s=%s, ", s.Fact.Path, value)
	}
	return text.String()
}

// TestFiguresOnlyNarrow: what a figure can be with fewer facts holds what it is with more. On that rests that learning
// reverses no answer, and it is far quicker to try. Held to it are the figures that decide an answer; others only stand
// beside one, and may rest on an assumption that is said.
func TestFiguresOnlyNarrow(t *testing.T) {
	b := load(t)
	deciding := decidingFigures(b)
	require.Greater(t, len(deciding), 50)
	draws(t, 8, 1500)
	rapid.Check(t, func(t *rapid.T) {
		jobs := forget(t, b.Facts, randomJob(t, b), 1)
		more := b.Figures.Sheet(jobs[0])
		for i, j := range jobs[1:] {
			less := b.Figures.Sheet(j)
			for name, ends := range deciding {
				if !changed(b, name, jobs[i], j) {
					continue
				}
				text := outside(less.Result(name), more.Result(name), ends)
				if text != "" && len(more.Torn(b.Figures.Below(name)...)) == 0 {
					t.Fatalf("%s %s\nless: %s\nmore: %s", name, text, stated(j), stated(jobs[i]))
				}
			}
			more = less
		}
	})
}

// decidingFigures lists the figures that the conditions of a practice read, and whether they read the ends of its range.
func decidingFigures(b *rulebook.Book) map[string]bool {
	rules := b.Modules()
	deciding := map[string]bool{}
	for _, m := range rules {
		for _, r := range m.Rules {
			if name := r.Head.Name.String(); name == "number" || name == "mend" || strings.HasPrefix(name, "governing") {
				continue
			}
			ast.WalkRefs(r, func(ref ast.Ref) bool {
				if words := strings.Split(ref.String(), "."); len(words) >= 3 && words[0] == "input" && (words[1] == "figure" || words[1] == "range") {
					deciding[words[2]] = deciding[words[2]] || words[1] == "range"
				}
				return false
			})
		}
	}
	return deciding
}

// changed says whether two jobs differ in a fact that a figure hangs on.
func changed(b *rulebook.Book, name string, more, less *job.Job) bool {
	return slices.ContainsFunc(b.Figures.Needs(name), func(path string) bool {
		_, known := more.Value(path)
		_, still := less.Value(path)
		return known != still
	})
}

// outside says how a figure with more facts known lies outside what it could be with fewer; "" where it does not. A range is found
// by trying the ends of what is not known, and what bends between them can pass it by a little: half a per cent is let go.
func outside(less, more *figure.Result, ends bool) string {
	over := func(low, high, least, most float64) bool {
		little := 5e-3*max(-least, most) + 1e-9
		return low < least-little || high > most+little
	}
	bestLow, bestHigh := less.Best, less.Best
	if less.Bounded {
		bestLow, bestHigh = less.BestLow, less.BestHigh
	}
	nowLow, nowHigh := more.Best, more.Best
	if more.Bounded {
		nowLow, nowHigh = more.BestLow, more.BestHigh
	}
	switch {
	case !less.Known && !less.Bounded: // then whatever hangs on it is open
		return ""
	case !more.Known && (less.Known || !more.Bounded):
		return fmt.Sprintf("is %s, and with more facts unknown: %s", less.Said(), more.Problem)
	case over(nowLow, nowHigh, bestLow, bestHigh):
		return fmt.Sprintf("is %s, and with more facts %s", less.Said(), more.Said())
	case ends && over(more.Low, more.High, less.Low, less.High):
		return fmt.Sprintf("has a range of %.6g to %.6g, and with more facts of %.6g to %.6g", less.Low, less.High, more.Low, more.High)
	}
	return ""
}

// found are jobs that once broke the first promise: the practice, what is known, and the fact learned last.
var found = []struct{ practice, job, learned, value string }{
	{"water/over-limit", "{load: {volume: 8 yd3}, mix: {cementitious: 500 lb/yd3, wcm: 1.19}, water: {added: 40 gal, allowed: 10 gal}}", "order.basis", "bags"},
	{"cold/no-protection", "{protection: {cover: none}, weather: {low: 55 F}}", "weather.air", "20 F"},
	{"durability/air-short", "{exposure: {structural: true, salted: true}, order: {air: 8 %}}", "order.aggregate", "0.25 in"},
	{"delivery/too-old", "{load: {haul: 43 min, time_limit: 43.5 min}}", "load.age", "43.4 min"},
	{"strength/loaded-too-soon", "{strength: {action: strip sides, action_after: 13 h}}", "cure.temperature", "20 F"},
	{"steel/too-little", "{steel: {purpose: drag, kind: bars, area: 0.01 in2/ft}, member: {kind: slab on ground, thickness: 10.5 in}, joints: {spacing: 5 ft}, ground: {base_friction: granular}}", "steel.yield", "95000 psi"},
	{"joints/filled-too-soon", "{member: {kind: slab on ground}, joints: {filled_after: 50 d}}", "cure.days", "49 d"},
	{"water/not-remixed", "{water: {added: 10 gal, minutes_after: 6 min}}", "water.mixing_speed", "4 rpm"},
	{"moisture/covered-too-soon", "{floor: {covering: tile, days_to_covering: 20 d, drying_days: 20 d, drying_sides: one, retarder: direct, judged_by: age}, member: {kind: slab on ground, thickness: 4 in}}", "mix.wcm", "0.56"},
	{"delivery/cold-joint", "{load: {temperature: 51 F, gap: 250 min}, order: {retarder: false}, cold: {chloride_dose: 0 %}}", "cold.accelerator", "non-chloride"},
}

// TestWhatWasFoundStaysMended tries the jobs that once broke the first promise.
func TestWhatWasFoundStaysMended(t *testing.T) {
	b := load(t)
	for _, f := range found {
		t.Run(f.practice+" "+f.learned, func(t *testing.T) {
			less, _, err := job.Read(b.Facts, f.practice, []byte(f.job))
			require.NoError(t, err)
			more := less.Clone()
			require.NoError(t, more.State(b.Facts, f.learned, f.value))
			if more.Follow(b.Facts) != nil {
				return // refused, which says that it contradicts
			}
			assert.Empty(t, reversed(judgement(t, b, less, f.practice), judgement(t, b, more, f.practice)))
		})
	}
}
