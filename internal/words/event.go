package words

import (
	"slices"
	"sort"
	"strings"
	"time"

	"hearsay/internal/quantity"
)

// span is a fact that is the time from one event to another.
type span struct{ fact, from, to int }

// moment is when an event takes place: a time of day, a day, or both.
type moment struct {
	item   int
	clock  clock
	date   time.Time
	day    time.Weekday // where weekly
	weekly bool         // told by the day of the week
	lately time.Weekday // the day of the week told last before it
	dated  bool         // whether one was
}

// times gives each time and day to the event that the words around it speak of: the start, the rain, the end of finishing.
func (s *solver) times() {
	sort.SliceStable(s.eventHit, func(i, k int) bool { return s.eventHit[i].use.pattern.points() > s.eventHit[k].use.pattern.points() })
	for pass := range 2 {
		for k := range s.eventHit {
			m := &s.eventHit[k]
			if m.denied && !m.use.pattern.blind || m.unsure || s.onlyPossible(m) {
				continue
			}
			if pass == 0 && m.at >= 0 {
				s.happens(m.use.target, m.at)
			}
			if pass == 1 && m.at < 0 {
				if q := s.clockNear(m); q >= 0 {
					s.happens(m.use.target, q)
				}
			}
		}
	}
}

// onlyPossible says whether the words before a phrase make it something that could be: "could start at 5".
func (s *solver) onlyPossible(m *match) bool {
	for i := m.start - 1; i >= 0 && i >= m.start-3; i-- {
		switch s.items[i].text {
		case "could", "can", "might", "may", "would":
			return true
		}
	}
	return false
}

// happens notes that an event takes place at the time of item q.
func (s *solver) happens(event, q int) {
	it := &s.items[q]
	if _, ok := s.when[event]; ok || s.used[q] {
		return
	}
	if it.kind == aQuantity && len(it.units) == 0 && (s.barsBefore(q) || s.wordAt(q-1) == "to" && sinking[s.wordAt(q-2)]) {
		return // "number fives at 12", "going to 10 tomorrow night"
	}
	switch s.events[event] {
	case "now":
		if it.kind == aDate {
			return
		}
	case "salting":
		if it.kind != aDate {
			return
		}
	case "left", "arrived":
		if it.kind == aQuantity && s.ofSlump(q) {
			return // "it left the plant at 5 and got here at 3"
		}
	}
	if it.kind == aWord { // a day of the week: the hour may follow
		for i := q + 1; i < q+4 && i < len(s.items); i++ {
			if s.items[i].kind == aClock || s.items[i].kind == aQuantity && s.items[i-1].text == "at" && couldBeClock(&s.items[i]) {
				q, it = i, &s.items[i]
				break
			}
		}
		if s.used[q] {
			return
		}
	}
	if it.kind == aDate && s.events[event] == "start" {
		if placed := slices.Index(s.events, "placed"); placed >= 0 {
			event = placed
		}
	}
	m := moment{item: q, clock: it.clock, date: it.date}
	if it.kind == aQuantity && it.clock.hour == 0 {
		m.clock = clock{hour: it.num.low}
		if h := int(it.num.low); h >= 100 {
			m.clock.hour = float64(h/100) + float64(h%100)/60
		}
	}
	m.day, m.weekly = s.weekday(q)
	m.lately, m.dated = s.lastWeekday(q)
	if m.weekly && it.kind == aQuantity && len(it.units) > 0 {
		m.clock = clock{}
	}
	s.when[event] = m
	if it.kind != aQuantity || len(it.units) == 0 {
		s.used[q] = true
	}
}

// ofSlump says whether the sentence of item q speaks of slump.
func (s *solver) ofSlump(q int) bool {
	for i := q; i >= 0 && !(s.items[i].kind == aBreak && s.items[i].pause >= pauseSentence); i-- {
		if s.items[i].stem == "slump" {
			return true
		}
	}
	return false
}

// weekday is the day of the week that is told with the time at item q.
func (s *solver) weekday(q int) (time.Weekday, bool) {
	for _, i := range []int{q, q - 1, q + 1, q - 2, q + 2} {
		if i >= 0 && i < len(s.items) && s.items[i].kind == aWord {
			if day, ok := weekdays[s.items[i].text]; ok {
				return day, true
			}
		}
	}
	return 0, false
}

// clockNear is the free time nearest to a phrase, no further than a few words.
func (s *solver) clockNear(m *match) int {
	best, at := costComma+1.5, -1
	for q := range s.items {
		if k := s.items[q].kind; k != aClock && k != aDate || s.used[q] {
			continue
		}
		if d := s.apart(m, q); d < best {
			best, at = d, q
		}
	}
	return at
}

