package figure

import (
	"fmt"
	"math"
)

// firstDays is how long a forecast is looked through for its coldest hour, h.
const firstDays = 72

// coldestHour is the coldest hour of the forecast in the first days after the start.
func coldestHour(c *Calc) (Value, error) {
	low, at, start := math.Inf(1), 0.0, c.NumOr("weather.start_hour", 0)
	for _, row := range c.Series("weather.forecast") {
		if air, ok := row["air"]; ok && row["hour"] >= start && row["hour"] <= start+firstDays && air < low {
			low, at = air, row["hour"]
		}
	}
	if math.IsInf(low, 1) {
		return Value{}, fmt.Errorf("the forecast has no air temperature after the start: give the column air for every hour")
	}
	c.Step("coldest at hour %.3g of the forecast: %s", at, Q(low, "F"))
	return Exact(low), nil
}

// How far the low lies below and above the air temperature while placing: facts.yaml refuses more, dF.
const (
	lowestBelow = 50.0
	lowestAbove = 19.0
)

// airAhead is the low. Where it is not stated it lies near the air temperature, so that hot air alone says that it is not
// cold weather and frost alone that it is.
func airAhead(c *Calc) (Value, error) {
	if c.Stated("weather.forecast") {
		return coldestHour(c)
	}
	low := c.Num("weather.low")
	if c.Stated("weather.low") || !c.Stated("weather.air") {
		return Exact(low), nil
	}
	air := c.Num("weather.air")
	return Exact(clamp(low, air-lowestBelow, air+lowestAbove)), nil
}
