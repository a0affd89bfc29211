package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// 564 lb of cement take 11.28 lb of calcium chloride at 2 %. As 77 % flake that is 0.98 % chloride, 5.5 lb: within 1.00 for
// dry concrete, above 0.30 for moist (atomic masses; ACI 318 Table 19.3.2.1).
func TestTwoPerCentOfCalciumChloride(t *testing.T) {
	f := facts{"cold.chloride_dose": 2.0, "cold.chloride_form": "flake", "mix.portland": 564.0}
	assert.InDelta(t, 0.98, known(t, "chloride_added", f).Best, 0.005)
	assert.InDelta(t, 5.5, known(t, "chloride_added", f).Best/100*564, 0.06)
	f["cold.chloride_form"] = "anhydrous"
	assert.InDelta(t, 1.28, known(t, "chloride_added", f).Best, 0.005)
}

// The largest dose of 77 % flake within 0.30 % is 0.61 %, 3.4 lb on 564 lb of cement.
func TestLargestDoseForMoistConcrete(t *testing.T) {
	f := facts{"cold.chloride_dose": 0.61, "cold.chloride_form": "flake", "mix.portland": 564.0}
	assert.InDelta(t, 0.30, known(t, "chloride_added", f).Best, 0.001)
}

// ACI's answer on the basis of the limit: 0.15 % of 600 lb of cement is 0.9 lb in a yard, 0.024 % of 3,800 lb of concrete.
func TestChlorideBasis(t *testing.T) {
	f := facts{"mix.chloride": 0.15, "mix.portland": 600.0, "mix.cementitious": 600.0}
	byCement := known(t, "chloride_by_cement", f).Best
	assert.InDelta(t, 0.9, byCement/100*600, 1e-9)
	assert.InDelta(t, 0.0237, byCement*600/3800, 0.0001)
}

// With a quarter of fly ash 0.98 % of the cement is 0.74 % of the cementitious material; with more than half of it, the fly
// ash counts only up to the mass of the cement (ACI 318-19).
func TestChlorideByCementitiousMaterial(t *testing.T) {
	f := facts{"cold.chloride_dose": 2.0, "cold.chloride_form": "flake", "mix.other_chloride": 0.0, "mix.portland": 423.0, "mix.cementitious": 564.0}
	assert.InDelta(t, 0.738, known(t, "chloride_by_cementitious", f).Best, 0.001)
	f["mix.portland"] = 200.0
	assert.InDelta(t, 0.492, known(t, "chloride_by_cementitious", f).Best, 0.001)
}

// Two per cent is over the limit of moist reinforced concrete whatever form it is, and whatever else there is.
func TestChlorideIsBoundedWhileSourcesAreOpen(t *testing.T) {
	r := compute(t, "chloride_by_cementitious", facts{"cold.chloride_dose": 2.0})
	assert.True(t, r.Bounded)
	assert.InDelta(t, 0.492, r.Low, 0.001, "flake, half of it other cementitious material")
	assert.InDelta(t, 2.278, r.High, 0.001, "anhydrous, and all that else may come in")
}

// ACI 318-19 Table 19.3.2.1, chloride: 1.00, 0.30 and 0.15 % for classes C0, C1 and C2 of reinforced concrete.
func TestChlorideLimits(t *testing.T) {
	for _, c := range []struct {
		moist, salt bool
		limit       float64
	}{{false, false, 1.00}, {true, false, 0.30}, {true, true, 0.15}} {
		f := facts{"exposure.moist": c.moist, "exposure.external_chloride": c.salt}
		assert.Equal(t, c.limit, known(t, "chloride_limit", f).Best, "%+v", c)
	}
	assert.Equal(t, 0.15, known(t, "chloride_limit", facts{"exposure.external_chloride": true}).Best, "salt decides alone")
}

// Calcium chloride is dosed and counted by mass of cement; the limit of 318-19 is by mass of cementitious material. By hand:
// 4 % of 77 % flake is 3.08 % of the salt, of which 35.45 × 2 / 110.98 = 0.639 is chlorine: 1.968 % of the cement. Where all of the
// material is cement that is the same of the material; where it is not known, a half of it counts at the least: 0.984 %.
func TestOneDoseCountsOnceByEachMass(t *testing.T) {
	f := facts{"cold.chloride_dose": 4.0, "cold.chloride_form": "flake", "mix.other_chloride": 0.0}
	assert.InDelta(t, 1.968, known(t, "chloride_by_cement", f).Best, 0.001)
	open := compute(t, "chloride_by_cementitious", f)
	assert.InDelta(t, 0.984, open.BestLow, 0.001)
	assert.InDelta(t, 1.968, open.BestHigh, 0.001)
	f["mix.portland"], f["mix.cementitious"] = 564.0, 564.0
	assert.InDelta(t, 1.968, known(t, "chloride_by_cementitious", f).Best, 0.001)
}
