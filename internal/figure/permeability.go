package figure

import (
	"fmt"
	"math"
)

// permeabilityFigures say how open the pores of the paste are by w/cm, and when wet curing has closed them.
func permeabilityFigures() []Figure {
	return []Figure{
		{
			Name: "permeability_ratio", Title: "permeability, times that at the better w/cm", Unit: "",
			Method: "published permeability of mature paste at two water-cement ratios, straight in its logarithm between them",
			Ways: []Way{{Needs: []string{"figure.wcm"}, Compute: func(c *Calc) (Value, error) {
				low, high := c.Of("moisture.open_pores", "0.30"), c.Of("moisture.open_pores", "0.70")
				better, w := c.Of("moisture.better_ratio"), c.Figure("wcm").Best
				v := math.Pow(high/low, (w-better)/0.40)
				c.Step("from 0.30 to 0.70 it grows %.0f times; from %.2f to %.2f %.1f times", high/low, better, w, v)
				return Exact(v), nil
			}}},
		},
		closingFigure("closing_age", "days of wet curing until the pores close", []string{"figure.wcm"}, func(c *Calc) float64 { return c.Figure("wcm").Best }),
		closingFigure("closing_age_better", "days of wet curing until the pores close with the better w/cm", nil, func(c *Calc) float64 { return c.Of("moisture.better_ratio") }),
	}
}

func closingFigure(name, title string, needs []string, ratio func(*Calc) float64) Figure {
	return Figure{
		Name: name, Title: title, Unit: "d", Method: "from a table by w/cm, straight in its logarithm; above 0.70 the pores never close",
		Ways: []Way{{Needs: needs, Compute: func(c *Calc) (Value, error) {
			table, err := c.Table("moisture.closing_age")
			if err != nil {
				return Value{}, err
			}
			w := ratio(c)
			if w > 0.70 {
				return Value{}, fmt.Errorf("above a w/cm of 0.70 the pores never close")
			}
			v, err := logAlong(table, math.Max(0.40, w), "curing time by w/cm", "")
			c.Step("w/cm %.2f: %s", w, Q(v, "d"))
			return Exact(v), err
		}}},
	}
}
