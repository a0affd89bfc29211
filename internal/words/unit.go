package words

import (
	"strings"

	"hearsay/internal/quantity"
)

// unitAt reads the unit that begins at token i. A unit may be read in several ways (a yard of concrete is a cubic yard; a
// pound in a yard of mix is lb/yd3): it gives each, the likeliest first, and the token after it.
func (v *vocabulary) unitAt(ts []token, i int) ([]string, int) {
	at := i
	if at < len(ts) && ts[at].text == "-" && at+1 < len(ts) && ts[at+1].letters {
		at++
	}
	units, j := v.plainUnit(ts, at)
	if j == at || notUnit(ts, at, j) {
		return nil, i
	}
	for j < len(ts) && ts[j].text == "." && ts[j].glued && abbreviated(ts, j) && !spelledOut[ts[j-1].text] {
		j++
	}
	if per, k := v.perUnit(ts, j, units); k > j {
		return per, k
	}
	return units, j
}

// plainUnit looks up the longest run of tokens that names a unit.
func (v *vocabulary) plainUnit(ts []token, i int) ([]string, int) {
	var key strings.Builder
	var best []string
	end := i
	for j := i; j < len(ts) && j < i+v.unitWords; j++ {
		if ts[j].text == "." && j > i && ts[j].glued {
			continue // "sq. ft."
		}
		if key.Len() > 0 {
			key.WriteByte(' ')
		}
		key.WriteString(ts[j].text)
		if u, ok := v.units[key.String()]; ok {
			best, end = u, j+1
		}
	}
	return best, end
}

// notUnit keeps words that only look like units from being read as such: the "in" of "10 in the drum", the "f" of "4 f...".
func notUnit(ts []token, i, j int) bool {
	if j == i+1 && j < len(ts) && len(ts[i].text) == 1 && ts[i].letters && !ts[i].glued && ts[j].digits && ts[j].glued {
		return true // "six F2170 probes", "two C39 tests"
	}
	if j != i+1 || ts[i].text != "in" || j >= len(ts) {
		return false
	}
	if ts[j].text == "-" && j+1 < len(ts) && ts[j+1].letters && ts[j].glued {
		return true // "eleven in-situ probes"
	}
	switch ts[j].text {
	case "the", "a", "an", "it", "this", "that", "my", "our", "his", "her", "your", "their", "there", "situ", "all", "total", "each",
		"one", "place", "line", "front", "here", "between", "every", "any", "these", "those", "about", "which", "town", "two", "three", "advance":
		return true
	}
	return ts[j].digits && !ts[j].glued && (j+1 >= len(ts) || ts[j+1].text != "x") // "put 10 in 9 yards"
}

// abbreviated says whether the point at token j belongs to the abbreviation before it and does not end a sentence.
func abbreviated(ts []token, j int) bool {
	return j+1 < len(ts) && !ts[j+1].capital && !ts[j+1].line
}

// spelledOut are names of units that no point follows but that of the sentence.
var spelledOut = set([]string{"inch", "inches", "foot", "feet", "yard", "yards", "gallon", "gallons", "pound", "pounds", "hour", "hours", "minute", "minutes", "day", "days", "week", "weeks",
	"degree", "degrees", "percent", "mph", "psi", "bag", "sack"})

// liquid says whether the unit is one of water and not of a load.
func liquid(units []string) bool { return units[0] == "gal" || units[0] == "L" }

// perUnit reads the second unit of "a yard", "per cubic yard", "/gal", "to the yard", "an hour" after the first.
func (v *vocabulary) perUnit(ts []token, i int, first []string) ([]string, int) {
	at := i
	if liquid(first) && text(ts, at) == "of" && text(ts, at+1) == "water" && (text(ts, at+2) == "per" || text(ts, at+2) == "a" || text(ts, at+2) == "to") {
		at += 2
	}
	switch {
	case at >= len(ts):
		return nil, i
	case ts[at].text == "/" || ts[at].text == "per" || ts[at].text == "each" || ts[at].text == "every" || ts[at].text == "a" || ts[at].text == "an":
		at++
	case at+1 < len(ts) && (ts[at].text == "to" || ts[at].text == "in" || ts[at].text == "for" || ts[at].text == "of") &&
		(ts[at+1].text == "the" || ts[at+1].text == "a" || ts[at+1].text == "an" || ts[at+1].text == "every" || ts[at+1].text == "each"):
		at += 2
	default:
		return nil, i
	}
	n, k := v.oneNumber(ts, at)
	if k == at && text(ts, at) == "hundred" {
		n.low, k = 100, at+1
	}
	if k > at && n.low == 100 {
		if area, l := v.plainUnit(ts, k); l > k && len(area) == 1 && area[0] == "ft2" {
			for _, a := range first {
				if u, ok := quantity.Known(a + "/100 ft2"); ok {
					return []string{u}, l // "a gallon every hundred square feet"
				}
			}
		}
	}
	second, j := v.plainUnit(ts, at)
	if j == at || (first[0] == "F" || first[0] == "C" || first[0] == "deg?") && (text(ts, at) == "night" || text(ts, at-1) == "every" || text(ts, at-1) == "each") {
		return nil, i // no temperature is one of a night: "20 F every night"
	}
	var units []string
	for _, a := range first {
		for _, b := range second {
			if a == "ft" && b == "gal" {
				units = append(units, "ft2/gal") // "200 feet to the gallon"
			} else if strings.HasSuffix(a, "/"+b) {
				units = append(units, a) // "sacks a yard": a bag is a bag in a yard already
			} else if u, ok := quantity.Known(a + "/" + b); ok {
				units = append(units, u)
			}
		}
	}
	if units == nil {
		return nil, i
	}
	return units, j
}
