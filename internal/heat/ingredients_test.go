package heat_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/heat"
)

func c(f float64) float64 { return (f - 32) / 1.8 }
func f(c float64) float64 { return 32 + 1.8*c }

func temperature(t *testing.T, m heat.Ingredients) float64 {
	t.Helper()
	celsius, err := m.Temperature()
	require.NoError(t, err)
	return celsius
}

// Design and Control of Concrete Mixtures, EB001, the worked example with ice, in SI and in US units; the book rounds
// to 24.1 °C and 75 °F.
func TestConcreteWithIce(t *testing.T) {
	si := heat.Ingredients{Cement: 335, CementAt: 66, Aggregate: 1839, AggregateAt: 27, Water: 123, WaterAt: 27, Ice: 44}
	assert.InDelta(t, 24.1, temperature(t, si), 0.15)
	us := heat.Ingredients{Cement: 564, CementAt: c(150), Aggregate: 3100, AggregateAt: c(80), Water: 207, WaterAt: c(80), Ice: 75}
	assert.InDelta(t, 74.7, f(temperature(t, us)), 0.1)
	us.Water, us.Ice = 282, 0
	assert.InDelta(t, 88.0, f(temperature(t, us)), 0.1)
	assert.InDelta(t, 75, us.IceFor(c(74.7)), 1)
	assert.Zero(t, us.IceFor(c(90)))
}

// Heat balances of cold batches with hot water, worked out by the formulas of ACI 306R, frozen moisture included.
func TestColdBatch(t *testing.T) {
	dry := heat.Ingredients{Cement: 564, CementAt: c(40), Aggregate: 3000, AggregateAt: c(40), Water: 300, WaterAt: c(140)}
	assert.InDelta(t, 67.7, f(temperature(t, dry)), 0.1)
	damp := dry
	damp.Water, damp.Moisture = 250, 50
	assert.InDelta(t, 63.1, f(temperature(t, damp)), 0.1)
	frozen := dry
	frozen.AggregateAt, frozen.Moisture, frozen.Water = c(20), 60, 240
	assert.InDelta(t, 41.2, f(temperature(t, frozen)), 0.2)
	for _, m := range []heat.Ingredients{dry, damp, frozen} {
		water, err := m.WaterFor(c(60))
		require.NoError(t, err)
		m.WaterAt = water
		assert.InDelta(t, 60, f(temperature(t, m)), 1e-6, "the water found, put back")
	}
	dry.AggregateAt = dry.AggregateFor(c(60))
	assert.InDelta(t, 60, f(temperature(t, dry)), 1e-6)
	assert.InDelta(t, 7.5, 1.8*heat.DeliveryLoss(c(55), c(25), 1), 1e-9, "ACI 306R-88: 0.25 × (55 - 25) in an hour")
}

func TestTooMuchIceIsRefused(t *testing.T) {
	_, err := heat.Ingredients{Cement: 300, CementAt: 10, Aggregate: 1800, AggregateAt: 5, Water: 20, WaterAt: 5, Ice: 160}.Temperature()
	assert.ErrorContains(t, err, "would not all melt")
	_, err = heat.Ingredients{Cement: 300, Ice: 160}.WaterFor(20)
	assert.ErrorContains(t, err, "no mixing water")
}
