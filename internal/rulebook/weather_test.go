package rulebook_test

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// weatherJob draws a placement in cold or hot weather, on frozen or thawed ground, with a forecast or without, and states a
// part of what there is to state.
func weatherJob(t *rapid.T, b *rulebook.Book) *job.Job {
	grid := func(name string, low, high float64) float64 {
		return low + (high-low)*float64(rapid.IntRange(0, 20).Draw(t, name))/20
	}
	low := grid("low", -15, 75)
	written := map[string]any{
		"member.use":       rapid.SampledFrom([]string{"driveway", "sidewalk", "garage floor", "footing", "wall", "suspended slab"}).Draw(t, "use"),
		"member.thickness": fmt.Sprintf("%g in", grid("thickness", 3, 20)), "order.strength": fmt.Sprintf("%g psi", grid("strength", 2500, 6000)),
		"mix.cementitious": fmt.Sprintf("%g lb/yd3", grid("cement", 400, 800)), "mix.wcm": fmt.Sprint(grid("w/cm", 0.4, 0.6)),
		"mix.cement_type": rapid.SampledFrom([]string{"I", "III", "IL", "V"}).Draw(t, "type"), "cold.accelerator": rapid.SampledFrom([]string{"none", "calcium chloride", "non-chloride"}).Draw(t, "accelerator"),
		"cold.relied_on": rapid.Bool().Draw(t, "relied on"), "load.temperature": fmt.Sprintf("%g F", grid("placed", 40, 105)),
		"materials.cement_temperature": fmt.Sprintf("%g F", grid("cement at", 20, 140)), "materials.aggregate_temperature": fmt.Sprintf("%g F", grid("aggregate at", 20, 110)),
		"materials.water_temperature": fmt.Sprintf("%g F", grid("water at", 40, 190)), "materials.hot_water_first": rapid.SampledFrom([]string{"cement", "aggregate"}).Draw(t, "first"),
		"ground.temperature": fmt.Sprintf("%g F", grid("ground", 20, 90)), "ground.state": rapid.SampledFrom([]string{"frozen", "thawed", "not frozen"}).Draw(t, "state"),
		"ground.dry_and_hot": rapid.Bool().Draw(t, "dry and hot"), "ground.dampened": rapid.Bool().Draw(t, "dampened"),
		"protection.cover":   rapid.SampledFrom([]string{"none", "blankets", "straw", "enclosure"}).Draw(t, "cover"),
		"protection.r_value": fmt.Sprintf("%g R", grid("R", 0.5, 12)), "protection.days": fmt.Sprintf("%g d", grid("days", 0, 7)),
		"protection.service":          rapid.SampledFrom([]string{"no load not exposed", "no load exposed", "partial load exposed"}).Draw(t, "service"),
		"protection.removal":          rapid.SampledFrom([]string{"at once", "gradual"}).Draw(t, "removal"),
		"protection.heater":           rapid.SampledFrom([]string{"none", "vented", "unvented"}).Draw(t, "heater"),
		"protection.slab_temperature": fmt.Sprintf("%g F", grid("slab", 40, 90)), "protection.removal_outside": fmt.Sprintf("%g F", grid("outside", -15, 60)),
		"weather.wind": fmt.Sprintf("%g mph", grid("wind", 0, 25)), "weather.humidity": fmt.Sprintf("%g %%", grid("humidity", 10, 100)), "weather.better_start": true, "weather.start_hour": fmt.Sprintf("%g h", grid("start", 0, 20)),
	}
	if rapid.Bool().Draw(t, "forecast") {
		written["weather.forecast"] = hoursFrom(low, grid("swing", 5, 30))
	} else {
		written["weather.low"], written["weather.high"] = fmt.Sprintf("%g F", low), fmt.Sprintf("%g F", low+grid("swing", 5, 30))
	}
	j := job.New()
	for _, f := range b.Facts.Facts() { // in an order that is always the same
		value, ok := written[f.Path]
		if !ok || rapid.IntRange(0, 9).Draw(t, "state "+f.Path) == 0 {
			continue
		}
		next := j.Clone()
		if next.State(b.Facts, f.Path, value) == nil && !contradicts(b, next) {
			j = next
		}
	}
	require.NoError(t, j.Follow(b.Facts))
	return j
}

// hoursFrom is a forecast of three days between a low and a high.
func hoursFrom(low, swing float64) []any {
	var rows []any
	for hour := 0.0; hour <= 72; hour += 3 {
		day := (1 + math.Sin(2*math.Pi*(hour-6)/24)) / 2
		rows = append(rows, map[string]any{"hour": hour, "air": fmt.Sprintf("%.3f F", low+swing*day), "wind": fmt.Sprintf("%.3f mph", 4+12*day),
			"humidity": fmt.Sprintf("%.3f %%", 85-60*day), "cloud": "30 %"})
	}
	return rows
}

// few draws a fixed sample of jobs, so that a run is quick and says the same twice.
func few(t *testing.T) {
	if os.Getenv("HEARSAY_THOROUGH") != "" {
		return
	}
	checks, seed := flag.Lookup("rapid.checks"), flag.Lookup("rapid.seed")
	before, old := checks.Value.String(), seed.Value.String()
	t.Cleanup(func() { require.NoError(t, errors.Join(flag.Set("rapid.checks", before), flag.Set("rapid.seed", old))) })
	require.NoError(t, errors.Join(flag.Set("rapid.checks", "35"), flag.Set("rapid.seed", "1")))
}

// TestWeatherCorrectionsHold: whatever the weather, each correction of a finding on cold, heat or ground, put back into the
// job, makes that finding go away. HEARSAY_THOROUGH=1 draws more jobs, and others each time.
func TestWeatherCorrectionsHold(t *testing.T) {
	b := load(t)
	few(t)
	var ids []string
	for _, p := range b.Practices() {
		if topic, _, _ := strings.Cut(p.ID, "/"); topic == "cold" || topic == "hot" || topic == "ground" {
			ids = append(ids, p.ID)
		}
	}
	require.NotEmpty(t, ids)
	tried := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		j := weatherJob(t, b)
		for _, id := range ids {
			finding, err := b.JudgeOne(context.Background(), j, id)
			require.NoError(t, err)
			if finding.Status != rulebook.Wrong {
				continue
			}
			require.NotEmpty(t, finding.Mend, id)
			mended, err := rulebook.Mended(b.Facts, j, finding.Mend)
			require.NoError(t, err, "%s: %v", id, finding.Mend)
			after, err := b.JudgeOne(context.Background(), mended, id)
			require.NoError(t, err)
			if after.Status == rulebook.Wrong {
				t.Fatalf("%s is still wrong with %v: %v", id, finding.Mend, after.Reasons)
			}
			tried[id]++
		}
	})
	t.Log(tried)
}

// TestLearningNeverContradictsAboutWeather: what is wrong, right or not here in cold or heat stays so, whatever else is learned.
// The jobs of TestLearningNeverContradicts seldom state enough for a run through a night.
func TestLearningNeverContradictsAboutWeather(t *testing.T) {
	b := load(t)
	draws(t, 8, 1000)
	rapid.Check(t, func(t *rapid.T) {
		learning(t, b, forget(t, b.Facts, weatherJob(t, b), rapid.IntRange(1, 6).Draw(t, "forgotten at once")))
	})
}
