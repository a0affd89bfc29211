package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Table 6.3.3 of ACI 211.1, in lb/yd3: mixing water by slump, size of the stone and air.
func TestMixingWaterOfACI211(t *testing.T) {
	sizes := []float64{0.375, 0.5, 0.75, 1, 1.5, 2, 3}
	rows := []struct {
		slumps []float64
		air    bool
		water  []float64
	}{
		{[]float64{1, 1.5, 2}, false, []float64{350, 335, 315, 300, 275, 260, 220}},
		{[]float64{3, 4}, false, []float64{385, 365, 340, 325, 300, 285, 245}},
		{[]float64{6, 7}, false, []float64{410, 385, 360, 340, 315, 300, 270}},
		{[]float64{1, 2}, true, []float64{305, 295, 280, 270, 250, 240, 205}},
		{[]float64{3, 3.5, 4}, true, []float64{340, 325, 305, 295, 275, 265, 225}},
		{[]float64{6, 6.5, 7}, true, []float64{365, 345, 325, 310, 290, 280, 260}},
	}
	for _, r := range rows {
		for _, slump := range r.slumps {
			for i, size := range sizes {
				v := known(t, "water_for_slump", facts{"order.slump": slump, "order.aggregate": size, "order.entrained_air": r.air})
				assert.Equal(t, r.water[i], v.Best, "%g in of slump, %g in stone", slump, size)
				assert.Equal(t, r.water[i]-45, v.Low, "rounded gravel takes less (PCA, from memory)")
			}
		}
	}
	between := known(t, "water_for_slump", facts{"order.slump": 5.0, "order.aggregate": 0.75, "order.entrained_air": true})
	assert.Equal(t, 315.0, between.Best, "halfway between the rows")
}

func TestMixingWaterPastTheTable(t *testing.T) {
	r := compute(t, "water_for_slump", facts{"order.slump": 8.0, "order.aggregate": 0.75, "order.entrained_air": true})
	assert.Contains(t, r.Problem, "admixture")
}

func TestMixingWaterIsARangeWhereTheOrderLeavesItOpen(t *testing.T) {
	sheet := figures(t).Sheet(facts{"order.aggregate": 0.75})
	r := sheet.Result("water_for_slump")
	require.True(t, r.Bounded)
	assert.Equal(t, 280.0-45, r.Low)
	assert.Equal(t, 360.0, r.High)
	assert.Equal(t, []string{"order.entrained_air", "order.slump"}, sheet.Lacks("water_for_slump"))
}

// One gallon in a yard raises the ratio by 8.33 lb over the cement: 0.0148 at 564 lb, 0.0177 at 470 lb (computed).
func TestAGallonRaisesTheRatio(t *testing.T) {
	for cement, more := range map[float64]float64{564: 0.0148, 470: 0.0177} {
		in := facts{"mix.wcm": 0.45, "mix.cementitious": cement, "water.added": 9.0, "load.volume": 9.0}
		assert.InDelta(t, 0.45+more, known(t, "wcm_after_water", in).Best, 0.00005)
	}
}

// Gallons to the bag as ratios: 8.33 lb over 94 lb (computed from the Navy's weights).
func TestGallonsToTheBag(t *testing.T) {
	for gallons, ratio := range map[float64]float64{4.5: 0.399, 5: 0.443, 5.5: 0.487, 6: 0.532, 6.5: 0.576, 7: 0.620} {
		assert.InDelta(t, ratio, known(t, "wcm", facts{"mix.water": gallons * 8.33, "mix.cementitious": 94.0}).Best, 0.0005)
	}
}

func onSite(added float64) facts {
	return facts{"mix.wcm": 0.46, "mix.cementitious": 517.0, "order.ratio_limit": 0.50, "load.volume": 9.0, "water.added": added}
}

func TestWaterStillAllowed(t *testing.T) {
	in := onSite(14)
	assert.InDelta(t, 22.34, known(t, "ratio_water", in).Best, 0.005) // 0.04 x 517 x 9 / 8.33, rounded down
	in["water.withheld"] = 10.0
	assert.Equal(t, 10.0, known(t, "water_allowed", in).Best, "the ticket allows less")
	in["water.withheld"] = 30.0
	allowed := known(t, "water_allowed", in).Best
	assert.InDelta(t, 22.34, allowed, 0.005, "the ratio allows less")
	assert.LessOrEqual(t, known(t, "wcm_after_water", onSite(allowed)).Best, 0.50, "what is allowed holds the ratio")
}

