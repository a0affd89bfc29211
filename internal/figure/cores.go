package figure

import (
	"math"
	"slices"
)

// coreFigures judge cores by 85 and 75 per cent of the specified strength. The limits are whole per cents, and results are
// rounded to them before they are compared.
func coreFigures() []Figure {
	share := func(name, title string, of func([]float64) float64) Figure {
		return Figure{Name: name, Title: title, Unit: "%", Method: "strength over specified strength, rounded to a whole per cent",
			Ways: []Way{{Needs: []string{"strength.cores", "order.strength"}, Compute: func(c *Calc) (Value, error) {
				v := 100 * of(c.List("strength.cores")) / c.Num("order.strength")
				c.Step("%s / %s = %.1f %%, rounded %s", Q(of(c.List("strength.cores")), "psi"), Q(c.Num("order.strength"), "psi"), v, Q(math.Round(v), "%"))
				return Exact(math.Round(v)), nil
			}}}}
	}
	least := func(name, title, limit string) Figure {
		return Figure{Name: name, Title: title, Unit: "psi", Method: "share of the specified strength",
			Ways: []Way{{Needs: []string{"order.strength"}, Compute: func(c *Calc) (Value, error) {
				v := c.Of(limit) / 100 * c.Num("order.strength")
				c.Step("%s of %s = %s", Q(c.Of(limit), "%"), Q(c.Num("order.strength"), "psi"), Q(v, "psi"))
				return Exact(v), nil
			}}}}
	}
	strength := func(name, title string, of func([]float64) float64) Figure {
		return Figure{Name: name, Title: title, Unit: "psi", Method: "from the cores",
			Ways: []Way{{Needs: []string{"strength.cores"}, Compute: func(c *Calc) (Value, error) { return Exact(of(c.List("strength.cores"))), nil }}}}
	}
	return []Figure{
		strength("core_average", "average of the cores", mean),
		strength("lowest_core", "lowest core", slices.Min[[]float64]),
		share("core_average_share", "average of the cores, of the specified strength", mean),
		share("lowest_core_share", "lowest core, of the specified strength", slices.Min[[]float64]),
		least("core_average_least", "least average of three cores", "strength.core_average"),
		least("core_single_least", "least strength of each core", "strength.core_single"),
	}
}
