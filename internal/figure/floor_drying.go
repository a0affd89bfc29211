package figure

import (
	"math"

	"hearsay/internal/limit"
)

// dryingSharpens are the facts that drying time hangs on beside thickness and w/cm: quick ones first.
var dryingSharpens = []Bound{
	{Fact: "member.thickness", Lowest: 0.5, Highest: 240.0},
	{Fact: "floor.retarder", Lowest: "direct", Highest: "none"},
	{Fact: "floor.drying_sides", Lowest: "both", Highest: "one"},
	{Fact: "member.kind", Lowest: "suspended slab", Highest: "slab on ground"},
	{Fact: "floor.room_humidity", Lowest: 35.0, Highest: 80.0},
	{Fact: "floor.room_temperature", Lowest: 86.0, Highest: 50.0},
	{Fact: "floor.rewetted", Lowest: false, Highest: true},
	{Fact: "floor.humidity_limit", Lowest: 90.0, Highest: 85.0},
}

// floorDryingFigures are those of the water that must leave a floor before it can be covered.
func floorDryingFigures() []Figure {
	cites := []limit.Cite{{Source: "hedenblad", Where: "thickness factors: drying time grows faster than thickness and slower than its square", Basis: limit.Memory}}
	method := "published drying times of a 4 in slab by w/cm, and a month an inch, by thickness, faces, climate, wetting and the humidity allowed; the range is that of the methods"
	return []Figure{
		{
			Name: "days_to_dry", Title: "days of drying until it can be covered", Unit: "d", Method: method, Cites: cites, Overlap: true,
			Ways: []Way{
				{Needs: []string{"figure.wcm"}, Sharpens: dryingSharpens, Compute: func(c *Calc) (Value, error) {
					return daysToDry(c, c.Figure("wcm").Best)
				}},
				{
					Sharpens: append([]Bound{{Fact: "mix.wcm", Lowest: 0.40, Highest: 1.0, Also: []any{0.55, 0.65}}}, dryingSharpens...),
					Compute:  func(c *Calc) (Value, error) { return daysToDry(c, c.Num("mix.wcm")) },
				},
			},
		},
		{
			Name: "days_to_dry_better", Title: "days of drying with the better w/cm", Unit: "d", Method: method, Cites: cites,
			Ways: []Way{{Sharpens: dryingSharpens, Compute: func(c *Calc) (Value, error) {
				return daysToDry(c, c.Of("moisture.better_ratio"))
			}}},
		},
		{
			Name: "drying_time", Title: "days of drying allowed", Unit: "d", Method: "days closed in and not wetted; at most the age at which it is covered", Overlap: true,
			Ways: []Way{
				{Needs: []string{"floor.days_to_covering"}, Sharpens: []Bound{{Fact: "floor.drying_days", Lowest: 0.0, Highest: 40000.0}}, Compute: func(c *Calc) (Value, error) {
					return Exact(math.Min(c.Num("floor.drying_days"), c.Num("floor.days_to_covering"))), nil
				}},
				{Needs: []string{"floor.drying_days"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("floor.drying_days")), nil }},
			},
		},
		over("humidity_over", "humidity above what the covering allows", "%", "floor.humidity_reading", "floor.humidity_limit"),
		over("emission_over", "vapor emission above what the covering allows", "lb/1000ft2/d", "floor.emission_reading", "floor.emission_limit"),
		{
			Name: "water_to_dry", Title: "water that must leave the slab", Unit: "lb",
			Method: "mixing water less what the cement binds, in the volume of the slab",
			Ways: []Way{{Needs: []string{"figure.area", "member.thickness", "figure.wcm", "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
				yards := c.Figure("area").Best * c.Num("member.thickness") / 12 / c.Of("mix.yard")
				free := c.Figure("cementitious").Best * (c.Figure("wcm").Best - c.Of("moisture.bound_water")/100)
				c.Step("(%.2f - %.2f) x %s x %s = %s", c.Figure("wcm").Best, c.Of("moisture.bound_water")/100,
					Q(c.Figure("cementitious").Best, "lb/yd3"), Q(yards, "yd3"), Q(free*yards, "lb"))
				return Exact(free * yards), nil
			}}},
		},
	}
}

// over is a reading less its limit.
func over(name, title, unit, reading, allowed string) Figure {
	return Figure{
		Name: name, Title: title, Unit: unit, Method: "reading less limit",
		Ways: []Way{{Needs: []string{reading, allowed}, Compute: func(c *Calc) (Value, error) {
			v := c.Num(reading) - c.Num(allowed)
			c.Step("%s - %s = %s", Q(c.Num(reading), unit), Q(c.Num(allowed), unit), Q(v, unit))
			return Exact(v), nil
		}}},
	}
}

