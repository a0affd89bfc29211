package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSharesFromMasses(t *testing.T) {
	f := facts{"mix.portland": 423.0, "mix.fly_ash": 113.0, "mix.slag": 0.0, "mix.silica_fume": 28.0}
	assert.InDelta(t, 20.0, known(t, "fly_ash_share", f).Best, 0.05)
	assert.InDelta(t, 5.0, known(t, "silica_fume_share", f).Best, 0.05)
	assert.InDelta(t, 25.0, known(t, "scm_share", f).Best, 0.05)
}

// What is taken out by the limits of ACI 318 is given back as portland cement.
func TestSharesThatSaltAllows(t *testing.T) {
	f := facts{"mix.portland": 200.0, "mix.fly_ash": 180.0, "mix.slag": 160.0, "mix.silica_fume": 60.0}
	assert.InDelta(t, 150, known(t, "fly_ash_allowed_mass", f).Best, 1e-6)
	assert.InDelta(t, 60, known(t, "silica_fume_allowed_mass", f).Best, 1e-6)
	assert.InDelta(t, 90, known(t, "slag_allowed_mass", f).Best, 1e-6, "what fly ash and silica fume leave of half")
	assert.InDelta(t, 300, known(t, "portland_allowed_mass", f).Best, 1e-6)
}

// ACI 318 Table 19.3.1.1: the classes begin at 0.10, 0.20 and above 2.0 % in soil, at 150, 1,500 and above 10,000 ppm in water.
func TestSulfateClasses(t *testing.T) {
	for _, c := range []struct{ soil, water, class float64 }{
		{0.09, 149, 0}, {0.10, 0, 1}, {0, 150, 1}, {0.19, 1499, 1}, {0.20, 0, 2}, {0, 1500, 2}, {2.0, 10000, 2}, {2.1, 0, 3}, {0, 10001, 3},
	} {
		f := facts{"exposure.sulfate_soil": c.soil, "exposure.sulfate_water": c.water, "exposure.seawater": false}
		assert.Equal(t, c.class, known(t, "sulfate_class", f).Best, "%v", c)
	}
	assert.Equal(t, 1.0, known(t, "sulfate_class", facts{"exposure.sulfate_soil": 0.0, "exposure.sulfate_water": 0.0, "exposure.seawater": true}).Best)
}

// Alkalis in a yard are those of the portland cement: 600 lb at 0.9 % carry 5.4 lb.
func TestAlkaliLoading(t *testing.T) {
	assert.InDelta(t, 5.4, known(t, "alkali_loading", facts{"mix.portland": 600.0, "mix.alkalis": 0.9}).Best, 1e-9)
	f := facts{"mix.cementitious": 800.0, "mix.alkalis": 0.9, "mix.fly_ash_share": 25.0, "mix.slag_share": 0.0, "mix.silica_fume_share": 0.0}
	assert.InDelta(t, 5.4, known(t, "alkali_loading", f).Best, 1e-9)
}
