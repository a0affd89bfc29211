package figure

// cylinderFigures say between which temperatures acceptance cylinders are kept at first: closer where the strength is high.
func cylinderFigures() []Figure {
	end := func(name, title, key string, strongFirst bool) Figure {
		strong := Bound{Fact: "order.strength", Lowest: 0.0, Highest: 20000.0}
		if !strongFirst {
			strong.Lowest, strong.Highest = strong.Highest, strong.Lowest
		}
		return Figure{Name: name, Title: title, Unit: "F", Method: "from ASTM C31, by specified strength",
			Ways: []Way{{Sharpens: []Bound{strong}, Compute: func(c *Calc) (Value, error) {
				k := key
				if c.Num("order.strength") >= c.Of("strength.initial_strong") {
					k += " strong"
				}
				v := c.Of("strength.initial_curing", k)
				c.Step("%s: %s", k, Q(v, "F"))
				return Exact(v), nil
			}}}}
	}
	return []Figure{
		end("cylinder_coldest", "coldest that acceptance cylinders may be at first", "coldest", true),
		end("cylinder_warmest", "warmest that acceptance cylinders may be at first", "warmest", false),
	}
}
