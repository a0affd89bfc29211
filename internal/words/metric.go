package words

import "slices"

// metricBars are the sizes of Canadian bars, which are named by their diameter in millimeters, with the bar number whose diameter is nearest.
var metricBars = map[string]float64{"10": 3, "15": 5, "20": 6, "25": 8, "30": 9, "35": 11}

// metricBar reads "15M" as a bar size.
func (r *reading) metricBar(i int) (item, int) {
	if i+1 >= len(r.ts) || r.ts[i+1].text != "m" || !r.ts[i+1].glued || !r.ts[i+1].capital {
		return item{}, i
	}
	n, ok := metricBars[r.ts[i].text]
	if !ok {
		return item{}, i
	}
	return item{kind: aQuantity, num: number{low: n, high: n}, units: []string{"bar"}, glue: true}, i + 2
}

// millimeters takes "mil" as millimeters where the text is metric and no sheet is spoken of beside it.
func (r *reading) millimeters() {
	if !slices.ContainsFunc(r.items, func(it item) bool { return it.kind != aWord && len(it.units) > 0 && metricOnly[it.units[0]] }) {
		return
	}
	for q := range r.items {
		it := &r.items[q]
		if it.kind != aQuantity || len(it.units) == 0 || it.units[0] != "mil" || it.num.low < thickestSheet {
			continue
		}
		it.units = []string{"mm"}
	}
}

// thickestSheet is the number of mils that no sheet under a slab has, nearly.
const thickestSheet = 25

var metricOnly = set([]string{"mm", "MPa", "kg/m3", "C", "m3", "cm"})

// meshGauges are the steel wire gauges by which mesh is named, with the size of the wire in hundredths of a square inch.
var meshGauges = map[float64]string{10: "1.4", 8: "2.1", 6: "2.9", 4: "4"}

// meshes reads the gauges of all meshes before other numbers are given away.
func (s *solver) meshes() {
	for q := range s.items {
		if s.items[q].kind == aSize {
			s.meshGauge(q)
		}
	}
}

// meshGauge reads the gauges after the size of a mesh: the "10/10" of "6x6 10/10", "ten ten", "10 gauge".
func (s *solver) meshGauge(q int) bool {
	if s.gauged[q] {
		return true
	}
	i := q + 1
	for i < len(s.items) && (s.items[i].kind == aBreak && s.items[i].pause == pauseComma || s.items[i].filler) {
		i++
	}
	if i >= len(s.items) || s.items[i].kind != aQuantity || len(s.items[i].units) > 0 {
		return false
	}
	wire, ok := meshGauges[s.items[i].num.low]
	end := i
	if i+1 < len(s.items) && s.items[i+1].kind == aQuantity && len(s.items[i+1].units) == 0 && s.items[i+1].num.low == s.items[i].num.low {
		end = i + 1
	} else if i+1 >= len(s.items) || s.items[i+1].text != "gauge" && s.items[i+1].text != "ga" {
		return false
	}
	if !ok || !s.sizeWithin(q, 12) {
		return false
	}
	for k := i; k <= end; k++ {
		s.used[k] = true
	}
	s.gauged[q] = true
	if !s.has("steel.wire") {
		s.state("steel.wire", wire+" W", s.words(i, end), "", s.items[i].start)
	}
	return true
}

// squareFeet takes "a four thousand foot slab" as so many square feet: no slab is as long.
func (r *reading) squareFeet() {
	for q := range r.items {
		it := &r.items[q]
		if it.kind != aQuantity || len(it.units) == 0 || it.units[0] != "ft" || it.num.low < longestSlab {
			continue
		}
		for i := q + 1; i < len(r.items) && i < q+4 && r.items[i].kind == aWord; i++ {
			if flat[r.items[i].text] || flatwork[r.items[i].text] {
				it.units = []string{"ft2"}
				break
			}
			if !r.items[i].filler {
				break
			}
		}
		for i := q - 1; i >= 0 && i > q-4 && len(it.units) > 0 && it.units[0] == "ft"; i-- {
			if flat[r.items[i].text] || flatwork[r.items[i].text] {
				it.units = []string{"ft2"} // "clinic floor, 3,400 foot"
			}
		}
	}
}

// longestSlab is the length in feet from which a number before a slab is its area.
const longestSlab = 500

var flatwork = set([]string{"pour", "deck", "lot", "warehouse", "shop", "driveway", "patio", "placement"})
