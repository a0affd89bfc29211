package figure

import (
	"fmt"
	"maps"
	"math"

	"hearsay/internal/limit"
)

// settingSharpens are the facts that change the time of set: fast ones first.
var settingSharpens = []Bound{
	{Fact: "order.retarder", Lowest: false, Highest: true},
	{Fact: "cold.accelerator", Lowest: "calcium chloride", Highest: "none", Also: []any{"non-chloride"}},
	{Fact: "cold.chloride_dose", Lowest: 20.0, Highest: 0.0},
}

// settingFigures are those of bleeding's end and of set.
func settingFigures() []Figure {
	return []Figure{
		{
			Name: "set_hours", Title: "time to initial set", Unit: "h",
			Method: "setting time by concrete temperature from a table, put off by a retarder or brought forward by an accelerator",
			Ways:   []Way{{Needs: []string{"load.temperature"}, Sharpens: settingSharpens, Compute: setHours}},
		},
		{
			Name: "final_set_hours", Title: "time to final set", Unit: "h",
			Method: "time to initial set times the usual ratio of final to initial set",
			Cites:  []limit.Cite{{Source: "astm-c403", Where: "as tests by it usually come out", Basis: limit.Practice}},
			Ways: []Way{{Needs: []string{"figure.set_hours"}, Compute: func(c *Calc) (Value, error) {
				ratio, err := c.Table("setting.final_over_initial")
				if err != nil {
					return Value{}, err
				}
				v := c.Figure("set_hours")
				v = Between(v.Low*ratio["least"], v.Best*ratio["usual"], v.High*ratio["most"])
				c.Step("final set = %.2f (%.2f to %.2f) × initial set = %s to %s", ratio["usual"], ratio["least"], ratio["most"], Q(v.Low, "h"), Q(v.High, "h"))
				return v, nil
			}}},
		},
		{
			Name: "bleed_end_hours", Title: "time until bleeding ends", Unit: "h",
			Method: "between the time bleeding takes in the laboratory, longer or shorter as set is at this temperature, and initial set; best halfway",
			Cites: []limit.Cite{
				{Source: "fhwa-02-099", Where: "figure 1: bleeding ends at about initial set", Basis: limit.Published},
				{Source: "trade", Where: "laboratory studies of bleeding", Basis: limit.Practice},
			},
			Ways: []Way{{Needs: []string{"figure.set_hours"}, Compute: bleedEnd}},
		},
	}
}

func setHours(c *Calc) (Value, error) {
	t := c.Num("load.temperature")
	plain, err := setAt(c, t)
	if err != nil {
		return Value{}, err
	}
	c.Step("ordinary concrete at %s sets in about %s", Q(t, "F"), Q(plain, "h"))
	v := Exact(plain)
	accelerator := c.Text("cold.accelerator")
	if accelerator != "none" || c.Flag("order.retarder") {
		if v, err = admixed(c, v, accelerator); err != nil {
			return Value{}, err
		}
	}
	spread, err := c.Table("setting.spread")
	if err != nil {
		return Value{}, err
	}
	c.Assume("cements and mixes differ: from %.2f to %.2f of the usual time", spread["least"], spread["most"])
	return Between(v.Low*spread["least"], v.Best, v.High*spread["most"]), nil
}

// admixed moves the time of set by retarder and accelerator. What admixtures do in hours is tested at one temperature
// and grows with the setting time at another.
func admixed(c *Calc, v Value, accelerator string) (Value, error) {
	tested := c.Of("setting.temperature_of_test")
	then, err := setAt(c, tested)
	if err != nil {
		return Value{}, err
	}
	scale := v.Best / then
	shift := func(least, most string, sign float64) (Value, error) {
		a := c.Of("setting." + least)
		b, err := c.Limit("setting." + most)
		if sign > 0 {
			return Between(v.Low+a*scale, v.Best+(a+b)/2*scale, v.High+b*scale), err
		}
		return Between(v.Low-b*scale, v.Best-(a+b)/2*scale, v.High-a*scale), err
	}
	switch accelerator {
	case "non-chloride":
		if v, err = shift("accelerator_least", "accelerator_most", -1); err == nil {
			c.Step("a non-chloride accelerator brings it to between %s and %s", Q(v.Low, "h"), Q(v.High, "h"))
		}
	case "calcium chloride":
		v, err = chlorideSet(c, v)
	}
	if err == nil && c.Flag("order.retarder") {
		if v, err = shift("retarder_least", "retarder_most", 1); err == nil {
			c.Step("the retarder puts it off to between %s and %s", Q(v.Low, "h"), Q(v.High, "h"))
		}
	}
	return v, err
}

func chlorideSet(c *Calc, v Value) (Value, error) {
	speed := c.Of("setting.chloride_speed")
	full := c.Of("setting.chloride_dose")
	dose := math.Min(c.Num("cold.chloride_dose"), full)
	f := 1 + (speed-1)*dose/full
	c.Step("%s of calcium chloride makes it set %.1f times as fast: %s", Q(dose, "%"), f, Q(v.Best/f, "h"))
	return Between(v.Low/f, v.Best/f, v.High/f), nil
}

// setAt reads the setting time at a temperature in °F from the table, straight in its logarithm. Above the table set
// goes on at the pace of its last two rows. The table is cited by the part that is read.
func setAt(c *Calc, f float64) (float64, error) {
	parts := []string{"setting.hours_warm", "setting.hours_cool"}
	rows := map[string]float64{}
	for i, part := range parts {
		if i == 1 && f >= publishedFrom {
			break
		}
		table, err := c.Table(part)
		if err != nil {
			return 0, err
		}
		maps.Copy(rows, table)
	}
	return logAlong(rows, f, "setting time", "F")
}

// publishedFrom is where the part of the table begins that was seen in print, °F.
const publishedFrom = 70

// logAlong interpolates a table of positive numbers in their logarithm. Beyond its last row it goes on at the slope of
// the last two; before the first it fails.
func logAlong(table map[string]float64, at float64, what, unit string) (float64, error) {
	rows, err := rowsOf(table)
	if err != nil {
		return 0, err
	}
	if len(rows) < 2 || at < rows[0].key {
		return 0, fmt.Errorf("the table of %s begins at %s", what, Q(rows[0].key, unit))
	}
	i := 1
	for i < len(rows)-1 && rows[i].key < at {
		i++
	}
	a, b := rows[i-1], rows[i]
	share := (at - a.key) / (b.key - a.key)
	return math.Exp(math.Log(a.value) + share*(math.Log(b.value)-math.Log(a.value))), nil
}

func bleedEnd(c *Calc) (Value, error) {
	study := c.Of("setting.bleeding_study")
	at := c.Of("setting.laboratory")
	then, err := setAt(c, at)
	if err != nil {
		return Value{}, err
	}
	set := c.Figure("set_hours")
	early := study / then
	v := Between(set.Low*early, set.Best*(1+early)/2, set.High)
	c.Step("bleeding ends between %.2f of the time to initial set and initial set: %s to %s", early, Q(v.Low, "h"), Q(v.High, "h"))
	return v, nil
}
