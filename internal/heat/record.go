package heat

import "math"

func (r *run) reserve(n int) {
	lists := []*[]float64{&r.history.Hours}
	if r.main.nc > 0 {
		lists = append(lists, &r.history.Top, &r.history.Middle, &r.history.Bottom)
	}
	if r.edge != nil {
		lists = append(lists, &r.history.Edge)
	}
	if r.main.n > r.main.nc {
		lists = append(lists, &r.history.Ground, &r.history.Thawed)
	}
	block := make([]float64, n*len(lists))
	for i, l := range lists {
		*l = block[i*n : i*n : (i+1)*n]
	}
}

// record notes the temperatures of this hour.
func (r *run) record(hour float64) {
	h, c, out := r.weather.At(hour), r.main, &r.history
	out.Hours = append(out.Hours, hour)
	celsius, resistance := r.top.outside(h)
	if c.nc > 0 {
		top, bottom := c.faces(outer{celsius, 1 / resistance}, r.far, h)
		if hour == 0 { // a face takes on the temperature of its surroundings only after the start
			top, bottom = c.t[0], c.t[c.nc-1]
		}
		out.Top, out.Bottom = append(out.Top, top), append(out.Bottom, bottom)
		out.Middle = append(out.Middle, c.middle())
	}
	if r.edge != nil {
		low := math.Inf(1)
		for i := range r.edge.nc {
			low = math.Min(low, r.edge.t[i])
		}
		top, _ := r.edge.faces(outer{celsius, 1 / resistance}, r.far, h)
		if hour > 0 {
			low = math.Min(low, top)
		}
		out.Edge = append(out.Edge, low)
	}
	if c.n > c.nc {
		out.Ground = append(out.Ground, c.t[c.nc])
		out.Thawed = append(out.Thawed, c.thawed())
	}
}

// faces gives the temperatures at the top and at the far face of the concrete.
func (c *column) faces(outside outer, far Face, h Hour) (top, bottom float64) {
	top = between(outside.celsius, outside.u, c.t[0], 2*c.k[0]/c.dx[0])
	last := c.nc - 1
	u := 2 * c.k[last] / c.dx[last]
	if c.n > c.nc {
		return top, between(c.t[c.nc], 2*c.k[c.nc]/c.dx[c.nc], c.t[last], u)
	}
	celsius, resistance := far.outside(h)
	return top, between(celsius, 1/resistance, c.t[last], u)
}

// between is the temperature of a face between two conductances, either of which may be infinite.
func between(a, ua, b, ub float64) float64 {
	if math.IsInf(ua, 1) {
		return a
	}
	return (a*ua + b*ub) / (ua + ub)
}

// middle is the temperature half-way through the concrete.
func (c *column) middle() float64 {
	if c.nc%2 == 1 {
		return c.t[c.nc/2]
	}
	return (c.t[c.nc/2-1] + c.t[c.nc/2]) / 2
}

// thawed is the depth of ground thawed from its top down to the first ice.
func (c *column) thawed() float64 {
	depth := 0.0
	for i := c.nc; i < c.n; i++ {
		ice := c.kind[i].ice(c.t[i])
		depth += c.dx[i] * (1 - ice)
		if ice > 0 {
			break
		}
	}
	return depth
}
