package words

import "strings"

// pastFrost takes back a depth of frost that was there before the ground was thawed: "had 400 mm of frost. Ran the hoses five days, no frost now".
func (s *solver) pastFrost() {
	at, ok := s.stated["ground.frost_depth"]
	state, also := s.stated["ground.state"]
	if !ok || !also || s.out.Facts[state].at <= s.out.Facts[at].at || !s.is("ground.state", "thawed") && !(s.is("ground.state", "not frozen") && s.thawed()) {
		return
	}
	for q := range s.items {
		if s.items[q].kind == aQuantity && s.items[q].start == s.out.Facts[at].at && s.inThePast(q) && !s.stillThere(q) {
			s.drop("ground.frost_depth")
			return
		}
	}
}

// thawed says whether it is told how the ground was thawed.
func (s *solver) thawed() bool {
	return s.has("ground.thaw_method") && !s.is("ground.thaw_method", "none") || s.has("ground.thaw_hours")
}

// inThePast says whether the number at item q stands behind "had" or "was" in its sentence.
func (s *solver) inThePast(q int) bool {
	for i := q - 1; i >= 0 && i > q-6 && !(s.items[i].kind == aBreak && s.items[i].pause >= pauseSentence); i-- {
		switch s.items[i].text {
		case "had", "was", "were", "started", "found", "been":
			return true
		}
	}
	return false
}

// stillThere says whether anything is told after item q to be still there.
func (s *solver) stillThere(q int) bool {
	for i := q + 1; i < len(s.items); i++ {
		switch s.items[i].text {
		case "still", "left", "remains", "remaining", "yet", "except", "but":
			return true
		}
	}
	return false
}

// bareHumidity reads the percents that stand alone behind the temperature of the air where the wind is told, too: "air 82, 40 percent,
// wind 3". So little as entrained air may be is left alone.
func (s *solver) bareHumidity() {
	at, ok := s.stated["weather.air"]
	if !ok || !s.has("weather.wind") || s.has("weather.humidity") || s.has("weather.dew_point") {
		return
	}
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || len(it.units) == 0 || it.units[0] != "%" || !it.num.single() || it.num.low < 12 || it.num.low > 100 {
			continue
		}
		from, to := s.part(q)
		if !s.onlySmall(from, q) || !s.onlySmall(q+1, to) || to < len(s.items) && s.items[to].pause > pauseComma && !s.sentenceEnds(to) {
			continue
		}
		before := from > 0 && s.items[from-1].pause <= pauseComma
		if !before || s.chanceOf(to) {
			continue
		}
		first, _ := s.part(from - 2)
		if f := s.out.Facts[at].at; f < s.items[first].start || f >= it.start {
			continue
		}
		s.used[q] = true
		s.state("weather.humidity", plainNumber(it.num.low)+" %", strings.TrimSpace(s.words(q, q)), "", it.start)
		return
	}
}

// part is where the part of the sentence that holds item q begins and ends.
func (s *solver) part(q int) (from, to int) {
	q = max(q, 0)
	for from = q; from > 0 && s.items[from-1].kind != aBreak; from-- {
	}
	for to = q; to < len(s.items) && s.items[to].kind != aBreak; to++ {
	}
	return from, to
}

// chanceOf says whether the part that follows the break at item i tells what the percents before it are.
func (s *solver) chanceOf(i int) bool {
	if i+1 >= len(s.items) || s.sentenceEnds(i) {
		return false
	}
	_, to := s.part(i + 1)
	for k := i + 1; k < to; k++ {
		switch s.items[k].text {
		case "chance", "rain", "ash", "fly", "slag", "fume", "sand", "replacement", "deposit", "down", "done", "full":
			return true
		}
	}
	return false
}

// sentenceEnds says whether the break at item i ends a sentence.
func (s *solver) sentenceEnds(i int) bool { return s.items[i].pause >= pauseSentence }

// onlySmall says whether nothing but small words stands from one item to before another.
func (s *solver) onlySmall(from, to int) bool {
	for i := from; i < to && i < len(s.items); i++ {
		if s.items[i].kind != aWord || !s.items[i].filler {
			return false
		}
	}
	return true
}
