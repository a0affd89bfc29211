package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Exposure classes of ACI 318, entry by entry. 318-08: Table 4.3.1 as PCA EB001 Table 11-3 carries it, where that table
// follows the code (it prints 0.40 for S3 and 0.45 for C1, which the code does not). 318-14: Table 19.3.2.1. 318-19:
// recalled, unchanged from 318-14.
func TestExposureClassesByEdition(t *testing.T) {
	type row struct{ ratio, strength float64 }
	before := map[string]row{"f1": {0.45, 4500}, "f2": {0.45, 4500}, "f3": {0.45, 4500}, "watertight": {0.50, 4000}, "c2": {0.40, 5000},
		"s1": {0.50, 4000}, "s2": {0.45, 4500}, "s3": {0.45, 4500}}
	since := map[string]row{"f1": {0.55, 3500}, "f2": {0.45, 4500}, "f3": {0.40, 5000}, "watertight": {0.50, 4000}, "c2": {0.40, 5000},
		"s1": {0.50, 4000}, "s2": {0.45, 4500}, "s3": {0.45, 4500}}
	for edition, table := range map[string]map[string]row{"318-08": before, "318-11": before, "318-14": since, "318-19": since} {
		for class, want := range table {
			f := facts{"job.concrete_code": edition, "exposure.plain": false}
			assert.Equal(t, want.ratio, known(t, "ratio_"+class, f).Best, "%s %s", edition, class)
			assert.Equal(t, want.strength, known(t, "strength_"+class, f).Best, "%s %s", edition, class)
		}
	}
}

// Plain concrete under deicers: 0.45 and 4,500 psi in 318-14, where reinforced concrete takes 0.40 and 5,000. A report that
// gives class F3 as 0.40 with 4,500 psi misquotes it.
func TestPlainConcreteUnderDeicers(t *testing.T) {
	f := facts{"job.concrete_code": "318-14", "exposure.plain": true}
	assert.Equal(t, 0.45, known(t, "ratio_f3", f).Best)
	assert.Equal(t, 4500.0, known(t, "strength_f3", f).Best)
}

// Where the editions agree the limit is known without the edition; where they do not, it is the range between them.
func TestLimitWithoutTheEdition(t *testing.T) {
	assert.Equal(t, 0.45, known(t, "ratio_f2", facts{}).Best)
	r := compute(t, "ratio_f1", facts{})
	assert.True(t, r.Bounded)
	assert.Equal(t, []float64{0.45, 0.55}, []float64{r.Low, r.High})
	assert.Equal(t, []string{"job.concrete_code"}, r.Missing)
}

// Air by aggregate size, entry by entry: the moderate and severe rows of ACI 211.1 Table 6.3.3, which ACI 318 Table
// 19.3.3.1 and ASTM C94 carry; 318-19 keeps them for classes F1 and for F2 and F3.
func TestAirByAggregateSize(t *testing.T) {
	for size, want := range map[float64][2]float64{
		0.375: {6.0, 7.5}, 0.5: {5.5, 7.0}, 0.75: {5.0, 6.0}, 1: {4.5, 6.0}, 1.5: {4.5, 5.5}, 2: {4.0, 5.0}, 3: {3.5, 4.5},
	} {
		f := facts{"order.aggregate": size, "order.strength": 4000.0}
		assert.Equal(t, want[0], known(t, "air_sometimes_wet", f).Best, "F1 %v", size)
		assert.Equal(t, want[1], known(t, "air_often_wet", f).Best, "F2, F3 %v", size)
	}
	metric := facts{"order.aggregate": 19 / 25.4, "order.strength": 4000.0}
	assert.Equal(t, 6.0, known(t, "air_often_wet", metric).Best, "19 mm is 3/4 in")
}

// Above 5,000 psi one per cent less is allowed (UBC 1904.2.1 and ACI 318), at 5,000 psi it is not.
func TestAirOfStrongConcrete(t *testing.T) {
	assert.Equal(t, 5.0, known(t, "air_often_wet", facts{"order.aggregate": 0.75, "order.strength": 5500.0}).Best)
	assert.Equal(t, 6.0, known(t, "air_often_wet", facts{"order.aggregate": 0.75, "order.strength": 5000.0}).Best)
}

// An order that gives no aggregate size is short of air in every row when it is short in the last.
func TestAirWithoutTheSize(t *testing.T) {
	r := compute(t, "air_often_wet", facts{"order.strength": 4000.0})
	assert.True(t, r.Bounded)
	assert.Equal(t, []float64{4.0, 7.5}, []float64{r.Low, r.High})
}
