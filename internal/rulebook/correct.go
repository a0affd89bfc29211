package rulebook

import (
	"context"
	"fmt"
	"slices"

	"hearsay/internal/job"
)

// Correction is a job with the least changes that leave nothing wrong, and what no change of the order can mend.
type Correction struct {
	Job     *job.Job
	Changes []Change
	Acts    []*Judgement // must happen at the site first: no number mends them
	Left    []*Judgement // could not be put right together with the rest
	After   *Review      // the corrected job, judged again
}

// Change is one fact put right.
type Change struct {
	Fact     *job.Fact
	Was      string // as it was stated; "" when it was not
	Now      string
	Practice *Practice
	Reasons  []string
}

// Correct puts the corrections of what is wrong into a job, worst first, judging again after each, and then takes out every
// change that turns out not to be needed. The job given is not changed.
func (b *Book) Correct(ctx context.Context, j *job.Job) (*Correction, error) {
	c := &Correction{Job: j}
	tried := map[string]int{}
	for {
		review, err := b.Judge(ctx, c.Job)
		if err != nil {
			return nil, err
		}
		c.After = review
		next := c.next(review, tried)
		if next == nil {
			break
		}
		tried[next.Practice.ID]++
		if err := c.apply(b.Facts, next); err != nil {
			return nil, fmt.Errorf("%s: %w", next.Practice.ID, err)
		}
	}
	if err := c.prune(ctx, b, j); err != nil {
		return nil, err
	}
	for _, one := range wrongOnes(c.After) {
		if one.Practice.Act {
			c.Acts = append(c.Acts, one)
		} else {
			c.Left = append(c.Left, one)
		}
	}
	return c, nil
}

// mostTries is how often a practice may be mended anew, after another correction made it wrong again.
const mostTries = 3

func (c *Correction) next(review *Review, tried map[string]int) *Judgement {
	for _, one := range wrongOnes(review) {
		if !one.Practice.Act && len(one.Mend) > 0 && tried[one.Practice.ID] < mostTries {
			return one
		}
	}
	return nil
}

// wrongOnes lists what is wrong, worst first and in the order of the work.
func wrongOnes(review *Review) []*Judgement {
	var list []*Judgement
	for _, one := range review.Judgements {
		if one.Status == Wrong {
			list = append(list, one)
		}
	}
	slices.SortStableFunc(list, func(a, b *Judgement) int {
		if d := slices.Index(Severities, a.Practice.Severity) - slices.Index(Severities, b.Practice.Severity); d != 0 {
			return d
		}
		return slices.Index(Stages, a.Practice.Stage) - slices.Index(Stages, b.Practice.Stage)
	})
	return list
}

func (c *Correction) apply(facts *job.Dictionary, one *Judgement) error {
	mended, err := Mended(facts, c.Job, one.Mend)
	if err != nil {
		return err
	}
	for path := range one.Mend {
		now, ok := mended.Find(path)
		if !ok {
			continue
		}
		c.Changes = slices.DeleteFunc(c.Changes, func(old Change) bool { return old.Fact.Path == path })
		change := Change{Fact: now.Fact, Now: job.Written(now), Practice: one.Practice, Reasons: one.Reasons}
		c.Changes = append(c.Changes, change)
	}
	c.Job = mended
	return nil
}

// prune takes out each change without which nothing is wrong either, save what it adds to the order, and notes what each fact was before.
func (c *Correction) prune(ctx context.Context, b *Book, before *job.Job) error {
	wrong := len(wrongOnes(c.After))
	for _, change := range slices.Clone(c.Changes) {
		if _, said := before.Find(change.Fact.Path); !said && change.Fact.Group == "order" {
			continue // an order that left it out should say it
		}
		without, err := restored(b.Facts, c.Job, before, change.Fact.Path)
		if err != nil {
			continue
		}
		review, err := b.Judge(ctx, without)
		if err != nil {
			return err
		}
		if len(wrongOnes(review)) <= wrong {
			c.Job, c.After = without, review
			c.Changes = slices.DeleteFunc(c.Changes, func(x Change) bool { return x.Fact == change.Fact })
		}
	}
	for i := range c.Changes {
		if was, ok := before.Find(c.Changes[i].Fact.Path); ok {
			c.Changes[i].Was = was.Text
		}
	}
	return nil
}

// restored gives the job with one fact as it was before.
func restored(facts *job.Dictionary, j, before *job.Job, path string) (*job.Job, error) {
	out := j.Clone()
	out.Drop(path)
	if was, ok := before.Find(path); ok && was.From == "" {
		if err := out.Replace(facts, path, rewritten(was)); err != nil {
			return nil, err
		}
	}
	return out, out.Follow(facts)
}

func rewritten(s job.Stated) any {
	switch v := s.Value.(type) {
	case float64:
		if s.Fact.Kind == job.KindQuantity {
			return map[string]any{"value": v, "unit": s.Fact.Unit}
		}
	case bool, string:
		return v
	}
	return s.Text
}
