package heat

import "math"

// Start is what one hour to start placing at would bring.
type Start struct {
	Hour        float64 // of the weather
	Evaporation float64 // the worst while the surface is open, kg/m²/h, by Menzel
	Mean        float64 // the mean of that time, kg/m²/h
	WorstAt     float64 // hour of the weather of the worst
	Concrete    float64 // temperature of the concrete at the worst hour, °C
	Rain        bool    // it rains in that time
}

// Starts tells what each hour of a forecast brings, as far as the forecast covers the hours after it. open is how long
// the surface lies open, placing and finishing, in h. concrete gives the temperature of the concrete at an hour from
// that of the air, both in °C. The weather must have humidity and wind.
func Starts(w Weather, open float64, concrete func(air float64) float64) []Start {
	var all []Start
	for from := 0.0; from+open <= w.Length()+1e-9; from++ {
		s := Start{Hour: from}
		n := int(math.Ceil(open))
		for i := 0; i <= n; i++ {
			hour := math.Min(from+float64(i), from+open)
			h := w.At(hour)
			t := concrete(h.Air)
			e := math.Max(0, Menzel(t, h.Air, h.Humidity, h.Wind))
			s.Mean += e / float64(n+1)
			if i == 0 || e > s.Evaporation {
				s.Evaporation, s.WorstAt, s.Concrete = e, hour, t
			}
			s.Rain = s.Rain || h.Rain > 0
		}
		all = append(all, s)
	}
	return all
}

// Best is the start of least worst evaporation among those without rain, or among all where it always rains; of equal
// ones the earliest. ok is false where there is none.
func Best(starts []Start) (best Start, ok bool) {
	for _, s := range starts {
		if !ok || (best.Rain && !s.Rain) || best.Rain == s.Rain && s.Evaporation < best.Evaporation-1e-9 {
			best, ok = s, true
		}
	}
	return best, ok
}
