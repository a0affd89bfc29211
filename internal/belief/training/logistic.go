package training

import "math"

// fitLogistic finds the weights of a logistic regression by Newton's method, with a little ridge so that parted data do
// not run away.
func fitLogistic(evidence [][]float64, yes []bool) []float64 {
	if len(evidence) == 0 {
		return nil
	}
	k := len(evidence[0])
	w := make([]float64, k)
	for range 50 {
		gradient := make([]float64, k)
		curve := make([][]float64, k)
		for i := range curve {
			curve[i] = make([]float64, k)
			curve[i][i] = 1e-3
			gradient[i] = -1e-3 * w[i]
		}
		for r, x := range evidence {
			var z float64
			for i := range w {
				z += w[i] * x[i]
			}
			p := 1 / (1 + math.Exp(-z))
			miss := -p
			if yes[r] {
				miss = 1 - p
			}
			for i := range w {
				gradient[i] += miss * x[i]
				for j := range w {
					curve[i][j] += p * (1 - p) * x[i] * x[j]
				}
			}
		}
		step := solveSquare(curve, gradient)
		var moved float64
		for i := range w {
			w[i] += step[i]
			moved = max(moved, math.Abs(step[i]))
		}
		if moved < 1e-9 {
			break
		}
	}
	return w
}

// solveSquare solves a small system of equations by elimination with pivots.
func solveSquare(a [][]float64, b []float64) []float64 {
	n := len(b)
	for c := range n {
		pivot := c
		for r := c + 1; r < n; r++ {
			if math.Abs(a[r][c]) > math.Abs(a[pivot][c]) {
				pivot = r
			}
		}
		a[c], a[pivot], b[c], b[pivot] = a[pivot], a[c], b[pivot], b[c]
		for r := c + 1; r < n; r++ {
			f := a[r][c] / a[c][c]
			for j := c; j < n; j++ {
				a[r][j] -= f * a[c][j]
			}
			b[r] -= f * b[c]
		}
	}
	x := make([]float64, n)
	for r := n - 1; r >= 0; r-- {
		x[r] = b[r]
		for j := r + 1; j < n; j++ {
			x[r] -= a[r][j] * x[j]
		}
		x[r] /= a[r][r]
	}
	return x
}
