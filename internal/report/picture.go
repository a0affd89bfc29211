package report

import (
	"fmt"
	"math"
	"strings"

	"hearsay/internal/chart"
	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Picture shows something of a job that people would rather look at than read.
type Picture struct {
	Name   string // in addresses and file names
	Title  string
	Figure string // of which it is the picture; "" for none
	SVG    string
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

// limit gives a limit's number, and whether there is one.
func (p *pictures) limit(path string) (float64, string, bool) {
	l, ok := p.book.Limits.Find("limit." + path)
	if !ok {
		return 0, "", false
	}
	v, ok := l.Value.(float64)
	return v, l.Unit, ok
}

// freezing is where water freezes, °F.
const freezing = 32

// slab is the temperature of the slab by the hour, under the cover planned or bare.
func (p *pictures) slab() Picture {
	for _, one := range []struct{ figure, title string }{
		{"lowest_with_cover", "Slab temperature under the cover planned"}, {"lowest_surface", "Slab temperature without a cover"},
	} {
		r := p.sheet.Drawn(one.figure)
		if len(r.Courses) == 0 {
			continue
		}
		c := chart.Chart{ID: "slab", Title: one.title, X: p.axis("hours after placing", "h"), Y: p.axis("temperature", "F"), Lines: p.lines(r.Courses),
			Levels: []chart.Level{{Name: "freezing", Y: p.to(freezing, "F")}}, Desc: one.title + " by the hour. " + p.words(r.Courses)}
		if hour := p.sheet.Result("hours_to_500"); hour.Known && hour.Best < r.Courses[0].X[len(r.Courses[0].X)-1] {
			c.Marks = append(c.Marks, chart.Mark{Name: p.safe(), X: hour.Best, Y: p.to(at(r.Courses[0], hour.Best), "F")})
			c.Desc += fmt.Sprintf(" %s is reached after %s.", p.safe(), p.print(hour.Best, "h"))
		}
		return Picture{"slab", one.title, one.figure, c.SVG()}
	}
	return Picture{}
}

// safe is the strength that stands one freeze, in words.
func (p *pictures) safe() string {
	if v, unit, ok := p.limit("cold.safe_strength"); ok {
		return p.print(v, unit)
	}
	return "safe strength"
}

func at(c figure.Course, x float64) float64 {
	for i := 1; i < len(c.X); i++ {
		if c.X[i] >= x {
			share := (x - c.X[i-1]) / (c.X[i] - c.X[i-1])
			return c.Low[i-1] + share*(c.Low[i]-c.Low[i-1])
		}
	}
	return c.Low[len(c.Low)-1]
}

func (p *pictures) strength() Picture {
	r := p.sheet.Drawn("hours_to_500")
	const title = "Strength at the coldest place of the slab"
	c := chart.Chart{ID: "strength", Title: title, X: p.axis("hours after placing", "h"), Y: p.axis("strength", "psi"), Lines: p.lines(r.Courses)}
	if len(r.Courses) == 0 {
		return Picture{}
	}
	if v, unit, ok := p.limit("cold.safe_strength"); ok {
		c.Levels = append(c.Levels, chart.Level{Name: "stands a freeze", Y: p.to(v, unit)})
	}
	c.Desc = title + " by the hour. " + p.words(r.Courses)
	return Picture{"strength", title, "hours_to_500", c.SVG()}
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
	return Picture{"evaporation", title, "evaporation_worst", c.SVG()}
}
