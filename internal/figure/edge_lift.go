package figure

import (
	"math"

	"hearsay/internal/limit"
)

// edgeLiftFigures are those of how far the edges of drying panels rise, and what each measure against it changes.
func edgeLiftFigures() []Figure {
	cites := []limit.Cite{
		{Source: "trade", Where: "mechanics of a slab that bends under its own weight", Basis: limit.Practice},
		{Source: "suprenant-curl", Where: "part II, mean curl of pavements: to compare with", Basis: limit.Published},
	}
	method := "the top shrinks more than the bottom and bends the panel up from its middle; its own weight holds down what it can"
	lift := func(name, title, how string, change func(l *lookup, s *curled)) Figure {
		return Figure{Name: name, Title: title, Unit: "in", Method: method + how, Cites: cites, Ways: []Way{{
			Needs:    []string{"figure.joint_span"},
			Sharpens: []Bound{{Fact: "member.thickness", Lowest: 240.0, Highest: 0.5}},
			Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				s := curledSlab(&l, c)
				change(&l, &s)
				c.Assume("concrete of {4000 psi} that shrinks %s, as ordinary concrete does", Q(s.shrinkage, "millionths"))
				c.Assume("corners rise about twice as far as edges")
				return Exact(s.lift(c)), l.err
			},
		}}}
	}
	return []Figure{
		lift("edge_lift", "lift of the edges", "", func(*lookup, *curled) {}),
		lift("edge_lift_closer", "lift of the edges with closer joints", "; joints at 24 thicknesses", func(l *lookup, s *curled) {
			s.length = math.Min(s.length, l.number("joints.spacing_by_thickness", "small stone")*s.thickness)
		}),
		lift("edge_lift_low_shrinkage", "lift of the edges with a low-shrinkage mix", "; the shrinkage that still counts as low", func(l *lookup, s *curled) {
			s.shrinkage = l.number("joints.low_shrinkage")
		}),
		lift("edge_lift_thicker", "lift of the edges of a thicker slab", "; {1 in} more thickness", func(l *lookup, s *curled) {
			s.thickness += l.number("joints.thicker_by")
		}),
		{
			Name: "flat_joint_spacing", Title: "joint spacing that keeps the edges down", Unit: "ft",
			Method: method + "; the longest panel, in half feet, whose edges lift no more than a floor stands",
			Cites:  cites,
			Ways: []Way{{Needs: []string{"member.thickness"}, Compute: func(c *Calc) (Value, error) {
				l := lookup{c: c}
				most := l.number("joints.most_lift")
				s := slabThatCurls(&l, c)
				feet := 1.0
				for ; feet < 40; feet += 0.5 {
					s.length = (feet + 0.5) * 12
					if s.rise() > most {
						break
					}
				}
				s.length = feet * 12
				c.Step("joints every %s lift the edges %s, no more than %s", Q(feet, "ft"), Q(s.rise(), "in"), Q(most, "in"))
				return Exact(feet), l.err
			}}},
		},
	}
}

// curled is a panel that dries from its top.
type curled struct {
	length, thickness, modulus, weight float64 // in, in, psi, lb/in³
	shrinkage, share                   float64 // millionths; of it at the top more than at the bottom
}

func curledSlab(l *lookup, c *Calc) curled {
	s := slabThatCurls(l, c)
	s.length = c.Figure("joint_span").Best * 12
	return s
}

func slabThatCurls(l *lookup, c *Calc) curled {
	return curled{
		thickness: c.Num("member.thickness"),
		modulus:   l.number("joints.elasticity") * math.Sqrt(l.number("joints.usual_strength")),
		weight:    l.number("steel.slab_weight") / 144,
		shrinkage: l.number("joints.shrinkage"),
		share:     l.number("joints.gradient_share") / 100,
	}
}

// rise is the lift of the edge over the middle in inches. A strip of length a along the edge rises until the moment of its
// weight bends it back as much as drying bends it up: a = √(2 E I κ / w). A panel shorter than two such strips rises from
// its middle.
func (s curled) rise() float64 {
	bend := s.difference() / s.thickness
	stiff := s.modulus * math.Pow(s.thickness, 3) / 12
	w := s.weight * s.thickness
	a := math.Min(s.length/2, s.strip())
	return bend*a*a/2 - w*math.Pow(a, 4)/(8*stiff)
}

func (s curled) strip() float64 {
	return math.Sqrt(2 * s.modulus * s.thickness * s.difference() / (12 * s.weight))
}

func (s curled) difference() float64 { return s.shrinkage * s.share / 1e6 }

func (s curled) lift(c *Calc) float64 {
	v := s.rise()
	c.Step("top shrinks %.0f %% of %s more than the bottom: bends %.3g / in", 100*s.share, Q(s.shrinkage, "millionths"), s.difference()/s.thickness)
	c.Step("the weight of the slab lets a strip of %s rise; panel %s, half of it %s", Q(s.strip(), "in"), Q(s.length/12, "ft"), Q(s.length/2, "in"))
	c.Step("lift κ a² / 2 - w a⁴ / (8 E I) with the smaller of the two = %s", Q(v, "in"))
	return v
}
