package figure

import (
	"fmt"
	"math"
	"slices"
)

// acceptanceFigures judge a series of strength tests by the two criteria of ACI 318 and ACI 301, and say what average a plant
// must aim at to meet them.
func acceptanceFigures() []Figure {
	return []Figure{
		{
			Name: "average_of_tests", Title: "average of all tests", Unit: "psi", Method: "mean of the tests",
			Ways: []Way{{Needs: []string{"strength.tests"}, Compute: func(c *Calc) (Value, error) { return Exact(mean(c.List("strength.tests"))), nil }}},
		},
		{
			Name: "lowest_test", Title: "lowest test", Unit: "psi", Method: "smallest of the tests",
			Ways: []Way{
				{Needs: []string{"strength.lowest"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("strength.lowest")), nil }},
				{Needs: []string{"strength.tests"}, Compute: func(c *Calc) (Value, error) { return Exact(slices.Min(c.List("strength.tests"))), nil }},
			},
		},
		{
			Name: "lowest_running_average", Title: "lowest average of three tests in a row", Unit: "psi",
			Method: "smallest of the means of three tests in a row",
			Ways: []Way{{Needs: []string{"strength.tests"}, Compute: func(c *Calc) (Value, error) {
				averages := running(c.List("strength.tests"))
				if len(averages) == 0 {
					return Value{}, fmt.Errorf("it takes three tests in a row")
				}
				for _, a := range averages {
					c.Step("average of three: %s", Q(a, "psi"))
				}
				return Exact(slices.Min(averages)), nil
			}}},
		},
		{
			Name: "single_test_least", Title: "least that a single test may give", Unit: "psi",
			Method: "specified strength less the shortfall allowed, or its share where it is high",
			Ways:   []Way{{Needs: []string{"order.strength"}, Compute: singleLeast}},
		},
		{
			Name: "running_margin", Title: "margin of the lowest average of three", Unit: "psi",
			Method: "lowest average of three tests in a row less the specified strength; nothing where there are no three yet",
			Ways: []Way{{Needs: []string{"strength.tests", "order.strength"}, Compute: func(c *Calc) (Value, error) {
				averages := running(c.List("strength.tests"))
				if len(averages) == 0 {
					c.Step("there are no three tests in a row yet")
					return Exact(0), nil
				}
				margin := slices.Min(averages) - c.Num("order.strength")
				c.Step("%s - %s = %s", Q(slices.Min(averages), "psi"), Q(c.Num("order.strength"), "psi"), Q(margin, "psi"))
				return Exact(margin), nil
			}}},
		},
		{
			Name: "single_margin", Title: "margin of the lowest test", Unit: "psi",
			Method: "lowest test less the least that a single test may give",
			Ways: []Way{{Needs: []string{"figure.lowest_test", "figure.single_test_least"}, Compute: func(c *Calc) (Value, error) {
				low, least := c.Figure("lowest_test").Best, c.Figure("single_test_least").Best
				c.Step("%s - %s = %s", Q(low, "psi"), Q(least, "psi"), Q(low-least, "psi"))
				return Exact(low - least), nil
			}}},
		},
		{
			Name: "shortfall", Title: "shortfall of the lowest test", Unit: "psi", Method: "specified strength less the lowest test",
			Ways: []Way{{Needs: []string{"figure.lowest_test", "order.strength"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("order.strength") - c.Figure("lowest_test").Best), nil
			}}},
		},
		{
			Name: "shortfall_allowed", Title: "shortfall allowed for a single test", Unit: "psi", Method: "specified strength less the least that a single test may give",
			Ways: []Way{{Needs: []string{"figure.single_test_least", "order.strength"}, Compute: func(c *Calc) (Value, error) {
				return Exact(c.Num("order.strength") - c.Figure("single_test_least").Best), nil
			}}},
		},
		{
			Name: "required_average", Title: "required average strength by the plant's record", Unit: "psi",
			Method: "specified strength and 1.34 standard deviations, or the least single test and 2.33 of them, whichever is more; the deviation raised where it comes from few tests",
			Ways:   []Way{{Needs: []string{"order.strength", "strength.deviation", "strength.tests_in_record"}, Compute: requiredAverage}},
		},
		{
			Name: "required_average_without_record", Title: "required average strength without a record", Unit: "psi",
			Method: "specified strength and a margin; since 318-02 a tenth and 700 psi above 5,000 psi",
			Ways:   []Way{{Needs: []string{"order.strength"}, Compute: requiredWithoutRecord}},
		},
		{
			Name: "required_average_to_1999", Title: "required average strength without a record, editions up to 318-99", Unit: "psi",
			Method: "specified strength and a margin by its level",
			Ways: []Way{{Needs: []string{"order.strength"}, Compute: func(c *Calc) (Value, error) {
				return marginWithoutRecord(c, c.Num("order.strength"))
			}}},
		},
	}
}

