package rulebook

import (
	"context"
	"fmt"
	"slices"
	"sort"

	"github.com/open-policy-agent/opa/v1/ast"

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

// Judgement is what a practice came out as for one job. It may be shared by many reviews: read it, change nothing in it.
type Judgement struct {
	Practice *Practice
	Status   string
	Concerns bool     // it is certain that the practice concerns the job
	Reasons  []string // for wrong: the rule's own words for what holds, sorted
	Open     []Open   // for ask: each way it would be wrong, and on what that hangs
	Asks     []string // for ask: the facts that would settle it, sorted
	Numbers  []Number
	Changed  []string       // what packs changed in it
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
	return b.judge(ctx, j, false)
}

// JudgeTersely is Judge without the working of the numbers, which takes a good part of the time.
func (b *Book) JudgeTersely(ctx context.Context, j *job.Job) (*Review, error) {
	return b.judge(ctx, j, true)
}

func (b *Book) judge(ctx context.Context, j *job.Job, tersely bool) (*Review, error) {
	c, err := b.court(j)
	if err != nil {
		return nil, err
	}
	if tersely {
		c.sheet.Tersely()
	}
	all := b.said(j)
	review := &Review{Job: j, Sheet: c.sheet, Judgements: make([]*Judgement, len(b.practices))}
	for i, p := range b.practices {
		key := keyOf(p, all, tersely)
		one, ok := b.memo.find(key)
		if !ok {
			if one, err = c.judge(ctx, p); err != nil {
				return nil, err
			}
			b.memo.keep(key, one)
		}
		review.Judgements[i] = one
	}
	return review, nil
}

// JudgeOne judges a job with one practice alone.
func (b *Book) JudgeOne(ctx context.Context, j *job.Job, id string) (*Judgement, error) {
	p, ok := b.Practice(id)
	if !ok {
		return nil, fmt.Errorf("no practice is called %s", id)
	}
	c, err := b.court(j)
	if err != nil {
		return nil, err
	}
	return c.judge(ctx, p)
}

// court opens the judging of a job.
func (b *Book) court(j *job.Job) (*court, error) {
	b.hangings()
	if len(b.packs) > 0 {
		if err := b.ready(); err != nil {
			return nil, err
		}
	}
	c := &court{book: b, job: j}
	c.sheet = b.Figures.Sheet(j).Without(c.never)
	return c, nil
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
	book   *Book
	job    *job.Job
	sheet  *figure.Sheet
	closed bool // what is not known counts as nothing: while numbers and mends are made

	left  map[string][]string    // what choices that are not stated can still be, by fact
	apart map[string][]*ast.Rule // conditions that stand together under a name
	cited []limit.Cite           // room for the citations of one practice

	tooMany bool // an answer is open in more ways than are worked out here
}

// gather computes the figures named and gives the input as the rules read it.
func (c *court) gather(names []string) map[string]any {
	input := c.job.Input()
	figures, ranges := map[string]any{}, map[string]any{}
	for _, name := range names {
		if r := c.sheet.Result(name); r.Known {
			figures[name] = r.Best
			ranges[name] = map[string]any{"low": r.Low, "high": r.High}
		}
	}
	input["figure"], input["range"] = figures, ranges
	return input
}

// unknowns lists what a practice reads and is not known. Evaluation slows with every unknown, so it is told of no others.
func (c *court) unknowns(p *Practice) []*ast.Term {
	unknowns := []*ast.Term{}
	for _, path := range p.Reads {
		name, isFigure := cutFigure(path)
		switch {
		case isFigure && !c.sheet.Result(name).Known:
			unknowns = append(unknowns, inputTerm("figure", name), inputTerm("range", name))
		case !isFigure && !c.stated(path):
			f, _ := c.book.Facts.Fact(path)
			if c.ruledOut(f) {
				continue
			}
			unknowns = append(unknowns, inputTerm(f.Group, f.Key))
		}
	}
	return unknowns
}

// ruledOut says that a fact has no value in this job: whatever it was, it would contradict what is known. An order by bags
// names no water-cement ratio.
func (c *court) ruledOut(f *job.Fact) bool {
	return slices.ContainsFunc(f.Implies, func(i job.Implication) bool { return i.Stated && c.denied(i) })
}

// never says why a fact has no value in this job; "" where it may have one.
func (c *court) never(path string) string {
	if f, ok := c.book.Facts.Fact(path); ok && c.ruledOut(f) {
		return fmt.Sprintf("what else is stated leaves no %s", f.Name)
	}
	return ""
}

func inputTerm(words ...string) *ast.Term {
	ref := ast.Ref{ast.InputRootDocument}
	for _, w := range words {
		ref = append(ref, ast.InternedTerm(w))
	}
	return ast.NewTerm(ref)
}

// judge judges by one practice: at once where its rule is plain and what it hangs on is known, by partial evaluation otherwise.
func (c *court) judge(ctx context.Context, p *Practice) (*Judgement, error) {
	if p.Pack != "" {
		timed, done := context.WithTimeout(ctx, mostJudgingTime)
		defer done()
		ctx = timed
	}
	one, err := c.status(ctx, p)
	if err == nil {
		err = c.hold(ctx, one)
	}
	if err == nil && one.Status != NotHere {
		err = c.detail(ctx, one)
	}
	if err != nil && p.Pack != "" && ctx.Err() != nil {
		err = fmt.Errorf("the practice %s of pack %s: %w time: it can hold in too many ways; split it into several practices", p.ID, p.Pack, errTooMuch)
	}
	one.Cites = c.cites(one)
	one.Changed = c.book.changed(p, one.Cites)
	return one, err
}

// status gives what a practice comes out as, without its numbers and mends.
func (c *court) status(ctx context.Context, p *Practice) (*Judgement, error) {
	one := &Judgement{Practice: p, Status: NotHere}
	if p.Off != "" || c.decide(one) {
		return one, nil
	}
	return one, c.evaluate(ctx, one)
}

// certain says that nothing is left on which a residue hangs.
func certain(r residue) bool { return len(r.exprs) == 0 }

func (c *court) ask(one *Judgement, wrong []residue) {
	one.Status = Ask
	facts := map[string]bool{}
	for _, r := range c.distinct(wrong) {
		o := c.explain(r)
		for _, f := range o.Facts {
			facts[f] = true
		}
		one.Open = append(one.Open, o)
	}
	one.Asks = keys(facts)
	sort.SliceStable(one.Open, func(i, j int) bool { return len(one.Open[i].Facts) < len(one.Open[j].Facts) })
}
