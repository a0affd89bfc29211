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
	Entry   *beliefShown
	Meant   []link // beliefs that may be meant, where it is not sure
	AsJob   *asJob // what the same words say of a job, where they may be one
	Said    string
	Compact bool // beside a job: the verdict and the fact alone
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

// hearClaim answers words as a claim; nil where there is nothing to answer them from.
func (s *Server) hearClaim(said string) (*belief.Answer, error) {
	if s.Corpus == nil || strings.TrimSpace(said) == "" {
		return nil, nil
	}
	a, err := s.Corpus.Answer(said)
	return &a, err
}

// answerClaim puts the answer to a claim on the page, and beside it what the words say of a job where they may be one.
func (s *Server) answerClaim(r *http.Request, p *deskPage) error {
	a, err := s.hearClaim(p.Said)
	if err != nil || a == nil {
		return err
	}
	t := s.texts(r)
	p.Claim = s.shownClaim(t, a, system(r))
	u := s.understand(store.Content{Said: p.Said, SaidAt: time.Now()})
	if s.take(u, a) == takenAsClaim {
		return nil
	}
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	v := s.shownReview(t, u, review, "", nil)
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
	p.Claim = s.shownClaim(s.texts(r), a, system(r))
	p.Claim.Compact = true
	return nil
}

func (s *Server) shownClaim(t texts, a *belief.Answer, system quantity.System) *claim {
	c := &claim{Claim: report.NewClaim(*a, s.Book.Limits, system), Said: a.Said}
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
	return c
}

func firstUpper(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
