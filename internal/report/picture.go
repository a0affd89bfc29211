package report

import (
	"fmt"
	"math"
	"strings"

	"hearsay/internal/chart"
	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/layout"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Picture shows something of a job that people would rather look at than read.
type Picture struct {
	Name   string // in addresses and file names
	Title  string
	Figure string // of which it is the picture; "" for none
	SVG    string
	Chart  *chart.Chart // nil for the joint plan
	Plan   *layout.Plan // of the joint plan
	system quantity.System
}

// drawn makes a picture of a chart.
func drawn(name, figure string, c chart.Chart) Picture {
	return Picture{Name: name, Title: c.Title, Figure: figure, SVG: c.SVG(), Chart: &c}
}

// Text is the picture in characters, for a terminal.
func (p Picture) Text(style chart.Style) string {
	switch {
	case p.Chart != nil:
		return p.Chart.Text(style)
	case p.Plan != nil:
		return style.Fit(p.Plan.Text(p.system))
	}
	return ""
}

// Pictures draws what the facts of a job give. A picture whose facts are not stated is left out.
func Pictures(b *rulebook.Book, j *job.Job, system quantity.System) []Picture {
	p := &pictures{book: b, job: j, sheet: b.Figures.Sheet(j), system: system}
	var list []Picture
	for _, draw := range []func() Picture{p.slab, p.strength, p.evaporation, p.water, p.drying, p.joints} {
		if one := draw(); one.SVG != "" {
			list = append(list, one)
		}
	}
	return list
}

type pictures struct {
	book   *rulebook.Book
	job    *job.Job
	sheet  *figure.Sheet
	system quantity.System
}

func (p *pictures) to(v float64, unit string) float64 {
	return quantity.Quantity{Value: v, Unit: unit}.To(p.system).Value
}

func (p *pictures) print(v float64, unit string) string {
	return quantity.Quantity{Value: v, Unit: unit}.Print(p.system)
}

func (p *pictures) axis(name, unit string) chart.Axis {
	return chart.Axis{Name: name, Unit: quantity.Symbol(quantity.Quantity{Unit: unit}.To(p.system).Unit)}
}

// lines turns the courses of a figure into lines in the unit system.
func (p *pictures) lines(courses []figure.Course) []chart.Line {
	var list []chart.Line
	for _, c := range courses {
		l := chart.Line{Name: c.Name, X: c.X}
		for i := range c.X {
			l.Low, l.High = append(l.Low, p.to(c.Low[i], c.Unit)), append(l.High, p.to(c.High[i], c.Unit))
		}
		list = append(list, l)
	}
	return list
}

// ends says in words where a course lies lowest and highest.
func (p *pictures) ends(c figure.Course) string {
	low, high, at := math.Inf(1), math.Inf(-1), 0.0
	for i := range c.X {
		if c.Low[i] < low {
			low, at = c.Low[i], c.X[i]
		}
		high = math.Max(high, c.High[i])
	}
	return fmt.Sprintf("%s: from %s to %s, lowest at %s", c.Name, p.print(low, c.Unit), p.print(high, c.Unit), p.print(at, c.Along))
}

func (p *pictures) words(courses []figure.Course) string {
	var parts []string
	for _, c := range courses {
		parts = append(parts, p.ends(c))
	}
	return strings.Join(parts, ". ") + "."
}

// limit gives a limit's number, its keys leading into a table, and whether there is one.
func (p *pictures) limit(path string, keys ...string) (float64, bool) {
	l, ok := p.book.Limits.Find("limit." + path)
	if !ok {
		return 0, false
	}
	v := l.Value
	for _, k := range keys {
		table, _ := v.(map[string]any)
		v = table[k]
	}
	n, ok := v.(float64)
	return n, ok
}

// betterStart says which hour to start at dries the surface least, where that is worth the change.
func (p *pictures) betterStart() string {
	best, least, planned, gain := p.sheet.Result("best_start"), p.sheet.Result("best_start_evaporation"), p.sheet.Result("start_evaporation"), p.sheet.Result("start_gain")
	worth, ok := p.limit("hot.least_gain")
	if !ok || !best.Known || !least.Known || !planned.Known || !gain.Known || gain.Best <= worth {
		return ""
	}
	return fmt.Sprintf(" Started at hour %.3g the open surface meets at most %s; as planned, %s.", best.Best, p.print(least.Best, "lb/ft2/h"), p.print(planned.Best, "lb/ft2/h"))
}

func highest(list []float64) int {
	at := 0
	for i, v := range list {
		if v > list[at] {
			at = i
		}
	}
	return at
}

func (p *pictures) evaporation() Picture {
	r := p.sheet.Drawn("evaporation_worst")
	const title = "Evaporation from fresh concrete by the hour"
	if len(r.Courses) == 0 {
		return Picture{}
	}
	c := chart.Chart{ID: "evaporation", Title: title, X: p.axis("hour of the forecast", "h"), Y: p.axis("evaporation", "lb/ft2/h"), Lines: p.lines(r.Courses),
		Desc: title + ". " + p.words(r.Courses)}
	if most := p.sheet.Result("evaporation_limit"); most.Known || most.Bounded { // bounded: that of ordinary concrete
		c.Levels = append(c.Levels, chart.Level{Name: "cracks from here on", Y: p.to(most.High, most.Figure.Unit)})
		c.Desc += fmt.Sprintf(" Cracks are to be expected from %s on.", p.print(most.High, most.Figure.Unit))
	}
	worst := r.Courses[0]
	if i := highest(worst.High); r.Known {
		c.Marks = append(c.Marks, chart.Mark{Name: "worst", X: worst.X[i], Y: p.to(worst.High[i], worst.Unit)})
		c.Note = fmt.Sprintf("It is worst at hour %.3g of the forecast: %s.", worst.X[i], p.print(worst.High[i], worst.Unit)) + p.betterStart()
	}
	return drawn("evaporation", "evaporation_worst", c)
}
