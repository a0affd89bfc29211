package report_test

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/chart"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

// coldFloor is a floor on a cold night, with a forecast of three days.
func coldFloor() string {
	var text strings.Builder
	text.WriteString(`
member: {use: warehouse floor, length: 60 ft, width: 40 ft, thickness: 6 in}
order: {strength: 4000 psi, ratio_limit: 0.50}
mix: {cementitious: 564 lb/yd3, water: 270 lb/yd3, cement_type: I}
load: {volume: 9 yd3, temperature: 60 F}
water: {added: 10 gal}
cold: {accelerator: none}
ground: {temperature: 45 F, state: not frozen, soil: clay}
protection: {cover: blankets, r_value: 2 R, days: 3 d}
floor: {covering: resilient, days_to_covering: 60 d}
weather:
  start_hour: 0 h
  forecast:
`)
	for hour := range 97 {
		air := 28 + 12*math.Cos(float64(hour-2)/24*2*math.Pi)
		fmt.Fprintf(&text, "    - {hour: %d, air: %.0f F, humidity: 45 %%, wind: 8 mph}\n", hour, air)
	}
	return text.String()
}

func TestPictures(t *testing.T) {
	book, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	j, _, err := job.Read(book.Facts, "floor.yaml", []byte(coldFloor()))
	require.NoError(t, err)
	svgs := map[string]string{}
	for _, p := range report.Pictures(book, j, quantity.US) {
		svgs[p.Name] = p.SVG
		wellFormed(t, p.SVG)
		assert.Contains(t, p.SVG, `role="img"`)
		assert.Contains(t, p.SVG, "<desc", "what is seen is also said")
		assert.NotContains(t, p.SVG, "style=", "the policy of the page lets no style through")
		if p.Figure != "" {
			_, ok := book.Figures.Find(p.Figure)
			assert.True(t, ok, p.Figure)
		}
	}
	for name, says := range map[string][]string{
		"slab":        {">top<", ">middle<", ">bottom<", ">edge<", ">freezing<", ">500 psi<", "temperature, °F"},
		"strength":    {">stands a freeze<"},
		"evaporation": {">evaporation<", ">cracks from<"},
		"water":       {">yours<", ">ordered<"},
		"drying":      {">days there are<"},
		"joints":      {"12 ft"},
	} {
		for _, want := range says {
			assert.Contains(t, svgs[name], want, name)
		}
	}
	for _, p := range report.Pictures(book, j, quantity.SI) {
		assert.NotContains(t, p.SVG, "°F")
		assert.NotContains(t, p.SVG, " psi")
	}
	assert.Empty(t, report.Pictures(book, job.New(), quantity.US), "what is not known is not drawn")
}

// TestTheSlabIsDrawnAsItWasComputed holds the picture of a bare slab against the figure that says how cold it gets.
func TestTheSlabIsDrawnAsItWasComputed(t *testing.T) {
	book, err := rulebook.Load(rules.Files)
	require.NoError(t, err)
	j, _, err := job.Read(book.Facts, "floor.yaml", []byte(strings.Replace(coldFloor(), "cover: blankets, r_value: 2 R", "cover: none", 1)))
	require.NoError(t, err)
	r := book.Figures.Sheet(j).Drawn("lowest_surface")
	require.True(t, r.Known)
	require.Len(t, r.Courses, 4)
	for _, p := range report.Pictures(book, j, quantity.US) {
		if p.Name == "slab" || p.Name == "strength" {
			assert.Contains(t, p.SVG, ">freezes<", p.Name)
			assert.Contains(t, p.Text(chart.Style{}), "● freezes (", p.Name)
		}
		if p.Name == "strength" {
			assert.Contains(t, p.SVG, "do not count on what it gains from then on", "the text alternative says it too")
		}
	}
	low := math.Inf(1)
	for _, c := range r.Courses {
		for i, hour := range c.X {
			if hour <= 72 && (c.Name == "top" || c.Name == "edge") {
				low = math.Min(low, c.Low[i])
			}
		}
	}
	assert.InDelta(t, r.Best, low, 1e-9)
	assert.Empty(t, book.Figures.Sheet(j).Result("lowest_surface").Courses, "what nobody draws is not computed")
}

func wellFormed(t *testing.T, text string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(text))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			require.NoError(t, err)
		}
	}
}
