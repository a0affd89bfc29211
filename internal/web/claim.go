package web

import (
	"net/http"
	"strings"
	"time"

	"hearsay/internal/belief"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/store"
)

// claim is the answer to something that somebody says, as the page shows it.
type claim struct {
	report.Claim
	Line    string // the verdict in one line
	Sums    []sum  // what the numbers in it come to
	Entry   *beliefShown
	Meant   []link // beliefs that may be meant, where it is not sure
	AsJob   *asJob // what the same words say of a job, where they may be one
	Said    string
	Compact bool // beside a job: the verdict and the fact alone
}

// sum is a figure that the numbers of a claim come to.
type sum struct {
	Said    string // the number that was claimed for it; "" where none was
	HowFar  string
	Line    string
	Figure  string
	Working []string
	Assumed []string
}

// asJob is what a claim would be, taken as a job.
type asJob struct {
	Chips   []chip
	Verdict string
	Worst   string
}

// What a text in the box is taken as.
const (
	takenAsClaim = iota
	takenAsBoth
	takenAsJob
)

// Bounds between a claim and a job.
const (
	jobFigures = 2 // facts with figures that make a text a job beyond doubt
	jobFacts   = 2 // facts that make a text a job when it is no claim that is known
)

// take decides what a text in the box is: facts with figures make it a job, otherwise it is a claim, and with few figures
// it may be both.
func (s *Server) take(u *understood, a *belief.Answer) int {
	figures, facts := u.figures(), len(u.Spoken)
	known := a != nil && a.Answered
	switch {
	case figures >= jobFigures, !known && (figures > 0 || facts >= jobFacts):
		return takenAsJob
	case figures > 0, facts >= jobFacts:
		return takenAsBoth
	}
	return takenAsClaim
}

// hearClaim answers words as a claim; nil where nothing was said.
func (s *Server) hearClaim(said string) (*belief.Answer, error) {
	if strings.TrimSpace(said) == "" {
		return nil, nil
	}
	a, err := s.Corpus.Answer(said)
	return &a, err
}

// claimed gives the answer to a claim as the commands give it, with what the numbers in it come to.
func (s *Server) claimed(a *belief.Answer, system quantity.System) (report.Claim, error) {
	out := report.NewClaim(*a, s.Book.Limits, system)
	out.Made = s.made()
	if !a.Answered {
		return out, nil
	}
	sums, err := s.Reckon.Of(a.Said, a.Entry, time.Now())
	out.Reckoned = report.NewReckoned(sums, system)
	return out, err
}

func (c *claim) reckon(system quantity.System) {
	if c.Reckoned == nil {
		return
	}
	held := map[string]bool{}
	for _, x := range c.Reckoned.Claimed {
		held[x.Sum.Name] = true
		c.Sums = append(c.Sums, sum{x.Said, report.HowFar(x.Off), x.Sum.Line(system), x.Sum.Name, x.Sum.Working, append(x.Sum.Assumed, x.Given...)})
	}
	for _, f := range c.Reckoned.Figures {
		if !held[f.Name] {
			c.Sums = append(c.Sums, sum{Line: f.Line(system), Figure: f.Name, Working: f.Working, Assumed: f.Assumed})
		}
	}
}

// answerClaim puts the answer to a claim on the page, and beside it what the words say of a job where they may be one.
func (s *Server) answerClaim(r *http.Request, p *deskPage) error {
	a, err := s.hearClaim(p.Said)
	if err != nil || a == nil {
		return err
	}
	t := s.texts(r)
	if p.Claim, err = s.shownClaim(t, a, system(r)); err != nil {
		return err
	}
	u := s.understand(store.Content{Said: p.Said, SaidAt: time.Now()})
	if s.take(u, a) == takenAsClaim {
		return nil
	}
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	v := s.shownReview(t, u, review, "")
	p.Claim.AsJob = &asJob{v.Chips, v.Verdict, v.Worst}
	return nil
}

// claimBeside puts the answer to a claim beside a job whose words are also one.
func (s *Server) claimBeside(r *http.Request, p *deskPage, u *understood) error {
	if u.figures() > jobFigures {
		return nil
	}
	a, err := s.hearClaim(p.Said)
	if err != nil || a == nil || !a.Answered {
		return err
	}
	if p.Claim, err = s.shownClaim(s.texts(r), a, system(r)); err != nil {
		return err
	}
	p.Claim.Compact = true
	return nil
}

func (s *Server) shownClaim(t texts, a *belief.Answer, system quantity.System) (*claim, error) {
	full, err := s.claimed(a, system)
	if err != nil {
		return nil, err
	}
	c := &claim{Claim: full, Said: a.Said}
	c.reckon(system)
	switch {
	case a.Answered:
		c.Line = t.say("claim."+string(a.Verdict), "on", report.Plain(a.Entry.DependsOn, system))
		c.Entry = s.shownBelief(a.Entry, system)
	case a.Far || len(a.Near) == 0:
		c.Line = t.say("claim.unknown")
	default:
		c.Line = t.say("claim.unsure")
		for _, n := range a.Near {
			c.Meant = append(c.Meant, link{"/beliefs/" + n.Belief, firstUpper(n.Saying), n.Belief})
		}
	}
	return c, nil
}

func firstUpper(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
