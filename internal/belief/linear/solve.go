// Package linear owns linear classifiers over sparse vectors: training them (support vector machines) and keeping their
// weights in a compact file that is used as it lies, with nothing to unpack.
package linear

import (
	"math"
	"math/rand/v2"
)

// Vector is a sparse vector: columns in rising order and their values.
type Vector struct {
	Columns []int32
	Values  []float32
}

func (v Vector) squared() float64 {
	var s float64
	for _, x := range v.Values {
		s += float64(x) * float64(x)
	}
	return s
}

// Dot gives the scalar product.
func (v Vector) Dot(o Vector) float64 {
	var sum float64
	for i, j := 0, 0; i < len(v.Columns) && j < len(o.Columns); {
		switch a, b := v.Columns[i], o.Columns[j]; {
		case a < b:
			i++
		case a > b:
			j++
		default:
			sum += float64(v.Values[i]) * float64(o.Values[j])
			i++
			j++
		}
	}
	return sum
}

// Options of Solve.
type Options struct {
	C         float64   // weight of an error against the size of the weights
	Balance   bool      // weigh both sides as if they were equally many
	Passes    int       // at most so many passes over the rows
	Tolerance float64   // stop when no multiplier would move by more
	Weights   []float32 // of each row; nil: all 1
}

// DefaultOptions suit sentences: vectors of length one per block.
func DefaultOptions() Options { return Options{C: 0.3, Passes: 60, Tolerance: 0.05} }

// Solve finds the weights and the offset that part the rows of side true from the others: a support vector machine with
// squared hinge loss, by dual coordinate descent with shrinking (Hsieh and others, A Dual Coordinate Descent Method for
// Large-scale Linear SVM, 2008, algorithm 3). The same rows give the same weights.
func Solve(rows []Vector, side []bool, columns int, o Options) (w []float32, offset float32) {
	s := newSolver(rows, side, columns, o)
	for pass := 0; pass < o.Passes; pass++ {
		if s.pass() <= o.Tolerance {
			if s.active == len(s.order) {
				break
			}
			s.unshrink()
		}
	}
	return s.w, float32(s.offset)
}

type solver struct {
	rows     []Vector
	sign     []float32
	diagonal []float64 // 1/(2C) of each row
	square   []float64 // x·x + 1 + diagonal
	alpha    []float64
	w        []float32
	offset   float64
	order    []int
	active   int
	bound    float64 // gradients above it mark rows to leave out
	rng      *rand.Rand
}

func newSolver(rows []Vector, side []bool, columns int, o Options) *solver {
	n := len(rows)
	s := &solver{rows: rows, sign: make([]float32, n), diagonal: make([]float64, n), square: make([]float64, n),
		alpha: make([]float64, n), w: make([]float32, columns), order: make([]int, n), active: n,
		bound: math.Inf(1), rng: rand.New(rand.NewPCG(1, 2))}
	yes := 0
	for _, b := range side {
		if b {
			yes++
		}
	}
	for i, r := range rows {
		s.sign[i] = -1
		c := o.C
		if side[i] {
			s.sign[i] = 1
		}
		if o.Balance {
			if side[i] {
				c *= float64(n) / (2 * float64(max(yes, 1)))
			} else {
				c *= float64(n) / (2 * float64(max(n-yes, 1)))
			}
		}
		if o.Weights != nil {
			c *= float64(o.Weights[i])
		}
		s.diagonal[i] = 0.5 / c
		s.square[i] = r.squared() + 1 + s.diagonal[i]
		s.order[i] = i
	}
	return s
}

func (s *solver) unshrink() { s.active, s.bound = len(s.order), math.Inf(1) }

// pass goes over the active rows once and gives the spread of the projected gradient.
func (s *solver) pass() float64 {
	high, low := math.Inf(-1), math.Inf(1)
	s.rng.Shuffle(s.active, func(i, j int) { s.order[i], s.order[j] = s.order[j], s.order[i] })
	for k := 0; k < s.active; k++ {
		i := s.order[k]
		r, sign := s.rows[i], s.sign[i]
		g := float64(sign)*(s.dot(r)+s.offset) - 1 + s.alpha[i]*s.diagonal[i]
		projected := g
		if s.alpha[i] == 0 {
			if g > s.bound {
				s.active--
				s.order[k], s.order[s.active] = s.order[s.active], s.order[k]
				k--
				continue
			}
			projected = min(g, 0)
		}
		high, low = max(high, projected), min(low, projected)
		if math.Abs(projected) < 1e-12 {
			continue
		}
		before := s.alpha[i]
		s.alpha[i] = max(before-g/s.square[i], 0)
		d := float32(s.alpha[i]-before) * sign
		for j, c := range r.Columns {
			s.w[c] += d * r.Values[j]
		}
		s.offset += float64(d)
	}
	s.bound = high
	if s.bound <= 0 {
		s.bound = math.Inf(1)
	}
	return high - low
}

func (s *solver) dot(r Vector) float64 {
	var sum float32
	for j, c := range r.Columns {
		sum += s.w[c] * r.Values[j]
	}
	return float64(sum)
}
