package figure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestJointSpacingTable against the Portland Cement Association's table as C. Beall, Masonry and Concrete, 2004, figure 2-15,
// prints it: feet by thickness for slump 3 to 5 in with aggregate below 3/4 in and from 3/4 in on, and for slump below 4 in.
// (The slump heads overlap; the association's own are 4 to 6 in and less than 4 in.)
func TestJointSpacingTable(t *testing.T) {
	for thickness, feet := range map[float64][3]float64{4: {8, 10, 12}, 5: {10, 13, 15}, 6: {12, 15, 18}} {
		for i, mix := range []facts{
			{"order.slump": 5.0, "order.aggregate": 0.5}, {"order.slump": 5.0, "order.aggregate": 0.75}, {"order.slump": 3.5, "order.aggregate": 0.5},
		} {
			mix["member.thickness"] = thickness
			assert.Equal(t, feet[i], known(t, "joint_spacing_by_thickness", mix).Best, "%v in, column %d", thickness, i+1)
		}
	}
	// In SI (computed): 2.4, 3.0 and 3.6 m for 100 mm.
	si := known(t, "joint_spacing_by_thickness", facts{"member.thickness": 100 / 25.4, "order.slump": 2.0, "order.aggregate": 0.75})
	assert.InDelta(t, 3.6, si.Best*0.3048, 0.06)
}

// TestJointSpacingRules: 4 in allow 8 to 12 ft, so neither 15 nor 30 ft (The Concrete Producer); 6 in allow 18 ft at most
// (Concrete Construction); no slab more than 15 ft, or 18 where its shrinkage is low (ACI 302.1R-96, ACI 360R-10).
func TestJointSpacingRules(t *testing.T) {
	open := figures(t).Sheet(facts{"member.thickness": 4.0}).Result("largest_joint_spacing")
	require.True(t, open.Bounded)
	assert.Equal(t, []float64{8, 12}, []float64{open.Low, open.High})
	thick := figures(t).Sheet(facts{"member.thickness": 6.0}).Result("largest_joint_spacing")
	assert.Equal(t, 18.0, thick.High)
	assert.Equal(t, 15.0, known(t, "largest_joint_spacing", facts{"member.thickness": 10.0, "mix.shrinkage": 700.0}).Best)
	assert.Equal(t, 18.0, known(t, "largest_joint_spacing", facts{"member.thickness": 10.0, "mix.shrinkage": 500.0}).Best)
	for spacing, panels := range map[float64]float64{7: 1, 10: 1, 10.01: 2, 18: 2} {
		slab := facts{"member.thickness": 4.0, "order.slump": 4.0, "order.aggregate": 0.75, "joints.made": true, "joints.spacing": spacing}
		assert.Equal(t, panels, known(t, "panels_in_stretch", slab).Best, "joints every %v ft", spacing)
	}
	assert.Equal(t, 2.0, known(t, "panels_in_stretch", facts{"member.thickness": 4.0, "joints.made": true, "joints.spacing": 18.0}).Best, "whatever the stone and the slump")
	r := known(t, "largest_joint_spacing", facts{"member.thickness": 4.0, "order.slump": 4.0, "order.aggregate": 0.75})
	assert.Equal(t, 10.0, r.Best, "the shrinkage does not matter to a slab this thin")
	assert.NotEmpty(t, r.Working)
}

// TestJointDepth: a quarter of the slab (CSA A23.1-94), an inch for early-entry saws to 9 in.
func TestJointDepth(t *testing.T) {
	for _, row := range []struct {
		thickness float64
		saw       string
		depth     float64
	}{{6, "conventional", 1.5}, {6, "early-entry", 1}, {3, "groover", 1}, {6, "groover", 1.5}, {12, "early-entry", 3}} {
		assert.Equal(t, row.depth, known(t, "least_joint_depth", facts{"member.thickness": row.thickness, "joints.saw": row.saw}).Best, "%v", row)
	}
	assert.Equal(t, 1.0, known(t, "least_joint_depth", facts{"member.thickness": 4.0}).Best, "4 in: the saw does not matter")
}

// TestSawWindow: 4 h in heat to 12 h in cool weather (ACI 302), 1 h to 4 h with an early-entry saw; in the field up to about
// three days in cold.
func TestSawWindow(t *testing.T) {
	window := func(saw string, air float64) [2]float64 {
		job := facts{"joints.saw": saw, "weather.air": air}
		return [2]float64{known(t, "saw_first", job).Best, known(t, "saw_latest", job).Best}
	}
	assert.Equal(t, [2]float64{4, 12}, window("conventional", 95))
	assert.Equal(t, [2]float64{1, 4}, window("early-entry", 95))
	assert.Equal(t, 12.0, window("conventional", 60)[1])
	cold := window("conventional", 32)
	assert.InDelta(t, 2.6*24, cold[1], 3)
	assert.Equal(t, cold, window("conventional", 10), "not stretched further below freezing")
	for air := 32.0; air < 110; air++ {
		for _, saw := range []string{"early-entry", "conventional"} {
			w := window(saw, air)
			assert.Less(t, w[0], w[1], "%s at %v °F", saw, air)
		}
	}
}

// TestDowels against UFC 3-260-02 (30 June 2001), table 12-8.
func TestDowels(t *testing.T) {
	for thickness, diameter := range map[float64]float64{6: 0.75, 7.9: 0.75, 8: 1, 11.5: 1, 12: 1.25, 15.5: 1.25, 16: 1.5, 20.5: 1.5, 21: 2, 25.5: 2, 26: 3, 30: 3} {
		assert.Equal(t, diameter, known(t, "dowel_diameter", facts{"member.thickness": thickness}).Best, "%v in", thickness)
	}
	six := known(t, "dowel_diameter", facts{"member.thickness": 6.0})
	assert.Contains(t, six.Working[0], "{16 in} long, every {12 in}")
	seven := known(t, "dowel_diameter", facts{"member.thickness": 7.0})
	assert.Equal(t, []float64{0.75, 0.75, 1}, []float64{seven.Low, seven.Best, seven.High}, "the three tables disagree")
}

