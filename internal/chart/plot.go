package chart

import (
	"math"
	"strings"
	"unicode/utf8"
)

// signs are the characters that a chart is made of.
type signs struct {
	dotsX, dotsY                           int // of a cell, across and down
	tick, side, corner, floor, notch, fill rune
	levels, marks                          []rune
	single                                 rune // of an only line, where no dots are drawn
}

var (
	braille = signs{2, 4, '┤', '│', '└', '─', '┬', '░', []rune("┄═"), []rune("●◆▲"), 0}
	plain   = signs{1, 1, '+', '|', '+', '-', '+', ':', []rune("-="), []rune("O#X"), '*'}
)

// plot is a chart on a grid of cells. The middle of its first column lies at x0, that of its last row at y0.
type plot struct {
	*drawing
	signs
	style         Style
	columns, rows int
	margin        int // columns of the numbers on the left
	w, h          float64
	every         int // rows from one tick to the next
	dots          [][]rune
	owners        [][]uint // lines that pass through a cell, as bits
	cells         [][]rune
	letters       []rune
}

// aboutRows is about how many rows a chart takes.
const aboutRows = 12

func (c Chart) plot(s Style) (*plot, bool) {
	p := &plot{drawing: &drawing{Chart: c}, signs: braille, style: s}
	if !p.scale() {
		return nil, false
	}
	if s.ASCII {
		p.signs = plain
	}
	for _, y := range p.ys {
		p.margin = max(p.margin, utf8.RuneCountInString(number(y)))
	}
	p.letters = c.letters()
	p.every = max(1, aboutRows/(len(p.ys)-1))
	p.rows = p.every*(len(p.ys)-1) + 1
	p.columns = s.width() - p.margin - 2 - len(c.Lines)
	p.w, p.h = (p.x1-p.x0)/float64(p.columns-1), (p.y1-p.y0)/float64(p.rows-1)
	for range p.rows {
		p.dots = append(p.dots, make([]rune, p.columns))
		p.owners = append(p.owners, make([]uint, p.columns))
		p.cells = append(p.cells, []rune(strings.Repeat(" ", p.columns)))
	}
	p.draw()
	return p, true
}

// dot gives the place of a point in dots from the left and from the top.
func (p *plot) dot(x, y float64) (across, down int) {
	place := func(share float64, dots, cells int) int {
		return min(max(int(math.Floor(share*float64(dots))), 0), dots*cells-1)
	}
	return place((x-p.x0)/p.w+0.5, p.dotsX, p.columns), place((p.y1-y)/p.h+0.5, p.dotsY, p.rows)
}

// cell gives the column and the row of a point.
func (p *plot) cell(x, y float64) (column, row int) {
	across, down := p.dot(x, y)
	return across / p.dotsX, down / p.dotsY
}

func (p *plot) draw() {
	for i, l := range p.Lines {
		p.trace(i, l.X, l.Low)
		p.trace(i, l.X, l.High)
	}
	for row := range p.rows {
		for column := range p.columns {
			p.cells[row][column] = p.sign(row, column)
		}
	}
	for _, l := range p.Lines {
		p.between(l)
	}
	for i, l := range p.Levels {
		_, row := p.cell(p.x0, l.Y)
		for column := range p.columns {
			if p.owners[row][column] == 0 {
				p.cells[row][column] = p.signs.levels[i%len(p.signs.levels)]
			}
		}
	}
	if len(p.Lines) > 1 && !p.style.ASCII {
		p.write()
	}
	for i, m := range p.Marks {
		column, row := p.cell(m.X, m.Y)
		p.cells[row][column] = p.signs.marks[i%len(p.signs.marks)]
	}
}
