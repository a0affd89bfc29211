package figure

import (
	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

// Mass fractions from atomic masses.
const (
	chlorideShare = 0.639  // chlorine in calcium chloride
	chlorideMole  = 110.98 // g/mol of calcium chloride
	ionsOfSalt    = 3      // particles a unit of calcium chloride falls apart into
)

// chlorideForm bounds how much pure salt a dose holds.
var chlorideForm = Bound{Fact: "cold.chloride_form", Lowest: "flake", Highest: "anhydrous"}

// chlorideFigures are those of calcium chloride.
func chlorideFigures() []Figure {
	raoult := limit.Cite{Source: "trade", Where: "freezing-point depression of an ideal solution, 1.86 K for a mole of particles in a kilogram of water", Basis: limit.Practice}
	atomic := limit.Cite{Source: "trade", Where: "atomic masses: chlorine is 63.9 % of calcium chloride", Basis: limit.Practice}
	return []Figure{
		{
			Name: "chloride_freezing_point", Title: "freezing point of the mix water with that dose", Unit: "F",
			Method: "freezing-point depression of an ideal solution of the salt in the mixing water",
			Cites:  []limit.Cite{raoult},
			Ways: []Way{{
				Needs:    []string{"cold.chloride_dose", "figure.wcm"},
				Sharpens: []Bound{{Fact: "cold.chloride_form", Lowest: "anhydrous", Highest: "flake"}},
				Compute:  chlorideFreezing,
			}},
		},
		{
			Name: "chloride_freezing_drop", Title: "freezing point of the mix water lowered by that dose", Unit: "dF",
			Method: "freezing-point depression of an ideal solution of the salt in the mixing water",
			Cites:  []limit.Cite{raoult},
			Ways: []Way{{
				Needs:    []string{"cold.chloride_dose"},
				Sharpens: []Bound{{Fact: "cold.chloride_form", Lowest: "flake", Highest: "anhydrous"}},
				Assumes:  []string{"mix.wcm"},
				Compute:  chlorideDrop,
			}},
		},
		{
			Name: "chloride_added", Title: "chloride from the accelerator", Unit: "%",
			Method: "dose of calcium chloride times its purity times the share of chlorine in it, by mass of cement",
			Cites:  []limit.Cite{atomic},
			Ways: []Way{{
				Needs: []string{"cold.chloride_dose"}, Sharpens: []Bound{chlorideForm},
				Compute: func(c *Calc) (Value, error) {
					pure, err := pureDose(c)
					c.Step("%s of calcium chloride holds %.3f × %s = %s of chloride by mass of cement", Q(c.Num("cold.chloride_dose"), "%"),
						chlorideShare, Q(pure, "%"), Q(pure*chlorideShare, "%"))
					return Exact(pure * chlorideShare), err
				},
			}},
		},
		{
			Name: "accelerator_chloride_limit", Title: "most chloride for the steel in it", Unit: "%",
			Method: "by prestressing, and by how wet the steel will be",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "metal.prestressed", Lowest: true, Highest: false}, {Fact: "exposure.external_chloride", Lowest: true, Highest: false},
					{Fact: "exposure.moist", Lowest: true, Highest: false}},
				Compute: acceleratorLimit,
			}},
		},
		{
			Name: "chloride_pounds", Title: "dose of calcium chloride for this load", Unit: "lb",
			Method: "dose times cementitious material times load",
			Ways: []Way{{Needs: []string{"cold.chloride_dose", "figure.cementitious", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				return pounds(c, c.Num("cold.chloride_dose")), nil
			}}},
		},
		{
			Name: "chloride_pounds_allowed", Title: "most calcium chloride for this load", Unit: "lb",
			Method: "largest dose times cementitious material times load",
			Ways: []Way{{Needs: []string{"figure.cementitious", "load.volume"}, Compute: func(c *Calc) (Value, error) {
				most, err := c.Limit("cold.most_chloride_dose")
				return pounds(c, most), err
			}}},
		},
	}
}

func acceleratorLimit(c *Calc) (Value, error) {
	class := "dry"
	switch {
	case c.Flag("metal.prestressed"):
		class = "prestressed"
	case c.Flag("exposure.external_chloride"):
		class = "salted"
	case c.Flag("exposure.moist"):
		class = "moist"
	}
	v := c.Of("durability.chloride", class)
	c.Step("concrete that is %s in service: %s", map[string]string{"dry": "dry", "moist": "moist", "salted": "reached by salt", "prestressed": "prestressed, whatever it meets"}[class], Q(v, "%"))
	return Exact(v), nil
}

func pounds(c *Calc, dose float64) Value {
	cement, volume := c.Figure("cementitious").Best, c.Num("load.volume")
	v := dose / 100 * cement * volume
	c.Step("%s of %s × %s = %s", Q(dose, "%"), Q(cement, "lb/yd3"), Q(volume, "yd3"), Q(v, "lb"))
	return Exact(v)
}

// pureDose is the dose as anhydrous salt, % of cement.
func pureDose(c *Calc) (float64, error) {
	dose := c.Num("cold.chloride_dose")
	if c.Text("cold.chloride_form") == "anhydrous" {
		return dose, nil
	}
	purity, err := c.Limit("cold.flake_purity")
	c.Step("%s of flake is %s of pure calcium chloride", Q(dose, "%"), Q(dose*purity, "%"))
	return dose * purity, err
}

func chlorideFreezing(c *Calc) (Value, error) {
	lowered, err := freezingLowered(c, c.Figure("wcm").Best)
	return Exact(32 - lowered), err
}

func chlorideDrop(c *Calc) (Value, error) {
	if !c.Stated("mix.wcm") {
		c.Assume("a water-cement ratio of %.1f", usualWater)
	}
	lowered, err := freezingLowered(c, c.NumOr("mix.wcm", usualWater))
	return Exact(lowered), err
}

// freezingLowered is how far the dose lowers the freezing point of the mixing water, dF.
func freezingLowered(c *Calc, wcm float64) (float64, error) {
	pure, err := pureDose(c)
	lowered := 1.8 * heat.FreezingDrop(pure/100/wcm, chlorideMole, ionsOfSalt)
	c.Step("%.2f g of the salt in 100 g of water lower its freezing point by %s", pure/wcm, Q(lowered, "dF"))
	return lowered, err
}
