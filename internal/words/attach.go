package words

import (
	"math"
	"slices"
	"sort"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
)

// How well a number fits a fact is a sum of points.
const (
	pointsSaid      = 6.0 // the number stands inside a phrase of the fact
	pointsNear      = 4.0 // a phrase of the fact stands right beside it
	pointsWord      = 0.6 // for each further word of the phrase
	pointsApart     = 0.3 // off for each unit of distance
	pointsBetween   = 1.8 // off for each number of the same sort that stands between
	pointsWeak      = 5.2 // a phrase with no more points counts half where nothing of the fact stands near
	pointsPair      = 1.5 // where a number is set against one of the same topic ("air 6.2 for 6 ordered")
	pointsGoesOn    = 1.0 // where a bare number goes on with the unit of the one before it ("sand at 6 percent, rock at 1.5")
	pointsTopic     = 0.1 // where a phrase of the fact stands anywhere in the sentences around it
	topicReach      = 30.0
	pointsBoth      = 0.35 // of the weaker, where a phrase holds the number and another stands near
	pointsTaken     = 2.5  // off when the phrase has its number already
	pointsRole      = 2.5  // the number plays the role that the fact has (ordered, measured)
	pointsOtherRole = 0.6  // off, as a share, when it plays another
	pointsUsual     = 0.5  // within the usual range
	pointsUnusual   = -0.7 // outside it
	pointsNever     = 8.0  // off when a phrase says that it is something else
	neverReach      = 9.0  // how near such a phrase must stand
	enough          = 3.0  // a number with fewer points is not read
	hardly          = 1.7  // a number with fewer points is not read even where nothing else claims it
	ahead           = 1.3  // how far a weak fit must be ahead
	tooClose        = 0.5  // two facts whose points differ by less are a question
	bareReach       = 4.5  // how far a bare number may stand from the word that gives it its unit
)