// TestPanels: 40 ft × 60 ft at 15 ft make 4 × 3 panels, of which 15 ft × 13.3 ft need no more; a walk 4 ft wide is cut to
// panels of no more than 6 ft although its thickness would allow 10.
func TestPanels(t *testing.T) {
	floor := facts{"member.length": 60.0, "member.width": 40.0, "member.thickness": 6.0, "order.slump": 5.0, "order.aggregate": 0.75, "mix.shrinkage": 600.0}
	assert.Equal(t, 12.0, known(t, "panels", floor).Best)
	walk := facts{"member.length": 60.0, "member.width": 4.0, "member.thickness": 4.0, "order.slump": 5.0, "order.aggregate": 0.75}
	assert.Equal(t, 10.0, known(t, "panels", walk).Best)
}

// TestAspect: a panel twice as long as wide has 2, whichever way it is stated (ACI 302.1R-80 allows 1.5).
func TestAspect(t *testing.T) {
	assert.Equal(t, 2.0, known(t, "panel_aspect", facts{"joints.panel_length": 10.0, "joints.panel_width": 20.0}).Best)
	assert.Equal(t, 2.5, known(t, "panel_aspect", facts{"joints.spacing": 10.0, "member.length": 60.0, "member.width": 4.0}).Best)
	wide := figures(t).Sheet(facts{"joints.spacing": 10.0, "member.length": 60.0, "member.width": 24.0}).Result("panel_aspect")
	assert.Equal(t, []string{"joints.panel_length", "joints.panel_width"}, wide.Missing, "joints one way or both: it must be asked")
}

// highway is the slab of the curling example of the Washington State Department of Transportation: 9 in, 14 ft × 12 ft, E
// 5,000,000 psi (here by its strength), 5 millionths/°F, 200 pci, 3 °F/in.
func highway() facts {
	return facts{
		"member.thickness": 9.0, "order.strength": math.Pow(5e6/57000, 2), "ground.subgrade_modulus": 200.0, "mix.thermal_expansion": 5.0,
		"joints.panel_length": 14.0, "joints.panel_width": 12.0, "joints.gradient": 3.0,
	}
}

// TestCurlingStress against that example (l 35.3 in; stresses from the coefficients it reads off the chart: edge 229.5,
// interior 258 psi, night corner 36 psi; the closed form gives 4 % less) and against Y. H. Huang, Pavement Analysis and
// Design, example 4.1 (l 30.57 in, interior 238, edge 214 psi).
func TestCurlingStress(t *testing.T) {
	job := highway()
	assert.InDelta(t, 35.3, known(t, "radius_of_relative_stiffness", job).Best, 0.05)
	assert.InEpsilon(t, 229.5, known(t, "curling_stress_edge", job).Best, 0.045)
	assert.InEpsilon(t, 258, known(t, "curling_stress_interior", job).Best, 0.045)
	job["joints.gradient"] = 1.0
	assert.InDelta(t, 36, known(t, "curling_stress_corner", job).Best, 0.5)

	huang := facts{
		"member.thickness": 8.0, "order.strength": math.Pow(4e6/57000, 2), "ground.subgrade_modulus": 200.0, "mix.thermal_expansion": 5.0,
		"joints.panel_length": 25.0, "joints.panel_width": 12.0, "joints.gradient": 2.5,
	}
	assert.InDelta(t, 30.57, known(t, "radius_of_relative_stiffness", huang).Best, 0.02)
	assert.InDelta(t, 238, known(t, "curling_stress_interior", huang).Best, 3)
	assert.InDelta(t, 214, known(t, "curling_stress_edge", huang).Best, 3)
}

// TestCurlNumber against the example of A. Face, Archimedes' Principle and Curling, part II: 15 ft × 15 ft × 6 in, curl number
// 50, pressed in by 0.024 in: stands on a disc of radius 55 in (66 ft²), about 70 % of it off the ground, 0.10 in under the
// corners; its gradient without weight is 94 millionths (computed).
func TestCurlNumber(t *testing.T) {
	job := facts{"joints.curl_number": 50.0, "joints.panel_length": 15.0, "joints.panel_width": 15.0, "member.thickness": 6.0}
	assert.InDelta(t, 55, known(t, "curl_support_radius", job).Best, 0.5)
	assert.InDelta(t, 70, known(t, "curl_unsupported", job).Best, 1)
	assert.InDelta(t, 0.103, known(t, "curl_corner_gap", job).Best, 0.001)
	assert.InDelta(t, -94, known(t, "curl_gradient", job).Best, 0.5)
}

// TestEdgeLiftMeasures: each measure against curling lowers the edges, and the spacing given as right keeps them down.
func TestEdgeLiftMeasures(t *testing.T) {
	job := facts{"member.thickness": 5.0, "joints.spacing": 20.0, "joints.made": true, "member.length": 100.0, "member.width": 80.0, "order.strength": 4000.0}
	lift := known(t, "edge_lift", job).Best
	assert.Greater(t, lift, 0.1875)
	assert.Less(t, known(t, "edge_lift_closer", job).Best, lift)
	assert.Less(t, known(t, "edge_lift_low_shrinkage", job).Best, lift)
	job["joints.spacing"] = known(t, "flat_joint_spacing", job).Best
	assert.LessOrEqual(t, known(t, "edge_lift", job).Best, 0.1875)
	assert.Less(t, known(t, "edge_lift_thicker", job).Best, known(t, "edge_lift", job).Best)
}
