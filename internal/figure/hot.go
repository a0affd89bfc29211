package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
	"hearsay/internal/limit"
)

// hotFigures are those of slump lost to heat and of the best hour to start.
func hotFigures() []Figure {
	menzel := []limit.Cite{{Source: "menzel", Where: "formula behind the ACI 305R nomograph", Basis: limit.Memory}}
	start := func(name, title, unit string, pick func(c *Calc, all []heat.Start, best heat.Start) (Value, error)) Figure {
		way := Way{Needs: []string{"load.temperature", "weather.forecast", "weather.start_hour", "job.hours"}}
		way.Compute = func(c *Calc) (Value, error) {
			all, best, err := starts(c)
			if err != nil {
				return Value{}, err
			}
			return pick(c, all, best)
		}
		return Figure{Name: name, Title: title, Unit: unit, Ways: []Way{way}, Cites: menzel,
			Method: "Menzel's evaporation for every hour that each start would leave the surface open; the start of least worst evaporation is best, without rain where there is a choice"}
	}
	return []Figure{
		{
			Name: "slump_lost_to_heat", Title: "slump lost to the heat of the concrete", Unit: "in",
			Method: "an inch of slump for so many degrees above the temperature that slump is ordered for",
			Ways:   []Way{{Needs: []string{"load.temperature"}, Compute: slumpLost}},
		},
		{
			Name: "warmest_air", Title: "warmest air ahead", Unit: "F",
			Method: "the warmest hour of the forecast, or the high, which lies near the air temperature while placing and not below it",
			Within: noContradiction, // the day warms after the start: no contradiction, but an answer must not hang on it
			Ways: []Way{
				{Needs: []string{"weather.forecast"}, Compute: warmestHour},
				{Needs: []string{"weather.air"}, Sharpens: []Bound{{Fact: "weather.high", Lowest: -70.0, Highest: 140.0}}, Compute: func(c *Calc) (Value, error) {
					air := c.Num("weather.air")
					return Exact(clamp(c.Num("weather.high"), air, air+mostWarming)), nil
				}},
			},
			Private: true,
		},
		start("best_start_concrete", "concrete temperature at the worst hour of the best start", "F", func(_ *Calc, _ []heat.Start, best heat.Start) (Value, error) {
			return Exact(fahrenheit(best.Concrete)), nil
		}),
		start("start_concrete", "concrete temperature at the worst hour of the start planned", "F", func(c *Calc, all []heat.Start, _ heat.Start) (Value, error) {
			planned, err := plannedStart(c, all)
			return Exact(fahrenheit(planned.Concrete)), err
		}),
		start("best_start", "best hour of the forecast to start", "h", func(c *Calc, all []heat.Start, best heat.Start) (Value, error) {
			for _, s := range all {
				c.Step("start at hour %.3g: at worst %s, the concrete then at %s", s.Hour, Q(s.Evaporation/lbPerFt2, "lb/ft2/h"), Q(fahrenheit(s.Concrete), "F"))
			}
			return Exact(best.Hour), nil
		}),
		start("best_start_evaporation", "worst evaporation with the best start", "lb/ft2/h", func(_ *Calc, _ []heat.Start, best heat.Start) (Value, error) {
			return Exact(best.Evaporation / lbPerFt2), nil
		}),
		start("start_evaporation", "worst evaporation with the start planned", "lb/ft2/h", func(c *Calc, all []heat.Start, _ heat.Start) (Value, error) {
			planned, err := plannedStart(c, all)
			return Exact(planned.Evaporation / lbPerFt2), err
		}),
		start("start_gain", "fall of the worst evaporation with the best start", "%", func(c *Calc, all []heat.Start, best heat.Start) (Value, error) {
			planned, err := plannedStart(c, all)
			if err != nil || planned.Evaporation == 0 {
				return Exact(0), err
			}
			c.Step("planned start: at worst %s; best start at hour %.3g: %s", Q(planned.Evaporation/lbPerFt2, "lb/ft2/h"), best.Hour, Q(best.Evaporation/lbPerFt2, "lb/ft2/h"))
			return Exact(100 * (1 - best.Evaporation/planned.Evaporation)), nil
		}),
	}
}

// mostWarming is how much warmer than the air while placing a day becomes at most, dF.
const mostWarming = 35.0

func warmestHour(c *Calc) (Value, error) {
	high := math.Inf(-1)
	for _, row := range c.Series("weather.forecast") {
		if air, ok := row["air"]; ok && row["hour"] <= firstDays {
			high = math.Max(high, air)
		}
	}
	if math.IsInf(high, -1) {
		return Value{}, fmt.Errorf("the forecast has no air temperature: give the column air for every hour")
	}
	return Exact(high), nil
}

func slumpLost(c *Calc) (Value, error) {
	rate, err := c.Table("hot.slump_lost")
	if err != nil {
		return Value{}, err
	}
	reference := c.Of("hot.slump_reference")
	t := c.Num("load.temperature")
	lost := math.Max(0, (t-reference)/rate["per"]*rate["inches"])
	c.Step("(%s - %s) / %s × %s = %s", Q(t, "F"), Q(reference, "F"), Q(rate["per"], "dF"), Q(rate["inches"], "in"), Q(lost, "in"))
	return Exact(lost), nil
}

// starts tells what each start hour of the forecast brings, and the best of them. The concrete follows the air a fifth
// of the way from its temperature at the start planned.
func starts(c *Calc) ([]heat.Start, heat.Start, error) {
	w, err := forecast(c.Series("weather.forecast"))
	if err != nil {
		return nil, heat.Start{}, err
	}
	if !w.Has(heat.HasWind | heat.HasHumidity) {
		return nil, heat.Start{}, fmt.Errorf("the forecast needs wind and humidity or dew point for every hour")
	}
	open, placed := c.Num("job.hours"), celsius(c.Num("load.temperature"))
	at := w.At(c.Num("weather.start_hour")).Air
	const follows = 0.2
	c.Assume("the surface lies open for %s; concrete placed at another hour is warmer or colder by a fifth of the difference of the air", Q(open, "h"))
	all := heat.Starts(w, open, func(air float64) float64 { return placed + follows*(air-at) })
	best, ok := heat.Best(all)
	if !ok {
		return nil, best, fmt.Errorf("the forecast is shorter than the %s that the surface lies open: give more hours", Q(open, "h"))
	}
	return all, best, nil
}

func plannedStart(c *Calc, all []heat.Start) (heat.Start, error) {
	planned := c.Num("weather.start_hour")
	for _, s := range all {
		if math.Abs(s.Hour-planned) < 0.51 {
			return s, nil
		}
	}
	return heat.Start{}, fmt.Errorf("the forecast does not cover a start at hour %.3g", planned)
}
