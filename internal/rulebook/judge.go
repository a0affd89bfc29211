package rulebook

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"sort"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/limit"
)

// Status of a practice for one job.
const (
	Wrong   = "wrong"
	Right   = "right"
	Ask     = "ask"
	NotHere = "not here"
)

// Judgement is what a practice came out as for one job.
type Judgement struct {
	Practice *Practice
	Status   string
	Concerns bool     // it is certain that the practice concerns the job
	Reasons  []string // for wrong: the rule's own words for what holds, sorted
	Open     []Open   // for ask: each way it would be wrong, and on what that hangs
	Asks     []string // for ask: the facts that would settle it, sorted
	Numbers  []Number
	Mend     map[string]any // facts that put it right, in the units of the facts
	Cites    []limit.Cite
}

// Open is one way a practice would be wrong: all its conditions would have to hold.
type Open struct {
	Reason     string
	Conditions []string // in plain words
	Facts      []string // the facts its conditions hang on
	NoFigure   []string // figures it hangs on that cannot be computed, with why
}

// Review is the judgement of a whole job.
type Review struct {
	Job        *job.Job
	Judgements []*Judgement // one for every practice, by id
	Sheet      *figure.Sheet
}

// Judge judges a job with every practice.
func (b *Book) Judge(ctx context.Context, j *job.Job) (*Review, error) {
	if err := b.ready(); err != nil {
		return nil, fmt.Errorf("the rulebook does not compile: %w", err)
	}
	c := &court{book: b, job: j, sheet: b.Figures.Sheet(j)}
	if err := c.open(b.figuresRead); err != nil {
		return nil, err
	}
	here, err := c.partial(ctx, b.here)
	if err != nil {
		return nil, err
	}
	wrong, err := c.partial(ctx, b.wrong)
	if err != nil {
		return nil, err
	}
	review := &Review{Job: j, Sheet: c.sheet}
	for _, p := range b.practices {
		one, err := c.judge(ctx, p, here[p.ID], wrong[p.ID])
		if err != nil {
			return nil, err
		}
		review.Judgements = append(review.Judgements, one)
	}
	return review, nil
}

// JudgeOne judges a job with one practice alone, which is much quicker than with all.
func (b *Book) JudgeOne(ctx context.Context, j *job.Job, id string) (*Judgement, error) {
	if err := b.ready(); err != nil {
		return nil, fmt.Errorf("the rulebook does not compile: %w", err)
	}
	p, ok := b.Practice(id)
	if !ok {
		return nil, fmt.Errorf("no practice is called %s", id)
	}
	one, err := b.single(ctx, p)
	if err != nil {
		return nil, err
	}
	c := &court{book: b, job: j, sheet: b.Figures.Sheet(j)}
	if err := c.open(figuresOf(p)); err != nil {
		return nil, err
	}
	here, err := c.partial(ctx, one.here)
	if err != nil {
		return nil, err
	}
	wrong, err := c.partial(ctx, one.wrong)
	if err != nil {
		return nil, err
	}
	return c.judge(ctx, p, here["/"], wrong["/"])
}

func figuresOf(practices ...*Practice) []string {
	names := map[string]bool{}
	for _, p := range practices {
		for _, path := range p.Reads {
			if name, ok := cutFigure(path); ok {
				names[name] = true
			}
		}
	}
	return keys(names)
}

// court is the state of judging one job.
type court struct {
	book     *Book
	job      *job.Job
	sheet    *figure.Sheet
	input    ast.Value
	bounded  ast.Value // the input with the ranges of the figures that are known as a range only
	unknowns []*ast.Term
}

// open builds the input from the known facts and the figures named, and the list of what is not known.
func (c *court) open(names []string) error {
	input := c.gather(names)
	var err error
	if c.input, err = ast.InterfaceToValue(input); err != nil {
		return err
	}
	c.bounded, err = ast.InterfaceToValue(c.bound(input, names))
	return err
}

// bound adds the ranges of those figures that are known as a range only.
func (c *court) bound(input map[string]any, names []string) map[string]any {
	ranges := maps.Clone(input["range"].(map[string]any))
	for _, name := range names {
		if r := c.sheet.Result(name); r.Bounded {
			ranges[name] = map[string]any{"low": r.Low, "high": r.High}
		}
	}
	bounded := maps.Clone(input)
	bounded["range"] = ranges
	return bounded
}

// gather computes the figures named, notes what is not known, and gives the input as the rules read it.
func (c *court) gather(names []string) map[string]any {
	input := c.job.Input()
	figures, ranges := map[string]any{}, map[string]any{}
	for _, name := range names {
		r := c.sheet.Result(name)
		if !r.Known {
			c.unknown("figure", name)
			c.unknown("range", name)
			continue
		}
		figures[name] = r.Best
		ranges[name] = map[string]any{"low": r.Low, "high": r.High}
	}
	for _, g := range c.book.Facts.Groups {
		if input[g.Name] == nil {
			c.unknown(g.Name)
			continue
		}
		for _, f := range g.Facts {
			if _, ok := c.job.Value(f.Path); !ok {
				c.unknown(g.Name, f.Key)
			}
		}
	}
	input["figure"], input["range"] = figures, ranges
	return input
}

func (c *court) unknown(words ...string) {
	ref := ast.Ref{ast.InputRootDocument}
	for _, w := range words {
		ref = append(ref, ast.InternedTerm(w))
	}
	c.unknowns = append(c.unknowns, ast.NewTerm(ref))
}

// partial runs a partial query and sorts the residual queries by practice.
func (c *court) partial(ctx context.Context, q rego.PreparedPartialQuery) (map[string][]residue, error) {
	result, err := q.Partial(ctx, rego.EvalParsedInput(c.input), rego.EvalParsedUnknowns(c.unknowns))
	if err != nil {
		return nil, err
	}
	support := supportRules(result.Support)
	byID := map[string][]residue{}
	for _, query := range result.Queries {
		r := c.residue(query, support)
		if r.never {
			continue
		}
		byID[r.topic+"/"+r.id] = append(byID[r.topic+"/"+r.id], r)
	}
	return byID, nil
}

func (c *court) judge(ctx context.Context, p *Practice, here, wrong []residue) (*Judgement, error) {
	one := &Judgement{Practice: p, Cites: c.book.cites(p, c.sheet)}
	reasons := map[string]bool{}
	for _, r := range wrong {
		if len(r.exprs) == 0 {
			reasons[r.reason] = true
		}
	}
	switch {
	case len(reasons) > 0:
		one.Status, one.Reasons = Wrong, keys(reasons)
	case len(wrong) > 0:
		c.ask(one, wrong)
	case len(here) == 0:
		one.Status = NotHere
	default:
		one.Status = Right
	}
	one.Concerns = one.Status == Wrong || slices.ContainsFunc(here, func(r residue) bool { return len(r.exprs) == 0 })
	if one.Status == NotHere {
		return one, nil
	}
	return one, c.detail(ctx, one)
}

func (c *court) ask(one *Judgement, wrong []residue) {
	one.Status = Ask
	facts := map[string]bool{}
	for _, r := range wrong {
		o := c.explain(r)
		for _, f := range o.Facts {
			facts[f] = true
		}
		one.Open = append(one.Open, o)
	}
	one.Asks = keys(facts)
	sort.SliceStable(one.Open, func(i, j int) bool { return len(one.Open[i].Facts) < len(one.Open[j].Facts) })
}
