package layout_test

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"hearsay/internal/layout"
	"hearsay/internal/quantity"
)

func plan(t testing.TB, s layout.Slab) layout.Plan {
	t.Helper()
	p, err := layout.New(s)
	require.NoError(t, err)
	return p
}

// randomSlab draws a slab, half of the time with an opening at a corner, in a side or in the middle, and with columns.
func randomSlab(t *rapid.T) layout.Slab {
	feet := func(name string, low, high float64) float64 {
		return math.Round(2*rapid.Float64Range(low, high).Draw(t, name)) / 2
	}
	s := layout.Slab{Length: feet("length", 3, 250), Width: feet("width", 3, 150), Thickness: 5, Spacing: feet("spacing", 4, 18), Aspect: 1.5}
	if rapid.Bool().Draw(t, "opening") {
		x0, y0 := math.Floor(feet("x0", 0, s.Length-2)), math.Floor(feet("y0", 0, s.Width-2))
		o := layout.Rect{X0: x0, Y0: y0, X1: min(s.Length, x0+1+feet("opening length", 0, s.Length/2)), Y1: min(s.Width, y0+1+feet("opening width", 0, s.Width/2))}
		if o.X1-o.X0 < s.Length || o.Y1-o.Y0 < s.Width {
			s.Openings = append(s.Openings, o)
		}
	}
	for range rapid.IntRange(0, 3).Draw(t, "columns") {
		c := layout.Point{X: feet("column x", 0, s.Length), Y: feet("column y", 0, s.Width)}
		if len(s.Openings) == 0 || c.X < s.Openings[0].X0 || c.X > s.Openings[0].X1 {
			s.Columns = append(s.Columns, layout.Point{X: min(c.X, s.Length), Y: min(c.Y, s.Width)})
		}
	}
	return s
}

func area(r layout.Rect) float64 { return (r.X1 - r.X0) * (r.Y1 - r.Y0) }

// TestPlanHolds: whatever the slab, its panels cover it once, no side of a panel is longer than the spacing, a joint runs
// through every inside corner, and where a panel is too long for its width a note says so.
func TestPlanHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := randomSlab(t)
		p, err := layout.New(s)
		require.NoError(t, err)
		covered, worst := 0.0, 1.0
		for _, r := range p.Panels {
			covered += area(r)
			a, b := r.X1-r.X0, r.Y1-r.Y0
			if a > s.Spacing*(1+1e-6) || b > s.Spacing*(1+1e-6) {
				t.Fatalf("a panel of %v × %v is longer than %v", a, b, s.Spacing)
			}
			worst = max(worst, a/b, b/a)
		}
		want := s.Length * s.Width
		for _, o := range s.Openings {
			want -= area(o)
			for _, x := range []float64{o.X0, o.X1} {
				if x > 0 && x < s.Length && !slices.Contains(p.Across, x) {
					t.Fatalf("no joint runs through the corner at x = %v: %v", x, p.Across)
				}
			}
			for _, y := range []float64{o.Y0, o.Y1} {
				if y > 0 && y < s.Width && !slices.Contains(p.Along, y) {
					t.Fatalf("no joint runs through the corner at y = %v: %v", y, p.Along)
				}
			}
		}
		if math.Abs(covered-want) > 1e-6*want {
			t.Fatalf("the panels cover %v of %v ft²", covered, want)
		}
		noted := strings.Contains(strings.Join(p.Notes, "\n"), "too long for its width")
		if noted != (worst > s.Aspect*(1+1e-9)) {
			t.Fatalf("worst panel %v, notes %v", worst, p.Notes)
		}
	})
}

// TestPlainSlabsAreSquareEnough: a plain rectangle at least as wide as it takes comes out within the largest length over
// width, and as Divide has it.
func TestPlainSlabsAreSquareEnough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := layout.Slab{Length: rapid.Float64Range(2, 300).Draw(t, "length"), Width: rapid.Float64Range(2, 300).Draw(t, "width"),
			Spacing: rapid.Float64Range(5, 18).Draw(t, "spacing"), Aspect: 1.5}
		p, err := layout.New(s)
		require.NoError(t, err)
		if len(p.Notes) > 0 {
			t.Fatalf("%v: %v", s, p.Notes)
		}
		along, across := layout.Divide(s.Length, s.Width, s.Spacing, s.Aspect)
		if along != len(p.Across)+1 || across != len(p.Along)+1 {
			t.Fatalf("%v divides into %d × %d, its plan has %d × %d", s, along, across, len(p.Across)+1, len(p.Along)+1)
		}
	})
}

// TestColumnsGetJoints: joints run both ways through a column that does not stand too close to an edge.
func TestColumnsGetJoints(t *testing.T) {
	p := plan(t, layout.Slab{Length: 60, Width: 40, Spacing: 15, Aspect: 1.5, Columns: []layout.Point{{X: 20, Y: 20}, {X: 40, Y: 1}}})
	assert.Subset(t, p.Across, []float64{20, 40})
	assert.Contains(t, p.Along, 20.0)
	assert.NotContains(t, p.Along, 1.0)
	require.Len(t, p.Notes, 1)
	assert.Contains(t, p.Notes[0], "turn its box-out")
}

