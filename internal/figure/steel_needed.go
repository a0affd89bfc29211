package figure

import (
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// steelNeededFigures are those of the steel that a purpose asks for, and of the bars or wire that give it.
func steelNeededFigures() []Figure {
	friction := Bound{Fact: "ground.base_friction", Lowest: "plastic sheet", Highest: "clay"}
	code := Bound{Fact: "job.concrete_code", Lowest: "318-19", Highest: "318-14"}
	return []Figure{
		{
			Name: "steel_yield", Title: "yield strength of the steel", Unit: "psi",
			Method: "as stated; not stated, any that reinforcement has; the code minimum changes at Grade 60",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "steel.yield", Lowest: 120000.0, Highest: 30000.0, Also: []any{59999.0, 60000.0}}},
				Compute:  func(c *Calc) (Value, error) { return Exact(c.Num("steel.yield")), nil },
			}},
			Private: true,
		},
		{
			Name: "drag_steel", Title: "steel area by subgrade drag", Unit: "in2/ft",
			Method: "F L w / (2 fs): half the slab between joints is dragged over the ground; F is the resistance of the base, fs two thirds of the yield strength",
			Cites:  []limit.Cite{{Source: "crsi", Where: "examples of slabs on ground", Basis: limit.Published}, {Source: "wri", Where: "TF 705-R-03: for ordinary joint spacing only", Basis: limit.Published}},
			Ways: []Way{{
				Needs:    []string{"figure.joint_span", "member.thickness", "figure.steel_yield"},
				Sharpens: []Bound{friction},
				Compute:  dragSteel,
			}},
		},
		{
			Name: "minimum_steel", Title: "steel area by shrinkage-temperature ratio", Unit: "in2/ft",
			Method: "least ratio of the edition of ACI 318 for this steel times the area of the concrete; meant for structural slabs",
			Ways: []Way{{
				Needs:    []string{"member.thickness", "figure.steel_yield"},
				Sharpens: []Bound{code},
				Compute:  minimumSteel,
			}},
		},
		{
			Name: "crack_control_steel", Title: "steel area that holds cracks tight or does without joints", Unit: "in2/ft",
			Method: "0.5 % of the area of the concrete; 0.6 % is the other end of the range",
			Ways:   []Way{{Needs: []string{"member.thickness"}, Compute: crackControlSteel}},
		},
		{
			Name: "steel_needed", Title: "steel area that its purpose asks for", Unit: "in2/ft",
			Method: "by subgrade drag, by the code minimum or by crack control, as the purpose is",
			Ways: []Way{{
				Needs:    []string{"steel.purpose", "member.thickness", "figure.steel_yield", "figure.joint_span"},
				Sharpens: []Bound{friction, code},
				Compute:  steelNeeded,
			}},
		},
		{
			Name: "bars_to_use", Title: "spacing of bars that gives the steel its purpose asks for", Unit: "in",
			Method: "area of the smallest bar over the area needed, in whole inches, at least a hand apart and no farther than {18 in}; the lines list the other bars and wire meshes",
			Ways:   []Way{{Needs: []string{"figure.steel_needed"}, Compute: barsToUse}},
		},
		{
			Name: "bar_spacing_needed", Title: "spacing at which these bars are enough", Unit: "in",
			Method: "area of the bar over the area needed, in whole inches, no farther than {18 in}",
			Ways: []Way{{Needs: []string{"steel.bar_size", "figure.steel_needed"}, Compute: func(c *Calc) (Value, error) {
				bar, err := barArea(c)
				if err != nil {
					return Value{}, err
				}
				need := c.Figure("steel_needed")
				v, err := wholeSpacing(c, bar, need)
				if err == nil && v.Low < 1 {
					err = fmt.Errorf("these bars would touch: take larger ones")
				}
				return v, err
			}}},
		},
		{
			Name: "wire_needed", Title: "wire size that is enough at this spacing", Unit: "W",
			Method: "area needed times the spacing of the wires, in tenths of a W number",
			Ways: []Way{{Needs: []string{"steel.spacing", "figure.steel_needed"}, Compute: func(c *Calc) (Value, error) {
				per, err := c.Limit("steel.wire_area")
				size := func(area float64) float64 {
					return math.Ceil(10*area*c.Num("steel.spacing")/12/per-1e-9) / 10
				}
				need := c.Figure("steel_needed")
				c.Step("%s in every %s: W%.1f", Q(need.Best, "in2/ft"), Q(c.Num("steel.spacing"), "in"), size(need.Best))
				return Between(size(need.Low), size(need.Best), size(need.High)), err
			}}},
		},
	}
}

func dragSteel(c *Calc) (Value, error) {
	l := lookup{c: c}
	f := l.spread("steel.friction", c.Text("ground.base_friction"))
	weight := l.number("steel.slab_weight") * c.Num("member.thickness")
	stress := l.number("steel.working_stress") * c.Figure("steel_yield").Best
	length := c.Figure("joint_span").Best
	area := func(f float64) float64 { return f * length * weight / (2 * stress) }
	c.Step("F %.3g × L %s × w %s / (2 × fs %s) = %s", f.Best, Q(length, "ft"), Q(weight, "psf"), Q(stress, "psi"), Q(area(f.Best), "in2/ft"))
	return Between(area(f.Low), area(f.Best), area(f.High)), l.err
}

const grade60 = 60000 // psi

func minimumSteel(c *Calc) (Value, error) {
	edition, yield := c.Text("job.concrete_code"), c.Figure("steel_yield").Best
	ratios, err := c.Table("steel.least_ratio", edition)
	ratio := ratios["below grade 60"]
	if yield >= grade60 { // since 318-19 the yield strength no longer counts
		ratio = math.Max(ratios["least"], ratios["grade 60"]*grade60/yield)
	}
	v := ratio / 100 * 12 * c.Num("member.thickness")
	c.Step("ACI %s, steel of %s: %.3g %% of %s of concrete = %s", edition, Q(yield, "psi"), ratio, Q(c.Num("member.thickness"), "in"), Q(v, "in2/ft"))
	return Exact(v), err
}

func crackControlSteel(c *Calc) (Value, error) {
	l := lookup{c: c}
	gross := 12 * c.Num("member.thickness")
	least, better := l.number("steel.crack_control_ratio")/100*gross, l.number("steel.crack_control_ratio_better")/100*gross
	c.Step("0.5 %% of %s of concrete = %s; 0.6 %%: %s", Q(c.Num("member.thickness"), "in"), Q(least, "in2/ft"), Q(better, "in2/ft"))
	return Between(least, least, better), l.err
}

func steelNeeded(c *Calc) (Value, error) {
	switch c.Text("steel.purpose") {
	case "drag":
		return dragSteel(c)
	case "minimum":
		return minimumSteel(c)
	case "hold cracks", "no joints":
		return crackControlSteel(c)
	}
	return Value{}, fmt.Errorf("no amount of steel serves that purpose")
}
