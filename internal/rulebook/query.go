package rulebook

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"hearsay/internal/job"
)

// Query is what a stock Open Policy Agent needs to judge a job with the bundle: the input for data.practice, and, for its
// compile API, the paths that are unknown.
type Query struct {
	Revision string         `json:"revision"` // of the rulebook
	Input    map[string]any `json:"input"`
	Unknowns []string       `json:"unknowns"`
	Query    string         `json:"query"`
	// Within are figures and facts that are known as a range only, and what in that range stands for them in the input: with it a
	// stock server finds wrong what is wrong over the whole range. They stay among the unknowns.
	Within map[string]Within `json:"within,omitempty"`
}

// Within is a value that stands for a range.
type Within struct {
	Low   float64 `json:"low"`
	High  float64 `json:"high"`
	Taken float64 `json:"taken"`
}

// Query gives the input of a job as the rules read it, figures computed.
func (b *Book) Query(ctx context.Context, j *job.Job) (*Query, error) {
	review, err := b.Judge(ctx, j)
	if err != nil {
		return nil, err
	}
	c := &court{book: b, job: j, sheet: review.Sheet}
	q := &Query{Revision: b.revision, Input: c.gather(b.figuresRead), Query: "data.practice[topic][name].wrong[reason]", Within: map[string]Within{}}
	unknown := map[string]bool{}
	for _, p := range b.practices {
		for _, u := range c.unknowns(p) {
			unknown[u.String()] = true
		}
	}
	q.Unknowns = keys(unknown)
	return q, c.standIns(ctx, q, review)
}

// standIns puts values within their ranges into the input for what is known as a range only, where something is wrong over the
// whole range, and so that nothing else becomes wrong by them.
func (c *court) standIns(ctx context.Context, q *Query, review *Review) error {
	for _, one := range review.Judgements {
		if one.Status != Wrong {
			continue
		}
		if same, err := c.findsTheSame(ctx, q, review, one.Practice); same || err != nil {
			if err != nil {
				return err
			}
			continue
		}
		figures, facts := c.ranges(q, one.Practice)
		for _, open := range [][]standIn{figures, append(figures[:len(figures):len(figures)], facts...)} {
			found, err := c.choose(ctx, q, review, one, open)
			if err != nil {
				return err
			}
			if found {
				break
			}
		}
	}
	return nil
}

// standIn is what is known as a range only: a figure, or a fact that nobody stated.
type standIn struct {
	group, name     string
	least, most     float64
	figure          bool
	farLow, farHigh float64 // the whole range: beyond that of a figure's best value, beyond what is usual of a fact
}

// ranges gives what a practice reads that is known as a range only, and has no stand-in yet.
func (c *court) ranges(q *Query, p *Practice) (figures, facts []standIn) {
	for _, path := range p.Reads {
		if _, given := q.Within[path]; given {
			continue
		}
		if name, ok := cutFigure(path); ok {
			if r := c.sheet.Result(name); r.Bounded {
				figures = append(figures, standIn{"figure", name, r.BestLow, r.BestHigh, true, r.Low, r.High})
			}
		} else if f, _ := c.book.Facts.Fact(path); f.Kind == job.KindQuantity && f.Possible != nil && !c.stated(path) && !c.ruledOut(f) {
			one := standIn{group: f.Group, name: f.Key, least: f.Possible.Low, most: f.Possible.High}
			if f.Usual != nil { // which least else takes exception to
				one.least, one.most = f.Usual.Low, f.Usual.High
			}
			one.farLow, one.farHigh = f.Possible.Low, f.Possible.High
			facts = append(facts, one)
		}
	}
	return figures, facts
}

// choices is what may stand for a range: nothing, its ends, its middle, and of a figure the range alone, without a value
// in it, or the most that a fact can be.
const (
	choices = 5
	further = 4
)

func (q *Query) stand(s standIn, choice int) {
	group, ok := q.Input[s.group].(map[string]any)
	if !ok {
		group = map[string]any{}
		q.Input[s.group] = group
	}
	path := s.group + "." + s.name
	if choice == 0 {
		delete(q.Within, path)
		delete(group, s.name)
		if s.figure {
			delete(q.Input["range"].(map[string]any), s.name)
		}
		return
	}
	value := [choices]float64{1: s.least, 2: s.most, 3: (s.least + s.most) / 2, further: s.farHigh}[choice]
	q.Within[path] = Within{s.farLow, s.farHigh, value}
	group[s.name] = value
	if choice == further && s.figure {
		delete(group, s.name)
	}
	if s.figure {
		q.Input["range"].(map[string]any)[s.name] = map[string]any{"low": s.farLow, "high": s.farHigh}
	}
}

