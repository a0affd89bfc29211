package chart

import (
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/muesli/reflow/wordwrap"
)

// Style says how a chart is drawn in characters.
type Style struct {
	Width int  // columns; 0: 60, which a phone shows
	ASCII bool // with the characters of ASCII alone
}

func (s Style) width() int {
	if s.Width <= 0 {
		return 60
	}
	return max(s.Width, 40)
}

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

// Text draws the chart in characters, for a terminal: lines as dots with their letters on them, so that no color is needed
// to tell them apart, the limits across, and a key and the note below. A chart without a line that can be drawn gives "".
func (c Chart) Text(s Style) string {
	p, ok := c.plot(s)
	if !ok {
		return ""
	}
	var out strings.Builder
	say := func(text string) {
		if text != "" {
			fmt.Fprintln(&out, s.Fit(text))
		}
	}
	say(c.Title)
	say(c.Y.String())
	for row := range p.rows {
		fmt.Fprintln(&out, strings.TrimRight(p.label(row)+string(p.cells[row])+" "+p.ends(row), " "))
	}
	out.WriteString(p.axis())
	if key := p.key(); key != "" {
		fmt.Fprintln(&out, key)
	}
	say(c.Note)
	return s.letters(out.String())
}

// Fit sets a text in so many columns, with the characters of the style.
func (s Style) Fit(text string) string { return wordwrap.String(s.letters(text), s.width()) }

func (s Style) letters(text string) string {
	if s.ASCII {
		return ascii(text)
	}
	return text
}

// ascii writes units and names without the characters that ASCII lacks.
func ascii(text string) string {
	text = strings.NewReplacer("\u00a0", " ", "°", "deg ", "²", "2", "³", "3", "×", "x", "·", ".", "–", "-", "−", "-", "…", "...", "’", "'").Replace(text)
	return strings.Map(func(r rune) rune {
		if r > unicode.MaxASCII {
			return '?'
		}
		return r
	}, text)
}

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

// letters gives each line a letter of its name that no other has: of its first word, where there is one left.
func (c Chart) letters() []rune {
	var list []rune
	used := map[rune]bool{'O': true, 'X': true}
	for _, l := range c.Lines {
		pick := '?'
		for _, r := range strings.ToUpper(l.Name) + "ABCDEFGHIJKLMNPQRSTUVWYZ" {
			if r >= 'A' && r <= 'Z' && !used[r] {
				pick = r
				break
			}
		}
		used[pick] = true
		list = append(list, pick)
	}
	return list
}

// label is what stands left of a row.
func (p *plot) label(row int) string {
	if row%p.every != 0 {
		return strings.Repeat(" ", p.margin) + string(p.side)
	}
	return fmt.Sprintf("%*s%c", p.margin, number(p.ys[len(p.ys)-1-row/p.every]), p.tick)
}

// ends names the lines that end in a row.
func (p *plot) ends(row int) string {
	if len(p.Lines) < 2 {
		return ""
	}
	var out strings.Builder
	for i, l := range p.Lines {
		last := len(l.X) - 1
		if _, at := p.cell(l.X[last], (l.Low[last]+l.High[last])/2); at == row {
			out.WriteRune(p.letters[i])
		}
	}
	return out.String()
}

// axis is the line below with its numbers, and what they are.
func (p *plot) axis() string {
	line, numbers := []rune(strings.Repeat(string(p.floor), p.columns)), []rune(strings.Repeat(" ", p.columns+p.margin+1))
	free := 0
	for _, x := range p.xs {
		if x < p.x0-1e-9 || x > p.x1+1e-9 {
			continue
		}
		column, _ := p.cell(x, p.y0)
		line[column] = p.notch
		text := []rune(number(x))
		at := min(p.margin+1+column-(len(text)-1)/2, len(numbers)-len(text))
		if at < free {
			continue
		}
		copy(numbers[at:], text)
		free = at + len(text) + 1
	}
	lead := strings.Repeat(" ", p.margin)
	return fmt.Sprintf("%s%c%s\n%s\n%s %s\n", lead, p.corner, string(line), strings.TrimRight(string(numbers), " "), lead, p.X.String())
}

// key says what the letters and signs stand for.
func (p *plot) key() string {
	var parts []string
	add := func(sign rune, name string) { parts = append(parts, p.style.letters(string(sign)+" "+name)) }
	band := false
	for i, l := range p.Lines {
		if len(p.Lines) > 1 {
			add(p.letters[i], l.Name)
		}
		band = band || l.band()
	}
	if band {
		add(p.fill, "all that it can be")
	}
	for i, l := range p.Levels {
		add(p.signs.levels[i%len(p.signs.levels)], l.Name+" ("+number(l.Y)+unit(p.Y)+")")
	}
	for i, m := range p.Marks {
		add(p.signs.marks[i%len(p.signs.marks)], m.Name+" ("+number(roundTo(m.X, 3))+unit(p.X)+")")
	}
	return flow(parts, p.margin+p.columns+2+len(p.Lines))
}

// flow sets pieces side by side in lines of so many columns at most.
func flow(parts []string, width int) string {
	var lines []string
	for _, part := range parts {
		if n := len(lines); n > 0 && utf8.RuneCountInString(lines[n-1])+2+utf8.RuneCountInString(part) <= width {
			lines[n-1] += "  " + part
		} else {
			lines = append(lines, part)
		}
	}
	return strings.Join(lines, "\n")
}

func (l Line) band() bool {
	for i := range l.X {
		if l.Low[i] != l.High[i] {
			return true
		}
	}
	return false
}

func unit(a Axis) string {
	if a.Unit == "" {
		return ""
	}
	return " " + a.Unit
}

// roundTo rounds to so many digits.
func roundTo(v float64, digits int) float64 {
	if v == 0 {
		return 0
	}
	scale := math.Pow(10, float64(digits-1)-math.Floor(math.Log10(math.Abs(v))))
	return math.Round(v*scale) / scale
}
