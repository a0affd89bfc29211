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

// colonAt reads "7:30".
func colonAt(ts []token, i int) (clock, int) {
	if i+2 >= len(ts) || !ts[i].digits || ts[i+1].text != ":" || !ts[i+1].glued || !ts[i+2].digits || !ts[i+2].glued || len(ts[i+2].text) != 2 {
		return clock{}, i
	}
	h, err1 := strconv.Atoi(ts[i].text)
	m, err2 := strconv.Atoi(ts[i+2].text)
	if err1 != nil || err2 != nil || h > 24 || m > 59 {
		return clock{}, i
	}
	c := clock{hour: float64(h) + float64(m)/60}
	if h > 12 || h == 0 || len(ts[i].text) == 2 && ts[i].text[0] == '0' {
		c.half = "24"
	}
	return c, i + 3
}

// military reads "0700" and "1430 hours".
func military(ts []token, i int) bool {
	t := text(ts, i)
	if i >= len(ts) || !ts[i].digits || len(t) != 4 {
		return false
	}
	n, err := strconv.Atoi(t)
	if err != nil || n > 2400 || n%100 > 59 {
		return false
	}
	next := text(ts, i+1)
	return t[0] == '0' || next == "hours" || next == "hrs"
}

// pastAt reads "half past nine" and "quarter to five".
func (v *vocabulary) pastAt(ts []token, i int) (clock, int) {
	minutes := 30.0
	if ts[i].text == "quarter" {
		minutes = 15
	}
	word := text(ts, i+1)
	switch word {
	case "to", "of", "before", "till":
		if ts[i].text == "half" {
			return clock{}, i
		}
		minutes = -minutes
	case "past", "after":
	default:
		return clock{}, i
	}
	n, j := v.oneNumber(ts, i+2)
	if j == i+2 || n.low < 1 || n.low > 12 || word == "of" && n.part {
		return clock{}, i
	}
	if _, k := v.unitAt(ts, j); k > j && text(ts, j) != "in" {
		return clock{}, i
	}
	return v.halfAfter(ts, clock{hour: n.low + minutes/60}, j)
}

// minutesSpelled reads the "thirty" of "seven thirty", which only words such as at, by and till lead to.
func (v *vocabulary) minutesSpelled(ts []token, from, i int) (float64, int) {
	switch text(ts, from-1) {
	case "at", "by", "till", "until", "around", "about", "since", "from", "before", "after":
	default:
		return 0, i
	}
	if !ts[from].letters {
		return 0, i
	}
	switch text(ts, i) {
	case "fifteen":
		return 15, i + 1
	case "thirty":
		return 30, i + 1
	case "forty":
		return 45, skipWord(ts, skipHyphen(ts, i+1), "five")
	}
	return 0, i
}

// halfAfter reads "am", "p.m.", "in the morning", "this afternoon" after a time.
func (v *vocabulary) halfAfter(ts []token, c clock, i int) (clock, int) {
	if c.half == "24" {
		return c, i
	}
	t := text(ts, i)
	if (t == "a" || t == "p") && text(ts, i+1) == "." && text(ts, i+2) == "m" {
		c.half = t + "m"
		j := i + 3
		if text(ts, j) == "." && ts[j].glued && (j+1 >= len(ts) || !ts[j+1].capital) {
			j++
		}
		return c, j
	}
	if (t == "am" || t == "pm" || t == "p" && ts[i].glued || t == "a" && ts[i].glued) && i < len(ts) {
		c.half = t[:1] + "m"
		return c, i + 1
	}
	j := i
	for text(ts, j) == "in" || text(ts, j) == "the" || text(ts, j) == "this" || text(ts, j) == "tomorrow" || text(ts, j) == "yesterday" || text(ts, j) == "at" {
		j++
	}
	if j == i && text(ts, j) != "tonight" { // "one night" is no time of day
		return c, i
	}
	switch text(ts, j) {
	case "morning":
		c.half = "am"
	case "afternoon", "evening":
		c.half = "pm"
	case "night", "tonight":
		if c.half = "pm"; c.hour < 5 {
			c.half = "am"
		}
	default:
		return c, i
	}
	return c, i // the words themselves are kept, for they say on which day it is
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
