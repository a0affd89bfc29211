package chart

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// night is a slab through a cold night, as simple curves.
func night() Chart {
	c := Chart{ID: "slab", Title: "Slab temperature without a cover", X: Axis{"hours after placing", "h"}, Y: Axis{"temperature", "°F"}, Floating: true,
		Levels: []Level{{"freezing", 32}}, Note: "The edge freezes first, after 13 h."}
	for _, l := range []struct {
		name       string
		end, speed float64
	}{{"top", 28, 0.2}, {"middle", 34, 0.12}, {"bottom", 40, 0.15}, {"edge", 25, 0.25}} {
		line := Line{Name: l.name}
		for hour := 0.0; hour <= 48; hour++ {
			y := l.end + (60-l.end)*math.Exp(-l.speed*hour) + 3*math.Sin(hour/24*2*math.Pi)
			line.X, line.Low, line.High = append(line.X, hour), append(line.Low, y), append(line.High, y)
		}
		c.Lines = append(c.Lines, line)
	}
	c.Marks = []Mark{{"freezes", 13, 30.2}, {"500 psi", 40, 31}}
	return c
}

// band is a chart of one line that lies between two ends, against a limit.
func band() Chart {
	return Chart{Title: "Days of drying against the water-cement ratio", X: Axis{Name: "water-cement ratio"}, Y: Axis{"days", "days"},
		Lines:  []Line{{"days", []float64{0.4, 0.5, 0.6, 0.7}, []float64{30, 45, 60, 75}, []float64{80, 120, 170, 170}}},
		Levels: []Level{{"days there are", 60}}, Marks: []Mark{{"yours", 0.55, 100}}}
}

// TestTextIsAsItWasLookedAt holds charts in characters to pictures that somebody has looked at; UPDATE=1 writes them anew.
func TestTextIsAsItWasLookedAt(t *testing.T) {
	for name, text := range map[string]string{
		"night.txt": night().Text(Style{}), "night-ascii.txt": night().Text(Style{ASCII: true}), "night-40.txt": night().Text(Style{Width: 40}),
		"band.txt": band().Text(Style{}), "band-ascii.txt": band().Text(Style{ASCII: true}),
	} {
		file := filepath.Join("testdata", name)
		if os.Getenv("UPDATE") != "" {
			require.NoError(t, os.MkdirAll("testdata", 0o755))
			require.NoError(t, os.WriteFile(file, []byte(text), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, string(want), text, name)
	}
}

func TestTextSaysWhatIsDrawn(t *testing.T) {
	text := night().Text(Style{})
	for _, want := range []string{"temperature, °F", "hours after placing, h", "T top", "M middle", "B bottom", "E edge", "┄ freezing (32 °F)", "● freezes (13 h)", "◆ 500 psi (40 h)", "The edge freezes first"} {
		assert.Contains(t, text, want)
	}
	assert.Contains(t, night().Text(Style{ASCII: true}), "temperature, deg F")
	assert.Empty(t, Chart{}.Text(Style{}))
	assert.Equal(t, []rune("STBCA"), Chart{Lines: []Line{{Name: "strength"}, {Name: "stress"}, {Name: "b"}, {Name: "B c"}, {Name: "12 %"}}}.letters())
}

// TestEveryPointFallsInItsCell draws lines of any kind, in characters: every point shows in the cell whose room on the
// scales holds it, as a dot of braille, a letter or a mark; everything keeps to the width; ASCII stays ASCII.
func TestEveryPointFallsInItsCell(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		scale := math.Pow(10, float64(rapid.IntRange(-4, 6).Draw(t, "scale")))
		c := Chart{Title: "Title of the chart", X: Axis{"x", "h"}, Y: Axis{"y", "°F"}, Floating: rapid.Bool().Draw(t, "floating")}
		for range rapid.IntRange(1, 5).Draw(t, "lines") {
			l := Line{Name: rapid.StringMatching(`[a-z]{1,12}( [a-z]{1,12}){0,2}`).Draw(t, "name")}
			for i := range rapid.IntRange(2, 60).Draw(t, "points") {
				y := rapid.Float64Range(-1, 1).Draw(t, "y") * scale
				l.X, l.Low, l.High = append(l.X, float64(i)), append(l.Low, y), append(l.High, y)
				if rapid.Bool().Draw(t, "is a band") {
					l.High[i] += rapid.Float64Range(0, 1).Draw(t, "band") * scale
				}
			}
			c.Lines = append(c.Lines, l)
		}
		c.Levels = append(c.Levels, Level{"limit", rapid.Float64Range(-2, 2).Draw(t, "level") * scale})
		style := Style{Width: rapid.IntRange(40, 100).Draw(t, "width"), ASCII: rapid.Bool().Draw(t, "ascii")}
		p, ok := c.plot(style)
		require.True(t, ok)
		text := c.Text(style)
		rows := strings.Split(text, "\n")
		for _, row := range rows {
			require.LessOrEqual(t, utf8.RuneCountInString(row), style.Width, text)
		}
		if style.ASCII {
			require.Less(t, strings.IndexFunc(text, func(r rune) bool { return r > 126 }), 0, text)
		}
		for _, l := range c.Lines {
			for i := range l.X {
				for _, y := range []float64{l.Low[i], l.High[i]} {
					column, row := p.cell(l.X[i], y)
					require.InDelta(t, p.x0+float64(column)*p.w, l.X[i], p.w*0.500001)
					require.InDelta(t, p.y1-float64(row)*p.h, y, p.h*0.500001)
					shown := []rune(rows[2+row])[p.margin+1+column]
					if shown >= 0x2800 && shown <= 0x28ff {
						across, down := p.dot(l.X[i], y)
						require.NotZero(t, (shown-0x2800)&brailleDots[down%4][across%2], text)
					} else {
						require.Contains(t, append([]rune{p.single}, p.letters...), shown, text)
					}
				}
			}
		}
	})
}
