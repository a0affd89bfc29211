package figure_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// guideExample is the worked example of ACI 209.2R-08, appendix C: 70 % humidity, volume to surface 100 mm, slump 75 mm,
// 40 % sand, 409 kg/m³ of cement, 2 % of air, cured for 7 days, 25 MPa. Inch-pound inputs as its second column has them.
func guideExample() facts {
	return facts{
		"member.thickness": 4.0, "floor.drying_sides": "one", "floor.room_humidity": 70.0, "order.slump": 2.95, "mix.fine_share": 40.0,
		"mix.cementitious": 690.0, "order.air": 2.0, "cure.days": 7.0, "order.strength": 25 * 145.0377, "mix.cement_type": "I",
	}
}

// TestUltimateShrinkageACI209 against ACI 209.2R-08, appendix C: 347 millionths in inch-pound units, 350 in SI, where the
// drying thickness of 100 mm is not rounded to 4 in.
func TestUltimateShrinkageACI209(t *testing.T) {
	job := guideExample()
	r := known(t, "shrinkage_aci209", job)
	assert.InDelta(t, 347, r.Best, 1)
	assert.Contains(t, r.Working[0], "0.686", "factor for humidity")
	assert.Contains(t, r.Working[0], "0.743", "factor for thickness")
	assert.Contains(t, r.Working[1], "1.011", "factor for slump")
	assert.Contains(t, r.Working[1], "0.860", "factor for sand")
	assert.Contains(t, r.Working[1], "0.998", "factor for cement")
	assert.Contains(t, r.Working[2], "1.000", "factor for air")

	job["member.thickness"], job["mix.cementitious"] = 100/25.4, 409*1.685555
	assert.InDelta(t, 350, known(t, "shrinkage_aci209", job).Best, 1.5)
}

// TestShrinkageAtAges against the same example: strains reached by ACI 209 (computed from its ultimate value) and the
// time function and drying strains of CEB MC90-99 as printed there.
func TestShrinkageAtAges(t *testing.T) {
	for _, row := range []struct{ age, aci, share, mc90 float64 }{
		{14, 58, 0.071, 32}, {28, 130, 0.122, 55}, {60, 209, 0.191, 86}, {90, 244, 0.237, 107}, {180, 289, 0.332, 150}, {365, 316, 0.451, 204},
	} {
		job := guideExample()
		job["joints.filled_after"] = row.age
		ultimate := known(t, "shrinkage_aci209", job).Best
		assert.InDelta(t, row.aci, ultimate*(1-known(t, "shrinkage_to_come_aci209", job).Best/100), 1.5, "ACI 209 at %v days", row.age)

		job["member.thickness"] = 100 / 25.4
		share := 1 - known(t, "shrinkage_to_come_mc90", job).Best/100
		assert.InDelta(t, row.share, share, 0.001, "time function of MC90-99 at %v days", row.age)
		assert.InDelta(t, row.mc90, known(t, "shrinkage_mc90", job).Best*share, 1, "MC90-99 at %v days", row.age)

		both := known(t, "shrinkage_then", job)
		assert.InDelta(t, row.mc90, both.Low, 1, "the range reaches down to MC90-99")
		assert.Greater(t, both.High, both.Low)
	}
}

// TestNotionalShrinkageMC90 against the same example: 444 millionths, times 1.018 for 70 % humidity.
func TestNotionalShrinkageMC90(t *testing.T) {
	assert.InDelta(t, 444*1.018, known(t, "shrinkage_mc90", guideExample()).Best, 1)
}

// TestShrinkageUnknown: what is not known of the mix makes a range that holds the value it would have.
func TestShrinkageUnknown(t *testing.T) {
	full := known(t, "drying_shrinkage", guideExample())
	r := figures(t).Sheet(facts{"member.thickness": 4.0, "order.strength": 25 * 145.0377}).Result("drying_shrinkage")
	assert.True(t, r.Bounded)
	assert.Less(t, r.Low, full.Low)
	assert.Greater(t, r.High, full.High)
	assert.Contains(t, r.Missing, "order.slump")
}

// TestMovement against the figures of Concrete Construction for temperature (0.66 in over 100 ft and 100 °F) and of the
// Portland Cement Association for drying (600 millionths are about 3/4 in, exactly 0.72, over 100 ft; 500 millionths open
// joints at 10, 12, 15 and 18 ft by 0.060, 0.072, 0.090 and 0.108 in).
func TestMovement(t *testing.T) {
	assert.InDelta(t, 0.66, known(t, "thermal_movement", facts{"member.length": 100.0, "joints.cooling": 100.0, "mix.thermal_expansion": 5.5}).Best, 1e-9)
	assert.InDelta(t, 0.72, known(t, "joint_opening", facts{"joints.spacing": 100.0, "mix.shrinkage": 600.0}).Best, 1e-9)
	assert.Contains(t, strings.Join(known(t, "joint_opening", facts{"joints.spacing": 10.0, "mix.shrinkage": 500.0}).Working, "\n"), "{0.035 in}", "interlock is lost (Colley and Humphrey, 1967)")
	assert.NotContains(t, strings.Join(known(t, "joint_opening", facts{"joints.spacing": 5.0, "mix.shrinkage": 500.0}).Working, "\n"), "{0.035 in}")
	for spacing, opening := range map[float64]float64{10: 0.060, 12: 0.072, 15: 0.090, 18: 0.108} {
		assert.InDelta(t, opening, known(t, "joint_opening", facts{"joints.spacing": spacing, "mix.shrinkage": 500.0}).Best, 1e-9)
	}
}

// TestCrackingStrain: 7.5 √f'c over 57,000 √f'c is 132 millionths whatever the strength, and a slab of 4,000 psi held fast
// against 500 millionths would be stressed to 1,800 psi, against 474 psi that it stands (formulas of ACI 318-19).
func TestCrackingStrain(t *testing.T) {
	assert.InDelta(t, 131.6, known(t, "cracking_strain", facts{}).Best, 0.1)
	job := facts{"order.strength": 4000.0, "mix.shrinkage": 500.0}
	assert.InDelta(t, 474, known(t, "modulus_of_rupture", job).Best, 1)
	assert.InDelta(t, 1800, known(t, "restrained_stress", job).Best, 5)
}
