package figure

// formFigures say how long forms and shores of elevated members usually stay.
func formFigures() []Figure {
	return []Figure{{
		Name: "removal_days", Title: "days above 50 °F that forms usually stay", Unit: "d",
		Method: "from a table, by member, span and which load is the larger; the designer's word comes first",
		Ways: []Way{{
			Needs: []string{"member.kind"},
			Sharpens: []Bound{
				{Fact: "safety.span", Lowest: 1.0, Highest: 100.0},
				{Fact: "safety.live_above_dead", Lowest: true, Highest: false},
			},
			Compute: func(c *Calc) (Value, error) {
				load := "live below dead"
				if c.Flag("safety.live_above_dead") {
					load = "live above dead"
				}
				table, err := c.Table("safety.removal_days", c.Text("member.kind"), load)
				if err != nil {
					return Value{}, err
				}
				days := table["0"]
				switch span := c.Num("safety.span"); {
				case span > 20:
					days = table["20"]
				case span >= 10:
					days = table["10"]
				}
				c.Step("%s, span %s, %s: %s", c.Text("member.kind"), Q(c.Num("safety.span"), "ft"), load, Q(days, "d"))
				return Exact(days), nil
			},
		}},
	}}
}
