package rulebook

import (
	"fmt"
	"io/fs"

	"hearsay/internal/document"
	"hearsay/internal/figure"
	"hearsay/internal/folder"
	"hearsay/internal/job"
)

// OrderLine is one thing that an order names.
type OrderLine struct {
	Name   string `yaml:"-"`
	Fact   string `yaml:"fact"`
	Figure string `yaml:"figure"` // what proposes it; "" for none
	At     string `yaml:"at"`     // least, most, or "" for about so much
	Low    string `yaml:"low"`    // or the limits between which it lies
	High   string `yaml:"high"`
	By     string `yaml:"by"` // the fact by which these limits are looked up
}

// Proposal is what the figures or limits propose for a line of an order, in the unit of its fact.
type Proposal struct {
	Low, High float64
	At        string // least, most, or ""
	Unit      string
}

// OrderLines lists what an order names, in the order it is read out (order.yaml).
func (b *Book) OrderLines() []OrderLine { return b.order }

func (b *Book) loadOrder(fsys fs.FS) error {
	files, err := folder.Each(fsys, "order.yaml")
	if err != nil {
		return err
	}
	for _, f := range files {
		entries, err := document.Read[OrderLine](f.Name, f.Text)
		if err != nil {
			return f.Wrap(err)
		}
		for _, e := range entries {
			line := e.Value
			line.Name = e.Name
			if err := b.checkLine(line); err != nil {
				return f.Wrap(fmt.Errorf("%s: line %d: %s: %w", f.Name, e.Line, e.Name, err))
			}
			b.order = append(b.order, line)
		}
	}
	return nil
}

func (b *Book) checkLine(line OrderLine) error {
	for _, path := range []string{line.Fact, line.By} {
		if _, ok := b.Facts.Fact(path); path != "" && !ok {
			return fmt.Errorf("%s is no fact; the nearest is %s", path, b.Facts.Nearest(path))
		}
	}
	if _, ok := b.Figures.Find(line.Figure); line.Figure != "" && !ok {
		return fmt.Errorf("%s is no figure; `hearsay figure` lists them", line.Figure)
	}
	for _, path := range []string{line.Low, line.High} {
		if _, ok := b.Limits.Find("limit." + path); path != "" && !ok {
			return fmt.Errorf("%s is no limit; `hearsay rules` names those that exist", path)
		}
	}
	if line.At != "" && line.At != "least" && line.At != "most" {
		return fmt.Errorf("at is least or most, not %q", line.At)
	}
	return nil
}

// tooWide is how wide a range, high over low, is too wide to propose.
const tooWide = 1.6

// Propose gives what is proposed for a line in this job; ok is false where nothing is, or too wide a range.
func (b *Book) Propose(line OrderLine, j *job.Job, sheet *figure.Sheet) (p Proposal, ok bool) {
	f, _ := b.Facts.Fact(line.Fact)
	p = Proposal{At: line.At, Unit: f.Unit}
	switch {
	case line.Figure != "":
		r := sheet.Result(line.Figure)
		p.Low, p.High = r.BestLow, r.BestHigh
		if r.Known {
			p.Low, p.High = r.Best, r.Best
		}
		ok = (r.Known || r.Bounded) && p.High <= tooWide*p.Low
	case line.Low != "":
		var known bool
		p.Low, ok = b.numberOf(line.Low, line.By, j)
		p.High, known = b.numberOf(line.High, line.By, j)
		ok = ok && known
	}
	return p, ok
}

func (b *Book) numberOf(path, by string, j *job.Job) (float64, bool) {
	l, ok := b.Limits.Find("limit." + path)
	if !ok {
		return 0, false
	}
	v := l.Value
	if by != "" {
		key, _ := j.Value(by)
		table, _ := v.(map[string]any)
		v = table[fmt.Sprint(key)]
	}
	return asFloat(v)
}
