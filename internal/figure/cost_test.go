package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestCostsComeFromThePricesGiven(t *testing.T) {
	prices := facts{"load.volume": 9.0, "load.wait": 30.0, "member.length": 24.0, "member.width": 24.0,
		"price.concrete": 150.0, "price.truck_hour": 120.0, "price.removal": 12.0}
	assert.InDelta(t, 1350, known(t, "rejected_load_cost", prices).Best, 1e-9)
	assert.InDelta(t, 60, known(t, "truck_waiting_cost", prices).Best, 1e-9)
	assert.InDelta(t, 6912, known(t, "tear_out_cost", prices).Best, 1e-9)
	r := figures(t).Sheet(facts{"load.volume": 9.0}).Result("rejected_load_cost")
	assert.False(t, r.Known, "without a price there is no cost")
}
