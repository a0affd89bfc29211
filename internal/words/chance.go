package words

// chances reads the chance of rain: the per cent that stand beside a word for it.
func (s *solver) chances() {
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || len(it.units) == 0 || it.units[0] != "%" || s.used[q] {
			continue
		}
		at := s.rainBeside(q)
		if at < 0 {
			continue
		}
		s.used[q] = true
		switch {
		case s.has("weather.rain"):
		case it.num.low >= likelyRain:
			s.state("weather.rain", "yes", s.words(min(at, q), max(at, q)), "", s.items[min(at, q)].start)
		case it.num.high <= unlikelyRain:
			s.state("weather.rain", "no", s.words(min(at, q), max(at, q)), "", s.items[min(at, q)].start)
		}
	}
}

// From likelyRain per cent on rain is expected, and up to unlikelyRain it is not.
const (
	likelyRain   = 40
	unlikelyRain = 10
)

// rainBeside is the word for rain or its chance that stands nearest to item q in its sentence, with no other number of per cent between; -1
// where there is none.
func (s *solver) rainBeside(q int) int {
	for i := max(0, q-4); i < q; i++ {
		switch s.items[i].text {
		case "humidity", "rh", "humid", "air", "moisture":
			return -1
		}
	}
	for _, step := range []int{1, -1} {
		for i := q + step; i >= 0 && i < len(s.items) && i != q+9*step; i += step {
			it := &s.items[i]
			if it.negBy >= 0 && it.kind == aWord && !it.filler {
				break // "35 percent, no rain in sight"
			}
			if it.kind == aBreak && it.pause >= pauseSentence || it.kind == aQuantity && len(it.units) > 0 && it.units[0] == "%" {
				break
			}
			switch it.text {
			case "moisture", "sand", "aggregate", "stone":
				i = q + 8*step
			case "rain", "storm", "storms", "thunderstorm", "thunderstorms", "shower", "showers", "thundershowers":
				if t := s.before(i); t == "after" || t == "since" || t == "before" {
					i = q + 8*step
					continue
				}
				return i
			case "humidity", "rh", "air", "humid":
				i = q + 8*step // what the number speaks of stands nearer
			}
		}
	}
	return -1
}

// before is the last word before item i that is no small word.
func (s *solver) before(i int) string {
	for i--; i >= 0 && s.items[i].kind == aWord; i-- {
		if t := s.items[i].text; !s.items[i].filler || t == "after" || t == "since" {
			return t
		}
	}
	return ""
}
