package heat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/heat"
)

// The free edge of a plate is the product of two solutions, the plate and the half-space, both of which the tests of
// conduction hold (Carslaw and Jaeger, section 1.15). The strip of the edge follows the mean of that product over its
// width within 0.7 K of a fall of 20 K; the very corner is colder by up to 2.5 K in the first hours.
func TestEdgeStripFollowsTheProductSolution(t *testing.T) {
	mix := inert
	mix.Freezing = -100
	for _, thickness := range []float64{0.1, 0.15, 0.3} {
		for _, wind := range []float64{0, 5} {
			w := heat.Steady(heat.Hour{Wind: wind, Humidity: 1, Cloud: 1}, 0)
			plan, span := []heat.Change{{}}, heat.Span{Hours: 24, Step: 0.1}
			plate, err := heat.Run(heat.Section{Concrete: mix, Thickness: thickness, Edge: &heat.Edge{}}, w, plan, span)
			require.NoError(t, err)
			deep := []heat.Layer{{Soil: body, Thickness: 4, Top: 20, Bottom: 20}}
			half, err := heat.Run(heat.Section{Concrete: mix, Thickness: thickness / 2, Ground: deep}, w, plan, span)
			require.NoError(t, err)
			for hour := 2; hour <= 24; hour++ {
				mean := plate.Top[hour] / 20 * (half.Top[hour] + 4*half.Middle[hour] + half.Bottom[hour]) / 6
				assert.InDelta(t, mean, plate.Edge[hour], 0.7, "%g m, %g m/s, %d h", thickness, wind, hour)
			}
		}
	}
}

func TestFreezesFirst(t *testing.T) {
	h := &heat.History{Hours: []float64{0, 1, 2, 3}, Top: []float64{10, 4, -4, 1}, Middle: []float64{10, 8, 6, 5}, Bottom: []float64{10, 9, 5, -1}}
	f := h.Freeze(0)
	assert.True(t, f.Freezes)
	assert.InDelta(t, 1.5, f.Hour, 1e-9)
	assert.Equal(t, "top", f.Where)
	assert.Equal(t, -4.0, f.Lowest)
	assert.Equal(t, 2.0, f.LowestAt)
	assert.InDelta(t, 8, h.Drop(1, 1), 1e-9)
	assert.InDelta(t, 10, h.Drop(1, 24), 1e-9, "the bottom falls furthest within the day")
	none := h.Freeze(-5)
	assert.False(t, none.Freezes)
	assert.True(t, math.IsInf(none.Hour, 1))
}

// More cover never freezes sooner; neither does more cement or warmer air. The table of covers in the
// Concrete Manual of the Bureau of Reclamation (insulation_test.go) runs the same ways. (A
// thicker slab on ground does not always: it keeps the warmth of the ground from its top. Nor does a calm: on a still night the sky cools a face below the air.)
func TestColdFollowsItsCauses(t *testing.T) {
	cement, _ := heat.CementType("I")
	rapid.Check(t, func(t *rapid.T) {
		j := coldNight()
		low := rapid.Float64Range(-25, 2).Draw(t, "low")
		wind := rapid.Float64Range(0, 15).Draw(t, "wind")
		mass := rapid.Float64Range(200, 400).Draw(t, "cementitious")
		thick := rapid.Float64Range(0.08, 0.4).Draw(t, "thickness")
		r := rapid.Float64Range(0, 2).Draw(t, "R")
		first := func(low, wind, mass, thick, r float64) float64 {
			j.Section.Concrete = heat.NormalConcrete(15, mass, 160, cement)
			j.Section.Thickness = thick
			j.Weather = heat.Daily(low, low+8, heat.Hour{Humidity: 0.7, Wind: wind, Cloud: 1}, 10, 72, 0)
			j.Hours = 72
			h, err := j.With(r)
			if err != nil {
				t.Fatal(err)
			}
			return h.Freeze(0).Hour
		}
		plain := first(low, wind, mass, thick, r)
		const slack = 1e-2 // h
		for name, v := range map[string]float64{
			"cover": first(low, wind, mass, thick, r+0.3), "cement": first(low, wind, mass+60, thick, r),
			"air": first(low+3, wind, mass, thick, r),
		} {
			if v < plain-slack {
				t.Fatalf("more %s: frozen after %g h instead of %g", name, v, plain)
			}
		}
	})
}

