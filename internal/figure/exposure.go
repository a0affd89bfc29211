package figure

import (
	"fmt"
	"strconv"
	"strings"
)

// classes are the exposure classes that limit w/cm: those of the code, whose limits change with its edition, and those of
// flatwork outside it.
var classes = []struct{ name, class, what, limit string }{
	{name: "f1", class: "F1", what: "concrete that freezes while wet now and then"},
	{name: "f2", class: "F2", what: "concrete that freezes while often wet"},
	{name: "f3", class: "F3", what: "concrete that meets deicing salt"},
	{name: "watertight", class: "W", what: "concrete that must keep water out"},
	{name: "c2", class: "C2", what: "reinforced concrete that salt reaches"},
	{name: "s1", class: "S1", what: "concrete in moderate sulfate"},
	{name: "s2", class: "S2", what: "concrete in severe sulfate"},
	{name: "s3", class: "S3", what: "concrete in very severe sulfate"},
	{name: "salted_flatwork", limit: "durability.salted_ratio", what: "flatwork that meets deicing salt"},
	{name: "dry_floor", limit: "moisture.wet_ratio", what: "a floor that must dry or keep water out"},
	{name: "wet_flatwork", limit: "durability.wet_ratio", what: "flatwork that freezes while wet"},
}

// editionSharpens are the facts that move a limit of the code: its edition, and for F3 whether there is steel to protect.
func editionSharpens(class string) []Bound {
	edition := Bound{Fact: "job.concrete_code", Lowest: "318-19", Highest: "318-11"}
	if class == "F3" {
		return []Bound{edition, {Fact: "exposure.plain", Lowest: false, Highest: true}}
	}
	return []Bound{edition}
}

// exposureFigures are the limits of w/cm and strength by exposure class, and the air that frost calls for.
func exposureFigures() []Figure {
	var all []Figure
	for _, k := range classes {
		ratio := Way{Sharpens: editionSharpens(k.class), Compute: func(c *Calc) (Value, error) {
			return byEdition(c, "durability.class_ratio", k.class)
		}}
		if k.limit != "" {
			ratio = Way{Compute: func(c *Calc) (Value, error) {
				n, err := c.Limit(k.limit)
				return Exact(n), err
			}}
		} else {
			all = append(all, Figure{
				Name: "strength_" + k.name, Title: "least strength of " + k.what, Unit: "psi",
				Method: "from the code's table, by exposure class and edition",
				Ways: []Way{{Sharpens: editionSharpens(k.class), Compute: func(c *Calc) (Value, error) {
					return byEdition(c, "durability.class_strength", k.class)
				}}},
			})
		}
		all = append(all,
			Figure{Name: "ratio_" + k.name, Title: "largest w/cm of " + k.what, Unit: "", Method: "from a table, by exposure class and edition", Ways: []Way{ratio}},
			Figure{
				Name: "water_" + k.name, Title: "most water in a yard of " + k.what, Unit: "lb/yd3", Private: true,
				Method: "largest w/cm times the cementitious material",
				Ways: []Way{{Needs: []string{"figure.ratio_" + k.name, "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
					r, b := c.Figure("ratio_"+k.name).Best, c.Figure("cementitious").Best
					c.Step("%.2f x %s = %s", r, Q(b, "lb/yd3"), Q(r*b, "lb/yd3"))
					return Exact(r * b), nil
				}}},
			})
	}
	return append(all, sulfateClass(),
		airFigure("air_often_wet", "often", "concrete that freezes while often wet or salted"),
		airFigure("air_sometimes_wet", "sometimes", "concrete that freezes while wet now and then"))
}

// byEdition reads a limit of the code for a class in the edition in force.
func byEdition(c *Calc, table, class string) (Value, error) {
	edition := c.Text("job.concrete_code")
	if class == "F3" && c.Flag("exposure.plain") {
		class = "F3 plain"
	}
	keys := []string{edition, class}
	if edition == "318-19" {
		table, keys = table+"_2019", keys[1:]
	}
	n, err := c.Limit(table, keys...)
	if err != nil {
		return Value{}, err
	}
	c.Step("class %s in ACI %s: %s", class, edition, strconv.FormatFloat(n, 'g', -1, 64))
	return Exact(n), nil
}

