package words

import (
	"fmt"
	"slices"
	"time"

	"hearsay/internal/quantity"
)

// derive states what follows from how things were said: the times between events, the hour and day of the placement, the
// share of fly ash in pounds, an order that goes by bags.
func (s *solver) derive() {
	s.spanFacts(false)
	s.start()
	s.notTheSlab()
	s.notClaimed()
	s.notForSlump()
	s.notDays()
	s.upperFloor()
	s.onGround()
	s.wallJoints()
	s.alongWith()
	s.lifts()
	s.shares()
	s.cement()
	s.onlySlump()
	s.onlyTest()
	s.cone()
	s.oneLoad()
	s.toward()
	s.asTold()
	s.tent()
	s.curingWater()
	s.wantedIsOrdered()
	s.purpose()
	s.perYard()
	s.totals()
	s.waterContent()
	s.echoes()
	s.walls()
	s.reinforcement()
	s.bags()
	s.unsaid()
}

// start states the hour and the day of the placement.
func (s *solver) start() {
	for _, name := range []string{"placed", "start"} {
		event := slices.Index(s.events, name)
		m, ok := s.when[event]
		if !ok {
			continue
		}
		if m.clock.hour > 0 && !s.has("job.start") && s.events[event] == "start" {
			h := m.clock.resolve(s.nearWord(m.item, "tonight", "evening", "night"))
			s.state("job.start", fmt.Sprintf("%d:%02d", int(h)%24, int((h-float64(int(h)))*60+0.5)), s.words(m.item, m.item), "", s.items[m.item].start)
		}
		if at := s.clockAfter(m.item); at >= 0 && !s.has("job.start") && m.clock.hour == 0 {
			h := s.items[at].clock.resolve(false)
			s.used[at] = true
			s.state("job.start", fmt.Sprintf("%d:%02d", int(h)%24, int((h-float64(int(h)))*60+0.5)), s.words(at, at), "", s.items[at].start)
		}
		if !m.date.IsZero() && !s.has("job.date") {
			s.state("job.date", m.date.Format(time.DateOnly), s.words(m.item, m.item), "", s.items[m.item].start)
		}
		if day, i := s.dayWord(m.item); i >= 0 && !s.has("job.date") {
			s.state("job.date", day.Format(time.DateOnly), s.words(i, i), "", s.items[i].start)
		}
	}
	for i := range s.items { // "7 yards for Saturday"
		if s.items[i].kind == aWord && s.items[i].text == "for" && i+1 < len(s.items) && s.has("order.volume") && !s.has("job.date") {
			if day, at := s.dayWord(i + 1); at == i+1 {
				s.state("job.date", day.Format(time.DateOnly), s.words(at, at), "", s.items[at].start)
			}
		}
	}
}

// clockAfter is the time that follows a day at item q, with no more than a pause between: "Wednesday the 18th, half past seven".
func (s *solver) clockAfter(q int) int {
	for i := q + 1; i < len(s.items) && i < q+4; i++ {
		switch it := &s.items[i]; {
		case it.kind == aClock && !s.used[i]:
			return i
		case it.kind == aBreak && it.pause == pauseComma, it.kind == aWord && it.filler, it.kind == aDate:
		default:
			return -1
		}
	}
	return -1
}

// dayWord finds a word such as tomorrow or Saturday at item q or right beside it, and the day it means.
func (s *solver) dayWord(q int) (time.Time, int) {
	today := s.now.Truncate(24 * time.Hour)
	for _, i := range []int{q, q + 1, q - 1, q - 2} {
		if i < 0 || i >= len(s.items) || s.items[i].kind != aWord {
			continue
		}
		switch t := s.items[i].text; t {
		case "tomorrow", "tmrw", "tmw", "tmr":
			return today.AddDate(0, 0, 1), i
		case "today", "tonight":
			return today, i
		case "yesterday":
			return today.AddDate(0, 0, -1), i
		default:
			if day, ok := weekdays[t]; ok {
				if s.past(i) {
					return today.AddDate(0, 0, -(int(today.Weekday())-int(day)+7)%7), i
				}
				ahead := (int(day) - int(today.Weekday()) + 6) % 7
				return today.AddDate(0, 0, ahead+1), i
			}
		}
	}
	return time.Time{}, -1
}

// past says whether the words before item q tell of what is done: "we poured Monday".
func (s *solver) past(q int) bool {
	for i := max(0, q-4); i < q; i++ {
		switch s.items[i].text {
		case "poured", "placed", "cast", "went", "finished", "was", "were", "last", "done", "did":
			return true
		}
	}
	return false
}

var weekdays = map[string]time.Weekday{"monday": time.Monday, "tuesday": time.Tuesday, "wednesday": time.Wednesday, "thursday": time.Thursday,
	"friday": time.Friday, "saturday": time.Saturday, "sunday": time.Sunday}

// nearWord says whether one of the words stands within a few words of item q.
func (s *solver) nearWord(q int, words ...string) bool {
	for i := max(0, q-3); i < min(len(s.items), q+4); i++ {
		for _, w := range words {
			if s.items[i].kind == aWord && s.items[i].text == w {
				return true
			}
		}
	}
	return false
}

// valueOf gives a number that was read, in the unit asked for.
func (s *solver) valueOf(path, unit string) (float64, bool) {
	i, ok := s.stated[path]
	if !ok {
		return 0, false
	}
	text, ok := s.out.Facts[i].Value.(string)
	if !ok {
		return 0, false
	}
	q, err := quantity.ParseAs(text, unit)
	return q.Value, err == nil
}
