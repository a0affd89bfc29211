package layout

// square divides bays further as long as that brings the panel that is worst for its width closer to square and makes no
// panel worse than that. A strip that corners or columns make narrow is left, since squaring it would cut up all of the slab.
func (p *Plan) square(xs, ys []bay) {
	for {
		i, j, worst := p.worst(xs, ys)
		if worst <= p.Slab.Aspect*(1+1e-9) {
			return
		}
		b := &xs[i]
		if b.part() < ys[j].part() {
			b = &ys[j]
		}
		if b.parts++; b.parts > mostPanels || !p.better(xs, ys, worst) {
			b.parts--
			return
		}
	}
}

// worst finds the pair of bays whose panels are longest for their width, slivers aside.
func (p *Plan) worst(xs, ys []bay) (i, j int, worst float64) {
	for k, x := range xs {
		for l, y := range ys {
			if p.sliver(x, xs) || p.sliver(y, ys) || !p.Slab.covers(Rect{x.from, y.from, x.to, y.to}.middle()) {
				continue
			}
			if r := ratio(x.part(), y.part()); r > worst {
				i, j, worst = k, l, r
			}
		}
	}
	return i, j, worst
}

// sliver says whether a bay is narrow because corners or columns stand close together, not because the slab is.
func (p *Plan) sliver(b bay, all []bay) bool {
	return len(all) > 1 && b.parts == 1 && b.part() < p.Slab.Spacing/2
}

func (p *Plan) better(xs, ys []bay, than float64) bool {
	_, _, worst := p.worst(xs, ys)
	return worst < than-1e-9
}