func airFigure(name, wet, what string) Figure {
	return Figure{
		Name: name, Title: "total air of " + what, Unit: "%",
		Method: "from a table, by aggregate size and exposure; above 5,000 psi one per cent less",
		Ways: []Way{{
			Sharpens: []Bound{
				{Fact: "order.aggregate", Lowest: 6.0, Highest: 0.1},
				{Fact: "order.strength", Lowest: 20000.0, Highest: 500.0},
			},
			Compute: func(c *Calc) (Value, error) { return airNeeded(c, wet) },
		}},
	}
}

func airNeeded(c *Calc, wet string) (Value, error) {
	table, err := c.Table("air.total", wet)
	if err != nil {
		return Value{}, err
	}
	row, err := rowBelow(table, inTable(c, table, c.Num("order.aggregate")))
	if err != nil {
		return Value{}, err
	}
	air := table[row]
	c.Step("aggregate of %s, %s wet when it freezes: %s", Q(c.Num("order.aggregate"), "in"), wet, Q(air, "%"))
	strong, err := c.Limit("air.strong")
	if err != nil {
		return Value{}, err
	}
	if c.Num("order.strength") > strong {
		less, err := c.Limit("air.strong_allowance")
		if err != nil {
			return Value{}, err
		}
		air -= less
		c.Step("above %s: %s less", Q(strong, "psi"), Q(less, "%"))
	}
	return Exact(air), nil
}

// sizeTolerance lets the metric names of aggregate sizes (19 mm for 3/4 in) find their row.
const sizeTolerance = 1.03

// inTable is a size of stone, or the first row of the table where it is smaller: then at least the air of that row is needed.
func inTable(c *Calc, table map[string]float64, size float64) float64 {
	rows, err := rowsOf(table)
	if err != nil || size >= rows[0].key/sizeTolerance {
		return size
	}
	c.Assume("the table begins at stone of %s; %s is taken as that", Q(rows[0].key, "in"), Q(size, "in"))
	return rows[0].key
}

// rowBelow finds the row of a table keyed by sizes that holds for a size: the largest not above it.
func rowBelow(table map[string]float64, size float64) (string, error) {
	best, row := 0.0, ""
	for key := range table {
		n, err := strconv.ParseFloat(strings.TrimSpace(key), 64)
		if err != nil {
			return "", fmt.Errorf("the row %q is no size", key)
		}
		if n <= size*sizeTolerance && n > best {
			best, row = n, key
		}
	}
	if row == "" {
		return "", fmt.Errorf("%s is smaller than its first row", Q(size, "in"))
	}
	return row, nil
}

// sulfateClass numbers the sulfate class, 0 to 3, by the worse of soil and water.
func sulfateClass() Figure {
	return Figure{
		Name: "sulfate_class", Title: "sulfate class (S0 to S3)", Unit: "",
		Method: "from the sulfate in soil and water, the worse of the two; sea water is class S1",
		Ways: []Way{{
			Sharpens: []Bound{
				{Fact: "exposure.sulfate_soil", Lowest: 0.0, Highest: 50.0},
				{Fact: "exposure.sulfate_water", Lowest: 0.0, Highest: 400000.0},
				{Fact: "exposure.seawater", Lowest: false, Highest: true},
			},
			Compute: func(c *Calc) (Value, error) {
				class := 0.0
				if c.Flag("exposure.seawater") {
					class = 1
				}
				for fact, table := range map[string]string{"exposure.sulfate_soil": "soil_sulfate", "exposure.sulfate_water": "water_sulfate"} {
					from, err := c.Table("durability." + table)
					if err != nil {
						return Value{}, err
					}
					class = max(class, classOf(c.Num(fact), from))
				}
				return Exact(class), nil
			},
		}},
	}
}

// classOf is the class of a sulfate content: S1 and S2 begin at their content, S3 above it.
func classOf(content float64, from map[string]float64) float64 {
	switch {
	case content > from["S3"]:
		return 3
	case content >= from["S2"]:
		return 2
	case content >= from["S1"]:
		return 1
	}
	return 0
}
