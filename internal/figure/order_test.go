package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func salted(use string) facts {
	return facts{"member.use": use, "exposure.structural": false, "exposure.freezes": true, "exposure.wet": "often", "exposure.salted": true}
}

// IRC Table R402.2, ACI 332 class RF3 (4,000 psi in 2014, 4,500 psi in 2020) and ACI 318's classes F by edition.
func TestLeastStrength(t *testing.T) {
	drive := salted("driveway")
	drive["job.residential_code"] = "332-20"
	assert.Equal(t, 4500.0, known(t, "least_strength", drive).Best)
	drive["job.residential_code"] = "332-14"
	assert.Equal(t, 4000.0, known(t, "least_strength", drive).Best)
	drive["exposure.salted"] = false
	assert.Equal(t, 3500.0, known(t, "least_strength", drive).Best, "severe weathering")
	drive["exposure.wet"] = "sometimes"
	assert.Equal(t, 3000.0, known(t, "least_strength", drive).Best, "moderate weathering")
	drive["exposure.freezes"] = false
	assert.Equal(t, 2500.0, known(t, "least_strength", drive).Best, "negligible weathering")
	deck := facts{"member.use": "bridge deck", "exposure.structural": true, "exposure.plain": false, "exposure.freezes": true, "exposure.wet": "often", "exposure.salted": true,
		"exposure.external_chloride": false, "member.watertight": false}
	for edition, psi := range map[string]float64{"318-08": 4500, "318-11": 4500, "318-14": 5000, "318-19": 5000} { // 318-19 from memory
		deck["job.concrete_code"] = edition
		assert.Equal(t, psi, known(t, "least_strength", deck).Best, edition)
	}
	deck["exposure.plain"] = true
	assert.Equal(t, 4500.0, known(t, "least_strength", deck).Best, "class F3 without reinforcement")
}

// Frost that is wet now and then asks a structural member for 4,500 psi by ACI 318-08 and for 3,500 psi by ACI 318-14: the
// range of an unknown edition holds both, though the newer asks for more where it is salted.
func TestLeastStrengthByAnUnknownEdition(t *testing.T) {
	beam := facts{"member.use": "beam", "exposure.structural": true, "exposure.plain": false, "exposure.freezes": true, "exposure.wet": "sometimes", "exposure.salted": false,
		"exposure.external_chloride": false, "member.watertight": false}
	sheet := figures(t).Sheet(beam)
	r := sheet.Result("least_strength")
	require.True(t, r.Bounded)
	assert.Equal(t, []float64{3500, 4500}, []float64{r.Low, r.High})
	assert.Equal(t, []string{"job.concrete_code"}, sheet.Lacks("least_strength"))
}

func TestLeastStrengthAsksOnlyForWhatMatters(t *testing.T) {
	suspended := figures(t).Sheet(facts{"member.kind": "suspended slab", "exposure.freezes": false})
	assert.Equal(t, []string{"member.use"}, suspended.Lacks("least_strength"), "a bridge deck and a floor are not alike")
	sheet := figures(t).Sheet(salted("driveway"))
	assert.Equal(t, []string{"job.residential_code"}, sheet.Lacks("least_strength"))
	indoors := facts{"member.use": "house floor", "exposure.freezes": false, "exposure.structural": false}
	assert.Equal(t, 2500.0, known(t, "least_strength", indoors).Best, "salt and wetness do not matter where it does not freeze")
}

