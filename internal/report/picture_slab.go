package report

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hearsay/internal/chart"
	"hearsay/internal/figure"
)

// Water freezes at the one, °F, and from the other on a slab comes nowhere near it.
const (
	freezing     = 32
	nearFreezing = 60
)

// slab is the temperature of the slab by the hour, under the cover planned or bare.
func (p *pictures) slab() Picture {
	const bare = "temperature without a cover"
	for _, one := range []struct{ figure, title string }{
		{"lowest_with_cover", "temperature under the cover planned"}, {"lowest_surface", bare},
	} {
		r := p.sheet.Drawn(one.figure)
		if len(r.Courses) == 0 {
			continue
		}
		title := one.title
		if cover, _ := p.job.Value("protection.cover"); cover == "none" {
			title = bare
		}
		title = p.member() + " " + title
		c := chart.Chart{ID: "slab", Title: title, X: p.axis("hours after placing", "h"), Y: p.axis("temperature", "F"), Lines: p.lines(r.Courses),
			Desc: title + " by the hour. " + p.words(r.Courses), Floating: true}
		if lowestOf(r.Courses) < nearFreezing {
			c.Levels = append(c.Levels, chart.Level{Name: "freezing", Y: p.to(freezing, "F")})
		}
		p.events(&c, r)
		return drawn("slab", one.figure, c)
	}
	return Picture{}
}

// member is what is cast, in a word that begins a title.
func (p *pictures) member() string {
	switch kind, _ := p.job.Value("member.kind"); kind {
	case "wall", "footing", "column", "beam", "topping":
		name := kind.(string)
		return strings.ToUpper(name[:1]) + name[1:]
	case "pad":
		return "Block"
	}
	return "Slab"
}

// events marks on the courses of a slab when it freezes and when it stands freezing, and says what closes the gap.
func (p *pictures) events(c *chart.Chart, r *figure.Result) {
	var note []string
	strong, frozen := p.sheet.Result("hours_to_500"), math.Inf(1)
	if point, ok := p.limit("cold.freezing_point", "usual"); ok && r.Known {
		var where string
		if frozen, where = firstBelow(r.Courses, point); math.IsInf(frozen, 1) {
			note = append(note, fmt.Sprintf("It does not freeze in %s.", p.print(r.Courses[0].X[len(r.Courses[0].X)-1], "h")))
		} else {
			c.Marks = append(c.Marks, chart.Mark{Name: "freezes", X: frozen, Y: p.to(point, "F")})
			note = append(note, fmt.Sprintf("The %s freezes first, after %s.", where, p.print(tenth(frozen), "h")))
		}
	}
	switch last := r.Courses[0].X[len(r.Courses[0].X)-1]; {
	case !strong.Known:
	case strong.Best < last:
		c.Marks = append(c.Marks, chart.Mark{Name: p.safe(), X: strong.Best, Y: p.to(coldestAt(r.Courses, strong.Best), "F")})
		note = append(note, fmt.Sprintf("It has %s after %s.", p.safe(), p.print(tenth(strong.Best), "h")))
	case frozen < last:
		note = append(note, fmt.Sprintf("It does not have %s before that.", p.safe()))
	default:
		note = append(note, fmt.Sprintf("It does not have %s in that time.", p.safe()))
	}
	if !math.IsInf(frozen, 1) || strong.Known && strong.Best >= r.Courses[0].X[len(r.Courses[0].X)-1] {
		note = append(note, p.closes()...)
	}
	c.Note = strings.Join(note, " ")
}

// closes says which cover keeps the slab from freezing, where the one planned does not.
func (p *pictures) closes() []string {
	need, hours, planned := p.sheet.Result("r_needed"), p.sheet.Result("cover_hours_needed"), 0.0
	if v, ok := p.job.Value("protection.r_value"); ok {
		planned = v.(float64)
	}
	cover, _ := p.job.Value("protection.cover")
	most, _ := p.limit("cold.thickest_cover")
	switch {
	case !need.Known || cover == "enclosure" || need.Best <= planned:
		return nil
	case need.Best > most:
		return []string{"No cover alone closes the gap: heat it, with the exhaust led outside."}
	case !hours.Known:
		return []string{fmt.Sprintf("A cover of %s closes the gap.", p.print(need.Best, "R"))}
	}
	return []string{fmt.Sprintf("A cover of %s for %s closes the gap.", p.print(need.Best, "R"), p.print(hours.Best, "h"))}
}

func tenth(v float64) float64 { return math.Round(v*10) / 10 }

// firstBelow is when and where the first of these courses comes down to a value; +Inf where none does.
func firstBelow(courses []figure.Course, value float64) (hour float64, where string) {
	hour = math.Inf(1)
	for _, c := range courses {
		for i := 1; i < len(c.X); i++ {
			if a, b := c.Low[i-1], c.Low[i]; b <= value {
				at := c.X[i-1] + (c.X[i]-c.X[i-1])*math.Max(0, (a-value)/math.Max(a-b, 1e-9))
				if at < hour {
					hour, where = at, c.Name
				}
				break
			}
		}
	}
	return hour, where
}

func lowestOf(courses []figure.Course) float64 {
	low := math.Inf(1)
	for _, c := range courses {
		low = math.Min(low, slices.Min(c.Low))
	}
	return low
}

// coldestAt is the lowest of these courses at x.
func coldestAt(courses []figure.Course, x float64) float64 {
	low := math.Inf(1)
	for _, c := range courses {
		low = math.Min(low, at(c, x))
	}
	return low
}

// safe is the strength that stands one freeze, in words.
func (p *pictures) safe() string {
	if v, ok := p.limit("cold.safe_strength"); ok {
		return p.print(v, "psi")
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
	title := "Strength at the coldest place of the " + strings.ToLower(p.member())
	c := chart.Chart{ID: "strength", Title: title, X: p.axis("hours after placing", "h"), Y: p.axis("strength", "psi"), Lines: p.lines(r.Courses)}
	if len(r.Courses) == 0 {
		return Picture{}
	}
	if v, ok := p.limit("cold.safe_strength"); ok {
		c.Levels = append(c.Levels, chart.Level{Name: "stands a freeze", Y: p.to(v, "psi")})
	}
	c.Desc = title + " by the hour. " + p.words(r.Courses)
	p.harmed(&c, r.Courses[0])
	return drawn("strength", "hours_to_500", c)
}

// harmed marks on the course of its strength when concrete freezes that is not strong enough for it.
func (p *pictures) harmed(c *chart.Chart, course figure.Course) {
	slab, strong := p.sheet.Drawn("lowest_with_cover"), p.sheet.Result("hours_to_500")
	point, ok := p.limit("cold.freezing_point", "usual")
	if !ok || !slab.Known || !strong.Known {
		return
	}
	if frozen, where := firstBelow(slab.Courses, point); frozen < strong.Best {
		c.Marks = append(c.Marks, chart.Mark{Name: "freezes", X: frozen, Y: p.to(at(course, frozen), course.Unit)})
		c.Note = fmt.Sprintf("The %s freezes after %s, before it has %s: do not count on what it gains from then on.", where, p.print(tenth(frozen), "h"), p.safe())
	}
}
