package heat_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/heat"
)

// inert is concrete that neither hydrates nor freezes; body is ground of the same conductivity and heat capacity.
var (
	inert = heat.Concrete{Celsius: 20, Density: 2350, SpecificHeat: 1000, Conductivity: 2.2}
	body  = heat.Soil{Density: 2350 * 1000 / (0.17 * 4186.8), Thawed: 2.2, Frozen: 2.2}
)

const diffusivity = 2.2 / 2350e3 // m²/s

func held(celsius float64) heat.Face { return heat.Face{Kind: heat.Held, Celsius: celsius} }

// H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, section 2.4: the semi-infinite body whose surface is
// suddenly held at another temperature, T = Ts + (T0 - Ts)·erf(x/2√(at)).
func TestSemiInfiniteBodyWithStepAtItsSurface(t *testing.T) {
	s := heat.Section{Concrete: inert, Thickness: 0.2, Ground: []heat.Layer{{Soil: body, Thickness: 6, Top: 20, Bottom: 20}}}
	h, err := heat.Run(s, heat.Weather{}, []heat.Change{{Top: held(2)}}, heat.Span{Hours: 72, Step: 0.02, Cells: 40})
	require.NoError(t, err)
	for _, hour := range []float64{6, 12, 24, 48, 72} {
		want := func(x float64) float64 { return 2 + 18*math.Erf(x/(2*math.Sqrt(diffusivity*hour*3600))) }
		assert.InDelta(t, want(0.1), h.Middle[int(hour)], 0.05, "at 0.1 m after %g h", hour)
		assert.InDelta(t, want(0.2), h.Bottom[int(hour)], 0.05, "at 0.2 m after %g h", hour)
	}
}

// Carslaw and Jaeger, section 3.4: the slab of thickness L with both faces held at zero, at its middle
// (4T0/π)·Σ (-1)^n/(2n+1)·exp(-(2n+1)²π²at/L²).
func TestSlabBetweenTwoTemperatures(t *testing.T) {
	const thickness = 0.3
	h, err := heat.Run(heat.Section{Concrete: inert, Thickness: thickness}, heat.Weather{},
		[]heat.Change{{Top: held(5), Far: held(5)}}, heat.Span{Hours: 24, Step: 0.02, Cells: 41})
	require.NoError(t, err)
	for _, hour := range []int{2, 6, 12, 24} {
		sum := 0.0
		for n := range 60 {
			k := float64(2*n + 1)
			sum += math.Pow(-1, float64(n)) / k * math.Exp(-k*k*math.Pi*math.Pi*diffusivity*float64(hour)*3600/(thickness*thickness))
		}
		assert.InDelta(t, 5+15*4/math.Pi*sum, h.Middle[hour], 0.03, "after %d h", hour)
	}
	steady, err := heat.Run(heat.Section{Concrete: inert, Thickness: thickness}, heat.Weather{},
		[]heat.Change{{Top: held(-5), Far: held(15)}}, heat.Span{Hours: 500, Every: 100, Step: 5, Cells: 11})
	require.NoError(t, err)
	assert.InDelta(t, 5, steady.Middle[len(steady.Middle)-1], 1e-3, "steady state is a straight line")
}

// Carslaw and Jaeger, section 2.6: under a periodic surface temperature the swing at a depth x is exp(-x/d) of that at
// the surface and lags x/d radians, with the damping depth d = √(2a/ω).
func TestPeriodicSurfaceTemperatureIsDamped(t *testing.T) {
	omega := 2 * math.Pi / (24 * 3600)
	damping := math.Sqrt(2 * diffusivity / omega)
	var w heat.Weather
	for i := range 24*12*4 + 1 {
		hour := float64(i) / 4
		w.Hours = append(w.Hours, heat.Hour{Hour: hour, Air: 10 + 10*math.Sin(omega*hour*3600), Humidity: 1, Cloud: 1, Wind: 1e6})
	}
	s := heat.Section{Concrete: inert, Thickness: 0.3, Ground: []heat.Layer{{Soil: body, Thickness: 4, Top: 10, Bottom: 10}}}
	s.Concrete.Celsius = 10
	h, err := heat.Run(s, w, []heat.Change{{Top: heat.Face{Kind: heat.Outdoors}}},
		heat.Span{Hours: 24 * 12, Step: 0.05, Every: 0.25, Cells: 40})
	require.NoError(t, err)
	low, high, peak := math.Inf(1), math.Inf(-1), 0.0
	for i, hour := range h.Hours {
		if hour < 24*11 {
			continue
		}
		low = math.Min(low, h.Bottom[i])
		if h.Bottom[i] > high {
			high, peak = h.Bottom[i], hour
		}
	}
	assert.InEpsilon(t, 20*math.Exp(-0.3/damping), high-low, 0.02)
	lag := 0.3 / damping / omega / 3600
	assert.InDelta(t, 24*11+6+lag, peak, 0.3, "the hour of the crest")
}

