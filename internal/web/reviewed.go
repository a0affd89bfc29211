package web

import (
	"fmt"
	"sort"
	"strings"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// reviewed is a judged job as its page shows it.
type reviewed struct {
	Verdict  string // the whole in one line
	Worst    string // the severity of the worst that is wrong; "" when nothing is
	Chips    []chip // stated, of which some stand first and the rest is folded away on a small screen
	First    []chip
	Rest     []chip
	Follows  []chip // from what is stated
	Dropped  []chip
	Refused  []refusal
	Unread   []string
	Warnings []string
	Wrong    []finding
	Question *question
	More     []*question
	Waiting  int // questions beyond those shown
	Skipped  []link
	Open     []hanging
	Right    []link
	NotHere  []link
	Cautions []string
}

// chip is one fact as it was understood.
type chip struct {
	Fact   string
	Name   string
	Value  string
	Words  string // that it was read from
	From   string // the name of what it follows from
	Field  *field
	Action string // where a correction is sent
}

// Long says that the value is too long to stay on one line.
func (c chip) Long() bool { return len(c.Value) > 24 }

// finding is something wrong.
type finding struct {
	report.Finding
	Title   string
	Numbers []number
	Picture string // the name of a picture of one of its numbers; "" where there is none
}

// number is one number of a finding, printed.
type number struct {
	Name                   string
	Single                 bool   // one side stands alone
	Yours, Right           string // "" where it is not known
	YoursRange, RightRange string
	Figure                 string
	Working, Assumed       []string
}

// question is a fact to ask for, with where to answer.
type question struct {
	report.Question
	Field *field
}

// hanging is a practice whose answer hangs on something nobody has said.
type hanging struct {
	link
	If []string
}

// mostChips is how many facts are shown on a small screen before what is wrong.
const mostChips = 10

// mostAsked is how many questions stand below the next one.
const mostAsked = 5

// shownReview makes the page's view of a review.
func (s *Server) shownReview(t texts, u *understood, r *report.Review, action string) *reviewed {
	v := &reviewed{Refused: u.Refused, Unread: r.Unread, Warnings: r.Warnings}
	v.chips(s.Book, u, action, r.System)
	cautions := map[string]bool{}
	for _, f := range r.Findings {
		to := link{"/practices/" + f.Practice, f.What, f.Practice}
		switch f.Status {
		case rulebook.Wrong:
			one := shownFinding(f, r.System)
			one.Picture = pictureOf(f, u.Job)
			v.Wrong = append(v.Wrong, one)
			for _, c := range f.Cautions {
				if !cautions[c] {
					cautions[c] = true
					v.Cautions = append(v.Cautions, c)
				}
			}
		case rulebook.Ask:
			v.Open = append(v.Open, shownOpen(to, f))
		case rulebook.Right:
			v.Right = append(v.Right, to)
		default:
			v.NotHere = append(v.NotHere, to)
		}
	}
	v.First = v.Chips
	if len(v.Chips) > mostChips+1 {
		v.First, v.Rest = v.Chips[:mostChips], v.Chips[mostChips:]
	}
	v.questions(s.Book, r)
	v.verdict(t, r)
	for _, path := range u.Job.NotKnown {
		if f, ok := s.Book.Facts.Fact(path); ok {
			v.Skipped = append(v.Skipped, link{"/facts/" + path, f.Name, path})
		}
	}
	return v
}

// verdict puts the whole into one line, the worst first.
func (v *reviewed) verdict(t texts, r *report.Review) {
	switch {
	case len(v.Wrong) > 0:
		v.Worst = v.Wrong[0].Severity
		v.Verdict = t.count("verdict.wrong", len(v.Wrong), "worst", v.Wrong[0].What)
	case len(v.Right) == 0:
		v.Verdict = t.say("verdict.little")
	case len(v.Open) == 0:
		v.Verdict = t.say("verdict.sound", "right", len(v.Right), "facts", len(r.Understood))
	default:
		v.Verdict = t.say("verdict.sofar", "right", len(v.Right), "open", len(v.Open))
	}
}

func (v *reviewed) chips(b *rulebook.Book, u *understood, action string, system quantity.System) {
	for _, s := range u.Job.Stated {
		c := chip{Action: action, Fact: s.Fact.Path, Name: s.Fact.Name, Value: value(s, system), Field: filled(s, system)}
		if u.Spoken[s.Fact.Path] && !s.Taken {
			c.Words = s.Text
		}
		if f, ok := b.Facts.Fact(s.From); ok {
			c.From = f.Name
			v.Follows = append(v.Follows, c)
			continue
		}
		v.Chips = append(v.Chips, c)
	}
	for _, d := range u.Dropped {
		if f, ok := b.Facts.Fact(d.Path); ok {
			v.Dropped = append(v.Dropped, chip{Fact: d.Path, Name: f.Name, Words: d.Text})
		}
	}
}

// value prints what is stated, as one would say it.
func value(s job.Stated, system quantity.System) string {
	switch v := s.Value.(type) {
	case []float64:
		items := make([]string, len(v))
		for i, n := range v {
			items[i] = quantity.Quantity{Value: n, Unit: s.Fact.Unit}.Print(system)
		}
		return strings.Join(items, ", ")
	case []map[string]float64:
		if len(v) == 0 {
			return "0 h"
		}
		return fmt.Sprintf("%g h", v[len(v)-1]["hour"])
	}
	return desk.Spoken(s, system)
}

// correct puts an answer that was not taken back into the field it was given in, and says whether there is one.
func (v *reviewed) correct(m *mistake) (placed bool) {
	for _, c := range v.Chips {
		if c.Fact == m.Fact {
			c.Field.correct(m)
			placed = true
		}
	}
	asked := v.More
	if v.Question != nil {
		asked = append(asked[:len(asked):len(asked)], v.Question)
	}
	for _, q := range asked {
		if q.Fact == m.Fact {
			q.Field.correct(m)
			placed = true
		}
	}
	return placed
}

func (f *field) correct(m *mistake) { f.Value, f.Unit, f.Error = m.Value, m.Unit, m.Why }

func (v *reviewed) questions(b *rulebook.Book, r *report.Review) {
	for i, q := range r.Questions {
		if i > mostAsked {
			v.Waiting = len(r.Questions) - i
			break
		}
		f, ok := b.Facts.Fact(q.Fact)
		if !ok {
			continue
		}
		one := &question{q, newField(f, r.System)}
		if v.Question == nil {
			v.Question = one
		} else {
			v.More = append(v.More, one)
		}
	}
}

func shownFinding(f report.Finding, system quantity.System) finding {
	out := finding{Finding: f, Title: f.What}
	for _, n := range f.Numbers {
		out.Numbers = append(out.Numbers, shownNumber(n, system))
	}
	return out
}

func shownNumber(n report.Number, system quantity.System) number {
	print := func(v *float64) string {
		if v == nil {
			return ""
		}
		return quantity.Quantity{Value: *v, Unit: n.Unit}.Print(system)
	}
	out := number{Name: n.Name, Single: n.Single, Yours: print(n.Yours), Right: print(n.Right), Figure: n.Figure, Working: n.Working, Assumed: n.Assumed}
	if n.Low == nil || n.High == nil {
		return out
	}
	// The range is that of the right number, or of yours where there is no right one; a bounded number is its range.
	between := betweenOf(print(n.Low), print(n.High))
	side, beside := &out.Right, &out.RightRange
	if n.Right == nil && n.Yours != nil {
		side, beside = &out.Yours, &out.YoursRange
	}
	if n.Bounded || *side == "" {
		*side = between
	} else {
		*beside = "(" + between + ")"
	}
	return out
}

// betweenOf prints a range, the unit once where both ends have the same.
func betweenOf(low, high string) string {
	a, unit, one := strings.Cut(low, " ")
	_, other, two := strings.Cut(high, " ")
	if one && two && unit == other && !strings.Contains(unit, " ") {
		return a + " – " + high
	}
	return low + " – " + high
}

// mostWays is how many of the ways in which a practice could be wrong are shown.
const mostWays = 2

func shownOpen(to link, f report.Finding) hanging {
	o := hanging{link: to}
	for _, way := range f.Open {
		o.If = append(o.If, strings.Join(way.If, " and "))
	}
	sort.SliceStable(o.If, func(i, j int) bool { return len(o.If[i]) < len(o.If[j]) })
	o.If = o.If[:min(mostWays, len(o.If))]
	return o
}
