package words

import "strconv"

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
		if j := skipWord(ts, skipHyphen(ts, i+1), "five"); j > skipHyphen(ts, i+1) {
			return 45, j
		}
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
	for text(ts, j) == "in" || text(ts, j) == "the" || text(ts, j) == "this" || text(ts, j) == "tomorrow" || text(ts, j) == "yesterday" || text(ts, j) == "at" ||
		text(ts, j) == "next" && j > i || text(ts, j) == "following" && j > i {
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

// minutesPast reads "ten after nine", "twenty to eight", "five past", and "eleven oh five".
func (v *vocabulary) minutesPast(ts []token, i int) (clock, int) {
	n, j := v.oneNumber(ts, i)
	if j == i || n.part || n.low < 1 || n.low > 29 || !ts[i].letters && !ts[i].digits {
		return clock{}, i
	}
	if text(ts, j) == "oh" && n.low <= 12 {
		if m, ok := v.numbers[text(ts, j+1)]; ok && m > 0 && m < 10 {
			return v.halfAfter(ts, clock{hour: n.low + m/60}, j+2)
		}
	}
	if int(n.low)%5 != 0 {
		return clock{}, i
	}
	minutes := n.low / 60
	k := skipWord(ts, j, "minutes", "min")
	switch text(ts, k) {
	case "past", "after":
	case "to", "till", "til", "of":
		if k == j && (v.dropping(ts, i) || text(ts, k) == "of" || n.low > 12 && ts[i].digits) {
			if text(ts, k) != "of" || !v.clockLeads(ts, i) {
				return clock{}, i // "from ten to five degrees", "ten of nine loads"
			}
		}
		minutes = -minutes
	default:
		return clock{}, i
	}
	h, l := v.oneNumber(ts, k+1)
	if l == k+1 || h.part || h.low < 1 || h.low > 12 {
		return clock{}, i
	}
	if _, u := v.unitAt(ts, l); u > l {
		return clock{}, i
	}
	past := text(ts, k) == "past" || text(ts, k) == "after"
	if t := text(ts, l); !past && !v.clockLeads(ts, i) && t != "," && t != "." && t != "" && t != "in" && t != "this" && t != "and" && t != "am" && t != "pm" {
		return clock{}, i
	}
	if !past && !v.clockLeads(ts, i) && k == j && !isMinutes(n.low) {
		return clock{}, i
	}
	return v.halfAfter(ts, clock{hour: h.low + minutes}, l)
}

// isMinutes says whether so many minutes before the hour are said as a time more than as the beginning of a range.
func isMinutes(n float64) bool { return n == 20 || n == 25 }

// dropping says whether the words before token i lead to a range or to a number that falls.
func (v *vocabulary) dropping(ts []token, i int) bool {
	t := text(ts, i-1)
	return t == "from" || t == "between" || sinking[t]
}
