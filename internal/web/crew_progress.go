package web

import (
	"bytes"
	"context"
	"errors"
	"html/template"
	"net/http"
	"slices"
	"strings"
	"time"

	"hearsay/internal/crew"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

type crewProgressPage struct {
	frame
	Crew     string
	People   []string
	Progress []progressLine
	Picture  template.HTML
	Due      []dueLine
	Ask      []string // beliefs to ask again now, as many as one talk takes
	Sessions []store.CrewSession
}

type progressLine struct {
	crew.Progress
	To link
}

// dueLine is a belief that falls due, with who should be asked.
type dueLine struct {
	To     link
	Since  time.Time
	People []duePerson
}

type duePerson struct {
	Name  string
	State string // told, wrong or right
}

// crewProgress shows how a crew stands with each belief, and what falls due.
func (s *Server) crewProgress(w http.ResponseWriter, r *http.Request) error {
	name := r.URL.Query().Get("crew")
	x, m, err := s.remember(r.Context(), name)
	if err != nil {
		return err
	}
	t, err := s.trainer(r, "en")
	if err != nil {
		return err
	}
	p := &crewProgressPage{frame: frame{Title: name}, Crew: name}
	if p.People, err = s.Store.CrewPeople(r.Context(), name); err != nil {
		return err
	}
	to := func(id string) link {
		l, err := t.Lesson(id)
		if err != nil { // a belief that is no longer in the corpus
			return link{Title: id, ID: id}
		}
		return link{"/beliefs/" + id, l.Saying, id}
	}
	progress := slices.DeleteFunc(m.Progress(), func(one crew.Progress) bool { return to(one.Belief).Address == "" })
	for _, one := range progress {
		p.Progress = append(p.Progress, progressLine{one, to(one.Belief)})
	}
	if slices.ContainsFunc(progress, func(one crew.Progress) bool { return one.Asked > 0 }) {
		var svg bytes.Buffer
		if err := t.Picture(&svg, t.Words().Say("progress.title", "crew", name), progress); err != nil {
			return err
		}
		p.Picture = template.HTML(svg.String())
	}
	p.due(m.Due(s.clock()), to)
	slices.Reverse(x.Sessions)
	p.Sessions = x.Sessions[:min(mostSessions, len(x.Sessions))]
	return s.show(w, r, http.StatusOK, "progress", p)
}

// due gathers what falls due by belief, the longest overdue first.
func (p *crewProgressPage) due(list []crew.Due, to func(string) link) {
	for _, d := range list {
		at := slices.IndexFunc(p.Due, func(l dueLine) bool { return l.To.ID == d.Belief })
		if at < 0 {
			at = len(p.Due)
			p.Due = append(p.Due, dueLine{To: to(d.Belief), Since: d.Due.Local()})
			if p.Due[at].To.Address != "" && len(p.Ask) < mostBeliefs {
				p.Ask = append(p.Ask, d.Belief)
			}
		}
		p.Due[at].People = append(p.Due[at].People, duePerson{d.Person, dueState(d)})
	}
}

// dueState says how somebody stood with a belief when last seen.
func dueState(d crew.Due) string {
	switch {
	case d.Asked == 0:
		return "told"
	case d.Believe:
		return "wrong"
	}
	return "right"
}

// remember gives what is kept of a crew that exists.
func (s *Server) remember(ctx context.Context, name string) (store.CrewExport, *crew.Memory, error) {
	all, err := s.Store.Crews(ctx)
	if err != nil {
		return store.CrewExport{}, nil, err
	}
	if !slices.ContainsFunc(all, func(one string) bool { return strings.EqualFold(one, name) }) {
		return store.CrewExport{}, nil, notFound("crew", name)
	}
	x, err := s.Store.ExportCrews(ctx, name)
	return x, crew.Remember(x.Sessions, x.Answers), err
}

// bearsOn says of a belief whether a practice behind it concerns a kept job and is not known to be right there.
func (s *Server) bearsOn(ctx context.Context, t *crew.Trainer, jobID string) (func(string) bool, error) {
	practices, err := s.practicesOf(ctx, jobID, func(one *rulebook.Judgement) bool {
		return one.Status == rulebook.Wrong || one.Status == rulebook.Ask && one.Concerns
	})
	if err != nil {
		return nil, err
	}
	beliefs, err := t.Choose(crew.Choice{Practices: practices})
	if err != nil && !errors.Is(err, crew.ErrNothing) {
		return nil, err
	}
	return func(id string) bool { return slices.Contains(beliefs, id) }, nil
}
