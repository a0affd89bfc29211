// Package chart owns line charts as SVG: lines, bands, limits and marks over a scale, told apart by dashes and by the words
// beside them and not by color, with a text alternative inside.
package chart

import (
	"fmt"
	"html"
	"math"
	"strings"
)

// Chart is one picture.
type Chart struct {
	ID     string // tells its parts from those of other pictures on a page
	Title  string
	Desc   string // what it shows, in words
	Note   string // what to see in it, in a sentence or two; part of the description, too
	X, Y   Axis
	Lines  []Line
	Levels []Level
	Marks  []Mark
	// Floating says that zero means nothing along Y, as with a temperature: the scale need not reach it.
	Floating bool
}

// Axis names what is shown along it, with its unit.
type Axis struct{ Name, Unit string }

// Line is one line, or a band where Low and High differ. X rises.
type Line struct {
	Name         string
	X, Low, High []float64
}

// Level is a limit that lines are held against.
type Level struct {
	Name string
	Y    float64
}

// Mark is a point that somebody looks for.
type Mark struct {
	Name string
	X, Y float64
}

// Sizes of the picture in its own units, which are pixels at its natural size. Letters are large for it, so that they can
// still be read where a phone shows it half as wide.
const (
	width, height          = 600.0, 400.0
	left, right            = 66.0, 170.0
	top, bottom            = 66.0, 62.0
	ink, soft, pale, alarm = "#171512", "#57524a", "#dcd7cb", "#a8330b"
)

var dashes = []string{"", "9 4", "2 4", "12 4 2 4", "5 3"}

// SVG draws the chart. A chart without a line that can be drawn gives "".
func (c Chart) SVG() string {
	d := &drawing{Chart: c}
	if !d.scale() {
		return ""
	}
	d.add(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" width="%.0f" height="%.0f" role="img" aria-labelledby="%s-title %s-desc" font-family="Arial, sans-serif" font-size="16" fill="%s">`,
		width, height, width, height, c.ID, c.ID, ink)
	d.add(`<title id="%s-title">%s</title>`, c.ID, html.EscapeString(c.Title))
	d.add(`<desc id="%s-desc">%s</desc>`, c.ID, html.EscapeString(strings.TrimSpace(c.Desc+" "+c.Note)))
	d.text(8, 20, "start", ink, c.Title, ` font-weight="700" font-size="17"`)
	d.axes()
	d.levels()
	for i, l := range c.Lines {
		d.line(l, dashes[i%len(dashes)])
	}
	d.marks()
	d.names()
	d.add("</svg>")
	return d.out.String()
}

type drawing struct {
	Chart
	out            strings.Builder
	x0, x1, y0, y1 float64
	xs, ys         []float64 // ticks
	labels         []label
}

// label is a name at the right end, wanted at a height.
type label struct {
	text, color, dash string
	y                 float64
}

func (d *drawing) add(format string, args ...any) { fmt.Fprintf(&d.out, format+"\n", args...) }

func (d *drawing) px(x float64) float64 { return left + (x-d.x0)/(d.x1-d.x0)*(width-left-right) }
func (d *drawing) py(y float64) float64 {
	return height - bottom - (y-d.y0)/(d.y1-d.y0)*(height-top-bottom)
}

func (d *drawing) text(x, y float64, anchor, color, text, more string) {
	d.add(`<text x="%.1f" y="%.1f" text-anchor="%s" fill="%s"%s>%s</text>`, x, y, anchor, color, more, html.EscapeString(text))
}

// scale finds what the axes span; false where there is nothing to draw.
func (d *drawing) scale() bool {
	x0, x1, y0, y1 := math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	wide := func(x, y float64) {
		x0, x1, y0, y1 = math.Min(x0, x), math.Max(x1, x), math.Min(y0, y), math.Max(y1, y)
	}
	for _, l := range d.Lines {
		for i := range l.X {
			wide(l.X[i], l.Low[i])
			wide(l.X[i], l.High[i])
		}
	}
	if !(x1 > x0) || math.IsNaN(y0+y1) || math.IsInf(y0+y1, 0) {
		return false
	}
	for _, l := range d.Levels {
		y0, y1 = math.Min(y0, l.Y), math.Max(y1, l.Y)
	}
	for _, m := range d.Marks {
		wide(m.X, m.Y)
	}
	if y0 > 0 && y0 < y1/2 && !d.Floating {
		y0 = 0
	}
	if y1 == y0 {
		y1 = y0 + 1
	}
	d.xs, d.ys = ticks(x0, x1), ticks(y0, y1)
	if d.X.Unit == "h" {
		d.xs = hours(x0, x1)
	}
	d.x0, d.x1 = x0, x1
	d.y0, d.y1 = d.ys[0], d.ys[len(d.ys)-1]
	return true
}

// ticks gives round numbers that span a range, some five of them.
func ticks(low, high float64) []float64 {
	step := math.Pow(10, math.Floor(math.Log10((high-low)/4)))
	for _, m := range []float64{1, 2, 2.5, 5, 10} {
		if (high-low)/(step*m) <= 6 {
			step *= m
			break
		}
	}
	return every(step, low, high)
}

// hours gives ticks for hours: parts of days and days.
func hours(low, high float64) []float64 {
	for _, step := range []float64{6, 12, 24} {
		if high-low > 2*step && high-low <= 6*step {
			return every(step, low, high)
		}
	}
	return ticks(low, high)
}

// every gives the multiples of a step that span a range.
func every(step, low, high float64) []float64 {
	var list []float64
	for i := math.Floor(low/step + 1e-9); i*step < high+step-1e-9*step; i++ {
		list = append(list, i*step)
	}
	return list
}

func number(v float64) string {
	if v == 0 { // no "-0"
		return "0"
	}
	s := fmt.Sprintf("%.6g", v)
	if math.Abs(v) >= 1000 && math.Abs(v) < 1e6 && v == math.Trunc(v) {
		s = fmt.Sprintf("%d,%03d", int(v)/1000, int(math.Abs(v))%1000)
	}
	return s
}
