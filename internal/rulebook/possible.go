package rulebook

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hearsay/internal/job"
)

// possible is what a quantity that is not stated can be in this job: what the dictionary takes as possible, without what would
// say something that is known to be otherwise. Concrete that is not air-entrained has no 7 % of air. ok is false for facts that
// are no quantity.
func (c *court) possible(f *job.Fact) (low, high float64, ok bool) {
	if f.Possible == nil || f.Kind != job.KindQuantity {
		return 0, 0, false
	}
	low, high = f.Possible.Low, f.Possible.High
	for _, i := range f.Implies {
		if !c.denied(i) {
			continue
		}
		switch {
		case i.Above != nil:
			high = math.Min(high, *i.Above)
		case i.Below != nil:
			low = math.Max(low, *i.Below)
		case slices.Contains(i.Is, any(low)):
			low = math.Nextafter(low, high)
		}
	}
	return low, high, low <= high
}

// choices lists what a choice that is not stated can be in this job; ok is false for facts that are none.
func (c *court) choices(f *job.Fact) (left []string, ok bool) {
	if f.Kind != job.KindChoice {
		return nil, false
	}
	if left, ok := c.left[f.Path]; ok {
		return left, true
	}
	for _, one := range f.Choices {
		says := func(i job.Implication) bool {
			return !i.Stated && c.denied(i) && slices.ContainsFunc(i.Is, func(v any) bool { return strings.EqualFold(fmt.Sprint(v), one.Value) })
		}
		if !slices.ContainsFunc(f.Implies, says) {
			left = append(left, one.Value)
		}
	}
	if c.left == nil {
		c.left = map[string][]string{}
	}
	c.left[f.Path] = left
	return left, true
}

// amongChoices judges whether a choice that is not stated is one of some values: it is where it can be nothing else, and is not
// where it can be none of them.
func amongChoices(left, values []string) verdict {
	can, canElse := false, false
	for _, one := range left {
		if slices.Contains(values, one) {
			can = true
		} else {
			canElse = true
		}
	}
	return side(can && !canElse, !can)
}

// denied says that what an implication would say is known to be otherwise.
func (c *court) denied(i job.Implication) bool {
	_, ok := c.job.Denies(i)
	return ok
}
