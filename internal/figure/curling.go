package figure

import (
	"math"

	"hearsay/internal/limit"
)

// curlingFigures are those of slabs that bend as their top cools or dries more than their bottom.
func curlingFigures() []Figure {
	westergaard := limit.Cite{Source: "westergaard", Where: "1926 and 1927, closed form of Bradbury's coefficients", Basis: limit.Memory}
	strength := Bound{Fact: "order.strength", Lowest: 2500.0, Highest: 6000.0}
	modulus := Bound{Fact: "ground.subgrade_modulus", Lowest: 400.0, Highest: 50.0}
	stress := func(name, title, method string, compute func(c *Calc, s slabOnSprings) float64, needs ...string) Figure {
		return Figure{
			Name: name, Title: title, Unit: "psi", Method: method,
			Cites: []limit.Cite{westergaard, {Source: "bradbury", Where: "curling stresses", Basis: limit.Memory}, {Source: "wsdot", Where: "curling stresses (worked example)", Basis: limit.Published}},
			Ways: []Way{{
				Needs:    append([]string{"member.thickness", "order.strength", "ground.subgrade_modulus", "joints.gradient"}, needs...),
				Sharpens: []Bound{{Fact: "mix.thermal_expansion", Lowest: 3.8, Highest: 7.0}},
				Compute: func(c *Calc) (Value, error) {
					s, err := springs(c)
					if err != nil {
						return Value{}, err
					}
					v := compute(c, s)
					c.Assume("the temperature falls evenly through the slab; uneven gradients can halve or double the stress")
					return Exact(v), nil
				},
			}},
		}
	}
	return []Figure{
		{
			Name: "radius_of_relative_stiffness", Title: "radius of relative stiffness", Unit: "in",
			Method: "fourth root of E h³ / (12 (1 - μ²) k)",
			Cites:  []limit.Cite{{Source: "westergaard", Where: "1926", Basis: limit.Published}, {Source: "wsdot", Where: "curling stresses (worked example)", Basis: limit.Published}},
			Ways: []Way{{
				Needs:    []string{"member.thickness"},
				Sharpens: []Bound{strength, modulus},
				Compute: func(c *Calc) (Value, error) {
					s, err := springs(c)
					return Exact(s.radius), err
				},
			}},
		},
		stress("curling_stress_edge", "curling stress at the edge of a panel", "C E α ΔT / 2, with Bradbury's coefficient of the longer side",
			func(c *Calc, s slabOnSprings) float64 {
				ratio := math.Max(c.Num("joints.panel_length"), c.Num("joints.panel_width")) * 12 / s.radius
				v := curlingCoefficient(ratio) * s.heat / 2
				c.Step("B/l %.2f: C %.3f × E α ΔT / 2 of %s = %s", ratio, curlingCoefficient(ratio), Q(s.heat/2, "psi"), Q(v, "psi"))
				return v
			}, "joints.panel_length", "joints.panel_width"),
		stress("curling_stress_interior", "curling stress in the middle of a panel", "E α ΔT / 2 × (C1 + μ C2) / (1 - μ²), C1 of the longer side",
			func(c *Calc, s slabOnSprings) float64 {
				a, b := c.Num("joints.panel_length"), c.Num("joints.panel_width")
				c1, c2 := curlingCoefficient(math.Max(a, b)*12/s.radius), curlingCoefficient(math.Min(a, b)*12/s.radius)
				v := s.heat / 2 * (c1 + s.poisson*c2) / (1 - s.poisson*s.poisson)
				c.Step("C1 %.3f, C2 %.3f: %s × (%.3f + %.2f × %.3f) / (1 - %.2f²) = %s", c1, c2, Q(s.heat/2, "psi"), c1, s.poisson, c2, s.poisson, Q(v, "psi"))
				return v
			}, "joints.panel_length", "joints.panel_width"),
		stress("curling_stress_corner", "curling stress at the corner of a panel", "E α ΔT / (3 (1 - μ)) × √(a / l), a the radius of a wheel's print",
			func(c *Calc, s slabOnSprings) float64 {
				a, err := c.Limit("joints.wheel_radius")
				if err != nil {
					return math.NaN()
				}
				v := s.heat / (3 * (1 - s.poisson)) * math.Sqrt(a/s.radius)
				c.Step("%s / (3 × (1 - %.2f)) × √(%s / %s) = %s", Q(s.heat, "psi"), s.poisson, Q(a, "in"), Q(s.radius, "in"), Q(v, "psi"))
				return v
			}),
	}
}

// slabOnSprings is a slab on the springs of its ground.
type slabOnSprings struct {
	modulus, poisson, radius float64 // psi, -, in
	heat                     float64 // E α ΔT in psi, 0 where no gradient is asked for
}

func springs(c *Calc) (slabOnSprings, error) {
	l := lookup{c: c}
	s := slabOnSprings{modulus: l.number("joints.elasticity") * math.Sqrt(c.Num("order.strength")), poisson: l.number("joints.poisson")}
	t, k := c.Num("member.thickness"), c.Num("ground.subgrade_modulus")
	s.radius = math.Pow(s.modulus*t*t*t/(12*(1-s.poisson*s.poisson)*k), 0.25)
	c.Step("E %s; l = (%.3g × %.3g³ / (12 × (1 - %.2f²) × %.4g))^¼ in pounds and inches = %s", Q(s.modulus, "psi"), s.modulus, t, s.poisson, k, Q(s.radius, "in"))
	if c.names("joints.gradient") {
		fall, expansion := c.Num("joints.gradient")*t, c.Num("mix.thermal_expansion")
		s.heat = s.modulus * expansion / 1e6 * math.Abs(fall)
		c.Step("ΔT = %s × %s = %s; E α ΔT = %s", Q(c.Num("joints.gradient"), "F/in"), Q(t, "in"), Q(fall, "dF"), Q(s.heat, "psi"))
	}
	return s, l.err
}

// curlingCoefficient is Bradbury's coefficient for a panel of so many radii of relative stiffness, in Westergaard's closed
// form.
func curlingCoefficient(ratio float64) float64 {
	x := ratio / math.Sqrt(8)
	if x > 50 { // the hyperbolic functions overflow, and C is 1
		return 1
	}
	return 1 - 2*math.Cos(x)*math.Cosh(x)/(math.Sin(2*x)+math.Sinh(2*x))*(math.Tan(x)+math.Tanh(x))
}
