package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A worked example of ASTM C138: 3,886 lb batched for a yard weigh 145.0 lb/ft3, so they fill 26.80 ft3.
func TestYieldOfAWeighedBatch(t *testing.T) {
	in := facts{"mix.cementitious": 564.0, "mix.coarse_aggregate": 1800.0, "mix.fine_aggregate": 1240.0, "mix.water": 282.0, "mix.density": 145.0, "load.volume": 9.0}
	assert.InDelta(t, 3886, known(t, "yard_weight", in).Best, 0.01)
	assert.InDelta(t, 0.993, known(t, "relative_yield", in).Best, 0.0005)
	assert.InDelta(t, 9*0.993, known(t, "yield", in).Best, 0.005)
	assert.InDelta(t, 568, known(t, "cement_delivered", in).Best, 0.5)
}

func TestYieldByTheWeightOfTheLoad(t *testing.T) {
	in := facts{"load.weight": 34974.0, "load.volume": 9.0, "mix.density": 145.0}
	assert.InDelta(t, 0.993, known(t, "relative_yield", in).Best, 0.0005)
	in["load.weight"] = 38000.0
	for k, v := range map[string]float64{"mix.cementitious": 564, "mix.coarse_aggregate": 1800, "mix.fine_aggregate": 1240, "mix.water": 282} {
		in[k] = v
	}
	assert.Contains(t, compute(t, "yard_weight", in).Problem, "contradict", "the ticket's weights and its total differ by more than batching does")
}

// ACI 211.1-91, example 1 (from memory): the trial batch weighs 123.70 lb at 149.0 lb/ft3 and fills 0.830 ft3.
func TestYieldOfATrialBatch(t *testing.T) {
	in := facts{"load.weight": 123.70, "load.volume": 1.0 / 27, "mix.density": 149.0} // in the measure of one cubic foot
	assert.InDelta(t, 0.830, known(t, "relative_yield", in).Best, 0.0005)
}
