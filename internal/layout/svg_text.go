package layout

import (
	"strings"

	"github.com/muesli/reflow/wordwrap"
)

// dimensions writes the sides of the panels and of the slab along the bottom and the left.
func (d *drawing) dimensions() {
	xs, ys := d.plan.lines()
	bottom := d.top + d.height
	d.chainAcross(runs(xs), bottom+20)
	if len(xs) > 2 {
		d.chainAcross([]run{{1, 0, d.plan.Slab.Length}}, bottom+52)
	}
	d.chainUp(runs(ys), marginLeft-20)
	if len(ys) > 2 {
		d.chainUp([]run{{1, 0, d.plan.Slab.Width}}, marginLeft-62)
	}
}

const dimensionLine = `stroke="#66727f" stroke-width="1"`

// chainAcross draws a row of dimensions below the slab. A label too long for its stretch is left out: the legend has it.
func (d *drawing) chainAcross(list []run, y float64) {
	d.add(`<path d="M%.1f %.1fH%.1f" %s/>`, d.x(list[0].from), y, d.x(list[len(list)-1].to), dimensionLine)
	for _, r := range list {
		for k := 0; k <= r.count; k++ {
			x := d.x(r.from + r.part()*float64(k))
			d.add(`<path d="M%.1f %.1fl6 -6" %s/>`, x-3, y+3, dimensionLine)
		}
		if label := r.label(d.system); fits(label, (r.to-r.from)*d.scale) {
			d.text((d.x(r.from)+d.x(r.to))/2, y+19, "middle", "", label)
		}
	}
}

func (d *drawing) chainUp(list []run, x float64) {
	d.add(`<path d="M%.1f %.1fV%.1f" %s/>`, x, d.y(list[0].from), d.y(list[len(list)-1].to), dimensionLine)
	for _, r := range list {
		for k := 0; k <= r.count; k++ {
			y := d.y(r.from + r.part()*float64(k))
			d.add(`<path d="M%.1f %.1fl6 -6" %s/>`, x-3, y+3, dimensionLine)
		}
		label, middle := r.label(d.system), (d.y(r.from)+d.y(r.to))/2
		switch {
		case fits(label, (r.to-r.from)*d.scale):
			d.add(`<text transform="translate(%.1f %.1f) rotate(-90)" text-anchor="middle" fill="#1c2733">%s</text>`, x-9, middle, label)
		case len(list) == 1 && d.height >= lineHeight/2: // room to write it lying beside the stretch
			d.text(x-8, middle+4, "end", "", label)
		}
	}
}

func fits(label string, room float64) bool { return float64(len([]rune(label)))*textWidth < room }

// wrapped breaks texts that begin at x to the width of the drawing.
func (d *drawing) wrapped(x float64, texts []string) []string {
	most := int((max(leastWidth, marginLeft+d.width+marginEnd) - x - marginEnd) / textWidth)
	var lines []string
	for _, l := range texts {
		lines = append(lines, strings.Split(wordwrap.String(l, most), "\n")...)
	}
	return lines
}

// key explains the lines and writes the legend below the slab.
func (d *drawing) key(y float64, legend []string) {
	x := marginLeft
	entry := func(sample, name string) {
		d.add(sample, x, y-4, x+26, y-4)
		d.text(x+32, y, "start", "", name)
		x += 32 + float64(len(name))*textWidth + 22
	}
	if len(d.plan.Across)+len(d.plan.Along) > 0 {
		entry(`<path d="M%.1f %.1fL%.1f %.1f" stroke="#1f5f99" stroke-width="1.6"/>`, "contraction joint")
	}
	if d.plan.Slab.Walls || len(d.plan.Slab.Columns) > 0 {
		entry(`<path d="M%.1f %.1fL%.1f %.1f" stroke="#c8590b" stroke-width="3"/>`, "isolation strip")
	}
	for i, l := range legend {
		d.text(marginLeft, y+lineHeight*float64(i+1), "start", "", l)
	}
}
