package main

import (
	"strings"
	"testing"

	"hearsay/internal/belief"
)

// Wilson's interval for 81 of 263 is 0.2553 to 0.3662 (Newcombe, Two-sided confidence intervals for the single proportion,
// Statistics in Medicine 17, 1998, table I, method 3); for 15 of 148 it is 0.0624 to 0.1605, for 0 of 20 it is 0 to 0.1611.
func TestIntervals(t *testing.T) {
	for s, want := range map[share]string{{81, 263}: "(25.5 to 36.6;", {15, 148}: "(6.2 to 16.0;", {0, 20}: "(0.0 to 16.1;"} {
		if got := s.String(); !strings.Contains(got, want) {
			t.Errorf("%d of %d: %s, wanted %s", s.yes, s.of, got, want)
		}
	}
}

func TestTally(t *testing.T) {
	said := func(near, verdict string, answered bool) result {
		return result{belief: "a/b", also: []string{"a/c"}, wanted: belief.Holds, near: []string{near, "x/y", "a/c"},
			decision: belief.Decision{Answered: answered, Verdict: belief.Verdict(verdict)}}
	}
	var got tally
	got.add(said("a/b", "holds", true))
	got.add(said("a/c", "myth", true))
	got.add(said("x/z", "depends", true))
	got.add(said("a/b", "unknown", false))
	got.add(result{near: []string{"a/b"}, decision: belief.Decision{Far: true}})
	want := tally{first: share{3, 4}, three: share{4, 4}, answered: share{3, 4}, verdict: share{1, 3}, precise: share{1, 3}, hard: share{1, 3}, silent: share{1, 1}, far: share{1, 1}}
	if got != want {
		t.Errorf("%+v, wanted %+v", got, want)
	}
}
