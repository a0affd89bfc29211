package web

import (
	"net/http"
	"time"

	"hearsay/internal/store"
)

// claim is the answer to something that somebody says.
type claim struct {
	Answered bool
	Verdict  string
	Line     string
}

// What a text in the box is taken as.
const (
	takenAsClaim = iota
	takenAsBoth
	takenAsJob
)

// jobFigures is how many facts with figures make a text a job beyond doubt.
const jobFigures = 3

// take decides what a text in the box is: facts with figures make it a job, otherwise it is a claim, and with few figures
// it may be both.
func (s *Server) take(said string) int {
	u := s.understand(store.Content{Said: said, SaidAt: time.Now()})
	switch figures := u.figures(); {
	case figures >= jobFigures:
		return takenAsJob
	case figures > 0:
		return takenAsBoth
	}
	return takenAsClaim
}

func (s *Server) answerClaim(_ *http.Request, p *deskPage) error {
	p.Claim = &claim{}
	return nil
}

func (s *Server) claimBeside(_ *http.Request, _ *deskPage, _ *understood) error { return nil }
