package figure

import (
	"fmt"
	"math"
)

// firstDays is how long a forecast is looked through for its coldest hour, h.
const firstDays = 72

// coldestHour is the coldest hour of the forecast in the first days after the start.
func coldestHour(c *Calc) (Value, error) {
	low, at := coldestOf(c)
	if math.IsInf(low, 1) {
		return Value{}, fmt.Errorf("the forecast has no air temperature after the start: give the column air for every hour")
	}
	c.Step("coldest at hour %.3g of the forecast: %s", at, Q(low, "F"))
	return Exact(low), nil
}

// coldestOf finds that hour, and how cold it is.
func coldestOf(c *Calc) (low, at float64) {
	low = math.Inf(1)
	start := c.Num("weather.start_hour")
	for _, row := range c.Series("weather.forecast") {
		if air, ok := row["air"]; ok && row["hour"] >= start && row["hour"] <= start+firstDays && air < low {
			low, at = air, row["hour"]
		}
	}
	return low, at
}

// How far the low lies below and above the air temperature while placing: facts.yaml refuses more, dF.
const (
	lowestBelow = 50.0
	lowestAbove = 19.0
)

// lowsApart is how far the low stated and that of a forecast may lie apart before they contradict each other, dF.
const lowsApart = 15.0

// The low is stated, or the coldest hour of a forecast. Where neither is known it lies near the air temperature, so that hot
// air alone says that it is not cold weather and frost alone that it is.
var (
	statedLow = Way{Needs: []string{"weather.low"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("weather.low")), nil }}
	// Whatever hour of it is the first of the work counts, so that must be known.
	forecastLow = Way{Needs: []string{"weather.forecast", "weather.start_hour"}, Compute: coldestHour}
	nearAir     = Way{Sharpens: []Bound{{Fact: "weather.low", Lowest: leastLow, Highest: mostLow}}, Assumes: []string{"weather.air"}, Compute: func(c *Calc) (Value, error) {
		low := c.Num("weather.low")
		if !c.Stated("weather.air") {
			return Exact(low), nil
		}
		air := c.Num("weather.air")
		return Exact(clamp(low, air-lowestBelow, air+lowestAbove)), nil
	}}
)

// What facts.yaml takes as possible for the low, °F.
const (
	leastLow = -80.0
	mostLow  = 110.0
)
