package figure

import (
	"fmt"

	"hearsay/internal/heat"
)

// bottomHour is when the temperature at the bottom of a slab on cold ground is given, h; bottomCourseHours is how long its course is
// followed at first, h.
const (
	bottomHour        = 6
	bottomCourseHours = 12
)

// bottomCourse is the temperature at the bottom of a slab on the ground, hour by hour, °C. What lies above counts little in the
// first hours, so the top is taken as covered in air halfway between ground and concrete.
func bottomCourse(c *Calc, hours float64) (*heat.History, error) {
	c.Assume("{6 in} of stone on silt of usual moisture; a covered top in air between ground and concrete")
	placed, ground, thick := c.Num("load.temperature"), c.Num("ground.temperature"), c.Num("member.thickness")
	h, err := c.remember(fmt.Sprint("bottom", placed, ground, thick, hours), func() (any, error) {
		return runBottom(c, celsius(placed), celsius(ground), thick*meter, hours)
	})
	if err != nil {
		return nil, err
	}
	return h.(*heat.History), nil
}

func runBottom(c *Calc, placed, ground, thick, hours float64) (*heat.History, error) {
	cement, _ := heat.CementType("I")
	const usualCement = 564 * kgPerLbYd
	deep, err := c.Table("ground.deep_ground")
	if err != nil {
		return nil, err
	}
	depth, below := deep["depth"]*12*meter, celsius(deep["temperature"])
	s := heat.Section{
		Concrete:  heat.NormalConcrete(placed, usualCement, usualWater*usualCement, cement),
		Thickness: thick,
		Ground: []heat.Layer{
			{Soil: heat.Kersten(heat.Coarse, 2100, 0.05), Thickness: 0.15, Top: ground, Bottom: ground},
			{Soil: heat.Kersten(heat.Fine, 1600, 0.15), Thickness: depth - 0.15, Top: ground, Bottom: below},
		},
	}
	air := heat.Steady(heat.Hour{Air: (placed + ground) / 2, Humidity: 0.7, Cloud: 1}, 0)
	return heat.Run(s, air, []heat.Change{{Top: heat.Face{R: 1 * rsi}}}, heat.Span{Hours: hours, Step: 0.25, Cells: 8})
}

func bottomTemperature(c *Calc) (Value, error) {
	h, err := bottomCourse(c, bottomCourseHours)
	if err != nil {
		return Value{}, err
	}
	for _, hour := range []float64{1, 3, bottomHour} {
		c.Step("bottom after %s: %s", Q(hour, "h"), Q(fahrenheit(heat.At(h.Hours, h.Bottom, hour)), "F"))
	}
	return Exact(fahrenheit(heat.At(h.Hours, h.Bottom, bottomHour))), nil
}

// setDelay adds up, hour by hour, the share of its setting that the bottom gets done at its temperature. Most of it sets within
// half a day, and only where it does not are further hours computed.
func setDelay(c *Calc) (Value, error) {
	const day, longest = 24, 72
	placed := c.Num("load.temperature")
	plain, err := setAt(c, placed)
	if err != nil {
		return Value{}, err
	}
	for _, hours := range []float64{bottomCourseHours, day, longest} {
		h, err := bottomCourse(c, hours)
		if err != nil {
			return Value{}, err
		}
		set, ok, err := bottomSets(c, h)
		if err != nil {
			return Value{}, err
		}
		if ok {
			c.Step("at %s throughout it sets after %s, at the bottom after %s", Q(placed, "F"), Q(plain, "h"), Q(set, "h"))
			return Exact(max(0, set-plain)), nil
		}
	}
	return Value{}, fmt.Errorf("the bottom does not set within %s", Q(longest, "h"))
}

// bottomSets gives the hour at which the bottom of a slab has set, and whether it has by the end of its course.
func bottomSets(c *Calc, h *heat.History) (hour float64, ok bool, err error) {
	done := 0.0
	for i := 1; i < len(h.Hours); i++ {
		at, err := setAt(c, fahrenheit((h.Bottom[i-1]+h.Bottom[i])/2))
		if err != nil {
			return 0, false, err
		}
		if done += (h.Hours[i] - h.Hours[i-1]) / at; done >= 1 {
			return h.Hours[i] - (done-1)*at, true, nil
		}
	}
	return 0, false, nil
}
