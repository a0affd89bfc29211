package training

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Data drawn from a known logistic law give back its weights.
func TestFitLogisticFindsTheLaw(t *testing.T) {
	law := []float64{-0.5, 2, -1}
	rng := rand.New(rand.NewPCG(4, 2))
	var evidence [][]float64
	var yes []bool
	for range 40000 {
		x := []float64{1, rng.NormFloat64(), rng.NormFloat64()}
		z := law[0] + law[1]*x[1] + law[2]*x[2]
		evidence = append(evidence, x)
		yes = append(yes, rng.Float64() < 1/(1+math.Exp(-z)))
	}
	for i, w := range fitLogistic(evidence, yes) {
		if math.Abs(w-law[i]) > 0.06 {
			t.Errorf("weight %d is %.3f, the law's is %.3f", i, w, law[i])
		}
	}
}

func TestFitLogisticStandsPartedData(t *testing.T) {
	w := fitLogistic([][]float64{{1, -1}, {1, 1}}, []bool{false, true})
	if !(w[1] > 1 && w[1] < 20) {
		t.Errorf("weights %v", w)
	}
}

func TestSolveSquare(t *testing.T) {
	x := solveSquare([][]float64{{0, 2, 1}, {1, 1, 1}, {2, 1, 3}}, []float64{7, 6, 13})
	for i, want := range []float64{1, 2, 3} {
		if math.Abs(x[i]-want) > 1e-12 {
			t.Errorf("x = %v", x)
		}
	}
}
