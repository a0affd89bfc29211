package heat_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"hearsay/internal/heat"
)

// ACI 209R-92, table 2.2.1: printed strengths over 28-day strength. The formula is 0.4 % off 1 at 28 days, as in the table.
func TestStrengthByACI209(t *testing.T) {
	days := []float64{3, 7, 14, 21, 28, 56, 91, 365}
	for name, c := range map[string]struct {
		curve func(float64, heat.Early) float64
		early heat.Early
		want  []float64
	}{
		"moist, Type I":   {heat.ACI209, heat.Ordinary, []float64{0.46, 0.70, 0.88, 0.96, 1.00, 1.08, 1.12, 1.16}},
		"moist, Type III": {heat.ACI209, heat.Rapid, []float64{0.59, 0.80, 0.92, 0.97, 1.00, 1.04, 1.06, 1.08}},
		"steam, Type I":   {heat.ACI209Steam, heat.Ordinary, []float64{0.78, 0.91, 0.98, 1.00, 1.01, 1.03, 1.04, 1.05}},
		"steam, Type III": {heat.ACI209Steam, heat.Rapid, []float64{0.82, 0.93, 0.97, 0.99, 1.00, 1.01, 1.01, 1.02}},
	} {
		for i, want := range c.want {
			assert.InDelta(t, want, c.curve(24*days[i], c.early), 0.01, "%s at %g d", name, days[i])
		}
	}
}

// EN 1992-1-1, equation 3.2, worked out for the three classes of cement.
func TestStrengthByEurocode(t *testing.T) {
	days := []float64{1, 2, 3, 7, 14, 28, 56, 90, 365}
	for early, want := range map[heat.Early][]float64{
		heat.Rapid:    {0.424, 0.578, 0.663, 0.819, 0.920, 1.000, 1.060, 1.092, 1.156},
		heat.Ordinary: {0.342, 0.504, 0.598, 0.779, 0.902, 1.000, 1.076, 1.117, 1.198},
		heat.Slow:     {0.196, 0.353, 0.458, 0.684, 0.854, 1.000, 1.118, 1.183, 1.316},
	} {
		for i, v := range want {
			assert.InDelta(t, v, heat.Eurocode(24*days[i], early), 0.0006, "class %d at %g d", early, days[i])
		}
	}
}

// Rates by temperature: EN 1992-1-1 equation B.10 (not exactly 1 at 20 °C), activation energies 33.5, 41.5 and 45 kJ/mol,
// and the variable one of Freiesleben Hansen and Pedersen.
func TestRates(t *testing.T) {
	celsius := []float64{0, 5, 10, 15, 20, 30, 40}
	for name, c := range map[string]struct {
		rate heat.Rate
		want []float64
	}{
		"EN":   {heat.EurocodeRate, []float64{0.367, 0.478, 0.616, 0.788, 0.998, 1.566, 2.388}},
		"33.5": {heat.Arrhenius(33500), []float64{0.366, 0.477, 0.615, 0.788, 1, 1.574, 2.406}},
		"41.5": {heat.Arrhenius(41500), []float64{0.287, 0.399, 0.548, 0.744, 1, 1.754, 2.967}},
		"45":   {heat.Arrhenius(45000), []float64{0.259, 0.369, 0.521, 0.726, 1, 1.839, 3.252}},
		"FHP":  {heat.FreieslebenHansen, []float64{0.151, 0.293, 0.497, 0.748, 1, 1.574, 2.406}},
	} {
		for i, want := range c.want {
			assert.InDelta(t, want, c.rate(celsius[i]), 0.0011, "%s at %g °C", name, celsius[i])
		}
	}
}

// J. M. Plowman's example as textbooks give it: 40 MPa, seven days of 12 h at 20 °C and 12 h at 10 °C: 66.5 %, 26.6 MPa.
func TestPlowmansExample(t *testing.T) {
	maturity := 84*31. + 84*21
	assert.Equal(t, 4368., maturity)
	assert.InDelta(t, 26.6, 40*heat.Plowman(maturity, 40), 0.05)
}

