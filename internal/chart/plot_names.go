package chart

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"
)

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
