package figure

import (
	"math"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

// evaporationFigures are those of the drying of fresh surfaces.
func evaporationFigures() []Figure {
	return []Figure{
		{
			Name: "dew_point", Title: "dew point", Unit: "F",
			Method: "from air temperature and relative humidity by the Tetens formula",
			Cites:  []limit.Cite{{Source: "fao-56", Where: "equation 11", Basis: limit.Published}},
			Ways: []Way{
				{Needs: []string{"weather.dew_point"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("weather.dew_point")), nil }},
				{Needs: []string{"weather.air", "weather.humidity"}, Compute: func(c *Calc) (Value, error) {
					air, rh := c.Num("weather.air"), c.Num("weather.humidity")
					dew := fahrenheit(heat.DewPoint(celsius(air), rh/100))
					c.Step("dew point of air at %s and %s = %s", Q(air, "F"), Q(rh, "%"), Q(dew, "F"))
					return Exact(dew), nil
				}},
			},
			Within:  5, // forecasts round both
			Private: true,
		},
		{
			Name: "evaporation", Title: "evaporation from the surface", Unit: "lb/ft2/h",
			Method: "Menzel's formula behind the nomograph of ACI 305R; Uno's single formula is the other end of the range; dew counts as zero",
			Cites: []limit.Cite{
				{Source: "menzel", Where: "formula behind the ACI 305R nomograph", Basis: limit.Memory},
				{Source: "uno", Where: "single-formula equation", Basis: limit.Memory},
				{Source: "hover-2020", Where: "measured evaporation lies within some 40 % of the formulas", Basis: limit.Published},
			},
			Ways: []Way{{
				Needs:   []string{"load.temperature", "weather.air", "weather.wind", "figure.dew_point"},
				Compute: evaporation,
			}},
		},
		{
			Name: "bleeding_rate", Title: "bleeding rate", Unit: "lb/ft2/h",
			Method: "as stated; otherwise anything up to the fastest bleeding of ordinary concrete",
			Cites:  []limit.Cite{{Source: "aci-302", Where: "discussion of bleeding", Basis: limit.Memory}},
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "mix.bleeding", Lowest: 0.0, Highest: mostBleeding}},
				Compute:  func(c *Calc) (Value, error) { return Exact(c.Num("mix.bleeding")), nil },
			}},
		},
	}
}

// mostBleeding is the upper end of what facts.yaml takes as possible, lb/ft²/h.
const mostBleeding = 0.5

func evaporation(c *Calc) (Value, error) {
	concrete, air, wind, dew := c.Num("load.temperature"), c.Num("weather.air"), c.Num("weather.wind"), c.Figure("dew_point").Best
	tc, ta, v := celsius(concrete), celsius(air), wind*metersPerSecond
	rh := heat.Humidity(ta, celsius(dew))
	menzel := math.Max(0, heat.Menzel(tc, ta, rh, v)/lbPerFt2)
	uno := math.Max(0, heat.Uno(tc, ta, rh, v)/lbPerFt2)
	c.Assume("the wind of %s blows {20 in} above the slab; a weather station reads it {33 ft} up, where it is about half as fast again", Q(wind, "mph"))
	c.Step("vapor pressure at the surface of %s concrete less that of air at %s and %.0f %% relative humidity", Q(concrete, "F"), Q(air, "F"), 100*rh)
	c.Step("Menzel: 0.44 × (difference in psi) × (0.253 + 0.096 × wind in mph) = %s", Q(menzel, "lb/ft2/h"))
	c.Step("Uno: %s", Q(uno, "lb/ft2/h"))
	return Between(math.Min(menzel, uno), menzel, math.Max(menzel, uno)), nil
}

// Conversions from the units of the facts to those of the heat package.
const (
	metersPerSecond = 0.44704  // in a mph
	lbPerFt2        = 4.882428 // kg/m² in a lb/ft²
)

func celsius(f float64) float64    { return (f - 32) / 1.8 }
func fahrenheit(c float64) float64 { return 32 + 1.8*c }
