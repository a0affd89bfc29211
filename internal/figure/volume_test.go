package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func slab(length, width, inches float64) facts {
	return facts{"member.kind": "slab on ground", "member.length": length, "member.width": width, "member.thickness": inches}
}

// The Army's and the Navy's take-off of one retaining wall with 10 % of waste (EN5466 and Engineering Aid, chapter 17).
func TestVolumeOfARetainingWall(t *testing.T) {
	footing := slab(75, 8.5, 15)
	footing["member.kind"] = "footing"
	assert.InDelta(t, 796.9, 27*known(t, "forms_volume", footing).Best, 0.1)
	wall := facts{"member.kind": "wall", "member.length": 75.0, "member.height": 14.75, "member.thickness": 10.0} // 8 in at the top, 12 in below
	assert.InDelta(t, 921.9, 27*known(t, "forms_volume", wall).Best, 0.1)                                         // the page takes 0.67 ft for 8 in: 923.7
	all := facts{"member.forms_volume": 63.7}
	more := known(t, "allowance", all)
	assert.InDelta(t, 70.07, 63.7+more.High, 0.01)
	assert.Equal(t, 70.25, known(t, "volume_to_order", all).High)
}

// The same wall's materials: 6.49 bags, 36.6 gal, 1,735 lb of stone and 1,153 lb of sand in a yard, 70.07 yd3. The page prints
// 2,567 gal of water; 70.07 times 36.6 is 2,564.6.
func TestMaterialsOfARetainingWall(t *testing.T) {
	yards := known(t, "forms_volume", facts{"member.forms_volume": 63.7}).Best + known(t, "allowance", facts{"member.forms_volume": 63.7}).High
	assert.InDelta(t, 454.75, yards*6.49, 0.05)
	assert.InDelta(t, 40.4, yards*1153/2000, 0.05)
	assert.InDelta(t, 60.8, yards*1735/2000, 0.05)
	assert.InDelta(t, 2564.6, yards*36.6, 0.1)
	assert.Greater(t, 2567-yards*36.6, 2.0)
}

// A building's foundation and slab, Engineering Aid, chapter 17: 580.14 ft3 with 10 %, printed as 21 yd3. Concrete is
// ordered up, not down.
func TestVolumeIsRoundedUp(t *testing.T) {
	v := known(t, "volume_to_order", facts{"member.forms_volume": 527.40 / 27})
	assert.Equal(t, 21.5, v.High)
	assert.Greater(t, v.High, 21.0)
}

// National Home Improvement Estimator, 2018: yards in a driveway of 420 ft2, and square feet that a yard covers.
func TestVolumeOfADriveway(t *testing.T) {
	drive := facts{"member.area": 420.0, "member.thickness": 4.0}
	assert.InDelta(t, 5.185, known(t, "forms_volume", drive).Best, 0.001)
	assert.InDelta(t, 5.44, known(t, "forms_volume", drive).Best+known(t, "allowance", drive).Best, 0.005)
	assert.Equal(t, 5.5, known(t, "volume_to_order", drive).Best)
	// The text measures 22 and 8 ft by 30 ft and averages 20 and 8: 450 ft2 are right.
	assert.InDelta(t, 5.56, known(t, "forms_volume", facts{"member.area": 450.0, "member.thickness": 4.0}).Best, 0.005)
	for inches, area := range map[float64]float64{2: 162, 3: 108, 4: 81, 5: 64.8, 6: 54, 7: 46.29, 8: 40.5} { // 46.2 is printed for 7 in
		assert.InDelta(t, 1, known(t, "forms_volume", facts{"member.area": area, "member.thickness": inches}).Best, 0.0002)
	}
}

// A producer's example: a patio of 16 by 20 ft, 4 in thick, takes 3.95 yd3; with 5 to 10 % it is ordered as 4.25.
func TestVolumeOfAPatio(t *testing.T) {
	assert.InDelta(t, 3.95, known(t, "forms_volume", slab(16, 20, 4)).Best, 0.005)
	assert.Equal(t, 4.25, known(t, "volume_to_order", slab(16, 20, 4)).Best)
	assert.Equal(t, 1.0, known(t, "truckloads", slab(16, 20, 4)).Best)
}

// NRMCA, Concrete in Practice 8: 1/8 in too thick in 4 in is 3 %, one yard in 32.
func TestThicknessErrorCostsAYardIn32(t *testing.T) {
	right, thick := known(t, "forms_volume", slab(50, 52, 4)).Best, known(t, "forms_volume", slab(50, 52, 4.125)).Best
	assert.InDelta(t, 32, right, 0.2)
	assert.InDelta(t, 1, thick-right, 0.01)
}

func TestVolumeAsksForTheSidesOfItsKind(t *testing.T) {
	sheet := figures(t).Sheet(facts{"member.kind": "wall", "member.length": 40.0, "member.thickness": 8.0, "member.width": 0.67})
	assert.Equal(t, []string{"member.height"}, sheet.Lacks("forms_volume"))
	assert.False(t, sheet.Result("forms_volume").Known)
}

func TestContradictingSidesAreSaid(t *testing.T) {
	in := slab(16, 20, 4)
	in["member.area"] = 400.0
	assert.Contains(t, compute(t, "forms_volume", in).Problem, "contradict")
}

// A wall half a foot long has no two hundred thousand square feet: both ways give a range, and they lie apart.
func TestRangesThatLieApartContradict(t *testing.T) {
	r := compute(t, "forms_volume", facts{"member.kind": "wall", "member.length": 0.5, "member.area": 200000.0})
	assert.Contains(t, r.Problem, "contradict each other")
	r = compute(t, "forms_volume", facts{"member.kind": "wall", "member.length": 50.0, "member.area": 400.0})
	assert.True(t, r.Bounded, r.Problem)
}
