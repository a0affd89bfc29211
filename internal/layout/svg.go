package layout

import (
	"fmt"
	"html"
	"math"
	"strings"

	"hearsay/internal/quantity"
)

// Sizes of the drawing in its own units, which are pixels at its natural size. Letters are large for it, so that they can
// still be read where a phone shows it two thirds as wide.
const (
	drawWidth  = 452.0 // most that the slab may take
	drawHeight = 420.0
	marginLeft = 124.0
	marginTop  = 34.0 // below the heading
	marginEnd  = 24.0
	leastWidth = 600.0
	lineHeight = 24.0
	textWidth  = 8.8 // of a character of the 16 px text, about
)

// SVG draws the plan as a picture to scale, with its text alternative inside.
func (p Plan) SVG(system quantity.System) string {
	d := drawing{plan: p, system: system}
	d.scale = math.Min(drawWidth/p.Slab.Length, drawHeight/p.Slab.Width)
	d.width, d.height = p.Slab.Length*d.scale, p.Slab.Width*d.scale
	legend := d.wrapped(marginLeft, d.plan.legend(system))
	heading := d.wrapped(8, []string{d.plan.heading(system)})
	d.top = marginTop + lineHeight*float64(len(heading))
	below := d.top + d.height + 118
	width := math.Max(marginLeft+d.width+marginEnd, leastWidth)
	height := below + lineHeight*float64(len(legend)+1)
	d.open(width, height, heading)
	d.ground()
	d.joints()
	d.columns()
	d.dimensions()
	d.key(below-8, legend)
	d.out.WriteString("</svg>\n")
	return d.out.String()
}

type drawing struct {
	plan          Plan
	system        quantity.System
	scale         float64
	width, height float64 // of the slab
	top           float64 // where it begins
	out           strings.Builder
}

// x and y turn feet on the slab into units of the drawing.
func (d *drawing) x(feet float64) float64 { return marginLeft + feet*d.scale }
func (d *drawing) y(feet float64) float64 { return d.top + d.height - feet*d.scale }

func (d *drawing) add(format string, args ...any) { fmt.Fprintf(&d.out, format+"\n", args...) }

func (d *drawing) open(width, height float64, heading []string) {
	d.add(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" width="%.0f" height="%.0f" role="img" aria-labelledby="joint-plan-title joint-plan-desc" font-family="Arial, sans-serif" font-size="16">`,
		width, height, width, height)
	d.add(`<title id="joint-plan-title">%s</title>`, html.EscapeString(d.plan.heading(d.system)))
	d.add(`<desc id="joint-plan-desc">Joints across, from the left edge: %s. Joints along, from the bottom edge: %s. %s.</desc>`,
		marks(d.plan.Across, d.system), marks(d.plan.Along, d.system), html.EscapeString(strings.Join(d.plan.legend(d.system), ". ")))
	d.add(`<rect width="100%%" height="100%%" fill="#fff"/>`)
	for i, line := range heading {
		d.text(8, 20+lineHeight*float64(i), "start", ` font-weight="700"`, line)
	}
}

func (d *drawing) text(x, y float64, anchor, more, text string) {
	d.add(`<text x="%.1f" y="%.1f" text-anchor="%s" fill="#1c2733"%s>%s</text>`, x, y, anchor, more, html.EscapeString(text))
}

// ground draws the slab panel by panel, and its edges.
func (d *drawing) ground() {
	for _, r := range d.plan.Panels {
		d.add(`<rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" fill="#e6e9ed"/>`, d.x(r.X0), d.y(r.Y1), (r.X1-r.X0)*d.scale, (r.Y1-r.Y0)*d.scale)
	}
}

// joints draws every line between two panels as a joint, and every line between a panel and nothing as an edge.
func (d *drawing) joints() {
	var joint, edge strings.Builder
	xs, ys := d.plan.lines()
	draw := func(mark rune, x0, y0, x1, y1 float64) {
		path := &joint
		switch mark {
		case 0:
			return
		case 'e':
			path = &edge
		}
		fmt.Fprintf(path, "M%.1f %.1fL%.1f %.1f", d.x(x0), d.y(y0), d.x(x1), d.y(y1))
	}
	for j := range ys {
		for i := range xs {
			here := d.plan.cell(xs, ys, i, j)
			if i+1 < len(xs) {
				draw(line(d.plan.cell(xs, ys, i, j-1), here, 'e', 'j'), xs[i], ys[j], xs[i+1], ys[j])
			}
			if j+1 < len(ys) {
				draw(line(d.plan.cell(xs, ys, i-1, j), here, 'e', 'j'), xs[i], ys[j], xs[i], ys[j+1])
			}
		}
	}
	if joint.Len() > 0 {
		d.add(`<path d="%s" fill="none" stroke="#1f5f99" stroke-width="1.6"/>`, joint.String())
	}
	d.add(`<path d="%s" fill="none" stroke="#1c2733" stroke-width="2.2" stroke-linecap="square"/>`, edge.String())
	if d.plan.Slab.Walls {
		d.add(`<path d="%s" fill="none" stroke="#c8590b" stroke-width="5" stroke-opacity="0.55"/>`, edge.String())
	}
}

// columns draws each column as a small square in the diamond that it is boxed out with.
func (d *drawing) columns() {
	const diamond, post = 11.0, 4.0
	for _, c := range d.plan.Slab.Columns {
		x, y := d.x(c.X), d.y(c.Y)
		d.add(`<path d="M%.1f %.1fl%[3]g %[3]gl%[3]g -%[3]gl-%[3]g -%[3]gz" fill="#fff" stroke="#c8590b" stroke-width="2"/>`, x-diamond, y, diamond)
		d.add(`<rect x="%.1f" y="%.1f" width="%g" height="%g" fill="#1c2733"/>`, x-post, y-post, 2*post, 2*post)
	}
}
