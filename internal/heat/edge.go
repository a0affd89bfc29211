package heat

// couple sets what the cells of the edge strip meet on their sides. The strip is half as wide as the concrete is thick.
// Outward, each cell of concrete meets the weather as the face of a wall does, through film and cover of the edge; each
// cell of ground is sheltered by the ground beside it. Inward, each meets the cell of the slab beside it over one
// thickness.
func (r *run) couple(h Hour) {
	width := r.section.Thickness / 2
	face := Face{Kind: r.top.Kind, R: r.section.Edge.R, Sky: r.top.Sky / 2, Celsius: r.top.Celsius}
	celsius, resistance := face.outside(h)
	for i := range r.side {
		k := r.edge.k[i]
		inward := k / r.section.Thickness / width
		outward := 0.0
		if i < r.edge.nc {
			outward = 1 / (resistance + width/(2*k)) / width
		}
		u := inward + outward
		r.side[i] = bond{u, (inward*r.main.t[i] + outward*celsius) / u}
	}
}
