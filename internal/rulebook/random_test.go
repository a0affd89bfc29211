package rulebook_test

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// Random jobs, for the tests that try to break a promise with them.

// randomValue draws a value for a fact that makes sense.
func randomValue(t *rapid.T, f *job.Fact) (any, bool) {
	switch f.Kind {
	case job.KindQuantity:
		return map[string]any{"value": quantityNear(t, f), "unit": f.Unit}, true
	case job.KindList:
		var list []any
		for range rapid.IntRange(1, 6).Draw(t, f.Path+" length") {
			v := rapid.Float64Range(f.Possible.Low, f.Possible.High/3).Draw(t, f.Path)
			list = append(list, map[string]any{"value": v, "unit": f.Unit})
		}
		return list, true
	case job.KindChoice:
		return rapid.SampledFrom(f.Choices).Draw(t, f.Path).Value, true
	case job.KindFlag:
		return rapid.Bool().Draw(t, f.Path), true
	case job.KindSeries:
		return forecastFrom(t, f), true
	case job.KindDate:
		return fmt.Sprintf("2026-%02d-15", rapid.IntRange(1, 12).Draw(t, f.Path)), true
	case job.KindTime:
		return fmt.Sprintf("%d:30", rapid.IntRange(0, 23).Draw(t, f.Path)), true
	}
	return nil, false
}

// quantityNear draws a usual value of a quantity, and once in a while any that is possible.
func quantityNear(t *rapid.T, f *job.Fact) float64 {
	span := f.Usual
	if rapid.IntRange(0, 19).Draw(t, f.Path+" possible") == 0 {
		span = f.Possible
	}
	return span.Low + (span.High-span.Low)*float64(rapid.IntRange(0, 40).Draw(t, f.Path))/40
}

// forecastFrom draws a forecast of four days: air that swings with the day, and columns that are there or not.
func forecastFrom(t *rapid.T, f *job.Fact) any {
	draw := func(name string, low, high int) float64 {
		return float64(rapid.IntRange(low, high).Draw(t, f.Path+" "+name))
	}
	mean, swing, wind, humid := draw("mean", 0, 90), draw("swing", 0, 20), draw("wind", 0, 25), draw("humidity", 20, 95)
	dew, rain := rapid.Bool().Draw(t, f.Path+" dew point"), draw("rain", -48, 96)
	var rows []any
	for hour := range 96 {
		air := mean + swing*math.Sin(2*math.Pi*float64(hour)/24)
		row := map[string]any{"hour": hour, "air": fmt.Sprintf("%.1f F", air), "wind": fmt.Sprintf("%g mph", wind), "rain": "0 in/h"}
		if dew {
			row["dew_point"] = fmt.Sprintf("%.1f F", mean-swing-(100-humid)/4)
		} else {
			row["humidity"] = fmt.Sprintf("%g %%", humid)
		}
		if float64(hour) == rain {
			row["rain"] = "0.1 in/h"
		}
		rows = append(rows, row)
	}
	return rows
}

// randomJob states a random share of the dictionary. Only jobs that do not contradict themselves are drawn: nothing is
// promised of the others but that the contradiction is said. Where the value drawn contradicts what is stated, others are
// tried, so that facts which must agree are stated together, too.
func randomJob(t *rapid.T, b *rulebook.Book) *job.Job {
	d := b.Facts
	share := rapid.IntRange(5, 100).Draw(t, "share stated")
	j := job.New()
	for _, f := range d.Facts() {
		if rapid.IntRange(0, 99).Draw(t, "draw "+f.Path) >= share {
			continue
		}
		for range 3 {
			value, ok := randomValue(t, f)
			if !ok {
				break
			}
			next := j.Clone()
			if next.State(d, f.Path, value) == nil && !contradicts(b, next) {
				j = next
				break
			}
		}
	}
	require.NoError(t, j.Follow(d))
	return j
}

// contradicts says whether facts contradict each other or make two ways of computing a figure disagree.
func contradicts(b *rulebook.Book, j *job.Job) bool {
	j = j.Clone()
	if j.Follow(b.Facts) != nil {
		return true
	}
	sheet := b.Figures.Sheet(j)
	return slices.ContainsFunc(multiway(b), func(f *figure.Figure) bool {
		return strings.Contains(sheet.Result(f.Name).Problem, "contradict")
	})
}

// multiway lists the figures that can be computed in more than one way and contradict themselves where these differ much.
func multiway(b *rulebook.Book) []*figure.Figure {
	return slices.DeleteFunc(b.Figures.Figures(), func(f *figure.Figure) bool { return len(f.Ways) < 2 || f.Within > 1000 })
}
