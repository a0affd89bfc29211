package layout

import (
	"fmt"
	"math"
	"strings"

	"hearsay/internal/quantity"
)

// Sizes of the sketch in characters, which are about twice as high as wide.
const (
	sketchColumns = 56 // so that it fits a phone's screen
	sketchRows    = 23
	cellColumns   = 4 // least
	cellRows      = 2
)

// Text draws the plan in characters and says in words where the joints are measured off.
func (p Plan) Text(system quantity.System) string {
	var out strings.Builder
	fmt.Fprintln(&out, p.heading(system))
	out.WriteString(p.sketch())
	fmt.Fprintf(&out, "Joints across, from the left edge: %s\n", marks(p.Across, system))
	fmt.Fprintf(&out, "Joints along, from the bottom edge: %s\n", marks(p.Along, system))
	for _, line := range p.legend(system) {
		fmt.Fprintln(&out, line)
	}
	return out.String()
}

// legend says what is drawn, in lines that belong under the plan.
func (p Plan) legend(system quantity.System) []string {
	xs, ys := p.lines()
	var lengths, widths []string
	for _, r := range runs(xs) {
		lengths = append(lengths, r.label(system))
	}
	for _, r := range runs(ys) {
		widths = append(widths, r.label(system))
	}
	lines := []string{fmt.Sprintf("Panels: %s long, %s wide", strings.Join(lengths, " + "), strings.Join(widths, " + "))}
	if p.Slab.JointDepth > 0 {
		lines = append(lines, "Joint depth: "+thick(p.Slab.JointDepth, system))
	}
	if p.Slab.Walls {
		lines = append(lines, "Isolation strip through the full depth all around")
	}
	if len(p.Slab.Columns) > 0 {
		lines = append(lines, "Columns boxed out as diamonds, isolated from the slab through its full depth")
	}
	return append(lines, p.notes(system)...)
}

// sketch draws the plan: slab edges as = and |, joints as - and :, columns as o.
func (p Plan) sketch() string {
	xs, ys := p.lines()
	scale := math.Min(sketchColumns/p.Slab.Length, 2*sketchRows/p.Slab.Width)
	columns, rows := stops(xs, scale, cellColumns), stops(ys, scale/2, cellRows)
	width, height := columns[len(columns)-1]+1, rows[len(rows)-1]+1
	canvas := make([][]rune, height)
	for i := range canvas {
		canvas[i] = []rune(strings.Repeat(" ", width))
	}
	for j := range ys {
		for i := range xs {
			p.corner(canvas, xs, ys, columns, rows, i, j)
		}
	}
	for _, c := range p.Slab.Columns {
		canvas[height-1-place(c.Y, ys, rows)][place(c.X, xs, columns)] = 'o'
	}
	var out strings.Builder
	for _, line := range canvas {
		out.WriteString("  " + strings.TrimRight(string(line), " ") + "\n")
	}
	return out.String()
}

// corner draws the grid point i, j and the lines that go from it to the right and up.
func (p Plan) corner(canvas [][]rune, xs, ys []float64, columns, rows []int, i, j int) {
	bottom := len(canvas) - 1 - rows[j]
	cell := func(i, j int) bool { return p.cell(xs, ys, i, j) }
	if cell(i-1, j-1) || cell(i, j-1) || cell(i-1, j) || cell(i, j) {
		canvas[bottom][columns[i]] = '+'
	}
	if mark := line(cell(i, j-1), cell(i, j), '=', '-'); mark != 0 {
		for x := columns[i] + 1; x < columns[i+1]; x++ {
			canvas[bottom][x] = mark
		}
	}
	if mark := line(cell(i-1, j), cell(i, j), '|', ':'); mark != 0 {
		for y := rows[j] + 1; y < rows[j+1]; y++ {
			canvas[len(canvas)-1-y][columns[i]] = mark
		}
	}
}

// cell says whether there is slab between the grid lines i and i+1, j and j+1.
func (p Plan) cell(xs, ys []float64, i, j int) bool {
	if i < 0 || j < 0 || i+1 >= len(xs) || j+1 >= len(ys) {
		return false
	}
	return p.Slab.covers(Rect{xs[i], ys[j], xs[i+1], ys[j+1]}.middle())
}

// line is the mark between two cells: an edge where one of them is slab, a joint where both are.
func line(a, b bool, edge, joint rune) rune {
	switch {
	case a && b:
		return joint
	case a || b:
		return edge
	}
	return 0
}

// stops gives each line its place on a canvas at so many characters a foot, no cell narrower than least.
func stops(lines []float64, scale float64, least int) []int {
	at := make([]int, len(lines))
	for i := 1; i < len(lines); i++ {
		at[i] = max(at[i-1]+least, int(math.Round(lines[i]*scale)))
	}
	return at
}

// place finds the character nearest to a length between the stops of its lines.
func place(v float64, lines []float64, at []int) int {
	for i := 1; i < len(lines); i++ {
		if v <= lines[i] {
			share := (v - lines[i-1]) / (lines[i] - lines[i-1])
			return at[i-1] + int(math.Round(share*float64(at[i]-at[i-1])))
		}
	}
	return at[len(at)-1]
}
