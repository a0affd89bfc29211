package rulebook

import (
	"context"
	"encoding/json"
	"fmt"
	"math"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
)

// Number is one number of a finding: what the job has or causes, and what it should be. A side that does not apply or is
// not known is nil. Low and High are the range of the right number, or of yours where there is no right one.
type Number struct {
	Name    string
	Yours   *float64
	Right   *float64
	Low     *float64
	High    *float64
	Unit    string
	Bounded bool     // known as the range from Low to High only
	Single  bool     // the rule tells one side alone: there is nothing to hold it against
	Figure  string   // the figure it comes from, "" when it is a fact or a limit
	Working []string // how that figure was computed
	Assumed []string
}

// detail makes the numbers and mends of a practice out of what is known: the facts, the figures, and the ranges of those
// figures that are known as a range only, so that a correction can lie on the safe side of one (input.range.x.low).
func (c *court) detail(ctx context.Context, one *Judgement) error {
	p := one.Practice
	if len(p.Numbers) == 0 && one.Status != Wrong {
		return nil
	}
	plain, ok := c.book.plain[p.ID]
	var numbers []entry
	var mends map[string]any
	if ok {
		numbers, mends, ok = c.documents(plain, p.Numbers, one.Status == Wrong)
	}
	if !ok {
		var err error
		if numbers, mends, err = c.evaluateDetail(ctx, p); err != nil {
			return err
		}
	}
	one.Numbers = make([]Number, 0, len(p.Numbers))
	for i, name := range p.Numbers {
		if i < len(numbers) && numbers[i].given {
			if n, ok := c.number(name, &numbers[i]); ok {
				one.Numbers = append(one.Numbers, n)
			}
		}
	}
	if one.Status == Wrong {
		c.costs(one)
		one.Mend = mends
		for k, v := range one.Mend {
			if n, ok := asFloat(v); ok {
				one.Mend[k] = n
			}
		}
	}
	return nil
}

// evaluateDetail has the evaluator make the number and the mend document.
func (c *court) evaluateDetail(ctx context.Context, p *Practice) (numbers []entry, mends map[string]any, err error) {
	q, err := c.book.detail(ctx, p)
	if err != nil {
		return nil, nil, err
	}
	input, err := c.input(p, true)
	if err != nil {
		return nil, nil, err
	}
	result, err := q.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", p.File, err)
	}
	if len(result) == 0 {
		return nil, nil, nil
	}
	rule, _ := result[0].Bindings["rule"].(map[string]any)
	given, _ := rule["number"].(map[string]any)
	for _, name := range p.Numbers {
		numbers = append(numbers, entryOf(given[name]))
	}
	mends, _ = rule["mend"].(map[string]any)
	return numbers, mends, nil
}

// costs adds what a wrong practice costs, as far as prices are given.
func (c *court) costs(one *Judgement) {
	for _, name := range one.Practice.Costs {
		if r := c.sheet.Result(name); r.Known {
			n := Number{Name: r.Figure.Title, Single: true}
			n.Yours = c.side(&n, "figure."+name)
			one.Numbers = append(one.Numbers, n)
		}
	}
}

// number reads one entry of a rule's `number` document. A side is a number, or the path of a fact or figure
// ("order.slump", "figure.wcm"), or one end of a figure's range ("range.wcm.low"); an entry of which neither side is known
// is left out.
func (c *court) number(name string, e *entry) (Number, bool) {
	n := Number{Name: name, Single: e.yours == nil || e.right == nil}
	n.Unit, _ = e.unit.(string)
	n.Yours = c.side(&n, e.yours)
	yours := n
	n.Low, n.High, n.Bounded = nil, nil, false
	if n.Right = c.side(&n, e.right); n.Right == nil {
		n.Low, n.High, n.Bounded = yours.Low, yours.High, yours.Bounded
	} else if yours.Bounded { // at least so far off
		n.Yours = nearer(yours.Low, yours.High, *n.Right)
	}
	if low, ok := asFloat(e.low); ok {
		n.Low = &low
	}
	if high, ok := asFloat(e.high); ok {
		n.High = &high
	}
	return n, n.Yours != nil || n.Right != nil || n.Low != nil || n.High != nil
}

// nearer gives the end of a range that lies nearer to a number.
func nearer(low, high *float64, to float64) *float64 {
	if low == nil || high == nil || math.Abs(*low-to) < math.Abs(*high-to) {
		return low
	}
	return high
}

func (c *court) side(n *Number, written any) *float64 {
	if v, ok := asFloat(written); ok {
		return &v
	}
	path, ok := written.(string)
	if !ok {
		return nil
	}
	name, end, isFigure := cutRange(path)
	if !isFigure {
		f, _ := c.book.Facts.Fact(path)
		v, known := c.job.Value(path)
		number, isNumber := v.(float64)
		if !known || !isNumber {
			if f != nil {
				n.otherSide(f.Unit)
			}
			return nil
		}
		n.Unit = f.Unit
		return &number
	}
	r := c.sheet.Result(name)
	low, high := r.Low, r.High
	if r.Bounded { // as the rules compare it
		low, high = r.BestLow, r.BestHigh
	}
	if !r.Known && (!r.Bounded || high > vague*low) {
		if f, ok := c.book.Figures.Find(name); ok {
			n.otherSide(f.Unit)
		}
		return nil
	}
	n.Unit, n.Figure, n.Bounded = r.Figure.Unit, name, r.Bounded
	n.Working, n.Assumed = append(n.Working, r.Working...), append(n.Assumed, r.Assumed...)
	best := r.Best
	switch end {
	case "low":
		best = r.Low
	case "high":
		best = r.High
	}
	if low != high {
		n.Low, n.High = &low, &high
	}
	return &best
}

// otherSide gives the other side, which may be a bare number, the unit of one that is not known.
func (n *Number) otherSide(unit string) {
	if n.Unit == "" {
		n.Unit = unit
	}
}

// vague is how wide a range may be, high over low, to be worth printing where facts are missing.
const vague = 10

func asFloat(v any) (float64, bool) {
	switch n := v.(type) {
	case json.Number:
		f, err := n.Float64()
		return f, err == nil
	case float64:
		return n, true
	case int:
		return float64(n), true
	}
	return 0, false
}

// Modules gives the parsed rules by file name, for tools that look into them.
func (b *Book) Modules() map[string]*ast.Module { return b.modules }
