package heat_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/heat"
)

// On a hot day that is worst in the afternoon the best start lies in the evening or the night, and rain is kept out of.
func TestBestStart(t *testing.T) {
	w := heat.Daily(21, 36, heat.Hour{Humidity: 0.35, Wind: 4}, 6, 24, heat.HasHumidity|heat.HasWind)
	starts := heat.Starts(w, 4, func(air float64) float64 { return air })
	require.Len(t, starts, 21)
	best, ok := heat.Best(starts)
	require.True(t, ok)
	afternoon := starts[7] // at 13:00
	assert.Less(t, best.Evaporation, 0.6*afternoon.Evaporation)
	for _, s := range starts {
		assert.GreaterOrEqual(t, s.Evaporation, best.Evaporation)
		assert.GreaterOrEqual(t, s.Evaporation, s.Mean)
	}
	for i := range w.Hours {
		if i >= int(best.Hour) && i <= int(best.Hour)+4 {
			w.Hours[i].Rain = 2
		}
	}
	dry, ok := heat.Best(heat.Starts(w, 4, func(air float64) float64 { return air }))
	require.True(t, ok)
	assert.False(t, dry.Rain)
	assert.NotEqual(t, best.Hour, dry.Hour)
	_, ok = heat.Best(heat.Starts(w, 48, func(air float64) float64 { return air }))
	assert.False(t, ok, "the forecast is too short")
}
