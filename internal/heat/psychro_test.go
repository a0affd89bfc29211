package heat_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/heat"
)

// psychrolib is one row of testdata/psychrolib.tsv: °C, %, Pa.
type psychrolib struct{ air, humidity, saturation, dewPoint, wetBulb float64 }

func readPsychrolib(t *testing.T) []psychrolib {
	t.Helper()
	file, err := os.Open("../../testdata/psychrolib.tsv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comma, r.Comment = '\t', '#'
	lines, err := r.ReadAll()
	require.NoError(t, err)
	var rows []psychrolib
	for _, line := range lines[1:] {
		var n [5]float64
		for i := range n {
			n[i], err = strconv.ParseFloat(line[i], 64)
			require.NoError(t, err)
		}
		rows = append(rows, psychrolib{n[0], n[1], n[2], n[3], n[4]})
	}
	require.Len(t, rows, 50)
	return rows
}

// Against psychrolib (ASHRAE Handbook of Fundamentals): Tetens' saturation pressure within 0.3 %, dew point within 0.1 °C
// where it lies above freezing (below, psychrolib gives the frost point), Stull's wet bulb within the error he states,
// -1 to +0.65 °C, with 0.1 °C for the psychrometric formula.
func TestVaporPressureDewPointAndWetBulbAgainstPsychrolib(t *testing.T) {
	above := 0
	for _, row := range readPsychrolib(t) {
		assert.InEpsilon(t, row.saturation, 1000*heat.SaturationPressure(row.air), 0.003, "%v", row)
		if row.dewPoint > 0 {
			above++
			assert.InDelta(t, row.dewPoint, heat.DewPoint(row.air, row.humidity/100), 0.1, "%v", row)
			assert.InDelta(t, row.humidity/100, heat.Humidity(row.air, row.dewPoint), 0.005, "%v", row)
		}
		if row.humidity >= 25 && row.air <= 35 { // his fit is for air that is neither very dry nor very hot
			off := heat.WetBulb(row.air, row.humidity/100) - row.wetBulb
			assert.Greater(t, off, -1.1, "%v", row)
			assert.Less(t, off, 0.75, "%v", row)
		}
	}
	assert.Greater(t, above, 25)
}

// CRC Handbook of Chemistry and Physics, 1992-93: saturation pressure in kPa.
func TestSaturationPressureOfTheCRCHandbook(t *testing.T) {
	for celsius, kPa := range map[float64]float64{0: 0.61129, 5: 0.8726, 10: 1.2281, 15: 1.7056, 20: 2.3388, 25: 3.169, 30: 4.2455, 35: 5.6267, 40: 7.3814} {
		assert.InEpsilon(t, kPa, heat.SaturationPressure(celsius), 0.002, "%v", celsius)
	}
}

// P. J. Uno, ACI Materials Journal 95-M34, 1998, gives both formulas in SI with rounded constants: kPa and km/h for
// Menzel's, °C and km/h for his own. The example of ACI 305R comes to 1.15 kg/m²/h by his, as Concrete International
// prints it.
func TestEvaporationInSIUnits(t *testing.T) {
	assert.InDelta(t, 1.15, unoSI(31, 27, 0.5, 19), 0.005, "the printed result")
	for _, row := range [][4]float64{{31, 27, 50, 19}, {25, 25, 50, 10}, {30, 35, 30, 20}, {20, 5, 40, 30}, {32, 38, 25, 15}, {15, 10, 60, 10}} {
		concrete, air, rh, kmh := row[0], row[1], row[2]/100, row[3]
		menzel := 0.315 * (heat.SaturationPressure(concrete) - rh*heat.SaturationPressure(air)) * (0.253 + 0.060*kmh)
		assert.InEpsilon(t, menzel, heat.Menzel(concrete, air, rh, kmh/3.6), 0.02, "%v", row)
		assert.InEpsilon(t, unoSI(concrete, air, rh, kmh), heat.Uno(concrete, air, rh, kmh/3.6), 0.055, "%v", row)
	}
}

func unoSI(concrete, air, humidity, kmh float64) float64 {
	p := func(celsius float64) float64 { v := celsius + 18; return v * v * math.Sqrt(v) }
	return 5 * (p(concrete) - humidity*p(air)) * (kmh + 4) * 1e-6
}
