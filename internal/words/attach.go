package words

import (
	"slices"
	"sort"

	"hearsay/internal/quantity"
)

// candidates lists what the quantity at item q could be, best first.
func (s *solver) candidates(q int) []fit {
	it := &s.items[q]
	best := map[int]fit{}
	consider := func(fact int, unit string) {
		f := fit{q: q, fact: fact, unit: unit}
		if !s.score(&f) {
			return
		}
		if old, ok := best[fact]; !ok || f.points > old.points {
			best[fact] = f
		}
	}
	if len(it.units) == 0 {
		for _, fact := range s.bare {
			consider(fact, s.bareUnit(s.facts[fact].bare))
		}
		units, beside := s.goesOn(q)
		for k, unit := range units {
			beside = beside && k == 0
			kind, _ := quantity.KindOf(unit)
			for _, fact := range s.byKind[kind] {
				if s.said(&fit{q: q, fact: fact}) > pointsWeak {
					consider(fact, unit)
					if f, ok := best[fact]; ok && f.unit == unit {
						f.points += pointsGoesOn
						if !beside {
							f.points -= 2 * pointsGoesOn
						}
						if k > 0 {
							f.points -= pointsGoesOn
						}
						best[fact] = f
					}
				}
			}
		}
	}
	for k, unit := range it.units {
		if unit == "deg?" {
			unit = s.degrees
		}
		kind, ok := quantity.KindOf(unit)
		if !ok || k > 3 {
			continue
		}
		for _, fact := range s.byKind[kind] {
			consider(fact, unit)
		}
	}
	list := make([]fit, 0, len(best))
	played := false
	for _, f := range best {
		played = played || slices.Contains(s.facts[f.fact].parts, s.roleOf[q].index)
	}
	for _, f := range best {
		if played {
			f.points += s.roleFit(&f)
		} else if parts := s.facts[f.fact].parts; len(parts) > 0 { // the role belongs to something else
			f.points += s.rolePoints[parts[0]]
		}
		if f.points > 0 {
			list = append(list, f)
		}
	}
	sort.Slice(list, func(i, j int) bool {
		if list[i].points != list[j].points {
			return list[i].points > list[j].points
		}
		return list[i].fact < list[j].fact
	})
	return list
}

// goesOn gives the units that a bare number may take over from the numbers before it ("can add 8 gallons, put in 5"), which no
// more than a sentence parts from it, the nearest first, and whether the first is that of the number right before it in the
// same sentence.
func (s *solver) goesOn(q int) (units []string, beside bool) {
	sentences, numbers := 0, 0
	for i := q - 1; i >= 0 && sentences < 2; i-- {
		switch it := &s.items[i]; {
		case it.kind == aBreak && it.pause >= pauseSentence:
			sentences++
		case it.kind == aQuantity && len(it.units) > 0 && it.units[0] != "deg?" && !it.glue:
			if len(units) == 0 {
				beside = sentences == 0 && numbers == 0
			}
			if len(units) == 0 || liquid(it.units) && !slices.Contains(units, it.units[0]) {
				units = append(units, it.units[0])
			}
		case it.kind == aQuantity:
			numbers++
		}
	}
	return units, beside
}

// bareUnit is the unit a bare number is read in: degrees as the rest of the text gives them.
func (s *solver) bareUnit(unit string) string {
	switch unit {
	case "deg?":
		return s.degrees
	case bareRatio:
		return ""
	}
	if m, ok := metricUnits[unit]; ok && s.metric {
		return m
	}
	return unit
}

// metricUnits are what bare numbers are read in where a text is metric throughout.
var metricUnits = map[string]string{"lb/yd3": "kg/m3", "in": "mm", "psi": "MPa", "mph": "km/h", "yd3": "m3", "ft": "m", "lb/ft3": "kg/m3", "lb": "kg", "gal": "L"}

// bareRatio is how words.yaml writes the unit of a plain ratio, whose symbol is empty.
const bareRatio = "ratio"
