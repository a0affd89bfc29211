package layout

import (
	"fmt"
	"math"
	"strings"

	"hearsay/internal/quantity"
)

// measure writes a length as it is laid out on site: feet and inches to the half inch, or meters to the centimeter.
func measure(feet float64, system quantity.System) string {
	if system == quantity.SI {
		return fmt.Sprintf("%.2f m", feet*0.3048)
	}
	halves := math.Round(feet * 24)
	whole, rest := math.Floor(halves/24), math.Mod(halves, 24)
	switch {
	case rest == 0:
		return fmt.Sprintf("%.0f ft", whole)
	case math.Mod(rest, 2) == 0:
		return fmt.Sprintf("%.0f ft %.0f in", whole, rest/2)
	}
	return fmt.Sprintf("%.0f ft %.1f in", whole, rest/2)
}

func thick(inches float64, system quantity.System) string {
	return quantity.Quantity{Value: inches, Unit: "in"}.Print(system)
}

// run is a row of equal stretches.
type run struct {
	count    int
	from, to float64
}

func (r run) part() float64 { return (r.to - r.from) / float64(r.count) }

// label writes "4 × 15 ft", or the length alone of a single stretch.
func (r run) label(system quantity.System) string {
	if r.count == 1 {
		return measure(r.part(), system)
	}
	return fmt.Sprintf("%d × %s", r.count, measure(r.part(), system))
}

// runs gathers the stretches between lines into rows of equal ones.
func runs(lines []float64) []run {
	var list []run
	for i := 1; i < len(lines); i++ {
		n := len(list)
		if n > 0 && math.Abs(list[n-1].part()-(lines[i]-lines[i-1])) < 1e-6 {
			list[n-1].count++
			list[n-1].to = lines[i]
			continue
		}
		list = append(list, run{1, lines[i-1], lines[i]})
	}
	return list
}

// heading says what the plan is of, in one line.
func (p Plan) heading(system quantity.System) string {
	size := measure(p.Slab.Length, system) + " × " + measure(p.Slab.Width, system)
	if p.Slab.Thickness > 0 {
		size += " × " + thick(p.Slab.Thickness, system)
	}
	panels := "1 panel"
	if len(p.Panels) != 1 {
		panels = fmt.Sprintf("%d panels", len(p.Panels))
	}
	return fmt.Sprintf("Joint plan: %s, %s, joints no farther apart than %s", size, panels, measure(p.Slab.Spacing, system))
}

// marks lists where the joints of one direction are measured off.
func marks(joints []float64, system quantity.System) string {
	if len(joints) == 0 {
		return "none"
	}
	at := make([]string, len(joints))
	for i, j := range joints {
		at[i] = measure(j, system)
	}
	return strings.Join(at, ", ")
}

// notes gives the notes with their quantities in a unit system.
func (p Plan) notes(system quantity.System) []string {
	list := make([]string, len(p.Notes))
	for i, n := range p.Notes {
		list[i] = braces(n, system)
	}
	return list
}

// braces prints the lengths in feet that stand in braces in a note.
func braces(note string, system quantity.System) string {
	for {
		start, end := strings.IndexByte(note, '{'), strings.IndexByte(note, '}')
		if start < 0 || end < start {
			return note
		}
		text := note[start+1 : end]
		if q, err := quantity.ParseAs(text, "ft"); err == nil {
			text = measure(q.Value, system)
		}
		note = note[:start] + text + note[end+1:]
	}
}