// Nurse-Saul of 28 days at 15 °C above -11 °C is 728 °C·d; and two records with changing temperature, worked out by hand
// with the mean of each interval.
func TestMaturity(t *testing.T) {
	assert.InDelta(t, 728*24, heat.NurseSaul([]float64{0, 28 * 24}, []float64{15, 15}, -11), 1e-6)
	hours, celsius := []float64{0, 6, 12, 24, 36, 48, 72}, []float64{20, 28, 36, 38, 30, 24, 18}
	assert.InDelta(t, 2016, heat.NurseSaul(hours, celsius, 0), 1e-9)
	assert.InDelta(t, 2736, heat.NurseSaul(hours, celsius, -10), 1e-9)
	age := heat.Age(hours, celsius, heat.Arrhenius(41500), -1)
	// By the rate at the mean of each interval it is 119.13 h; the rate's curvature within the intervals adds some.
	assert.InDelta(t, 119.13, age[len(age)-1], 0.9)
	cold, record := []float64{0, 12, 24, 48, 72, 96}, []float64{13, 16, 14, 10, 6, 5}
	assert.InDelta(t, 966, heat.NurseSaul(cold, record, 0), 1e-9)
	assert.InDelta(t, 1926, heat.NurseSaul(cold, record, -10), 1e-9)
	age = heat.Age(cold, record, heat.Arrhenius(41500), -1)
	assert.InDelta(t, 53.98, age[len(age)-1], 0.2)
	assert.InDelta(t, 6*10/2., heat.NurseSaul([]float64{0, 12}, []float64{-10, 10}, 0), 1e-9, "what lies below the datum counts as nothing")
}

// What ACI 306 and PCA say of the time to 500 psi: within the first day at ordinary temperatures, at least two days at
// 50 °F for most concretes (NRMCA CIP 27), "during the second day" for well-proportioned ones (ACI 306R-88). The range
// over the methods must hold these, and a held temperature must agree with the inverse.
func TestHoursTo500Psi(t *testing.T) {
	at := func(celsius float64, g heat.Gain, strength float64) heat.Range {
		return g.HoursTo(500/strength, []float64{0, 1}, []float64{celsius, celsius})
	}
	plain := heat.Gain{Early: heat.Ordinary, Freezing: -1}
	warm := at(20, plain, 4000)
	assert.Less(t, warm.High, 24.0)
	assert.InDelta(t, 24*4*0.125/(1-0.85*0.125), warm.Best, 0.01, "ACI 209 solved for its time")
	cool := at(10, plain, 3500)
	assert.Greater(t, cool.Best, 24.0)
	assert.Greater(t, cool.High, 40.0)
	assert.Less(t, cool.Low, 24.0)
	assert.Less(t, at(10, heat.Gain{Early: heat.Rapid, Freezing: -1}, 3500).Best, cool.Best)
	assert.InDelta(t, cool.Best/1.5, at(10, heat.Gain{Early: heat.Ordinary, Speed: 1.5, Freezing: -1}, 3500).Best, 0.01)
	frozen := at(-2, plain, 4000)
	assert.Greater(t, frozen.Low, 1e300, "frozen concrete gains nothing")
	share := plain.Share([]float64{0, cool.Best}, []float64{10, 10})
	assert.InDelta(t, 500./3500, share.Best, 1e-6)
}

// Carino's hyperbola begins at final set and meets ACI 209 at 7 and 28 days.
func TestHyperbolaMeetsItsPoints(t *testing.T) {
	for _, early := range []heat.Early{heat.Ordinary, heat.Rapid} {
		c := heat.CarinoThrough(8, early)
		assert.Zero(t, c.At(8))
		assert.InDelta(t, 1, c.At(28*24), 1e-9)
		assert.InDelta(t, heat.ACI209(7*24, early)/heat.ACI209(28*24, early), c.At(7*24), 1e-9)
	}
}