func ell() layout.Slab {
	return layout.Slab{Length: 36, Width: 24, Thickness: 4, Spacing: 10, Aspect: 1.5, JointDepth: 1, Openings: []layout.Rect{{X0: 22, Y0: 14, X1: 36, Y1: 24}}}
}

func TestText(t *testing.T) {
	text := plan(t, layout.Slab{Length: 20, Width: 10, Thickness: 4, Spacing: 10, Aspect: 1.5, JointDepth: 1, Walls: true}).Text(quantity.US)
	assert.Equal(t, `Joint plan: 20 ft × 10 ft × 4 in, 2 panels, joints no farther apart than 10 ft
  +===========================+===========================+
`+strings.Repeat("  |                           :                           |\n", 13)+`  +===========================+===========================+
Joints across, from the left edge: 10 ft
Joints along, from the bottom edge: none
Panels: 2 × 10 ft long, 10 ft wide
Joint depth: 1 in
Isolation strip through the full depth all around
`, text)
	ell := plan(t, ell()).Text(quantity.US)
	assert.Contains(t, ell, "Joints across, from the left edge: 7 ft 4 in, 14 ft 8 in, 22 ft, 29 ft")
	assert.Contains(t, plan(t, layout.Slab{Length: 20, Width: 10, Spacing: 10, Aspect: 1.5}).Text(quantity.SI), "6.10 m × 3.05 m, 2 panels")
}

// elements parses a drawing as XML, so that it is well formed, and gives the texts of its elements by name.
func elements(t testing.TB, svg string) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	d := xml.NewDecoder(strings.NewReader(svg))
	var open []string
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return found
		}
		require.NoError(t, err)
		switch v := token.(type) {
		case xml.StartElement:
			open = append(open, v.Name.Local)
			found[v.Name.Local] = append(found[v.Name.Local], "")
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				texts := found[open[len(open)-1]]
				texts[len(texts)-1] += string(v)
			}
		}
	}
}

func TestSVG(t *testing.T) {
	p := plan(t, ell())
	found := elements(t, p.SVG(quantity.US))
	require.Len(t, found["title"], 1)
	assert.Contains(t, found["title"][0], "36 ft × 24 ft × 4 in, 13 panels")
	assert.Contains(t, found["desc"][0], "Joints across, from the left edge: 7 ft 4 in, 14 ft 8 in, 22 ft, 29 ft.", "the text alternative says where the joints are")
	assert.Len(t, found["rect"], 1+len(p.Panels), "the ground and every panel")
	assert.Subset(t, found["text"], []string{"36 ft", "24 ft", "3 × 7 ft 4 in", "2 × 7 ft", "10 ft", "contraction joint"})
	assert.Contains(t, p.SVG(quantity.US), `role="img"`)
}

// TestEveryDrawingIsWellFormed: whatever the slab, in both systems.
func TestEveryDrawingIsWellFormed(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p, err := layout.New(randomSlab(rt))
		require.NoError(rt, err)
		for _, system := range []quantity.System{quantity.US, quantity.SI} {
			svg := p.SVG(system)
			elements(t, svg)
			if strings.Contains(svg, "NaN") || strings.Contains(svg, "%!") || strings.Contains(p.Text(system), "%!") {
				rt.Fatalf("a number is missing in %s", svg)
			}
		}
	})
}

func TestWhatIsNoSlabIsRefused(t *testing.T) {
	for name, s := range map[string]layout.Slab{
		"no length":        {Width: 10, Spacing: 10, Aspect: 1.5},
		"negative width":   {Length: 10, Width: -1, Spacing: 10, Aspect: 1.5},
		"not a number":     {Length: math.NaN(), Width: 10, Spacing: 10, Aspect: 1.5},
		"endless":          {Length: math.Inf(1), Width: 10, Spacing: 10, Aspect: 1.5},
		"no spacing":       {Length: 10, Width: 10, Aspect: 1.5},
		"inches for feet":  {Length: 5000, Width: 10, Spacing: 0.5, Aspect: 1.5},
		"aspect below 1":   {Length: 10, Width: 10, Spacing: 10, Aspect: 0.5},
		"joint too deep":   {Length: 10, Width: 10, Spacing: 10, Aspect: 1.5, Thickness: 4, JointDepth: 5},
		"opening outside":  {Length: 10, Width: 10, Spacing: 10, Aspect: 1.5, Openings: []layout.Rect{{X0: 5, Y0: 5, X1: 12, Y1: 8}}},
		"column outside":   {Length: 10, Width: 10, Spacing: 10, Aspect: 1.5, Columns: []layout.Point{{X: 12, Y: 5}}},
		"nothing is left":  {Length: 10, Width: 10, Spacing: 10, Aspect: 1.5, Openings: []layout.Rect{{X1: 10, Y1: 10}}},
		"column in a hole": {Length: 10, Width: 10, Spacing: 10, Aspect: 1.5, Openings: []layout.Rect{{X0: 2, Y0: 2, X1: 8, Y1: 8}}, Columns: []layout.Point{{X: 5, Y: 5}}},
	} {
		_, err := layout.New(s)
		assert.Error(t, err, name)
	}
}
