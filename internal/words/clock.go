package words

import "strconv"

// clock is a time of day as it was said. Half is "am", "pm" or "" when that was not said.
type clock struct {
	hour float64 // 0 to 24; below 13 it may still lack its half
	half string
}

// clockAt reads a time of day that shows itself as one: "7:30", "7 am", "noon", "seven o'clock", "half past nine", "0700".
func (v *vocabulary) clockAt(ts []token, i int) (clock, int) {
	switch text(ts, i) {
	case "noon", "midday":
		return clock{12, "pm"}, i + 1
	case "midnight":
		return clock{24, "am"}, i + 1
	case "half", "quarter":
		if c, j := v.pastAt(ts, i); j > i {
			return c, j
		}
	}
	if c, j := v.minutesPast(ts, i); j > i {
		return c, j
	}
	if c, j := colonAt(ts, i); j > i {
		return v.halfAfter(ts, c, j)
	}
	if military(ts, i) {
		n, _ := strconv.Atoi(ts[i].text)
		return clock{float64(n/100) + float64(n%100)/60, "24"}, skipWord(ts, i+1, "hours", "h", "hrs")
	}
	n, j := v.oneNumber(ts, i)
	if j == i || n.low < 1 || n.low > 12 || n.low != float64(int(n.low)) {
		return clock{}, i
	}
	if m, k := v.minutesSpelled(ts, i, j); k > j {
		c, l := v.halfAfter(ts, clock{hour: n.low + m/60}, k)
		return c, l
	}
	if text(ts, j) == "o'clock" || text(ts, j) == "oclock" {
		return v.halfAfter(ts, clock{hour: n.low}, j+1)
	}
	if c, k := v.halfAfter(ts, clock{hour: n.low}, j); c.half != "" {
		return c, k
	}
	return clock{}, i
}

func text(ts []token, i int) string {
	if i < 0 || i >= len(ts) {
		return ""
	}
	return ts[i].text
}

func skipWord(ts []token, i int, words ...string) int {
	for _, w := range words {
		if text(ts, i) == w {
			return i + 1
		}
	}
	return i
}

// resolve gives the hour after midnight, taking the half from what is usual: work starts between 5 in the morning and 5 in
// the afternoon.
func (c clock) resolve(night bool) float64 {
	switch {
	case c.half == "24":
		return c.hour
	case c.half == "pm" && c.hour < 12, c.half == "" && c.hour < 5 && !night, c.half == "" && night && c.hour >= 5 && c.hour < 12:
		return c.hour + 12
	case c.half == "am" && c.hour >= 12 && c.hour < 13:
		return c.hour - 12
	}
	return c.hour
}
