package linear_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"hearsay/internal/belief/linear"
	"hearsay/internal/belief/wording"
)

// noisy gives rows of which the first two columns tell the side, with some told wrong.
func noisy(n int) (rows []linear.Vector, side []bool) {
	rng := rand.New(rand.NewPCG(3, 5))
	for range n {
		yes := rng.IntN(3) == 0
		x, y := rng.NormFloat64()*0.5, rng.NormFloat64()
		if yes {
			x++
		}
		rows = append(rows, linear.Vector{Columns: []int32{0, 1}, Values: []float32{float32(x), float32(y)}})
		side = append(side, yes)
	}
	return rows, side
}

// At the optimum of ½|w|² + C Σ max(0, 1 - y f(x))² its gradient is zero: w = 2C Σ y x max(0, 1 - y f(x)), and the same for the
// offset, which counts as the weight of a column that is always one.
func TestSolveReachesTheOptimum(t *testing.T) {
	rows, side := noisy(300)
	o := linear.Options{C: 0.5, Passes: 5000, Tolerance: 1e-7}
	w, offset := linear.Solve(rows, side, 2, o)
	var want [3]float64
	for i, r := range rows {
		y := -1.0
		if side[i] {
			y = 1
		}
		x := [3]float64{float64(r.Values[0]), float64(r.Values[1]), 1}
		miss := max(0, 1-y*(float64(w[0])*x[0]+float64(w[1])*x[1]+float64(offset)))
		for k := range want {
			want[k] += 2 * o.C * y * x[k] * miss
		}
	}
	for k, got := range []float64{float64(w[0]), float64(w[1]), float64(offset)} {
		if math.Abs(got-want[k]) > 1e-3 {
			t.Errorf("weight %d is %v, the optimum's is %v", k, got, want[k])
		}
	}
}

func TestBalanceMovesTheOffsetToTheFewer(t *testing.T) {
	rows, side := noisy(300)
	o := linear.DefaultOptions()
	_, plain := linear.Solve(rows, side, 2, o)
	o.Balance = true
	_, balanced := linear.Solve(rows, side, 2, o)
	if balanced <= plain {
		t.Errorf("offset %v balanced, %v plain: the third that is true should gain", balanced, plain)
	}
}

func small() (*linear.Space, []linear.Class, []wording.Feature) {
	texts := []string{"the slab cracked in the wind", "the wind was dry", "water on the slab", "a dry slab"}
	var features [][]wording.Feature
	for _, x := range texts {
		features = append(features, wording.Features(x, nil))
	}
	space := linear.NewSpace(features)
	rng := rand.New(rand.NewPCG(1, 1))
	classes := make([]linear.Class, 300) // more than a byte counts
	for i := range classes {
		classes[i] = linear.Class{Weights: make([]float32, len(space.Hashes)), Offset: float32(i)}
		for k := range classes[i].Weights {
			classes[i].Weights[k] = float32(rng.NormFloat64())
		}
	}
	return space, classes, wording.Features("the dry wind cracked the slab and nothing else", nil)
}

// A model that keeps every weight scores as the weights do, but for the rounding to 127 steps.
func TestAModelScoresAsItsWeightsDo(t *testing.T) {
	space, classes, fs := small()
	m, err := linear.Open(linear.Write(space, classes, 1))
	if err != nil {
		t.Fatal(err)
	}
	v := space.Vector(fs)
	scores, known := m.Scores(fs)
	for i, c := range classes {
		want := c.Offset
		for k, col := range v.Columns {
			want += v.Values[k] * c.Weights[col]
		}
		if math.Abs(float64(scores[i]-want)) > 0.15 {
			t.Errorf("class %d: %v, by its weights %v", i, scores[i], want)
		}
	}
	if want := float64(len(v.Columns)) / float64(len(fs)); known != want || want == 1 {
		t.Errorf("known %v, want %v", known, want)
	}
	if same := m.Vector(fs); same.Dot(v) != v.Dot(v) || math.Abs(v.Dot(v)-wording.Blocks) > 1e-5 {
		t.Errorf("vectors %v and %v", same, v)
	}
}

func TestOnlyTheShareKeptIsWritten(t *testing.T) {
	space, classes, _ := small()
	all, few := len(linear.Write(space, classes, 1)), len(linear.Write(space, classes, 0.1))
	fixed := len(linear.Write(space, classes, 0))
	if got := float64(few-fixed) / float64(all-fixed); got < 0.07 || got > 0.15 {
		t.Errorf("%.2f of the weights written, wanted a tenth", got)
	}
}

// FuzzOpen: bytes that are no model are refused, or used without reaching outside.
func FuzzOpen(f *testing.F) {
	space, classes, fs := small()
	good := linear.Write(space, classes[:3], 0.5)
	f.Add(good)
	f.Add(good[:len(good)/2])
	f.Add([]byte{})
	f.Fuzz(func(t *testing.T, data []byte) {
		m, err := linear.Open(data)
		if err != nil {
			return
		}
		if scores, _ := m.Scores(fs); len(scores) != m.Classes() {
			t.Errorf("%d scores of %d classes", len(scores), m.Classes())
		}
	})
}
