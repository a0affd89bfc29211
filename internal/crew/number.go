package crew

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"

	"hearsay/internal/figure"
	"hearsay/internal/job"
)

// kind is one sort of question whose answer a figure computes. The sentence that asks it is the text ask.<figure>.
type kind struct {
	figure string
	belief string
	draws  []draw
	fixed  map[string]string // facts that every such job has
	slips  []slip
}

// draw gives a fact at random: from, from+step … up to to.
type draw struct {
	fact           string
	from, to, step float64
	unit           string // the fact's own
}

// slip is a usual mistake and the number it leads to. Its text is slip.<key>.
type slip struct {
	key   string
	value func(v values, right float64) float64 // NaN: the mistake makes no difference here
	// instead, where value is nil, is computed with the figure from facts changed.
	instead func(v values) map[string]float64
}

// values are the facts drawn, each in its own unit.
type values map[string]float64

// On a list of choices, wrong numbers keep clear of the right one and of each other by this share.
const clear = 0.03

// wrongChoices is how many wrong numbers stand beside the right one.
const wrongChoices = 3

// mostDraws is how many jobs are drawn to find one that can be asked.
const mostDraws = 200

// numberQuestion asks for a number on a job drawn at random. The right choice is what the figure computes, and no other
// lies in its range.
func (t *Trainer) numberQuestion(r *rand.Rand, id string, fresh func(string) bool) (*Question, error) {
	var fit []kind
	if t.book != nil {
		for _, k := range kinds() {
			if k.belief == id {
				fit = append(fit, k)
			}
		}
	}
	if len(fit) == 0 {
		return nil, ErrAllAsked
	}
	for range mostDraws {
		k := fit[r.IntN(len(fit))]
		v := k.draw(r)
		name := k.name(v)
		if !fresh(name) {
			continue
		}
		q, err := t.ask(r, k, v)
		if err != nil {
			return nil, err
		}
		if q != nil {
			q.ID = name
			return q, nil
		}
	}
	return nil, ErrAllAsked
}

func (k kind) draw(r *rand.Rand) values {
	v := values{}
	for _, d := range k.draws {
		steps := int(math.Round((d.to-d.from)/d.step)) + 1
		v[d.fact] = d.from + d.step*float64(r.IntN(steps))
	}
	return v
}

// name tells the question from every other by its numbers.
func (k kind) name(v values) string {
	var parts []string
	for _, d := range k.draws {
		parts = append(parts, fmt.Sprintf("%s=%.6g", d.fact, v[d.fact]))
	}
	return k.figure + ": " + strings.Join(parts, ", ")
}

// compute gives the figure for the facts drawn.
func (t *Trainer) compute(k kind, v values) (*figure.Result, error) {
	j := job.New()
	for _, d := range k.draws {
		if err := j.State(t.book.Facts, d.fact, t.printer.exact(v[d.fact], d.unit)); err != nil {
			return nil, fmt.Errorf("question %s: %w", k.figure, err)
		}
	}
	for fact, value := range k.fixed {
		if err := j.State(t.book.Facts, fact, value); err != nil {
			return nil, fmt.Errorf("question %s: %w", k.figure, err)
		}
	}
	if err := j.Follow(t.book.Facts); err != nil {
		return nil, fmt.Errorf("question %s: %w", k.figure, err)
	}
	return t.book.Figures.Sheet(j).Result(k.figure), nil
}

// ask makes the question for a job, or none where the figure is not known for it or too few mistakes keep clear of it.
func (t *Trainer) ask(r *rand.Rand, k kind, v values) (*Question, error) {
	right, err := t.compute(k, v)
	if err != nil || !right.Known || right.Best == 0 {
		return nil, err
	}
	unit := right.Figure.Unit
	options := []Option{{Text: t.printer.quantity(right.Best, unit), Value: right.Best}}
	for _, s := range append(slices.Clone(k.slips), guesses()...) {
		wrong, err := t.slipped(k, s, v, right.Best)
		if err != nil {
			return nil, err
		}
		o := Option{Text: t.printer.quantity(wrong, unit), Value: wrong, Slip: t.words.Say("slip." + s.key)}
		if len(options) <= wrongChoices && isClear(o, options, right) {
			options = append(options, o)
		}
	}
	if len(options) <= wrongChoices {
		return nil, nil
	}
	slices.SortFunc(options, func(a, b Option) int { return int(math.Copysign(1, a.Value-b.Value)) })
	q := &Question{Belief: k.belief, Kind: k.figure, Options: options, Unit: unit}
	q.Key = slices.IndexFunc(options, func(o Option) bool { return o.Slip == "" })
	var names []string
	for _, d := range k.draws {
		names = append(names, d.fact, t.printer.quantity(v[d.fact], d.unit))
	}
	q.Text = t.printer.text(t.words.Say("ask."+k.figure, names...))
	for _, line := range right.Working {
		q.Why = append(q.Why, t.printer.text(t.words.working(line)))
	}
	if right.Low != right.High {
		q.Why = append(q.Why, t.words.Say("quiz.range", "low", t.printer.quantity(right.Low, unit), "high", t.printer.quantity(right.High, unit)))
	}
	if len(q.Why) == 0 {
		q.Why = []string{t.printer.text(t.words.working(right.Figure.Method))}
	}
	return q, nil
}

func (t *Trainer) slipped(k kind, s slip, v values, right float64) (float64, error) {
	if s.value != nil {
		return s.value(v, right), nil
	}
	changed := values{}
	for fact, value := range v {
		changed[fact] = value
	}
	for fact, value := range s.instead(v) {
		changed[fact] = value
	}
	other, err := t.compute(k, changed)
	if err != nil || !other.Known {
		return math.NaN(), err
	}
	return other.Best, nil
}

// isClear says whether a wrong number can stand beside the others: outside the range of what is right, and far enough from
// every choice that the two read differently.
func isClear(o Option, beside []Option, right *figure.Result) bool {
	if math.IsNaN(o.Value) || math.IsInf(o.Value, 0) || o.Value < 0 || o.Value >= right.Low && o.Value <= right.High {
		return false
	}
	for _, b := range beside {
		if o.Text == b.Text || math.Abs(o.Value-b.Value) < clear*math.Abs(right.Best) {
			return false
		}
	}
	return true
}

// guesses fill the choices where the usual mistakes of a question are too few.
func guesses() []slip {
	var list []slip
	for _, factor := range []float64{2, 0.5, 1.5, 0.7, 3, 0.3, 5, 0.1, 10} {
		list = append(list, slip{key: "guess", value: func(_ values, right float64) float64 { return factor * right }})
	}
	return list
}
