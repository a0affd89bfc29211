package words

// weatherList reads the temperature that stands without its name in a list of the weather: "74, RH 60, wind 3", "97 / 20% rh / wind 14".
func (s *solver) weatherList() {
	if len(s.saidBy[s.byPath["weather.humidity"]])+len(s.saidBy[s.byPath["weather.wind"]]) == 0 {
		return
	}
	for q := range s.items {
		it := &s.items[q]
		if it.kind != aQuantity || s.used[q] || s.has("weather.air") || len(it.units) > 0 && it.units[0] != "deg?" && it.units[0] != "F" && it.units[0] != "C" || !it.num.single() || it.num.part {
			continue
		}
		fact := s.facts[s.byPath["weather.air"]]
		unit := s.degrees
		if len(it.units) > 0 && it.units[0] != "deg?" {
			unit = it.units[0]
		}
		v, ok := convert(it.num, unit, "F")
		if !ok || !fact.Usual.Contains(v.low) || v.low < 20 || !s.heads(q) || !s.beforeWeather(q) {
			continue
		}
		s.used[q] = true
		s.state("weather.air", plainNumber(it.num.low)+" "+unit, s.words(q, q), "", it.start)
	}
}

// heads says whether nothing but a pause or small words stands before the number at item q in its part of the sentence.
func (s *solver) heads(q int) bool {
	for i := q - 1; i >= 0 && i > q-4; i-- {
		it := &s.items[i]
		if it.kind == aBreak || it.kind == aClock || it.text == "forecast" || it.text == "say" {
			return true
		}
		if it.kind != aWord || !it.filler {
			return false
		}
	}
	return q == 0
}

// beforeWeather says whether a pause and then a humidity or a wind follow the number at item q.
func (s *solver) beforeWeather(q int) bool {
	paused := false
	for i := q + 1; i < len(s.items) && i < q+8; i++ {
		it := &s.items[i]
		switch {
		case it.kind == aBreak && it.pause <= pauseComma:
			paused = true
		case it.kind == aBreak:
			return false
		case it.kind == aQuantity && len(it.units) > 0 && (it.units[0] == "mph" || it.units[0] == "km/h"):
			return true
		case it.kind == aWord && (it.text == "rh" || it.text == "humidity" || it.text == "wind" || it.text == "winds" || it.text == "breeze"):
			return true
		case it.kind == aQuantity && !paused:
			return false
		case it.kind == aWord && it.text == "air":
			return false
		}
	}
	return false
}
