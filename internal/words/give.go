package words

import (
	"slices"

	"hearsay/internal/job"
)

// quantities gives each number to a fact, the surest first.
func (s *solver) quantities() {
	s.roles()
	var open []int
	for q := range s.items {
		if s.items[q].kind == aQuantity && !s.used[q] {
			open = append(open, q)
			s.fits[q] = s.candidates(q)
		}
	}
	for len(open) > 0 {
		at := s.surest(open)
		if at < 0 {
			return
		}
		q := open[at]
		open = slices.Delete(open, at, at+1)
		if !s.give(q) {
			continue
		}
		for _, o := range open { // what it has taken counts less for the others
			if s.leans(o, q) {
				s.fits[o] = s.candidates(o)
			}
		}
	}
}

// leans says whether the quantity at item o leans on the phrase that the one at item q has taken, or is set against it.
func (s *solver) leans(o, q int) bool {
	taken := s.fits[q][0].near
	if taken == nil || o-q > 80 || q-o > 80 {
		return false
	}
	return slices.ContainsFunc(s.fits[o], func(f fit) bool { return f.near == taken })
}

// surest is the open quantity with the most points.
func (s *solver) surest(open []int) int {
	best := -1
	for i, q := range open {
		f := s.fits[q]
		if len(f) == 0 || !sure(f) {
			continue
		}
		if best < 0 || f[0].points > s.fits[open[best]][0].points {
			best = i
		}
	}
	return best
}

// sure says whether the best fit is good enough, or well ahead of all others.
func sure(f []fit) bool {
	switch {
	case f[0].points >= enough:
		return true
	case f[0].points < hardly, !f[0].solid:
		return false
	}
	return len(f) == 1 || f[0].points-f[1].points >= ahead
}

// give gives the quantity at item q to its best fact, or lists it as unread when two facts want it alike.
func (s *solver) give(q int) bool {
	list := s.fits[q]
	f := list[0]
	path := s.facts[f.fact].Path
	if i, ok := s.stated[path]; ok {
		if s.facts[f.fact].Kind == job.KindList {
			return s.extend(q, f, i)
		}
		return s.again(q, f, i)
	}
	var rivals []string
	for _, o := range list[1:] {
		if _, ok := s.stated[s.facts[o.fact].Path]; ok || o.points < enough || f.points-o.points >= tooClose {
			continue
		}
		if pair := s.facts[o.fact].Path; pair == "mix.portland" && path == "mix.cementitious" || pair == "mix.cementitious" && path == "mix.portland" {
			continue // which of them is meant, the rest of the mix tells
		}
		rivals = append(rivals, s.facts[o.fact].Name)
	}
	if len(rivals) > 0 {
		if o, ok := s.prefer(q, list, rivals); ok {
			s.fits[q] = []fit{o}
			return s.give(q)
		}
	}
	s.used[q] = true
	if len(rivals) > 0 {
		s.out.Unread = append(s.out.Unread, Unread{Text: s.context(q), Meanings: append([]string{s.facts[f.fact].Name}, rivals...), at: s.items[q].start})
		return false
	}
	value, note := s.written(f)
	s.state(path, value, s.spoken(f), note, s.items[q].start)
	if f.near != nil {
		s.holds[f.near] = q
	}
	return true
}

// extend adds a number to a list that was begun: "test 12 was 3890 and test 13 was 3370".
func (s *solver) extend(q int, f fit, i int) bool {
	value, _ := s.written(f)
	list, ok := s.out.Facts[i].Value.([]any)
	if !ok {
		list = []any{s.out.Facts[i].Value}
	}
	s.used[q] = true
	s.out.Facts[i].Value = append(list, value)
	return true
}

// again handles a number whose fact has one already: the same said twice, a weaker claim, or a contradiction.
func (s *solver) again(q int, f fit, first int) bool {
	value, _ := s.written(f)
	fact := s.facts[f.fact]
	if fact.Same(s.canon(fact, s.out.Facts[first].Value), value) {
		s.used[q] = true
		return false
	}
	if fact.Path == "weather.low" { // "25 tonight going to 10 tomorrow night": the lowest counts
		old, ok := s.valueOf("weather.low", "F")
		v, err := convert(s.items[q].num, f.unit, "F")
		if ok && err {
			if v.low < old {
				s.out.Facts[first].Value, s.out.Facts[first].Text = value, s.spoken(f)
			}
			s.used[q] = true
			return false
		}
	}
	if s.another(q, f, value) {
		s.used[q] = true
		return false
	}
	rest := s.fits[q][1:]
	for len(rest) > 0 {
		if _, taken := s.stated[s.facts[rest[0].fact].Path]; !taken {
			break
		}
		rest = rest[1:]
	}
	if len(rest) > 0 && rest[0].points >= enough && f.points-rest[0].points < 1.5 {
		s.fits[q] = rest
		return s.give(q)
	}
	s.used[q] = true
	if f.points >= pointsSaid {
		s.out.Facts = append(s.out.Facts, Read{Path: fact.Path, Value: value, Text: s.spoken(f), at: s.items[q].start})
		return false
	}
	s.out.Unread = append(s.out.Unread, Unread{Text: s.context(q), at: s.items[q].start})
	return false
}

