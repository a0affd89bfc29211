package words

import (
	"strconv"
	"strings"
	"time"
)

// dateAt reads a day: "November 18", "18 Nov 2026", "the 18th of November", "2026-11-18", "11/18/26".
func (r *reading) dateAt(i int) (item, int) {
	if d, j := r.numericDate(i); j > i {
		return item{kind: aDate, date: d}, j
	}
	if d, j := r.dayOfMonth(i); j > i {
		return item{kind: aDate, date: d}, j
	}
	month, ok := r.v.months[text(r.ts, i)]
	day, j := 0, i
	if ok {
		j = i + 1
		if text(r.ts, j) == "." {
			j++
		}
		if text(r.ts, j) == "the" {
			j++
		}
		day, j = r.dayAt(j)
		if day == 0 {
			return item{}, i
		}
	} else if day, j = r.dayAt(i); day > 0 {
		if text(r.ts, j) == "of" {
			j++
		}
		if month, ok = r.v.months[text(r.ts, j)]; !ok || text(r.ts, j) == "may" && !r.ts[j].capital {
			return item{}, i
		}
		j++
		if text(r.ts, j) == "." && j+1 < len(r.ts) && !r.ts[j+1].capital {
			j++
		}
	} else {
		return item{}, i
	}
	if i > 0 && text(r.ts, i) == "may" && !r.ts[i].capital || month == 0 {
		return item{}, i
	}
	year := 0
	at := j
	if text(r.ts, at) == "," {
		at++
	}
	if t := text(r.ts, at); len(t) == 4 && strings.HasPrefix(t, "20") && r.ts[at].digits {
		year, _ = strconv.Atoi(t)
		j = at + 1
	}
	return item{kind: aDate, date: r.nearest(year, time.Month(month), day)}, j
}

// dayAt reads "18", "18th", "the 18th".
func (r *reading) dayAt(i int) (int, int) {
	if day, ok := daysInWords[text(r.ts, i)]; ok && (text(r.ts, i+1) == "of" || i > 0 && r.v.months[r.ts[i-1].text] > 0) {
		return day, i + 1
	}
	if i >= len(r.ts) || !r.ts[i].digits || len(r.ts[i].text) > 2 {
		return 0, i
	}
	day, err := strconv.Atoi(r.ts[i].text)
	if err != nil || day < 1 || day > 31 {
		return 0, i
	}
	switch text(r.ts, i+1) {
	case "st", "nd", "rd", "th":
		if r.ts[i+1].glued {
			return day, i + 2
		}
	}
	return day, i + 1
}

var daysInWords = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8, "ninth": 9, "tenth": 10,
	"eleventh": 11, "twelfth": 12, "thirteenth": 13, "fourteenth": 14, "fifteenth": 15, "sixteenth": 16, "seventeenth": 17, "eighteenth": 18, "nineteenth": 19,
	"twentieth": 20, "thirtieth": 30}

// numericDate reads 2026-11-18 and 11/18 (month first, as in North America).
func (r *reading) numericDate(i int) (time.Time, int) {
	if i+2 >= len(r.ts) || !r.ts[i].digits || !r.ts[i+1].glued || !r.ts[i+2].digits || !r.ts[i+2].glued {
		return time.Time{}, i
	}
	a, _ := strconv.Atoi(r.ts[i].text)
	b, _ := strconv.Atoi(r.ts[i+2].text)
	third := 0
	if i+4 < len(r.ts) && r.ts[i+3].glued && r.ts[i+4].glued && r.ts[i+4].digits && r.ts[i+3].text == r.ts[i+1].text {
		third, _ = strconv.Atoi(r.ts[i+4].text)
	}
	switch {
	case r.ts[i+1].text == "-" && len(r.ts[i].text) == 4 && third > 0 && b <= 12 && third <= 31 && b > 0:
		return time.Date(a, time.Month(b), third, 0, 0, 0, 0, time.UTC), i + 5
	case r.ts[i+1].text == "/" && a >= 1 && a <= 12 && b >= 1 && b <= 31 && third > 0:
		if third < 100 {
			third += 2000
		}
		return time.Date(third, time.Month(a), b, 0, 0, 0, 0, time.UTC), i + 5
	case r.ts[i+1].text == "/" && a >= 1 && a <= 12 && b > 12 && b <= 31 && third == 0 && b != 16 && b != 32:
		return r.nearest(0, time.Month(a), b), i + 3
	}
	return time.Time{}, i
}

// nearest takes a day without a year as the one nearest to now.
func (r *reading) nearest(year int, month time.Month, day int) time.Time {
	if year > 0 {
		return time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	}
	best := time.Date(r.now.Year(), month, day, 0, 0, 0, 0, time.UTC)
	for _, y := range []int{r.now.Year() - 1, r.now.Year() + 1} {
		if d := time.Date(y, month, day, 0, 0, 0, 0, time.UTC); d.Sub(r.now).Abs() < best.Sub(r.now).Abs() {
			best = d
		}
	}
	return best
}

// dayOfMonth reads "the 20th" without its month: that of the date told last, or the month after it, else the nearest.
func (r *reading) dayOfMonth(i int) (time.Time, int) {
	if text(r.ts, i-1) != "the" {
		return time.Time{}, i
	}
	day, j := r.dayAt(i)
	if day == 0 || j != i+2 || r.v.months[text(r.ts, j)] > 0 || text(r.ts, j) == "of" {
		return time.Time{}, i
	}
	if j < len(r.ts) && r.ts[j].letters && !afterDay[r.ts[j].text] {
		return time.Time{}, i // "the 4th floor"
	}
	for k := len(r.items) - 1; k >= 0; k-- {
		if it := &r.items[k]; it.kind == aDate {
			d := time.Date(it.date.Year(), it.date.Month(), day, 0, 0, 0, 0, time.UTC)
			if d.Before(it.date) {
				d = d.AddDate(0, 1, 0)
			}
			return d, j
		}
	}
	best := time.Date(r.now.Year(), r.now.Month(), day, 0, 0, 0, 0, time.UTC)
	for _, m := range []int{-1, 1} {
		if d := time.Date(r.now.Year(), r.now.Month()+time.Month(m), day, 0, 0, 0, 0, time.UTC); d.Sub(r.now).Abs() < best.Sub(r.now).Abs() {
			best = d
		}
	}
	return best, j
}

// afterDay are the words that may follow a day of the month.
var afterDay = set([]string{"at", "and", "then", "so", "but", "when", "we", "they", "he", "it", "in", "with", "after", "before", "is", "was", "around", "by", "because"})