func TestWaterAllowedWithoutATicket(t *testing.T) {
	in := onSite(14)
	v := known(t, "water_allowed", in)
	assert.Equal(t, 0.0, v.Low)
	assert.InDelta(t, 22.34, v.Best, 0.005, "at most what the ratio allows")
	assert.NotEmpty(t, v.Assumed)
	in["mix.wcm"] = 0.50
	assert.Equal(t, 0.0, known(t, "water_allowed", in).Best, "with no room in the ratio the ticket does not matter")
	assert.Equal(t, 6.0, known(t, "water_allowed", facts{"water.allowed": 6.0}).Best, "at most what the ticket allows")
}

// Concrete Construction, Adjusting slump in the field: a gallon in a yard gives about an inch, costs 150 to 200 psi and a
// quarter bag of cement, and adds 10 % of shrinkage. Adding water: 200 to 400 psi.
func TestWhatAGallonDoes(t *testing.T) {
	in := onSite(9)
	slump := known(t, "slump_gained", in)
	assert.Equal(t, 1.0, slump.Best)
	strength := known(t, "strength_lost", in)
	assert.Equal(t, []float64{150, 175, 400}, []float64{strength.Low, strength.Best, strength.High})
	assert.Equal(t, 10.0, known(t, "shrinkage_added", in).High)
	assert.InDelta(t, 9*0.25, known(t, "cement_wasted_bags", in).High, 1e-9)
}

// Cement that holds the ratio against a gallon: 0.18, 0.20 and 0.22 of a bag at 0.50, 0.45 and 0.40 (computed).
func TestCementThatAGallonThrowsAway(t *testing.T) {
	for wcm, bags := range map[float64]float64{0.50: 0.18, 0.45: 0.20, 0.40: 0.22} {
		v := known(t, "cement_wasted_bags", facts{"mix.wcm": wcm, "water.added": 1.0})
		assert.InDelta(t, bags, v.Low, 0.005)
		assert.InDelta(t, 0.25, v.High, 1e-9)
	}
	cost := known(t, "cement_wasted_cost", facts{"mix.wcm": 0.5, "water.added": 10.0, "price.cement": 0.10})
	assert.InDelta(t, 16.66, cost.Best, 0.01)
}

// An old figure quoted in Concrete Construction, Excess water: from 2 in to 9 in of slump takes nine gallons. It lies in the
// range.
func TestGallonsForARise(t *testing.T) {
	v := known(t, "water_for_rise", facts{"load.slump": 2.0, "load.slump_wanted": 9.0})
	assert.Less(t, v.Low, 9.0)
	assert.Greater(t, v.High, 9.0)
	// The same article: 800 psi from 4 in to 7 in.
	cost := known(t, "strength_cost_of_rise", facts{"load.slump": 4.0, "load.slump_wanted": 7.0})
	assert.Less(t, cost.Low, 800.0)
	assert.Greater(t, cost.High, 800.0)
}

func TestRevolutionsByTheMinute(t *testing.T) {
	r := compute(t, "revolutions_since", facts{"water.minutes_after": 3.0})
	assert.True(t, r.Bounded)
	assert.Equal(t, []float64{3, 90}, []float64{r.Low, r.High}, "any speed that a job may state, 1 to 30 rpm")
	assert.Equal(t, 12.0, known(t, "revolutions_still_to_turn", facts{"water.minutes_after": 3.0, "water.mixing_speed": 6.0}).Best)
	assert.Equal(t, 0.0, known(t, "revolutions_still_to_turn", facts{"water.revolutions_after": 45.0}).Best)
}

func TestWaterIntoTheRestOfALoad(t *testing.T) {
	in := onSite(10)
	in["water.discharged"] = 5.0
	assert.InDelta(t, 55.6, known(t, "share_discharged", in).Best, 0.05)
	assert.InDelta(t, 0.46+10*8.33/4/517, known(t, "wcm_of_rest", in).Best, 1e-9)
	lost := known(t, "rest_strength_lost", in)
	assert.Equal(t, []float64{375, 437.5, 1000}, []float64{lost.Low, lost.Best, lost.High}, "10 gal in 4 yd3")
	in["water.discharged"] = 9.0
	assert.Contains(t, compute(t, "wcm_of_rest", in).Problem, "leaves nothing")
}

func TestWashWaterCounts(t *testing.T) {
	in := facts{"mix.wcm": 0.45, "mix.cementitious": 564.0, "water.wash": 20.0, "load.volume": 8.0}
	assert.InDelta(t, 0.45+20*8.33/8/564, known(t, "wcm_with_wash", in).Best, 1e-9)
}