// fit is how well a quantity fits a fact.
type fit struct {
	q, fact int // item and fact
	points  float64
	unit    string // the unit it is read in
	near    *match // the nearby phrase that speaks for it
	solid   bool   // more speaks for it than a phrase that could be said of much else
}

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
		if unit, beside := s.goesOn(q); unit != "" {
			kind, _ := quantity.KindOf(unit)
			for _, fact := range s.byKind[kind] {
				if s.said(&fit{q: q, fact: fact}) > pointsWeak {
					consider(fact, unit)
					if f, ok := best[fact]; ok && f.unit == unit {
						f.points += pointsGoesOn
						if !beside {
							f.points -= 2 * pointsGoesOn
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

// goesOn gives the unit that a bare number takes over from the number before it ("can add 8 gallons, put in 5"), which no
// more than a sentence parts from it, and whether that number is the one right before it in the same sentence.
func (s *solver) goesOn(q int) (unit string, beside bool) {
	sentences, numbers := 0, 0
	for i := q - 1; i >= 0 && sentences < 2; i-- {
		switch it := &s.items[i]; {
		case it.kind == aBreak && it.pause >= pauseSentence:
			sentences++
		case it.kind == aQuantity && len(it.units) > 0 && it.units[0] != "deg?" && !it.glue:
			return it.units[0], sentences == 0 && numbers == 0
		case it.kind == aQuantity:
			numbers++
		}
	}
	return "", false
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

// score adds up the points; false when the fact is out of the question.
func (s *solver) score(f *fit) bool {
	fact := s.facts[f.fact]
	it := &s.items[f.q]
	if fact.in != nil && !fact.in[f.unit] {
		return false
	}
	value, ok := convert(it.num, f.unit, fact.Unit)
	if !ok || fact.Possible != nil && !(fact.Possible.Contains(value.low) && fact.Possible.Contains(value.high)) {
		return false
	}
	if len(it.units) == 0 && (!s.plausible(fact, value) || fact.kind != quantity.Count && s.counts(f.q)) {
		return false
	}
	said := s.said(f)
	near, apart := s.near(f)
	context := s.background(f)
	f.solid = near > 0 || context > 0 || said > pointsWeak
	if said <= pointsWeak && near == 0 && context == 0 {
		said *= 0.35
	}
	if fact.Kind == job.KindList && said == 0 {
		return false
	}
	if len(it.units) == 0 && (apart > bareReach || fact.bareSaid) && near > said {
		if said == 0 {
			near = 0
		}
		near = min(near, said)
	}
	f.points = max(said, near) + pointsBoth*min(said, near)
	if alone := s.alone(f); alone > f.points {
		f.points, f.solid = alone+pointsBoth*f.points, true
	}
	if f.points > 0 {
		f.points += pointsBoth * context
	}
	if fact.topic != "" && fact.topic == s.pairedTopic(f.q) {
		f.points, f.solid = max(f.points, pointsNear)+pointsPair, true
	}
	if f.points == 0 {
		return false
	}
	if fact.Usual != nil {
		if fact.Usual.Contains(value.low) {
			f.points += pointsUsual
		} else {
			f.points += pointsUnusual
		}
	}
	f.points -= s.never(f)
	return f.points > -5
}

// counts says whether the bare number at item q counts things: "two loads", "six cylinders".
func (s *solver) counts(q int) bool {
	return s.items[q].num.high < 100 && q+1 < len(s.items) && s.items[q+1].kind == aWord && s.v.counted[s.items[q+1].text]
}

// plausible says whether a number said without its unit can be meant for the fact: near its usual range, and no fraction of a
// degree.
func (s *solver) plausible(fact *saying, n number) bool {
	if (fact.kind == quantity.Temperature || fact.kind == quantity.Count) && n.part {
		return false
	}
	if fact.kind == quantity.Temperature && n.spelled && n.low >= 0 && n.low < 10 {
		return false
	}
	if n.decimal && n.low > 0.2 && n.high < 0.9 && fact.kind != quantity.Ratio {
		return false // two decimals below 1 are a ratio
	}
	if fact.Usual == nil {
		return true
	}
	reach := 0.6 * (fact.Usual.High - fact.Usual.Low)
	return n.low >= min(0.7*fact.Usual.Low, fact.Usual.Low) && n.high <= fact.Usual.High+reach
}

// alone is how well the unit alone points to the fact. It says nothing for a bare number.
func (s *solver) alone(f *fit) float64 {
	fact := s.facts[f.fact]
	units := s.items[f.q].units
	if len(units) == 0 {
		n := s.items[f.q].num
		if len(fact.plain) == 2 && n.single() && n.low >= fact.plain[0] && n.low <= fact.plain[1] && (math.Mod(n.low, 100) == 0 || n.decimal) {
			return enough + 0.4
		}
		return 0
	}
	if points, ok := fact.units[f.unit]; ok {
		return points
	}
	if units[0] != f.unit && units[0] != "deg?" {
		return 0
	}
	return fact.alone
}

// said gives the points of the best phrase of the fact that holds the number.
func (s *solver) said(f *fit) float64 {
	best := 0.0
	for k := range s.saidBy[f.fact] {
		m := &s.saidBy[f.fact][k]
		if m.at != f.q || m.denied {
			continue
		}
		p := m.use.pattern.weight
		if p == 0 {
			p = pointsSaid + pointsWord*float64(m.use.pattern.literals-1)
		}
		best = max(best, p)
	}
	return best
}

// background gives the points of what is spoken of around the number where the fact is likely to be told.
func (s *solver) background(f *fit) float64 {
	best := 0.0
	for k := range s.contextBy[f.fact] {
		m := &s.contextBy[f.fact][k]
		if apart := s.apart(m, f.q); apart <= topicReach {
			best = max(best, m.use.pattern.near()-pointsApart*apart, pointsTopic)
		}
	}
	return best
}

// near gives the points of the best phrase of the fact near the number, and how far it stands apart.
func (s *solver) near(f *fit) (points, reach float64) {
	for k := range s.nearBy[f.fact] {
		m := &s.nearBy[f.fact][k]
		apart := s.apart(m, f.q)
		if apart > topicReach || len(s.items[f.q].units) == 0 && m.start > f.q && s.pauseBetween(f.q, m.start) {
			continue
		}
		p := m.use.pattern.near()
		p -= pointsApart*apart + pointsBetween*float64(s.between(m, f.q))
		if s.items[f.q].num.part && len(s.items[f.q].units) == 0 && m.start > f.q {
			p -= 0.1
		}
		if s.taken(m, f.q) {
			p -= pointsTaken
		}
		if p = max(p, pointsTopic); p > points {
			points, reach, f.near = p, apart, m
		}
	}
	return points, reach
}

// never gives what is to be taken off because of a phrase that speaks against the fact.
func (s *solver) never(f *fit) float64 {
	off := 0.0
	for k := range s.neverBy[f.fact] {
		m := &s.neverBy[f.fact][k]
		if m.at == f.q || m.at < 0 && s.apart(m, f.q) < neverReach {
			off = pointsNever
		}
	}
	return off
}

// roleFit compares the role that the number plays with that of the fact.
func (s *solver) roleFit(f *fit) float64 {
	role, parts := s.roleOf[f.q], s.facts[f.fact].parts
	switch {
	case len(parts) == 0:
		return 0
	case role.index < 0:
		return s.rolePoints[parts[0]]
	case slices.Contains(parts, role.index):
		return role.points
	}
	return -pointsOtherRole * role.points
}

// convert gives the number in another unit.
func convert(n number, from, to string) (number, bool) {
	low, err := quantity.Quantity{Value: n.low, Unit: from}.In(to)
	if err != nil {
		return n, false
	}
	high := low
	if !n.single() {
		if high, err = (quantity.Quantity{Value: n.high, Unit: from}).In(to); err != nil {
			return n, false
		}
	}
	n.low, n.high = low.Value, high.Value
	return n, true
}