// The cover that is found does it, and nine tenths of it do not.
func TestLeastCoverIsEnoughAndNoMore(t *testing.T) {
	j := coldNight()
	n, err := j.LeastCover()
	require.NoError(t, err)
	require.True(t, n.Possible)
	h, err := j.With(n.R)
	require.NoError(t, err)
	assert.LessOrEqual(t, h.HoursTo(j.Share, j.Gain).High, h.Freeze(j.Section.Concrete.Freezing).Hour)
	assert.InDelta(t, n.Hours, h.HoursTo(j.Share, j.Gain).High, 1e-9)
	less, err := j.With(0.9 * n.R)
	require.NoError(t, err)
	assert.Greater(t, less.HoursTo(j.Share, j.Gain).High, less.Freeze(j.Section.Concrete.Freezing).Hour)

	mild := coldNight()
	mild.Weather = heat.Daily(5, 12, heat.Hour{Humidity: 0.7, Cloud: 1}, 9, 168, 0)
	n, err = mild.LeastCover()
	require.NoError(t, err)
	assert.True(t, n.Possible)
	assert.Zero(t, n.R)
	assert.Zero(t, n.Hours)

	frozen := coldNight()
	frozen.Section.Thickness = 0.05
	frozen.Section.Ground = []heat.Layer{{Soil: heat.Kersten(heat.Fine, 1600, 0.3), Thickness: 3, Top: -15, Bottom: -5}}
	n, err = frozen.LeastCover()
	require.NoError(t, err)
	assert.False(t, n.Possible, "a cover does not save a thin slab on deeply frozen ground")
}

// Protection comes off when the concrete is strong enough and falls no further than allowed; what comes of it holds both.
func TestFirstRemoval(t *testing.T) {
	j := coldNight()
	const r, allowed = 1.0, 8.0
	out, err := j.FirstRemoval(r, 24, allowed)
	require.NoError(t, err)
	require.True(t, out.Possible)
	h, err := j.Uncovered(r, out.Hour)
	require.NoError(t, err)
	assert.LessOrEqual(t, h.Drop(out.Hour, 24), allowed)
	assert.GreaterOrEqual(t, out.Strength.Low, j.Share)
	sooner, err := j.Uncovered(r, out.Hour-6)
	require.NoError(t, err)
	assert.True(t, sooner.Drop(out.Hour-6, 24) > allowed || out.Hour-6 < 24 || out.Strength.Low < j.Share+0.02)
}

// ACI 306R-88, table 6.8 (also EB001, table 14-3), from memory: days to a share of the standard-cured 28-day strength
// at a held temperature. At 50 °F the best of the methods meets it within a fifth up to 85 %; at 70 °F the table asks for up to
// 1.5 times as long, since it is rounded to the safe side for cements of 1960 that gained more slowly after the first
// days; at 95 % and 50 °F it is shorter, because concrete cured cool ends stronger, which equivalent age cannot show.
func TestDurationsOfACI306(t *testing.T) {
	for _, c := range []struct {
		celsius float64
		early   heat.Early
		days    [4]float64 // to 50, 65, 85 and 95 %
		least   float64    // computed over tabled
		most    float64
	}{
		{10, heat.Ordinary, [4]float64{6, 11, 21, 29}, 0.8, 1.25}, {21.1, heat.Ordinary, [4]float64{4, 8, 16, 23}, 0.65, 1},
		{10, heat.Rapid, [4]float64{3, 5, 16, 26}, 0.8, 1.4}, {21.1, heat.Rapid, [4]float64{3, 4, 12, 20}, 0.65, 1},
	} {
		for i, share := range []float64{0.50, 0.65, 0.85, 0.95} {
			got := heat.Gain{Early: c.early, Freezing: -1}.HoursTo(share, []float64{0, 1}, []float64{c.celsius, c.celsius}).Best / 24
			assert.GreaterOrEqual(t, got/c.days[i], c.least, "%g °C, class %d, %g: %g d", c.celsius, c.early, share, got)
			assert.LessOrEqual(t, got/c.days[i], c.most, "%g °C, class %d, %g: %g d", c.celsius, c.early, share, got)
		}
	}
}

func TestRunRefusesWhatItCannotUse(t *testing.T) {
	s := heat.Section{Concrete: inert, Thickness: 0.1}
	for want, call := range map[string]func() error{
		"from hour 0": func() error { _, err := heat.Run(s, heat.Weather{}, nil, heat.Span{Hours: 1}); return err },
		"hours":       func() error { _, err := heat.Run(s, heat.Weather{}, []heat.Change{{}}, heat.Span{}); return err },
		"neither concrete": func() error {
			_, err := heat.Run(heat.Section{}, heat.Weather{}, []heat.Change{{}}, heat.Span{Hours: 1})
			return err
		},
		"not after the one": func() error {
			_, err := heat.Run(s, heat.Weather{}, []heat.Change{{}, {}}, heat.Span{Hours: 1})
			return err
		},
		"negative R": func() error {
			_, err := heat.Run(s, heat.Weather{}, []heat.Change{{Top: heat.Face{R: -1}}}, heat.Span{Hours: 1})
			return err
		},
		"layer 1 of the ground": func() error {
			_, err := heat.Run(heat.Section{Ground: []heat.Layer{{}}}, heat.Weather{}, []heat.Change{{}}, heat.Span{Hours: 1})
			return err
		},
	} {
		assert.ErrorContains(t, call(), want)
	}
}
