// Package report owns how a review, a claim's answer or a figure is shown: the one result type that every output is made
// from, and its renderings.
package report

import (
	"slices"
	"sync"

	"hearsay/internal/job"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
)

// Review is what every rendering of a reviewed job is made from, and its JSON form.
type Review struct {
	Title      string          `json:"title,omitempty"`
	Understood []Understood    `json:"understood"`
	Follows    []Understood    `json:"follows"` // what follows from that
	Unread     []string        `json:"unread"`
	Warnings   []string        `json:"warnings"`
	Findings   []Finding       `json:"findings"`
	Questions  []Question      `json:"questions"`
	Made       release.Made    `json:"made"`
	Figures    []Sum           `json:"figures,omitempty"` // all that the facts give, where that was asked for
	System     quantity.System `json:"-"`
}

// Understood is one fact as it was read.
type Understood struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Text  string `json:"text"`
	From  string `json:"from,omitempty"` // the fact it follows from, where it was not said
	Name  string `json:"name"`
	Taken bool   `json:"taken,omitempty"` // nobody said it: it goes without saying
}

// Finding is what one practice came out as.
type Finding struct {
	Practice string         `json:"practice"`
	Status   string         `json:"status"`
	Severity string         `json:"severity"`
	Stage    string         `json:"stage"`
	Concerns bool           `json:"concerns"` // it is certain that it concerns this job
	What     string         `json:"what"`
	Why      string         `json:"why"`
	Do       string         `json:"do"`
	Reasons  []string       `json:"reasons"`
	Numbers  []Number       `json:"numbers"`
	Open     []Open         `json:"open"` // for ask: what it would be wrong by
	Asks     []string       `json:"asks"`
	Sources  []Source       `json:"sources"`
	Cautions []string       `json:"cautions"`
	Changed  []string       `json:"changed,omitempty"` // what packs changed in it
	Mend     map[string]any `json:"mend,omitempty"`
	Act      bool           `json:"act,omitempty"`
}

// Number is one number of a finding. Absent sides are null.
type Number struct {
	Name    string   `json:"name"`
	Yours   *float64 `json:"yours"`
	Right   *float64 `json:"right"`
	Low     *float64 `json:"low"`
	High    *float64 `json:"high"`
	Unit    string   `json:"unit"`
	Bounded bool     `json:"bounded,omitempty"` // known as the range from low to high only
	Single  bool     `json:"-"`                 // there is one side alone
	Figure  string   `json:"figure,omitempty"`
	Working []string `json:"working,omitempty"`
	Assumed []string `json:"assumed,omitempty"`
}

// Open is one way a practice would be wrong.
type Open struct {
	If    []string `json:"if"`
	Facts []string `json:"facts"`
	Note  []string `json:"note,omitempty"`
}

// Source is a cited work with the place in it.
type Source struct {
	Work    string `json:"work"`
	Title   string `json:"title"`
	Where   string `json:"where,omitempty"`
	Edition string `json:"edition,omitempty"`
	Basis   string `json:"basis"`
}

// Question is one fact worth asking for.
type Question struct {
	Fact     string   `json:"fact"`
	Question string   `json:"question"`
	Settles  []string `json:"settles"`
}

// Reporter makes the results of many reviews, and puts the texts that they share into the unit system once. Several goroutines
// may use one.
type Reporter struct {
	book   *rulebook.Book
	system quantity.System
	shared sync.Map // text of the rulebook to what it reads as, a practice or a citation to its JSON
}

// NewReporter makes results in the unit system asked for.
func NewReporter(b *rulebook.Book, system quantity.System) *Reporter {
	return &Reporter{book: b, system: system}
}

// plain is Plain for a text of the rulebook, of which there are so many and no more.
func (p *Reporter) plain(text string) string {
	if known, ok := p.shared.Load(text); ok {
		return known.(string)
	}
	plain := Plain(text, p.system)
	p.shared.Store(text, plain)
	return plain
}

// NewReview makes the result of one review, in the unit system asked for.
func NewReview(b *rulebook.Book, r *rulebook.Review, system quantity.System) *Review {
	return NewReporter(b, system).Review(r)
}

// Review makes the result from a judged job.
func (p *Reporter) Review(r *rulebook.Review) *Review {
	out := p.around(r)
	judged := worstFirst(r.Judgements)
	out.Findings = make([]Finding, 0, len(judged))
	for _, j := range judged {
		out.Findings = append(out.Findings, p.finding(j))
	}
	return out
}

// around makes all of the result but its findings.
func (p *Reporter) around(r *rulebook.Review) *Review {
	system := p.system
	out := &Review{Made: p.book.Made(), Title: r.Job.Title, System: system, Follows: []Understood{}, Unread: []string{}, Warnings: []string{}, Findings: []Finding{}, Questions: []Question{}}
	out.Understood = make([]Understood, 0, len(r.Job.Stated))
	for _, s := range r.Job.Stated {
		if s.From != "" || s.Taken {
			out.Follows = append(out.Follows, understood(s, system))
			continue
		}
		out.Understood = append(out.Understood, understood(s, system))
	}
	out.Warnings = append(out.Warnings, r.Job.Warnings...)
	out.Unread = append(out.Unread, r.Job.Unread...)
	for _, q := range p.book.Questions(r) {
		out.Questions = append(out.Questions, Question{q.Fact, q.Text, q.Settles})
	}
	return out
}

