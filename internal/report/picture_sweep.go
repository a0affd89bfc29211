package report

import (
	"fmt"
	"math"

	"hearsay/internal/chart"
	"hearsay/internal/figure"
	"hearsay/internal/layout"
)

// instead is what a job states with other values for some facts.
type instead struct {
	figure.Facts
	values map[string]any
}

func (i instead) Value(path string) (any, bool) {
	if v, ok := i.values[path]; ok {
		return v, true
	}
	return i.Facts.Value(path)
}

// sweep computes a figure for each value of a fact. It gives nil where the figure cannot be computed throughout.
func (p *pictures) sweep(name, fact string, values []float64) *figure.Course {
	f, ok := p.book.Figures.Find(name)
	x, known := p.book.Facts.Fact(fact)
	if !ok || !known {
		return nil
	}
	c := &figure.Course{Name: f.Title, Unit: f.Unit, Along: x.Unit}
	for _, v := range values {
		r := p.book.Figures.Sheet(instead{p.job, map[string]any{fact: v}}).Result(name)
		if !r.Known && !r.Bounded {
			return nil
		}
		c.X, c.Low, c.High = append(c.X, v), append(c.Low, r.Low), append(c.High, r.High)
	}
	return c
}

func steps(low, high float64, n int) []float64 {
	list := make([]float64, n+1)
	for i := range list {
		list[i] = low + (high-low)*float64(i)/float64(n)
	}
	return list
}

// swept makes a picture of a sweep, with where the job stands marked on it.
func (p *pictures) swept(name, title, figureName, fact string, values []float64, line string) (chart.Chart, bool) {
	c := p.sweep(figureName, fact, values)
	if c == nil {
		return chart.Chart{}, false
	}
	c.Name = line
	f, _ := p.book.Figures.Find(figureName)
	x, _ := p.book.Facts.Fact(fact)
	out := chart.Chart{ID: name, Title: title, X: p.axis(x.Name, x.Unit), Y: p.axis(line, f.Unit), Lines: p.lines([]figure.Course{*c}), Desc: title + ". " + p.words([]figure.Course{*c})}
	for i := range out.Lines[0].X {
		out.Lines[0].X[i] = p.to(out.Lines[0].X[i], x.Unit)
	}
	if v, ok := p.job.Value(fact); ok {
		if yours, ok := v.(float64); ok && yours >= values[0] && yours <= values[len(values)-1] {
			y := p.book.Figures.Sheet(p.job).Result(figureName)
			out.Marks = append(out.Marks, chart.Mark{Name: "yours", X: p.to(yours, x.Unit), Y: p.to(y.Best, f.Unit)})
			out.Desc += fmt.Sprintf(" Yours: %s at %s.", p.print(y.Best, f.Unit), p.print(yours, x.Unit))
		}
	}
	return out, true
}

// water is the strength against the water added at the site.
func (p *pictures) water() Picture {
	most := 30.0
	if v, ok := p.job.Value("water.added"); ok {
		most = math.Max(most, 1.5*v.(float64))
	}
	const title = "Strength against the water added at the site"
	c, ok := p.swept("water", title, "strength_after_water", "water.added", steps(0, most, 15), "strength at 28 days")
	if !ok {
		return Picture{}
	}
	if v, ok := p.job.Value("order.strength"); ok {
		c.Levels = append(c.Levels, chart.Level{Name: "ordered", Y: p.to(v.(float64), "psi")})
	}
	return drawn("water", "strength_after_water", c)
}

// drying is how long a floor dries against its water-cement ratio.
func (p *pictures) drying() Picture {
	if v, ok := p.job.Value("floor.covering"); !ok || v == "none" {
		return Picture{}
	}
	const title = "Days of drying against the water-cement ratio"
	c, ok := p.swept("drying", title, "days_to_dry", "mix.wcm", steps(0.4, 0.7, 12), "days until it can be covered")
	if !ok {
		return Picture{}
	}
	if r := p.sheet.Result("drying_time"); r.Known || r.Bounded { // bounded: it has so many at most
		c.Levels = append(c.Levels, chart.Level{Name: "days there are", Y: r.High})
	}
	return drawn("drying", "days_to_dry", c)
}

// joints is the plan of the joints as they should be.
func (p *pictures) joints() Picture {
	number := func(path string) float64 {
		v, _ := p.job.Value(path)
		n, _ := v.(float64)
		return n
	}
	spacing, aspect := p.sheet.Result("largest_joint_spacing"), 1.5
	if v, ok := p.limit("joints.most_aspect"); ok {
		aspect = v
	}
	kind, _ := p.job.Value("member.kind")
	if !spacing.Known && !spacing.Bounded || kind != "slab on ground" {
		return Picture{}
	}
	s := layout.Slab{Length: number("member.length"), Width: number("member.width"), Thickness: number("member.thickness"), Spacing: spacing.Low, Aspect: aspect}
	if depth := p.sheet.Result("least_joint_depth"); depth.Known && s.Thickness > 0 {
		s.JointDepth = depth.Best
	}
	against, _ := p.job.Value("joints.against")
	s.Walls = against == "isolated" || against == "tight"
	plan, err := layout.New(s)
	if err != nil {
		return Picture{}
	}
	return Picture{Name: "joints", Title: "Joint plan", Figure: "panels", SVG: plan.SVG(p.system), Plan: &plan, system: p.system}
}
