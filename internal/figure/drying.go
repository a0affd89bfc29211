package figure

import (
	"errors"
	"fmt"
	"math"

	"hearsay/internal/limit"
)

// dryingFigures say how far evaporation may go for a concrete, and at which conditions it falls that low.
func dryingFigures() []Figure {
	menzel := []limit.Cite{{Source: "menzel", Where: "formula behind the ACI 305R nomograph", Basis: limit.Memory}}
	return []Figure{
		{
			Name: "evaporation_limit", Title: "evaporation limit for this concrete", Unit: "lb/ft2/h",
			Method: "the rate from which plastic shrinkage cracking is to be expected: lower for concrete that hardly bleeds, lowest for a thin overlay of it",
			Ways: []Way{{
				Sharpens: []Bound{{Fact: "mix.low_bleed", Lowest: true, Highest: false}, {Fact: "member.kind", Lowest: "topping", Highest: "slab on ground"}},
				Compute:  evaporationLimit,
			}},
		},
		{
			Name: "bleeding_against_evaporation", Title: "bleeding rate less evaporation", Unit: "lb/ft2/h",
			Method: "bleeding rate less evaporation; below zero the surface dries while the concrete still bleeds",
			Cites:  menzel,
			Ways: []Way{{Needs: []string{"figure.bleeding_rate", "figure.evaporation"}, Compute: func(c *Calc) (Value, error) {
				bleeding, drying := c.Figure("bleeding_rate"), c.Figure("evaporation")
				c.Step("%s - %s = %s", Q(bleeding.Best, "lb/ft2/h"), Q(drying.Best, "lb/ft2/h"), Q(bleeding.Best-drying.Best, "lb/ft2/h"))
				return Between(bleeding.Low-drying.High, bleeding.Best-drying.Best, bleeding.High-drying.Low), nil
			}}},
		},
		{
			Name: "humidity_for_evaporation", Title: "relative humidity from which evaporation stays within its limit", Unit: "%",
			Method: "Menzel's formula solved for the humidity of the air; the air temperature alone, with the same moisture in the air, changes nothing in it",
			Cites:  menzel,
			Ways: []Way{{Needs: []string{"load.temperature", "weather.air", "weather.wind", "figure.evaporation_limit"}, Compute: func(c *Calc) (Value, error) {
				concrete, air := c.Num("load.temperature"), c.Num("weather.air")
				rh := 100 * (vapor(concrete) - pressureAllowed(c)) / vapor(air)
				if rh > 100 {
					return Value{}, errors.New("no humidity of the air is enough: cool the concrete or break the wind")
				}
				c.Step("humidity = (%.3f psi - %.3f psi) / %.3f psi = %s", vapor(concrete), pressureAllowed(c), vapor(air), Q(math.Max(0, rh), "%"))
				return Exact(math.Max(0, rh)), nil
			}}},
		},
		{
			Name: "wind_for_evaporation", Title: "wind up to which evaporation stays within its limit", Unit: "mph",
			Method: "Menzel's formula solved for the wind",
			Cites:  menzel,
			Ways:   []Way{{Needs: []string{"load.temperature", "weather.air", "figure.dew_point", "figure.evaporation_limit"}, Compute: windFor}},
		},
		{
			Name: "concrete_for_evaporation", Title: "concrete temperature up to which evaporation stays within its limit", Unit: "F",
			Method: "Menzel's formula solved for the temperature of the concrete",
			Cites:  menzel,
			Ways: []Way{{Needs: []string{"weather.air", "weather.wind", "figure.dew_point", "figure.evaporation_limit"}, Compute: func(c *Calc) (Value, error) {
				dew := c.Figure("dew_point").Best
				t := atVapor(vapor(dew) + pressureAllowed(c))
				if t < 32 {
					return Value{}, errors.New("no concrete above freezing is cool enough: break the wind or fog")
				}
				c.Step("vapor pressure allowed at the surface: %.3f psi + %.3f psi, that of concrete at %s", vapor(dew), pressureAllowed(c), Q(t, "F"))
				return Exact(t), nil
			}}},
		},
		{
			Name: "start_for_evaporation", Title: "hours to put the start off for evaporation to stay within its limit", Unit: "h",
			Method: "Menzel's formula for each hour of the forecast; the first start from which no hour of the placement goes beyond the limit",
			Cites:  menzel,
			Ways:   []Way{{Needs: []string{"load.temperature", "weather.forecast", "job.hours", "figure.evaporation_limit"}, Compute: startFor}},
		},
	}
}

func evaporationLimit(c *Calc) (Value, error) {
	name := "most_evaporation"
	if c.Flag("mix.low_bleed") {
		name = "most_evaporation_low_bleed"
		if c.Text("member.kind") == "topping" {
			name = "most_evaporation_overlay"
		}
	}
	v, err := c.Limit("finish." + name)
	return Exact(v), err
}

// windFactor is what Menzel's formula multiplies the difference of vapor pressures in psi by, lb/ft²/h.
func windFactor(mph float64) float64 { return 0.44 * (0.253 + 0.096*mph) }

// pressureAllowed is the difference of vapor pressures in psi at which evaporation comes to its limit under this wind.
func pressureAllowed(c *Calc) float64 {
	return c.Figure("evaporation_limit").Best / windFactor(c.Num("weather.wind"))
}

// atVapor is the temperature in °F at which the saturation pressure is so many psi: Tetens' formula turned round.
func atVapor(psi float64) float64 {
	x := math.Log(psi * kPaPerPsi / 0.6108)
	return fahrenheit(237.3 * x / (17.27 - x))
}

func windFor(c *Calc) (Value, error) {
	limit, difference := c.Figure("evaporation_limit").Best, vapor(c.Num("load.temperature"))-vapor(c.Figure("dew_point").Best)
	if difference <= 0 {
		return Value{}, errors.New("in this air the concrete does not dry, whatever the wind")
	}
	wind := (limit/(0.44*difference) - 0.253) / 0.096
	if wind < 0 {
		return Value{}, fmt.Errorf("even in still air it dries by %s", Q(difference*windFactor(0), "lb/ft2/h"))
	}
	c.Step("wind = (%.3g / (0.44 × %.3f psi) - 0.253) / 0.096 = %s", limit, difference, Q(wind, "mph"))
	return Exact(wind), nil
}

func startFor(c *Calc) (Value, error) {
	rows, err := dryingByHour(c.Num("load.temperature"), c.Series("weather.forecast"))
	if err != nil {
		return Value{}, err
	}
	hours, most := c.Num("job.hours"), c.Figure("evaporation_limit").Best
	for _, first := range rows {
		if first.hour+hours > rows[len(rows)-1].hour {
			break
		}
		worst := 0.0
		for _, r := range rows {
			if r.hour >= first.hour && r.hour <= first.hour+hours {
				worst = math.Max(worst, r.Best)
			}
		}
		if worst <= most {
			c.Step("from %s on the worst of %s is %s", Q(first.hour, "h"), Q(hours, "h"), Q(worst, "lb/ft2/h"))
			return Exact(first.hour), nil
		}
	}
	return Value{}, fmt.Errorf("the forecast has no stretch of %s with evaporation within %s", Q(hours, "h"), Q(most, "lb/ft2/h"))
}