// another adds the slump of one more truck to the list of the others.
func (s *solver) another(q int, f fit, value string) bool {
	if s.facts[f.fact].Path != "load.slump" || !s.nearLabel(q) && !s.nearLabelOf("load.slump") && !s.listed(q) {
		return false
	}
	const path = "load.other_slumps"
	if i, ok := s.stated[path]; ok {
		list, _ := s.out.Facts[i].Value.([]any)
		s.out.Facts[i].Value = append(list, value)
		return true
	}
	s.state(path, []any{value}, s.spoken(f), "", s.items[q].start)
	return true
}

// loads are words that speak of more than one truckload.
var loads = set([]string{"loads", "trucks", "tickets", "batches"})

// listed says whether the bare number at item q stands in a row with the slump that was read, where several loads are spoken of:
// "measured 90, 110, 95".
func (s *solver) listed(q int) bool {
	if len(s.items[q].units) > 0 || q+1 < len(s.items) && s.items[q+1].kind != aBreak || !s.speaksOneOf(loads) {
		return false
	}
	at := s.out.Facts[s.stated["load.slump"]].at
	for i := q - 1; i >= 0; i-- {
		switch it := &s.items[i]; {
		case it.kind == aQuantity && it.start == at:
			return true
		case it.kind == aQuantity && len(it.units) == 0, it.kind == aBreak && it.pause == pauseComma, it.kind == aWord && it.filler:
		default:
			return false
		}
	}
	return false
}

// nearLabel says whether the name of a truck stands shortly before item q.
func (s *solver) nearLabel(q int) bool {
	for i := q - 1; i >= 0 && i > q-6 && s.items[i].kind != aBreak; i-- {
		if s.items[i].stem == labelStem || ordinals[s.items[i].text] && s.items[i].text != "the" && i+1 < len(s.items) && (s.items[i+1].stem == "truck" || s.items[i+1].stem == "load" || s.items[i+1].text == "one") {
			return true
		}
	}
	return false
}

// nearLabelOf says the same of the number that a fact was read from.
func (s *solver) nearLabelOf(path string) bool {
	at := s.out.Facts[s.stated[path]].at
	for q := range s.items {
		if s.items[q].kind == aQuantity && s.items[q].start == at {
			return s.nearLabel(q)
		}
	}
	return false
}

// preferred are pairs of facts of which the first is meant where nothing tells them apart but what the whole text is about: words of it.
var preferred = []struct {
	path, other string
	words       map[string]bool // none where it is always preferred
}{
	{"weather.air", "protection.removal_outside", nil},
	{"cure.water_temperature", "materials.water_temperature", set([]string{"cure", "curing", "burlap", "soaker", "pond", "flood", "sprinkler", "creek", "hose", "hoses"})},
	{"cure.days", "protection.days", set([]string{"wet", "burlap", "soaker", "sprinkler", "cure", "curing", "moist", "ponded"})},
	{"load.volume", "order.volume", set([]string{"driver", "truck", "truck's", "arrival", "drum", "chute", "ticket", "hose", "discharged", "old", "aboard"})},
	{"order.volume", "load.volume", nil},
	{"load.temperature", "weather.air", set([]string{"truck", "chute", "slump", "cone", "driver", "load", "mud", "ticket"})},
	{"weather.air", "load.temperature", nil},
	{"cure.surface_temperature", "protection.slab_temperature", set([]string{"soaker", "hose", "hoses", "pond", "flood", "sprinkler", "creek", "burlap", "well"})},
}

// prefer chooses between two facts that want the number at item q alike by what the text is about.
func (s *solver) prefer(q int, list []fit, rivals []string) (fit, bool) {
	if len(rivals) != 1 {
		return fit{}, false
	}
	other := -1
	for i := 1; i < len(list); i++ {
		if s.facts[list[i].fact].Name == rivals[0] {
			other = i
			break
		}
	}
	if other < 0 {
		return fit{}, false
	}
	a, b := list[0], list[other]
	for _, p := range preferred {
		if p.words != nil && !s.speaksOneOf(p.words) {
			continue
		}
		switch {
		case s.facts[a.fact].Path == p.path && s.facts[b.fact].Path == p.other:
			return a, true
		case s.facts[b.fact].Path == p.path && s.facts[a.fact].Path == p.other:
			return b, true
		}
	}
	return fit{}, false
}

// speaksOneOf says whether one of the words stands anywhere in the text.
func (s *solver) speaksOneOf(words map[string]bool) bool {
	for i := range s.items {
		if s.items[i].kind == aWord && words[s.items[i].text] {
			return true
		}
	}
	return false
}
