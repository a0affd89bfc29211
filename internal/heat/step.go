package heat

import "math"

// bond couples a cell to something beside the column: a conductance in W/m³·K and its temperature.
type bond struct{ u, celsius float64 }

// outer is what a face of the column meets during a step: a temperature and the conductance to the middle of the
// outermost cell, W/m²·K. A conductance of zero lets no heat through.
type outer struct{ celsius, u float64 }

const (
	mostRounds = 30
	sharp      = 1e-4 // K: how near temperature and heat content must agree where something freezes or thaws
	close      = 0.1  // K: how near the temperature at which concrete hydrates must be known
)

// step advances the column by dt seconds with one implicit Euler step of the enthalpy method (C. R. Swaminathan and
// V. R. Voller, Metallurgical Transactions B, 1992): temperatures are the unknowns, the heat content of a cell is
// linearized about the last round, and the content that comes out is exactly what went in, however many rounds there
// were. side, where there is one, couples each cell sideways. It gives the heat in J/m² that came in through the
// top, through the bottom, from the sides and from hydration.
func (c *column) step(mix *Concrete, dt float64, top, bottom outer, side []bond) (in [4]float64) {
	n := c.n
	t, h, age, degree := c.work[0], c.work[1], c.work[2], c.work[3]
	g, slope, diag, right := c.work[4], c.work[5], c.work[6], c.work[7]
	copy(t, c.t)
	copy(h, c.h)
	for i := range n - 1 {
		g[i] = 1 / (c.dx[i]/(2*c.k[i]) + c.dx[i+1]/(2*c.k[i+1]))
	}
	full := mix.Cementitious * mix.Heat.Total // J/m³
	for range mostRounds {
		c.hydrate(&mix.Heat, t, age, degree, dt/3600)
		for i := range n {
			m := c.dx[i] / dt
			slope[i] = c.kind[i].capacity(h[i])
			diag[i] = m * slope[i]
			right[i] = m * (c.h[i] - h[i] + slope[i]*t[i])
			if i < c.nc {
				right[i] += m * full * (degree[i] - c.degree[i])
			}
			if i > 0 {
				diag[i] += g[i-1]
			}
			if i < n-1 {
				diag[i] += g[i]
			}
			if side != nil {
				diag[i] += side[i].u * c.dx[i]
				right[i] += side[i].u * c.dx[i] * side[i].celsius
			}
		}
		diag[0] += top.u
		right[0] += top.u * top.celsius
		diag[n-1] += bottom.u
		right[n-1] += bottom.u * bottom.celsius
		solve(g, diag, right)
		if c.settle(t, h, slope, right) {
			break
		}
	}
	in[0] = dt * top.u * (top.celsius - right[0])
	in[1] = dt * bottom.u * (bottom.celsius - right[n-1])
	for i := range side {
		in[2] += dt * side[i].u * c.dx[i] * (side[i].celsius - right[i])
	}
	for i := range c.nc {
		in[3] += c.dx[i] * full * (degree[i] - c.degree[i])
	}
	copy(c.t, t)
	copy(c.h, h)
	copy(c.age, age)
	copy(c.degree, degree)
	for i := range c.nc {
		if h[i] >= 0 { // what is liquid does not notice how much of it could freeze
			c.kind[i] = mix.matter(degree[i])
		}
	}
	return in
}

// hydrate ages the concrete by so many hours at the temperatures t. Frozen concrete does not age.
func (c *column) hydrate(heat *Hydration, t, age, degree []float64, hours float64) {
	for i := range c.nc {
		age[i], degree[i] = c.age[i], c.degree[i]
		if t[i] > c.kind[i].begin && heat.Total > 0 {
			age[i] += heat.Rate(t[i]) * hours
			degree[i] = heat.Degree(age[i])
		}
	}
}

// settle takes the temperatures that were solved for over into heat content and temperature, and tells whether both
// agree.
func (c *column) settle(t, h, slope, solved []float64) bool {
	settled := true
	for i := range c.n {
		h[i] += slope[i] * (solved[i] - t[i])
		now := c.kind[i].celsius(h[i])
		if math.Abs(now-solved[i]) > sharp || i < c.nc && math.Abs(now-t[i]) > close {
			settled = false
		}
		t[i] = now
	}
	return settled
}

// solve solves the symmetric tridiagonal system with off-diagonals -g in place: right becomes the solution, diag the
// reciprocals of the pivots.
func solve(g, diag, right []float64) {
	n := len(diag)
	diag[0] = 1 / diag[0]
	for i := 1; i < n; i++ {
		f := g[i-1] * diag[i-1]
		diag[i] = 1 / (diag[i] - f*g[i-1])
		right[i] += f * right[i-1]
	}
	right[n-1] *= diag[n-1]
	for i := n - 2; i >= 0; i-- {
		right[i] = (right[i] + g[i]*right[i+1]) * diag[i]
	}
}
