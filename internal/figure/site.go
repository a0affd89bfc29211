package figure

import (
	"fmt"
	"math"

	"hearsay/internal/heat"
)

// site is a placement to run through time, with a key that tells it from others on the same sheet.
type site struct {
	heat.Job
	key string
}

// under runs the placement under a cover of so much R, or finds the run made before.
func (s site) under(c *Calc, r float64) (*heat.History, error) {
	v, err := c.remember(fmt.Sprintf("run %s under %g %+v", s.key, r, s.Face), func() (any, error) { return s.With(r * rsi) })
	h, _ := v.(*heat.History)
	return h, err
}

// placement builds the section, the weather and the faces of a placement.
func placement(c *Calc) (site, error) {
	cement, _ := heat.CementType("I")
	mass := clamp(c.Num("mix.cementitious"), leastCement, mostCement) * kgPerLbYd
	freezing := c.Of("cold.freezing_point", "usual")
	mix := heat.NormalConcrete(celsius(c.Num("load.temperature")), mass, usualWater*mass, cement)
	mix.Freezing = celsius(freezing)
	j := site{Job: heat.Job{
		Section: heat.Section{Concrete: mix, Thickness: c.Num("member.thickness") * meter},
		Hours:   window, Step: 1, Cells: 6,
	}}
	c.Assume("the heat of Type I cement at a water-cement ratio of %.1f", usualWater)
	var err error
	if j.Weather, err = coldWeather(c); err != nil {
		return j, err
	}
	// What a forecast says and its start are the same all over a sheet.
	j.key = fmt.Sprint(c.names("weather.forecast"), mass, c.Num("load.temperature"), j.Section.Thickness, c.Text("member.kind"), c.Num("ground.temperature"),
		lowAhead(c), c.Num("weather.high"), c.Num("weather.wind"), startOf(c))
	j.Face.Sky = skySeen(c, j.Weather)
	forms := c.Of("cold.formwork_r") * rsi
	j.Section.Edge = &heat.Edge{R: forms} // where it freezes first
	switch kind := c.Text("member.kind"); {
	case onGround(kind):
		j.Section.Ground, err = groundBelow(c)
		c.Assume("{0.75 in} plywood forms along the edges, which are covered like the top")
	case kind == "suspended slab":
		j.Far.R = forms
		c.Assume("{0.75 in} plywood forms below and along the edges, which are covered like the top, with cold air under them")
	default:
		j.Both, j.Face.Sky = true, j.Face.Sky/2
		j.Face.R, j.Section.Edge.R = forms, 0
		c.Assume("{0.75 in} plywood forms on both faces, its end open but for the cover")
	}
	return j, err
}

// window is how long a placement is followed, h: a week.
const window = 168

// skySeen is 1 where a forecast tells of the clouds; without it, sky and sun are left out.
func skySeen(c *Calc, w heat.Weather) float64 {
	if w.Has(heat.HasCloud) {
		return 1
	}
	c.Assume("neither sun nor a clear night sky")
	return 0
}

// groundBelow is a base of stone on silt, from the temperature stated at the top to that of deep ground.
func groundBelow(c *Calc) ([]heat.Layer, error) {
	deep, err := c.Table("ground.deep_ground")
	if err != nil {
		return nil, err
	}
	top, depth := celsius(groundTop(c)), deep["depth"]*12*meter
	bottom := celsius(deep["temperature"])
	const base = 0.15
	between := top + (bottom-top)*base/depth
	c.Assume("{6 in} of stone on silt of usual moisture, %s at the top and %s %s down", Q(fahrenheit(top), "F"), Q(deep["temperature"], "F"), Q(deep["depth"], "ft"))
	return []heat.Layer{
		{Soil: heat.Kersten(heat.Coarse, 2100, 0.05), Thickness: base, Top: top, Bottom: between},
		{Soil: heat.Kersten(heat.Fine, 1600, 0.15), Thickness: depth - base, Top: between, Bottom: bottom},
	}, nil
}

// groundTop is the temperature of the ground in °F: not warmer than it can be in such air, and not frozen where it is said
// not to be.
func groundTop(c *Calc) float64 {
	least := coldestGround
	if c.Stated("ground.state") && c.Text("ground.state") != "frozen" {
		least = 32
	}
	return clamp(c.Num("ground.temperature"), least, clamp(lowAhead(c)+groundAbove, 32, warmestGround))
}

// coldWeather is the forecast where there is one, and otherwise a daily course from the low.
func coldWeather(c *Calc) (heat.Weather, error) {
	wind := clamp(c.Num("weather.wind"), leastWind, mostWind) * metersPerSecond
	if !c.Stated("weather.forecast") {
		low, start := lowAhead(c), startOf(c)
		high := clamp(c.Num("weather.high"), low+leastSwing, low+mostSwing)
		c.Assume("days that run from %s at 6:00 to %s at 15:00 and back, the concrete placed at %.4g o'clock", Q(low, "F"), Q(high, "F"), start)
		return heat.Daily(celsius(low), celsius(high), heat.Hour{Humidity: 0.7, Wind: wind, Cloud: 1}, start, window, heat.HasWind), nil
	}
	w, err := forecast(c.Series("weather.forecast"))
	if err != nil {
		return w, err
	}
	return w.Fill(heat.Hour{Humidity: 0.7, Wind: wind, Cloud: 1}).From(c.Num("weather.start_hour")), nil
}

// forecast turns the rows of an hourly forecast, in the units of its columns, into weather.
func forecast(rows []map[string]float64) (heat.Weather, error) {
	w := heat.Weather{Given: heat.HasHumidity | heat.HasWind | heat.HasCloud | heat.HasSolar | heat.HasRain}
	for i, row := range rows {
		air, ok := row["air"]
		if !ok {
			return w, fmt.Errorf("the forecast has no air temperature at hour %.3g: give the column air for every hour", row["hour"])
		}
		h := heat.Hour{Hour: row["hour"], Air: celsius(air)}
		if i > 0 && h.Hour <= w.Hours[i-1].Hour {
			return w, fmt.Errorf("hour %.3g of the forecast does not come after hour %.3g: put its rows in order", h.Hour, w.Hours[i-1].Hour)
		}
		read := func(column string, given heat.Column, to *float64, factor float64) {
			v, ok := row[column]
			if !ok {
				w.Given &^= given
			}
			*to = v * factor
		}
		read("humidity", heat.HasHumidity, &h.Humidity, 0.01)
		if dew, ok := row["dew_point"]; ok {
			h.Humidity = heat.Humidity(h.Air, celsius(dew))
		}
		read("wind", heat.HasWind, &h.Wind, metersPerSecond)
		read("cloud", heat.HasCloud, &h.Cloud, 0.01)
		read("solar", heat.HasSolar, &h.Solar, 1)
		read("rain", heat.HasRain, &h.Rain, 25.4)
		w.Hours = append(w.Hours, h)
	}
	if _, ok := rows[0]["dew_point"]; ok {
		w.Given |= heat.HasHumidity
	}
	return w, nil
}

func clamp(v, low, high float64) float64 { return math.Min(math.Max(v, low), high) }