// Total air of ACI 318 and ASTM C94, read as the moderate and severe rows of Table 6.3.3 of ACI 211.1.
func TestAirToOrder(t *testing.T) {
	sizes := []float64{0.375, 0.5, 0.75, 1, 1.5, 2, 3}
	for wet, row := range map[string][]float64{"sometimes": {6, 5.5, 5, 4.5, 4.5, 4, 3.5}, "often": {7.5, 7, 6, 6, 5.5, 5, 4.5}} {
		for i, size := range sizes {
			in := facts{"order.aggregate": size, "exposure.freezes": true, "exposure.wet": wet, "exposure.salted": false}
			assert.Equal(t, row[i], known(t, "air_to_order", in).Best)
			assert.Equal(t, row[i]-1.5, known(t, "air_low", in).Best)
			assert.Equal(t, row[i]+1.5, known(t, "air_high", in).Best)
		}
	}
	open := compute(t, "air_to_order", facts{"exposure.freezes": true, "exposure.salted": true})
	assert.Equal(t, []float64{4, 7.5}, []float64{open.Low, open.High})
}

// ACI 211.1, section 6.3.2: a third of the depth, a fifth of the narrowest form, three quarters of the clear space.
func TestLargestAggregate(t *testing.T) {
	for _, c := range []struct {
		in   facts
		want float64
	}{
		{facts{"member.kind": "slab on ground", "member.thickness": 4.0, "metal.reinforced": false}, 1},
		{facts{"member.kind": "slab on ground", "member.thickness": 4.5, "metal.reinforced": false}, 1.5},
		{facts{"member.kind": "wall", "member.thickness": 8.0, "metal.reinforced": false}, 1.5},
		{facts{"member.kind": "wall", "member.thickness": 8.0, "metal.reinforced": true, "order.clear_bar_spacing": 1.0}, 0.75},
		{facts{"member.kind": "beam", "member.narrowest_form": 5.0, "metal.reinforced": true, "order.clear_bar_spacing": 2.0}, 1},
		{facts{"member.kind": "topping", "member.thickness": 1.0, "metal.reinforced": false}, 1.0 / 3},
	} {
		assert.InDelta(t, c.want, known(t, "largest_aggregate", c.in).Best, 1e-9, "%v", c.in)
	}
	sheet := figures(t).Sheet(facts{"member.kind": "slab on ground", "member.thickness": 4.0, "metal.reinforced": true})
	r := sheet.Result("largest_aggregate")
	assert.Equal(t, []float64{0.375, 1}, []float64{r.Low, r.High})
	assert.Equal(t, []string{"order.clear_bar_spacing"}, sheet.Lacks("largest_aggregate"))
}

func TestRatioToOrder(t *testing.T) {
	assert.Equal(t, 0.45, known(t, "ratio_to_order", salted("driveway")).Best)
	indoors := facts{"member.use": "warehouse floor", "exposure.freezes": false, "exposure.structural": false}
	assert.InDelta(t, 0.57, known(t, "ratio_to_order", indoors).Best, 1e-9)
	deck := facts{"member.use": "parking structure", "exposure.structural": true, "exposure.plain": false, "exposure.freezes": true, "exposure.wet": "often", "exposure.salted": true,
		"exposure.external_chloride": true, "member.watertight": false}
	assert.Equal(t, 0.40, known(t, "ratio_to_order", deck).Best, "class C2 in every edition")
}

func TestSlumpThatAnAdmixtureGives(t *testing.T) {
	assert.Equal(t, []float64{1.5, 6}, func() []float64 { r := compute(t, "reducer_slump_gain", facts{}); return []float64{r.Low, r.High} }())
	v := known(t, "reducer_slump_gain", facts{"order.reducer": "high"})
	assert.Equal(t, []float64{4, 6}, []float64{v.Low, v.High}) // ACI 301: from 2 to 4 in up to 8 in
	assert.Equal(t, 0.0, known(t, "extra_water_for_slump", facts{"order.slump": 4.0, "member.kind": "slab on ground"}).Best)
	assert.Equal(t, 3.0, known(t, "extra_water_for_slump", facts{"order.slump": 7.0, "member.kind": "slab on ground"}).Best)
	cost := known(t, "strength_cost_of_slump", facts{"order.slump": 7.0, "member.kind": "slab on ground"})
	assert.Equal(t, []float64{450, 525, 1200}, []float64{cost.Low, cost.Best, cost.High})
}
