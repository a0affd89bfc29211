package rulebook

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"hearsay/internal/figure"
	"hearsay/internal/quantity"
)

// unsaid is the outcome of a practice that the facts do not settle. It shows nothing.
const unsaid = "open"

// come computes what a job comes to by the limits as they now are on the bench.
func (b *bench) come(c check) string {
	if c.Figure == "" {
		return b.judged(c)
	}
	r := b.book.Figures.Sheet(c.job).Result(c.Figure)
	if c.Line == "" {
		return shownResult(r)
	}
	for _, line := range r.Working {
		if strings.HasPrefix(line, c.Line) {
			return line
		}
	}
	return "nothing"
}

func (b *bench) judged(c check) string {
	p := b.book.byID[c.Practice]
	court := &court{book: b.book, job: c.job, sheet: b.book.Figures.Sheet(c.job)}
	one := &Judgement{Practice: p, Status: NotHere}
	if !court.decide(one) {
		return unsaid
	}
	if c.Number == "" && c.Mend == "" {
		return one.Status
	}
	numbers, mends, ok := court.documents(b.book.plain[c.Practice], []string{c.Number}, true)
	switch {
	case !ok || one.Status == NotHere:
		return unsaid
	case c.Mend != "":
		return b.shownMend(one, c.Mend, mends)
	}
	if numbers[0].given {
		if n, ok := court.number(c.Number, &numbers[0]); ok {
			return shownNumber(n)
		}
	}
	return "nothing"
}

func (b *bench) shownMend(one *Judgement, path string, mends map[string]any) string {
	f, _ := b.book.Facts.Fact(path)
	v, ok := mends[path]
	if one.Status != Wrong || !ok || f == nil {
		return "nothing"
	}
	if n, ok := asFloat(v); ok {
		return shown(n, f.Unit)
	}
	return fmt.Sprint(v)
}

func shownNumber(n Number) string {
	var parts []string
	for _, side := range []struct {
		word  string
		value *float64
	}{{"yours", n.Yours}, {"right", n.Right}, {"from", n.Low}, {"to", n.High}} {
		if side.value != nil {
			parts = append(parts, side.word+" "+shown(*side.value, n.Unit))
		}
	}
	return strings.Join(parts, ", ")
}

func shownResult(r *figure.Result) string {
	unit := r.Figure.Unit
	switch {
	case r.Known && five(r.Low) == five(r.High):
		return shown(r.Best, unit)
	case r.Known:
		return fmt.Sprintf("%s (%s to %s)", shown(r.Best, unit), shown(r.Low, unit), shown(r.High, unit))
	case r.Bounded:
		return fmt.Sprintf("%s to %s", shown(r.Low, unit), shown(r.High, unit))
	}
	return "nothing"
}

func shown(v float64, unit string) string {
	return strings.TrimSpace(five(v) + " " + quantity.Symbol(unit))
}

// five writes a number to five digits.
func five(v float64) string { return strconv.FormatFloat(toDigits(v, 5), 'f', -1, 64) }

func toDigits(v float64, digits int) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', digits, 64), 64)
	if err != nil || r == 0 {
		return math.Abs(r)
	}
	return r
}