// The error of a second-order grid falls to a quarter with half the cell. Compared with the steady state of a slab that
// makes heat evenly it would be zero everywhere, so the transient slab of the test above serves.
func TestErrorFallsWithTheSquareOfTheCell(t *testing.T) {
	const thickness, hours = 0.3, 3
	exact := 0.0
	for n := range 60 {
		k := float64(2*n + 1)
		exact += math.Pow(-1, float64(n)) / k * math.Exp(-k*k*math.Pi*math.Pi*diffusivity*hours*3600/(thickness*thickness))
	}
	exact *= 20 * 4 / math.Pi
	failure := func(cells int) float64 {
		h, err := heat.Run(heat.Section{Concrete: inert, Thickness: thickness}, heat.Weather{},
			[]heat.Change{{Top: held(0), Far: held(0)}}, heat.Span{Hours: hours, Every: hours, Step: 0.0005, Cells: cells})
		require.NoError(t, err)
		return math.Abs(h.Middle[1] - exact)
	}
	coarse, fine := failure(5), failure(15) // odd counts have a cell in the middle
	assert.InDelta(t, 2, math.Log(coarse/fine)/math.Log(3), 0.2, "order of convergence: %.2g and %.2g K", coarse, fine)
}

// Whatever the section, the weather, the covers and the step, heat is neither made nor lost, and no temperature leaves
// the range of what heats and cools it, hydration included.
func TestHeatIsConserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		real := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		cement, _ := heat.CementType(rapid.SampledFrom([]string{"I", "II", "III", "IV", "V", "IL"}).Draw(t, "cement"))
		cm := real("cementitious", 150, 450)
		s := heat.Section{
			Concrete:  heat.NormalConcrete(real("placed", 2, 35), cm, cm*real("w/cm", 0.35, 0.7), cement),
			Thickness: real("thickness", 0.05, 2),
		}
		if rapid.Bool().Draw(t, "on ground") {
			soil := heat.Kersten(heat.Fine, real("density", 1200, 2100), real("moisture", 0.02, 0.4))
			s.Ground = []heat.Layer{{Soil: soil, Thickness: 3, Top: real("ground", -15, 30), Bottom: real("deep", 2, 12)}}
		}
		if rapid.Bool().Draw(t, "edge") {
			s.Edge = &heat.Edge{}
		}
		low := real("low", -40, 25)
		w := heat.Daily(low, low+real("swing", 0, 20), heat.Hour{Humidity: real("humidity", 0, 1), Wind: real("wind", 0, 20),
			Cloud: real("cloud", 0, 1)}, real("start", 0, 24), 72, 0)
		face := heat.Face{Kind: heat.Outdoors, R: real("R", 0, 3), Sky: 1}
		plan := []heat.Change{{Top: face, Far: heat.Face{Kind: heat.Outdoors}}, {Hour: real("uncovered", 1, 70), Top: heat.Face{Sky: 1}}}
		h, err := heat.Run(s, w, plan, heat.Span{Hours: 72, Step: real("step", 0.02, 72)})
		if err != nil {
			t.Fatal(err)
		}
		if e := h.Balance.Error(); e > 1e-9 {
			t.Fatalf("%g of the heat is not accounted for: %+v", e, h.Balance)
		}
		for i := range h.Hours {
			for _, v := range []float64{h.Top[i], h.Middle[i], h.Bottom[i]} {
				if v < -65 || v > 130 {
					t.Fatalf("%g °C after %g h", v, h.Hours[i])
				}
			}
		}
	})
}
