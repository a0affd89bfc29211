package chart

import (
	"fmt"
	"slices"
	"strings"
)

func (a Axis) String() string {
	if a.Unit == "" {
		return a.Name
	}
	return a.Name + ", " + a.Unit
}

func (d *drawing) axes() {
	for _, y := range d.ys {
		d.add(`<path d="M%.1f %.1fH%.1f" stroke="%s"/>`, left, d.py(y), width-right, pale)
		d.text(left-8, d.py(y)+5, "end", soft, number(y), "")
	}
	for _, x := range d.xs {
		if x >= d.x0-1e-9 && x <= d.x1+1e-9 {
			d.add(`<path d="M%.1f %.1fv5" stroke="%s"/>`, d.px(x), height-bottom, ink)
			d.text(d.px(x), height-bottom+22, "middle", soft, number(x), "")
		}
	}
	d.add(`<path d="M%.1f %.1fH%.1f" stroke="%s" stroke-width="1.5"/>`, left, height-bottom, width-right, ink)
	d.text((left+width-right)/2, height-14, "middle", ink, d.X.String(), "")
	d.text(8, top-20, "start", soft, d.Y.String(), "")
}

func (d *drawing) levels() {
	for _, l := range d.Levels {
		d.add(`<path d="M%.1f %.1fH%.1f" stroke="%s" stroke-width="3"/>`, left, d.py(l.Y), width-right, alarm)
		d.labels = append(d.labels, label{text: l.Name, color: alarm, y: d.py(l.Y)})
	}
}

func (d *drawing) line(l Line, dash string) {
	var low, high []string
	band := false
	for i := range l.X {
		low = append(low, fmt.Sprintf("%.1f %.1f", d.px(l.X[i]), d.py(l.Low[i])))
		high = append(high, fmt.Sprintf("%.1f %.1f", d.px(l.X[i]), d.py(l.High[i])))
		band = band || l.Low[i] != l.High[i]
	}
	last := len(l.X) - 1
	stroke := fmt.Sprintf(`fill="none" stroke="%s" stroke-width="2.5" stroke-linejoin="round"`, ink)
	if dash != "" {
		stroke += fmt.Sprintf(` stroke-dasharray="%s"`, dash)
	}
	if band {
		back := slices.Clone(high)
		slices.Reverse(back)
		d.add(`<path d="M%s L%sZ" fill="%s" fill-opacity=".12"/>`, strings.Join(low, " L"), strings.Join(back, " L"), ink)
		d.add(`<path d="M%s" %s/>`, strings.Join(high, " L"), stroke)
	}
	d.add(`<path d="M%s" %s/>`, strings.Join(low, " L"), stroke)
	d.labels = append(d.labels, label{text: l.Name, color: ink, dash: dash, y: (d.py(l.Low[last]) + d.py(l.High[last])) / 2})
}

func (d *drawing) marks() {
	for _, m := range d.Marks {
		x, y := d.px(m.X), d.py(m.Y)
		d.add(`<path d="M%.1f %.1fV%.1f" stroke="%s" stroke-dasharray="3 3"/>`, x, y, height-bottom, ink)
		d.add(`<circle cx="%.1f" cy="%.1f" r="5.5" fill="#fff" stroke="%s" stroke-width="2.5"/>`, x, y, ink)
	}
	var taken []box
	for _, m := range d.Marks {
		at := d.room(m, taken)
		taken = append(taken, at)
		d.text(at.x0, at.y1-4, "start", ink, m.Name, ` font-weight="700" paint-order="stroke" stroke="#fbfaf6" stroke-width="4"`)
	}
}

// box is a part of the picture.
type box struct{ x0, y0, x1, y1 float64 }

func (b box) holds(x, y float64) bool { return x > b.x0 && x < b.x1 && y > b.y0 && y < b.y1 }

func (b box) meets(o box) bool { return b.x0 < o.x1 && o.x0 < b.x1 && b.y0 < o.y1 && o.y0 < b.y1 }

// room finds where the name of a mark covers least: near it, but off the lines, the limits and the other names.
func (d *drawing) room(m Mark, taken []box) box {
	const letter, high = 9.0, 20.0
	x, y, wide := d.px(m.X), d.py(m.Y), letter*float64(len([]rune(m.Name)))
	best, least := box{}, 1e9
	for _, up := range []float64{-8, 8 + high, -28, 28 + high, -50, 50 + high, -75, 75 + high} {
		for _, from := range []float64{x + 9, x - 9 - wide} {
			b := box{from, y + up - high, from + wide, y + up}
			if b.x0 < left || b.x1 > width-right || b.y0 < top || b.y1 > height-bottom {
				continue
			}
			if cover := d.covered(b, taken); cover < least {
				best, least = b, cover
			}
		}
	}
	if least == 1e9 { // a name too long for the picture
		return box{left, y - 8 - high, left + wide, y - 8}
	}
	return best
}

// covered counts what a name in this box would lie on.
func (d *drawing) covered(b box, taken []box) float64 {
	sum := 0.0
	for _, o := range taken {
		if b.meets(o) {
			sum += 100
		}
	}
	for _, m := range d.Marks {
		if b.meets(box{d.px(m.X) - 6, d.py(m.Y) - 6, d.px(m.X) + 6, d.py(m.Y) + 6}) {
			sum += 100
		}
	}
	for _, l := range d.Levels {
		if y := d.py(l.Y); y > b.y0 && y < b.y1 {
			sum += 10
		}
	}
	for _, l := range d.Lines {
		for x := b.x0; x <= b.x1; x += 4 {
			low, high, ok := l.at(d.x0 + (x-left)/(width-left-right)*(d.x1-d.x0))
			if ok && (b.holds(x, d.py(low)) || b.holds(x, d.py(high))) {
				sum++
			}
		}
	}
	return sum
}

// names writes the names of lines and levels at their right ends, pushed apart where they would touch.
func (d *drawing) names() {
	slices.SortStableFunc(d.labels, func(a, b label) int { return int(a.y - b.y) })
	const apart, most = 19.0, 15 // so many letters fit beside the picture
	var rows []label
	for _, l := range d.labels {
		for i, text := range wrap(l.text, most) {
			row := label{text: text, color: l.color, dash: l.dash, y: l.y + apart*float64(i)}
			if i > 0 {
				row.dash = "none"
			}
			rows = append(rows, row)
		}
	}
	for i := range rows {
		if i > 0 {
			rows[i].y = max(rows[i].y, rows[i-1].y+apart)
		}
	}
	for i := len(rows) - 1; i >= 0; i-- {
		limit := height - bottom
		if apart*float64(len(rows)) > height-bottom-top {
			limit = height - 6
		}
		if i < len(rows)-1 {
			limit = rows[i+1].y - apart
		}
		rows[i].y = min(rows[i].y, limit)
	}
	for _, r := range rows {
		if r.dash != "none" {
			d.add(`<path d="M%.1f %.1fh22" stroke="%s" stroke-width="2.5" stroke-dasharray="%s"/>`, width-right+8, r.y, r.color, r.dash)
		}
		d.text(width-right+34, r.y+5, "start", r.color, r.text, "")
	}
}

// wrap breaks a name into lines of so many letters at most, where its words allow.
func wrap(text string, most int) []string {
	var lines []string
	for _, word := range strings.Fields(text) {
		if n := len(lines); n > 0 && len(lines[n-1])+1+len(word) <= most {
			lines[n-1] += " " + word
		} else {
			lines = append(lines, word)
		}
	}
	return lines
}
