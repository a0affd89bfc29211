package main

import (
	"context"
	"strings"

	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// judged counts the practices found wrong and the figures of their findings.
func (r *result) judged(book *rulebook.Book, t *totals) error {
	judged, err := book.Judge(context.Background(), r.job)
	if err != nil {
		return err
	}
	review := report.NewReview(book, judged, quantity.US)
	review.Compute(book, judged)
	status := map[string]report.Finding{}
	for _, f := range review.Findings {
		status[f.Practice] = f
	}
	for _, id := range r.d.Must {
		t.must.of++
		f, known := status[id]
		switch {
		case !known:
			r.log("must %s: there is no such practice yet", id)
		case f.Status == rulebook.Wrong:
			t.must.found++
		default:
			r.log("must %s: %s %v", id, f.Status, f.Asks)
		}
	}
	for _, id := range r.d.MustNot {
		t.alarms.of++
		if f := status[id]; f.Status == rulebook.Wrong {
			t.alarms.found++
			r.log("false alarm %s: %v", id, f.Reasons)
		}
	}
	for _, n := range r.d.Numbers {
		t.inside.of++
		if r.inside(review, n) {
			t.inside.found++
		} else {
			r.log("figure not found: %s %v to %v %s", n.Name, n.Low, n.High, n.Unit)
		}
	}
	return nil
}

// inside says whether a number of some finding, or a figure that the facts give, lies in the interval, has a unit of its
// kind, and a name that shares a word with it.
func (r *result) inside(review *report.Review, n interval) bool {
	for _, f := range review.Findings {
		for _, have := range f.Numbers {
			if !alike(have.Name, n.Name) {
				continue
			}
			for _, v := range []*float64{have.Yours, have.Right, have.Low, have.High} {
				if v != nil && within(*v, have.Unit, n) {
					return true
				}
			}
		}
	}
	for _, s := range review.Figures {
		for _, v := range []*float64{s.Value, &s.Low, &s.High} {
			if v != nil && alike(s.Title, n.Name) && within(*v, s.Unit, n) {
				return true
			}
		}
	}
	return false
}

func within(v float64, unit string, n interval) bool {
	if unit == "1" && n.Unit == "" {
		unit = "" // a count
	}
	if d := map[string]string{"F": "dF", "C": "dC"}[n.Unit]; unit == "dF" && d != "" {
		n.Unit = d // a difference of temperatures
	}
	q, err := quantity.Quantity{Value: v, Unit: plain(unit)}.In(plain(n.Unit))
	if err != nil {
		if plain(n.Unit) != plain(unit) {
			return false
		}
		q.Value = v
	}
	slack := 1e-6 * max(1, n.High)
	return q.Value >= n.Low-slack && q.Value <= n.High+slack
}

// alike says whether two names share a word that says something.
func alike(a, b string) bool {
	for w := range strings.FieldsSeq(strings.ToLower(a)) {
		if w = strings.Trim(w, ",()"); len(w) < 4 && !short[w] || dull[w] {
			continue
		}
		if strings.Contains(strings.ToLower(b), strings.TrimSuffix(w, "s")) {
			return true
		}
	}
	return false
}

// short are the words of three letters that say something.
var short = map[string]bool{"age": true, "air": true, "gap": true}

var dull = map[string]bool{"with": true, "this": true, "that": true, "from": true, "needed": true, "least": true, "largest": true, "most": true, "than": true, "before": true, "after": true, "allowed": true, "time": true}
