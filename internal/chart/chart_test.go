package chart

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func wellFormed(t require.TestingT, svg string) {
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		_, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		require.NoError(t, err, svg)
	}
}

func TestTicks(t *testing.T) {
	assert.Equal(t, []float64{0, 20, 40, 60, 80}, ticks(0, 72))
	assert.Equal(t, []float64{-10, 0, 10, 20, 30, 40}, ticks(-4, 40))
	assert.Equal(t, []float64{0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3}, roundAll(ticks(0, 0.3)))
}

func TestHoursAreMarkedByPartsOfDays(t *testing.T) {
	assert.Equal(t, []float64{0, 6, 12, 18, 24}, hours(0, 24))
	assert.Equal(t, []float64{0, 12, 24, 36, 48}, hours(0, 48))
	assert.Equal(t, []float64{0, 24, 48, 72, 96}, hours(0, 96))
	assert.Equal(t, []float64{0, 1, 2, 3, 4, 5}, hours(0, 5))
}

func roundAll(list []float64) []float64 {
	for i := range list {
		list[i] = math.Round(list[i]*1e9) / 1e9
	}
	return list
}

func TestAChartHasItsTextAndItsParts(t *testing.T) {
	svg := Chart{ID: "slab", Title: "Slab <by the hour>", Desc: "It cools.", X: Axis{"after placing", "h"}, Y: Axis{"temperature", "°F"},
		Lines:  []Line{{"top", []float64{0, 10, 20}, []float64{60, 50, 30}, []float64{60, 52, 34}}, {"bottom", []float64{0, 10, 20}, []float64{60, 55, 50}, []float64{60, 55, 50}}},
		Levels: []Level{{"freezing", 32}}, Marks: []Mark{{"500 psi", 15, 42}}}.SVG()
	wellFormed(t, svg)
	for _, want := range []string{`role="img"`, `<title id="slab-title">Slab &lt;by the hour&gt;</title>`, `<desc id="slab-desc">It cools.</desc>`, ">top<", ">bottom<", ">freezing<", ">500 psi<", "after placing, h", "temperature, °F"} {
		assert.Contains(t, svg, want)
	}
	assert.Equal(t, 1, strings.Count(svg, "fill-opacity"), "a band is drawn for the line that has one")
	assert.NotContains(t, svg, "style=", "the policy of the page lets no style through")
}

func TestNothingToDrawGivesNothing(t *testing.T) {
	assert.Empty(t, Chart{}.SVG())
	assert.Empty(t, Chart{Lines: []Line{{"a", []float64{1}, []float64{1}, []float64{1}}}}.SVG())
	assert.Empty(t, Chart{Lines: []Line{{"a", []float64{1, 2}, []float64{1, math.NaN()}, []float64{1, 2}}}}.SVG())
}

// TestEverythingLiesInThePicture draws lines of any size: well formed, without a number that is none, within the frame.
func TestEverythingLiesInThePicture(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 30).Draw(t, "points")
		scale := math.Pow(10, float64(rapid.IntRange(-4, 6).Draw(t, "scale")))
		c := Chart{ID: "x", Title: "t", X: Axis{Name: "x"}, Y: Axis{Name: "y"}}
		for range rapid.IntRange(1, 5).Draw(t, "lines") {
			l := Line{Name: rapid.StringMatching(`[a-z]{1,12}( [a-z]{1,12}){0,4}`).Draw(t, "name")}
			for i := range n {
				y := rapid.Float64Range(-1, 1).Draw(t, "y") * scale
				l.X, l.Low, l.High = append(l.X, float64(i)), append(l.Low, y), append(l.High, y+rapid.Float64Range(0, 1).Draw(t, "band")*scale)
			}
			c.Lines = append(c.Lines, l)
		}
		c.Levels = append(c.Levels, Level{"limit", rapid.Float64Range(-2, 2).Draw(t, "level") * scale})
		svg := c.SVG()
		wellFormed(t, svg)
		require.NotContains(t, svg, "NaN")
		require.NotContains(t, svg, "Inf")
		d := &drawing{Chart: c}
		require.True(t, d.scale())
		for _, l := range c.Lines {
			for i := range l.X {
				require.InDelta(t, (top+height-bottom)/2, d.py(l.Low[i]), (height-top-bottom)/2+1)
				require.InDelta(t, (left+width-right)/2, d.px(l.X[i]), (width-left-right)/2+1)
			}
		}
	})
}