// choose looks for stand-ins with which the practice comes out as it was judged and all others that read them find nothing that was
// not found: all alike at first, then changed one by one where that brings it nearer. Where it finds none it leaves them out: a
// stock server then finds less, and never more.
func (c *court) choose(ctx context.Context, q *Query, review *Review, one *Judgement, open []standIn) (bool, error) {
	readers := c.readersOf(open)
	for first := 1; first < choices && len(open) > 0; first++ {
		chosen := make([]int, len(open))
		for i, s := range open {
			chosen[i] = first
			q.stand(s, first)
		}
		for i := -1; i < len(open); i++ { // the start, then each in turn
			if i >= 0 {
				if err := c.turn(ctx, q, one, open[i], &chosen[i]); err != nil {
					return false, err
				}
			}
			same, err := c.findsTheSame(ctx, q, review, one.Practice)
			if same && err == nil {
				same, err = c.findsNoMore(ctx, q, review, readers...)
			}
			if same || err != nil {
				return same, err
			}
		}
	}
	for _, s := range open {
		q.stand(s, 0)
	}
	return false, nil
}

// turn gives one stand-in the choice with which the practice comes nearest to how it was judged.
func (c *court) turn(ctx context.Context, q *Query, one *Judgement, s standIn, chosen *int) error {
	best := -1 << 30
	for choice := range choices {
		q.stand(s, choice)
		found, err := c.found(ctx, q, one.Practice)
		if err != nil {
			return err
		}
		score := 0
		for _, reason := range found {
			if slices.Contains(one.Reasons, reason) {
				score++
			} else {
				score -= len(one.Reasons) + 1
			}
		}
		if score > best || score == best && choice == *chosen {
			best, *chosen = score, choice
		}
	}
	q.stand(s, *chosen)
	return nil
}

// readersOf lists the practices that read any of these.
func (c *court) readersOf(open []standIn) []*Practice {
	var readers []*Practice
	for _, p := range c.book.practices {
		if slices.ContainsFunc(open, func(s standIn) bool { return slices.Contains(p.Reads, s.group+"."+s.name) }) {
			readers = append(readers, p)
		}
	}
	return readers
}

// read gives the part of the input that a practice reads.
func (q *Query) read(p *Practice) map[string]any {
	part := map[string]any{}
	take := func(group, name string) {
		from, _ := q.Input[group].(map[string]any)
		v, ok := from[name]
		if !ok {
			return
		}
		if part[group] == nil {
			part[group] = map[string]any{}
		}
		part[group].(map[string]any)[name] = v
	}
	for _, path := range p.Reads {
		group, name, _ := strings.Cut(path, ".")
		take(group, name)
		if group == "figure" {
			take("range", name)
		}
	}
	return part
}

// findsTheSame says whether practices come out of the input as they were judged.
func (c *court) findsTheSame(ctx context.Context, q *Query, review *Review, practices ...*Practice) (bool, error) {
	return c.compare(ctx, q, review, practices, slices.Equal)
}

// findsNoMore says whether practices find nothing in the input that they were not judged to find.
func (c *court) findsNoMore(ctx context.Context, q *Query, review *Review, practices ...*Practice) (bool, error) {
	return c.compare(ctx, q, review, practices, func(found, judged []string) bool {
		return !slices.ContainsFunc(found, func(reason string) bool { return !slices.Contains(judged, reason) })
	})
}

// compare compares the reasons that practices find in the input with those judged.
func (c *court) compare(ctx context.Context, q *Query, review *Review, practices []*Practice, agree func(found, judged []string) bool) (bool, error) {
	for _, one := range review.Judgements {
		if !slices.Contains(practices, one.Practice) || one.Practice.Off != "" {
			continue
		}
		found, err := c.found(ctx, q, one.Practice)
		if err != nil || !agree(found, one.Reasons) {
			return false, err
		}
	}
	return true, nil
}

// found evaluates a practice with the input as a stock server does, and gives the reasons found, sorted.
func (c *court) found(ctx context.Context, q *Query, p *Practice) ([]string, error) {
	prepared, err := c.book.detail(ctx, p)
	if err != nil {
		return nil, err
	}
	input, err := ast.InterfaceToValue(q.read(p))
	if err != nil {
		return nil, err
	}
	result, err := prepared.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", p.File, err)
	}
	return reasonsIn(result), nil
}

// reasonsIn reads the reasons out of the document of a practice, sorted.
func reasonsIn(result rego.ResultSet) []string {
	var reasons []string
	for _, r := range result {
		document, _ := r.Bindings["rule"].(map[string]any)
		wrong, _ := document["wrong"].([]any)
		for _, w := range wrong {
			reasons = append(reasons, fmt.Sprint(w))
		}
	}
	slices.Sort(reasons)
	return reasons
}
