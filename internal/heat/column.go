package heat

import "math"

// column is a section cut into cells, concrete first.
type column struct {
	n, nc       int // cells, and how many of them are concrete
	dx          []float64
	kind        []matter
	soil        []int        // layer of each cell below the concrete, by cell
	k           []float64    // conductivity, W/m·K
	t, h        []float64    // °C and J/m³ now
	age, degree []float64    // of the concrete: equivalent age at 21.1 °C in h, and degree of hydration
	deep        float64      // °C below the ground
	work        [8][]float64 // scratch of the solver
}

// growth is how much thicker each cell of ground is than the one above it, away from the concrete.
const growth = 1.25

func newColumn(s Section, cells int) *column {
	dx := make([]float64, 0, 64)
	c := &column{}
	if s.Thickness > 0 {
		c.nc = cells
		for range cells {
			dx = append(dx, s.Thickness/float64(cells))
		}
	}
	next := 0.01
	if c.nc > 0 {
		next = dx[0]
	}
	for i, l := range s.Ground {
		before := len(dx)
		dx = appendLayer(dx, l.Thickness, &next)
		for range len(dx) - before {
			c.soil = append(c.soil, i)
		}
	}
	c.n = len(dx)
	c.dx = dx
	c.kind = make([]matter, c.n)
	block := make([]float64, c.n*13)
	cut := func(n int) []float64 { part := block[:n:n]; block = block[n:]; return part }
	c.k, c.t, c.h = cut(c.n), cut(c.n), cut(c.n)
	c.age, c.degree = cut(c.nc), cut(c.nc)
	for i := range c.work {
		c.work[i] = cut(c.n)
	}
	c.fill(s)
	return c
}

// appendLayer cuts a layer of ground into cells that begin with *next and grow, and stretches them to fit.
func appendLayer(dx []float64, thickness float64, next *float64) []float64 {
	from, sum, d := len(dx), 0.0, math.Min(*next, thickness/2)
	for sum < thickness-d/2 {
		dx = append(dx, d)
		sum += d
		d *= growth
	}
	for i := from; i < len(dx); i++ {
		dx[i] *= thickness / sum
	}
	*next = dx[len(dx)-1] * growth
	return dx
}

// fill sets the state at the start.
func (c *column) fill(s Section) {
	for i := range c.nc {
		c.kind[i] = s.Concrete.matter(0)
		c.k[i] = s.Concrete.Conductivity
		c.t[i] = s.Concrete.Celsius
	}
	layer, depth := -1, 0.0
	for i := c.nc; i < c.n; i++ {
		if l := c.soil[i-c.nc]; l != layer {
			layer, depth = l, 0
		}
		l := s.Ground[layer]
		c.kind[i] = l.Soil.matter()
		c.t[i] = l.Top + (l.Bottom-l.Top)*(depth+c.dx[i]/2)/l.Thickness
		c.deep = l.Bottom
		depth += c.dx[i]
	}
	for i := range c.n {
		c.h[i] = c.kind[i].heat(c.t[i])
	}
	c.conduct(s)
}

// conduct sets the conductivity of the ground by how much of it is frozen.
func (c *column) conduct(s Section) {
	for i := c.nc; i < c.n; i++ {
		soil := s.Ground[c.soil[i-c.nc]].Soil
		c.k[i] = soil.Thawed + (soil.Frozen-soil.Thawed)*c.kind[i].ice(c.t[i])
	}
}

// content is the heat content of the whole column, J/m², from the state at the start of freezing of each cell.
func (c *column) content() float64 {
	sum := 0.0
	for i, h := range c.h {
		sum += h * c.dx[i]
	}
	return sum
}