// slabOfTheTables is the thickness that the published drying times hold for, in.
const slabOfTheTables = 4

func daysToDry(c *Calc, ratio float64) (Value, error) {
	laboratory, err := laboratoryDays(c, ratio)
	if err != nil {
		return Value{}, err
	}
	climate, err := roomFactor(c, c.Num("floor.room_humidity"), c.Num("floor.room_temperature"))
	if err != nil {
		return Value{}, err
	}
	lab, err := roomFactor(c, 50, 73)
	if err != nil {
		return Value{}, err
	}
	thick := c.Num("member.thickness")
	if driesFrom(c) == "both" {
		thick /= 2
		c.Step("both faces: as half the thickness, %s", Q(thick, "in"))
	}
	size := thick / slabOfTheTables
	least, usual, most := math.Min(size, size*size), math.Pow(size, 1.5), math.Max(size, size*size)
	v := Between(least*laboratory, usual*laboratory, most*laboratory)
	v = scaled(v, climate/lab)
	c.Step("%s against %s of the tables, room against laboratory %.2f: %s to %s", Q(thick, "in"), Q(slabOfTheTables, "in"), climate/lab, Q(v.Low, "d"), Q(v.High, "d"))
	others := []float64{c.Of("moisture.days_per_inch") * thick}
	c.Step("a month an inch: %s", Q(others[0], "d"))
	if ratio >= 0.55 && ratio <= 0.65 {
		others = append(others, c.Of("moisture.half_wet_days", "0.60")*usual*climate)
		c.Step("a second published time for this w/cm: %s", Q(others[1], "d"))
	}
	sum := v.Best
	for _, o := range others {
		v.Low, v.High, sum = math.Min(v.Low, o), math.Max(v.High, o), sum+o
	}
	v.Best = sum / float64(1+len(others))
	v = scaled(v, limitFactor(c))
	if c.Flag("floor.rewetted") {
		wet := c.Of("moisture.rewetting")
		v = Between(v.Low, v.Best+wet, v.High+wet)
		c.Step("wetted while it dried: up to %s more", Q(wet, "d"))
	}
	return v, nil
}

// driesFrom says from how many faces a slab dries; one on the ground dries from the top alone.
func driesFrom(c *Calc) string {
	if c.Text("member.kind") == "slab on ground" {
		return "one"
	}
	return c.Text("floor.drying_sides")
}

func scaled(v Value, by float64) Value { return Between(v.Low*by, v.Best*by, v.High*by) }

// laboratoryDays reads the drying time of the tables, with damp ground below where there is no sheet.
func laboratoryDays(c *Calc, ratio float64) (float64, error) {
	name := "moisture.sealed_days"
	if c.Text("floor.retarder") == "none" {
		name = "moisture.vapor_days"
	}
	table, err := c.Table(name)
	if err != nil {
		return 0, err
	}
	if ratio < 0.40 {
		c.Assume("the tables begin at a w/cm of 0.40, and a lower one is taken as that")
	}
	days, err := along(table, math.Max(0.40, math.Min(1, ratio)), "of w/cm", "")
	c.Step("w/cm %.2f, %s in the laboratory", ratio, Q(days, "d"))
	return days, err
}

// roomFactor reads the factor of a room's climate; beyond the table its edge holds.
func roomFactor(c *Calc, humidity, fahrenheit float64) (float64, error) {
	byHumidity := map[string]float64{}
	at := math.Max(10, math.Min(30, celsius(fahrenheit)))
	for _, h := range c.keys("moisture.climate") {
		row, err := c.Table("moisture.climate", h)
		if err != nil {
			return 0, err
		}
		if byHumidity[h], err = along(row, at, "of temperature", "C"); err != nil {
			return 0, err
		}
	}
	return along(byHumidity, math.Max(35, math.Min(80, humidity)), "of humidity", "%")
}

// limitFactor is the share of the drying time that a covering takes which stands more moisture.
func limitFactor(c *Calc) float64 {
	full, half, share := c.Of("moisture.easier_limit", "full"), c.Of("moisture.easier_limit", "half"), c.Of("moisture.easier_limit", "share")
	allowed := math.Max(full, math.Min(half, c.Num("floor.humidity_limit")))
	factor := 1 - (1-share)*(allowed-full)/(half-full)
	if factor < 1 {
		c.Step("the covering takes %s: %.2f of that", Q(c.Num("floor.humidity_limit"), "%"), factor)
	} else if c.Num("floor.humidity_limit") < full {
		c.Assume("drying on to %s takes longer than the published times, which end at %s", Q(c.Num("floor.humidity_limit"), "%"), Q(full, "%"))
	}
	return factor
}
