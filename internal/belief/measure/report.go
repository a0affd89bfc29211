package main

import (
	"cmp"
	"fmt"
	"math"
	"os"
	"slices"
	"text/tabwriter"

	"hearsay/internal/belief"
)

// share counts how many of how many.
type share struct{ yes, of int }

func (s *share) count(yes bool) {
	s.of++
	if yes {
		s.yes++
	}
}

// String gives the share with its 95 % interval (Wilson, Probable Inference, 1927).
func (s share) String() string {
	if s.of == 0 {
		return "-"
	}
	const z = 1.96
	n, p := float64(s.of), float64(s.yes)/float64(s.of)
	middle, half := p+z*z/(2*n), z*math.Sqrt(p*(1-p)/n+z*z/(4*n*n))
	return fmt.Sprintf("%5.1f %% (%.1f to %.1f; %d of %d)", 100*p, 100*max(0, middle-half)/(1+z*z/n), 100*(middle+half)/(1+z*z/n), s.yes, s.of)
}

type tally struct {
	stance, first, three, verdict, answered, precise, hard, silent, far share
}

func (t *tally) add(r result) {
	if r.belief == "" {
		t.silent.count(!r.decision.Answered)
		t.far.count(r.decision.Far)
		return
	}
	right := r.accepts(r.near[0])
	t.first.count(right)
	t.three.count(slices.ContainsFunc(r.near, r.accepts))
	if right && r.stance != "" {
		t.stance.count(r.decision.Stance == r.stance)
	}
	t.answered.count(r.decision.Answered)
	if !r.decision.Answered {
		return
	}
	t.verdict.count(r.decision.Verdict == r.wanted)
	t.precise.count(right && r.decision.Verdict == r.wanted)
	t.hard.count(hard(r.decision.Verdict, r.wanted))
}

// hard tells whether a verdict says the opposite of the right one.
func hard(given, wanted belief.Verdict) bool {
	return given == belief.Myth && wanted == belief.Holds || given == belief.Holds && wanted == belief.Myth
}

func report(title string, results []result, misses bool) error {
	all := &tally{}
	voices := map[string]*tally{}
	for _, r := range results {
		all.add(r)
		if voices[r.voice] == nil {
			voices[r.voice] = &tally{}
		}
		voices[r.voice].add(r)
	}
	fmt.Println(title)
	w := tabwriter.NewWriter(os.Stdout, 0, 0, 2, ' ', 0)
	row := func(name string, of func(*tally) share) {
		fmt.Fprintf(w, "%s\t%v", name, of(all))
		for _, v := range belief.VoiceNames() {
			if voices[v] != nil {
				fmt.Fprintf(w, "\t%s %v", v, of(voices[v]))
			}
		}
		fmt.Fprintln(w)
	}
	row("right belief first", func(t *tally) share { return t.first })
	row("among the first three", func(t *tally) share { return t.three })
	row("stance right where the belief is", func(t *tally) share { return t.stance })
	row("answered", func(t *tally) share { return t.answered })
	row("of these verdict right", func(t *tally) share { return t.verdict })
	row("of these belief and verdict right", func(t *tally) share { return t.precise })
	row("of these the opposite said", func(t *tally) share { return t.hard })
	row("silent on what is not covered", func(t *tally) share { return t.silent })
	row("of these said so outright", func(t *tally) share { return t.far })
	if err := w.Flush(); err != nil {
		return err
	}
	curve(results)
	if misses {
		list(results)
	}
	return nil
}

// curve shows what each threshold would give, to choose one by.
func curve(results []result) {
	fmt.Println("answer at  answered  belief and verdict right  opposite  silent on what is not covered")
	for at := 0.40; at < 0.96; at += 0.05 {
		var answered, precise, opposite, silent share
		for _, r := range results {
			yes := r.decision.Trust >= at
			if r.belief == "" {
				silent.count(!yes)
				continue
			}
			answered.count(yes)
			if yes {
				verdict := r.decision.Given
				precise.count(r.accepts(r.near[0]) && verdict == r.wanted)
				opposite.count(hard(verdict, r.wanted))
			}
		}
		f := func(s share) float64 { return 100 * float64(s.yes) / float64(max(s.of, 1)) }
		fmt.Printf("%9.2f  %8.1f  %24.1f  %8.1f  %12.1f\n", at, f(answered), f(precise), f(opposite), f(silent))
	}
}

// list prints what was answered wrong, the surest first.
func list(results []result) {
	wrong := slices.DeleteFunc(slices.Clone(results), func(r result) bool {
		return !r.decision.Answered || r.belief != "" && r.accepts(r.near[0]) && r.decision.Verdict == r.wanted
	})
	slices.SortStableFunc(wrong, func(a, b result) int { return cmp.Compare(b.decision.Confidence, a.decision.Confidence) })
	for _, r := range wrong {
		fmt.Printf("%.2f %s, wanted %s %s, given %s %s: %s\n", r.decision.Confidence, r.voice, r.belief, r.wanted, r.near[0], r.decision.Verdict, r.text)
	}
}