// worstFirst sorts by rank.
func worstFirst(judged []*rulebook.Judgement) []*rulebook.Judgement {
	type ranked struct {
		rank int
		*rulebook.Judgement
	}
	all := make([]ranked, len(judged))
	for i, j := range judged {
		all[i] = ranked{rank(j), j}
	}
	slices.SortStableFunc(all, func(a, b ranked) int { return a.rank - b.rank })
	sorted := make([]*rulebook.Judgement, len(all))
	for i, one := range all {
		sorted[i] = one.Judgement
	}
	return sorted
}

func understood(s job.Stated, system quantity.System) Understood {
	u := Understood{Fact: s.Fact.Path, Value: s.Value, Unit: s.Fact.Unit, Text: s.Text, From: s.From, Name: s.Fact.Name, Taken: s.Taken}
	if v, ok := s.Value.(float64); ok && s.Fact.Kind == job.KindQuantity {
		q := quantity.Quantity{Value: v, Unit: s.Fact.Unit}.To(system)
		u.Value, u.Unit = q.Value, q.Unit
	}
	return u
}

var statusRank = map[string]int{rulebook.Wrong: 0, rulebook.Ask: 1, rulebook.Right: 2, rulebook.NotHere: 3}
var severityRank = map[string]int{"stop": 0, "fix": 1, "mind": 2}
var stageRank = map[string]int{"order": 0, "before": 1, "during": 2, "after": 3}

// rank puts what is wrong first, the worst of it before the rest, and then in the order of the work.
func rank(j *rulebook.Judgement) int {
	return statusRank[j.Status]*100 + severityRank[j.Practice.Severity]*10 + stageRank[j.Practice.Stage]
}

func (p *Reporter) finding(j *rulebook.Judgement) Finding {
	one, f := j.Practice, p.job(j)
	f.Practice, f.Severity, f.Stage, f.What, f.Act = one.ID, one.Severity, one.Stage, one.Title, one.Act
	f.Why, f.Do = p.plain(one.Why), p.plain(one.Do)
	f.Sources, f.Cautions = Sources(p.book.Limits, j.Cites), []string{}
	for _, id := range one.Cautions {
		if c, ok := p.book.Caution(id); ok {
			f.Cautions = append(f.Cautions, p.plain(c.Text))
		}
	}
	return f
}

// job makes what a finding says of this job alone.
func (p *Reporter) job(j *rulebook.Judgement) Finding {
	system := p.system
	f := Finding{Status: j.Status, Concerns: j.Concerns, Reasons: plainAll(j.Reasons, system), Asks: nonNil(j.Asks), Numbers: []Number{},
		Open: []Open{}, Mend: j.Mend, Changed: j.Changed}
	f.Numbers = slices.Grow(f.Numbers, len(j.Numbers))
	for _, n := range j.Numbers {
		f.Numbers = append(f.Numbers, number(n, system))
	}
	for _, o := range j.Open {
		f.Open = append(f.Open, Open{plainAll(o.Conditions, system), o.Facts, plainAll(o.NoFigure, system)})
	}
	return f
}

func number(n rulebook.Number, system quantity.System) Number {
	out := Number{Name: n.Name, Unit: n.Unit, Bounded: n.Bounded, Single: n.Single, Figure: n.Figure, Working: plainAll(n.Working, system), Assumed: plainAll(n.Assumed, system)}
	for _, side := range []struct{ from, to **float64 }{{&n.Yours, &out.Yours}, {&n.Right, &out.Right}, {&n.Low, &out.Low}, {&n.High, &out.High}} {
		if *side.from != nil {
			q := quantity.Quantity{Value: **side.from, Unit: n.Unit}.To(system)
			*side.to, out.Unit = &q.Value, q.Unit
		}
	}
	return out
}

// Sources turns citations into what is shown of them.
func Sources(limits *limit.Book, cites []limit.Cite) []Source {
	sources := []Source{}
	for _, c := range cites {
		w, ok := limits.Work(c.Source)
		if !ok {
			w = &limit.Work{Title: c.Source}
		}
		title := w.Title
		if w.Number != "" {
			title = w.Number + ", " + title
		} else if w.By != "" {
			title += " (" + w.By + ")"
		}
		if s := (Source{c.Source, title, c.Where, c.Edition, c.Basis}); !slices.Contains(sources, s) {
			sources = append(sources, s)
		}
	}
	return sources
}

func nonNil(list []string) []string {
	if list == nil {
		return []string{}
	}
	return list
}
