package figure

import (
	"fmt"
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
				{Sharpens: []Bound{{Fact: "weather.air", Lowest: coldestAir, Highest: hottestAir}, {Fact: "weather.humidity", Lowest: 0.0, Highest: 100.0}}, Compute: dewPoint},
			},
			Within:  1.5, // forecasts round both
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
				Needs: []string{"figure.dew_point"},
				Sharpens: []Bound{
					{Fact: "load.temperature", Lowest: coldestConcrete, Highest: hottestConcrete},
					{Fact: "weather.wind", Lowest: 0.0, Highest: strongestWind},
					{Fact: "weather.air", Lowest: hottestAir, Highest: coldestAir},
				},
				Compute: evaporation,
			}},
		},
		{
			Name: "evaporation_worst", Title: "evaporation at the worst hour of the forecast", Unit: "lb/ft2/h",
			Method: "Menzel's formula for every hour of the forecast, the largest taken; Uno's single formula is the other end of the range",
			Cites: []limit.Cite{
				{Source: "menzel", Where: "formula behind the ACI 305R nomograph", Basis: limit.Memory},
				{Source: "uno", Where: "single-formula equation", Basis: limit.Memory},
			},
			Ways: []Way{{Needs: []string{"load.temperature", "weather.forecast"}, Compute: evaporationWorst}},
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

// The ends of what facts.yaml takes as possible, °F and mph.
const (
	coldestAir      = -70.0
	hottestAir      = 135.0
	coldestConcrete = 25.0
	hottestConcrete = 140.0
	strongestWind   = 150.0
)

// mostBleeding is the upper end of what facts.yaml takes as possible, lb/ft²/h.
const mostBleeding = 0.5

func dewPoint(c *Calc) (Value, error) {
	air, rh := c.Num("weather.air"), c.Num("weather.humidity")
	dew := fahrenheit(heat.DewPoint(celsius(air), rh/100))
	c.Step("dew point of air at %s and %s = %s", Q(air, "F"), Q(rh, "%"), Q(dew, "F"))
	return Exact(dew), nil
}

func evaporation(c *Calc) (Value, error) {
	concrete, air, wind, dew := c.Num("load.temperature"), c.Num("weather.air"), c.Num("weather.wind"), c.Figure("dew_point").Best
	v := drying(concrete, air, dew, wind)
	c.Assume("the wind of %s blows {20 in} above the slab; a weather station reads it {33 ft} up, where it is about half as fast again", Q(wind, "mph"))
	c.Step("vapor pressure at the surface of %s concrete %.3f psi, of the air %.3f psi", Q(concrete, "F"), vapor(concrete), vapor(dew))
	c.Step("Menzel: 0.44 × (%.3f - %.3f) × (0.253 + 0.096 × %.3g) = %s", vapor(concrete), vapor(dew), wind, Q(v.Best, "lb/ft2/h"))
	c.Step("the two formulas lie between %s and %s", Q(v.Low, "lb/ft2/h"), Q(v.High, "lb/ft2/h"))
	return v, nil
}

// drying is the evaporation in lb/ft²/h of concrete and air in °F with that dew point under a wind in mph: Menzel's best,
// Uno's as the other end. Dew counts as zero. Menzel's does not hang on the air but for its dew point.
func drying(concrete, air, dew, wind float64) Value {
	menzel := math.Max(0, (vapor(concrete)-vapor(dew))*windFactor(wind))
	rh := heat.Humidity(celsius(air), celsius(dew))
	uno := math.Max(0, heat.Uno(celsius(concrete), celsius(air), rh, wind*metersPerSecond)/lbPerFt2)
	return Between(math.Min(menzel, uno), menzel, math.Max(menzel, uno))
}

// vapor is the saturation pressure in psi at a temperature in °F.
func vapor(f float64) float64 { return heat.SaturationPressure(celsius(f)) / kPaPerPsi }

func evaporationWorst(c *Calc) (Value, error) {
	concrete := c.Num("load.temperature")
	rows, err := dryingByHour(concrete, c.Series("weather.forecast"))
	if err != nil {
		return Value{}, err
	}
	worst := rows[0]
	for _, r := range rows {
		c.Step("hour %.3g: %s", r.hour, Q(r.Best, "lb/ft2/h"))
		if r.Best > worst.Best {
			worst = r
		}
	}
	c.Step("worst at hour %.3g", worst.hour)
	if c.Draws() {
		var hours, rates []float64
		for _, r := range rows {
			hours, rates = append(hours, r.hour), append(rates, r.Best)
		}
		c.Draw("evaporation", "lb/ft2/h", "h", hours, rates)
	}
	c.Assume("the concrete keeps its temperature of %s all the while", Q(concrete, "F"))
	return worst.Value, nil
}

// hourly is the evaporation at one hour after the start.
type hourly struct {
	hour float64
	Value
}

// dryingByHour gives the evaporation for each row of a forecast, which must state air, wind and humidity or dew point.
func dryingByHour(concrete float64, forecast []map[string]float64) ([]hourly, error) {
	var rows []hourly
	for _, row := range forecast {
		air, ok := row["air"]
		wind, windy := row["wind"]
		if !ok || !windy {
			return nil, fmt.Errorf("the forecast lacks air or wind at hour %.3g: give both for every hour", row["hour"])
		}
		dew, ok := row["dew_point"]
		if !ok {
			rh, ok := row["humidity"]
			if !ok {
				return nil, fmt.Errorf("the forecast lacks humidity and dew point at hour %.3g: give one of them for every hour", row["hour"])
			}
			dew = fahrenheit(heat.DewPoint(celsius(air), rh/100))
		}
		rows = append(rows, hourly{row["hour"], drying(concrete, air, dew, wind)})
	}
	return rows, nil
}

// Conversions from the units of the facts to those of the heat package.
const (
	metersPerSecond = 0.44704  // in a mph
	lbPerFt2        = 4.882428 // kg/m² in a lb/ft²
	kPaPerPsi       = 6.894757
)

func celsius(f float64) float64    { return (f - 32) / 1.8 }
func fahrenheit(c float64) float64 { return 32 + 1.8*c }