// hoursBetween is the time from one clock to the next, taking a half that was not said as it makes the shorter time.
func hoursBetween(from, to clock) float64 {
	a := from.resolve(false)
	b := to.hour
	switch {
	case to.half == "24" || to.half == "am" && to.hour < 12:
	case to.half == "am":
		b -= 12
	case to.half == "pm" && to.hour < 12:
		b += 12
		if from.half == "" && from.hour < 12 && from.hour <= to.hour && to.hour < 12 { // "2 to 5 pm"
			a = from.hour + 12
		}
	}
	step := 24.0
	if to.half == "" {
		step = 12
	}
	for b <= a {
		b += step
	}
	if d := b - a; d <= 24 {
		return d
	}
	return b - a - 24
}

// spanFacts states the facts that are the time between two events: those between two days first, since no number can know
// better, and those between two times where no number was said.
func (s *solver) spanFacts(days bool) {
	for _, sp := range s.spans {
		from, ok1 := s.when[sp.from]
		to, ok2 := s.when[sp.to]
		fact := s.facts[sp.fact]
		if !ok1 || !ok2 || s.has(fact.Path) {
			continue
		}
		if to.weekly && !from.weekly && from.dated && from.clock.hour > 0 && to.item > from.item && from.date.IsZero() {
			from.day, from.weekly = from.lately, true // "Friday at 7, done by 9 … Monday at 8"
		}
		a, b := min(from.item, to.item), max(from.item, to.item)
		text := s.words(from.item, from.item) + " … " + s.words(to.item, to.item)
		if s.items[b].end-s.items[a].start < 60 {
			text = s.words(a, b)
		}
		switch {
		case !from.date.IsZero() && !to.date.IsZero():
			if days := to.date.Sub(from.date).Hours() / 24; days > 0 {
				s.state(fact.Path, plainNumber(days)+" d", text, "", s.items[b].start)
			}
		case !days && from.weekly && to.weekly && from.day != to.day:
			hours := 24 * float64((int(to.day)-int(from.day)+7)%7)
			if from.clock.hour > 0 && to.clock.hour > 0 {
				hours += to.clock.resolve(false) - from.clock.resolve(false)
			} else if from.clock.hour > 0 && to.clock.hour == 0 && s.firstThing(to.item) {
				hours += firstThingHour - from.clock.resolve(false)
			}
			if s.lasts(fact, hours) && (fact.Path != "weather.rain_in" || hours <= soonRain) {
				s.state(fact.Path, plainNumber(hours)+" h", text, "", s.items[b].start)
			}
		case !days && from.clock.hour > 0 && to.clock.hour > 0:
			hours := hoursBetween(from.clock, to.clock)
			if hours > 12 && strings.HasPrefix(fact.Path, "load.") {
				continue // no load is on the road for half a day
			}
			if s.nearWord(to.item, "next", "following", "tomorrow") && to.item > from.item && !s.nearWord(from.item, "tomorrow") {
				hours = to.clock.resolve(false) + 24 - from.clock.resolve(false)
			}
			if s.lasts(fact, hours) {
				s.state(fact.Path, plainNumber(hours)+" h", text, "", s.items[b].start)
			}
		}
	}
}

// soonRain is the hours within which rain can still hurt a slab.
const soonRain = 36

// lasts says whether a fact can be so many hours.
func (s *solver) lasts(fact *saying, hours float64) bool {
	v, err := quantity.Quantity{Value: hours, Unit: "h"}.In(fact.Unit)
	return err == nil && (fact.Possible == nil || fact.Possible.Contains(v.Value))
}

// barsBefore says whether a bar size stands right before item q.
func (s *solver) barsBefore(q int) bool {
	for i := q - 1; i >= 0 && i >= q-3; i-- {
		switch it := &s.items[i]; {
		case it.kind == aQuantity:
			return it.glue && it.units[0] == "bar"
		case it.kind != aWord:
			return false
		}
	}
	return false
}

// lastWeekday is the day of the week that was told last before item q.
func (s *solver) lastWeekday(q int) (time.Weekday, bool) {
	for i := q; i >= 0; i-- {
		if s.items[i].kind == aWord {
			if day, ok := weekdays[s.items[i].text]; ok {
				return day, true
			}
		}
	}
	return 0, false
}

// firstThingHour is when work begins on a site.
const firstThingHour = 7

// firstThing says whether the day at item q is named as "first thing Monday" or "Monday first thing".
func (s *solver) firstThing(q int) bool {
	for _, i := range []int{q - 2, q + 1} {
		if i >= 0 && s.wordAt(i) == "first" && s.wordAt(i+1) == "thing" {
			return true
		}
	}
	return false
}
