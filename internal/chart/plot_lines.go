package chart

import (
	"math"
)

// sign is what a cell shows of the lines that pass through it: their dots, or in ASCII one of their letters by turns.
func (p *plot) sign(row, column int) rune {
	switch owners := p.owners[row][column]; {
	case owners == 0:
		return ' '
	case !p.style.ASCII:
		return 0x2800 + p.dots[row][column]
	case len(p.Lines) == 1:
		return p.single
	default:
		var there []rune
		for i, letter := range p.letters {
			if owners&(1<<i) != 0 {
				there = append(there, letter)
			}
		}
		return there[column%len(there)]
	}
}

// brailleDots are the bits of the dots of a cell, by row and column.
var brailleDots = [4][2]rune{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

// trace draws a line straight from point to point.
func (p *plot) trace(line int, x, y []float64) {
	for i := range x {
		across, down := p.dot(x[i], y[i])
		p.set(line, across, down)
		if i == 0 {
			continue
		}
		fromX, fromY := p.dot(x[i-1], y[i-1])
		steps := max(abs(across-fromX), abs(down-fromY))
		for s := 1; s < steps; s++ {
			share := float64(s) / float64(steps)
			p.set(line, fromX+int(math.Round(share*float64(across-fromX))), fromY+int(math.Round(share*float64(down-fromY))))
		}
	}
}

func abs(n int) int { return max(n, -n) }

func (p *plot) set(line, across, down int) {
	row, column := down/p.dotsY, across/p.dotsX
	p.dots[row][column] |= brailleDots[down%p.dotsY][across%p.dotsX]
	p.owners[row][column] |= 1 << line
}

// between fills the room of a band.
func (p *plot) between(l Line) {
	for column := range p.columns {
		x := p.x0 + float64(column)*p.w
		low, high, ok := l.at(x)
		if !ok {
			continue
		}
		_, from := p.cell(x, high)
		_, to := p.cell(x, low)
		for row := from + 1; row < to; row++ {
			if p.owners[row][column] == 0 {
				p.cells[row][column] = p.fill
			}
		}
	}
}

// at gives a line at x, straight between its points; ok is false outside of it.
func (l Line) at(x float64) (low, high float64, ok bool) {
	for i := 1; i < len(l.X); i++ {
		if x >= l.X[i-1]-1e-9 && x <= l.X[i]+1e-9 && l.X[i] > l.X[i-1] {
			share := (x - l.X[i-1]) / (l.X[i] - l.X[i-1])
			return l.Low[i-1] + share*(l.Low[i]-l.Low[i-1]), l.High[i-1] + share*(l.High[i]-l.High[i-1]), true
		}
	}
	return 0, 0, false
}

// write puts the letters of the lines onto them, each at its own columns.
func (p *plot) write() {
	const apart = 4
	taken := map[[2]int]bool{}
	for i, l := range p.Lines {
		for column := apart*i + 2; column < p.columns; column += apart * len(p.Lines) {
			x := p.x0 + float64(column)*p.w
			low, high, ok := l.at(x)
			if !ok {
				continue
			}
			for _, y := range []float64{low, high} {
				if _, row := p.cell(x, y); !taken[[2]int{row, column}] {
					p.cells[row][column] = p.letters[i]
					taken[[2]int{row, column}] = true
				}
			}
		}
	}
}