func mean(list []float64) float64 {
	sum := 0.0
	for _, v := range list {
		sum += v
	}
	return sum / float64(len(list))
}

// running gives the means of three tests in a row.
func running(tests []float64) []float64 {
	var averages []float64
	for i := 2; i < len(tests); i++ {
		averages = append(averages, mean(tests[i-2:i+1]))
	}
	return averages
}

func singleLeast(c *Calc) (Value, error) {
	f := c.Num("order.strength")
	if f > c.Of("strength.high_strength") {
		least := f * c.Of("strength.single_share")
		c.Step("%.2f x %s = %s", c.Of("strength.single_share"), Q(f, "psi"), Q(least, "psi"))
		return Exact(least), nil
	}
	least := f - c.Of("strength.single_shortfall")
	c.Step("%s - %s = %s", Q(f, "psi"), Q(c.Of("strength.single_shortfall"), "psi"), Q(least, "psi"))
	return Exact(least), nil
}

func requiredAverage(c *Calc) (Value, error) {
	tests := c.Num("strength.tests_in_record")
	table, err := c.Table("strength.record_factor")
	if err != nil {
		return Value{}, err
	}
	if tests < 15 {
		return Value{}, fmt.Errorf("a record of fewer than 15 tests counts as none: take the required average without a record")
	}
	factor, err := along(table, math.Min(tests, 30), "of the tests in a record", "1")
	if err != nil {
		return Value{}, err
	}
	f, s := c.Num("order.strength"), factor*c.Num("strength.deviation")
	c.Step("standard deviation %.2f x %s = %s", factor, Q(c.Num("strength.deviation"), "psi"), Q(s, "psi"))
	single, err := singleLeast(c)
	running := f + c.Of("strength.record_running")*s
	one := single.Best + c.Of("strength.record_single")*s
	c.Step("%s + 1.34 x %s = %s; %s + 2.33 x %s = %s", Q(f, "psi"), Q(s, "psi"), Q(running, "psi"), Q(single.Best, "psi"), Q(s, "psi"), Q(one, "psi"))
	return Exact(math.Max(running, one)), err
}

func requiredWithoutRecord(c *Calc) (Value, error) {
	f := c.Num("order.strength")
	if f <= c.Of("strength.high_strength") {
		return marginWithoutRecord(c, f)
	}
	v := f*c.Of("strength.over_without_record_share", "factor") + c.Of("strength.over_without_record_share", "plus")
	c.Step("1.10 x %s + %s = %s", Q(f, "psi"), Q(c.Of("strength.over_without_record_share", "plus"), "psi"), Q(v, "psi"))
	return Exact(v), nil
}

func marginWithoutRecord(c *Calc, f float64) (Value, error) {
	level := "to"
	switch {
	case f < c.Of("strength.low_strength"):
		level = "below"
	case f > c.Of("strength.high_strength"):
		level = "above"
	}
	margin := c.Of("strength.over_without_record", level)
	c.Step("%s + %s = %s", Q(f, "psi"), Q(margin, "psi"), Q(f+margin, "psi"))
	return Exact(f + margin), nil
}
