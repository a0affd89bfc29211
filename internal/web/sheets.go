package web

import (
	"context"
	"fmt"
	"net/http"
	"strings"
	"time"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

// printed is what stands on every sheet, so that it can be read without the page it came from.
type printed struct {
	Date     time.Time
	Stated   []chip
	Assumed  []string
	Sources  []string // the works, each once
	Cautions []string
}

// onPaper gathers what a sheet rests on from the findings shown on it.
func (s *Server) onPaper(u *understood, r *report.Review) printed {
	v := &reviewed{}
	v.chips(s.Book, u, "", r.System)
	out := printed{Date: time.Now(), Stated: v.Chips}
	seen := map[string]bool{}
	once := func(text string) bool { had := seen[text]; seen[text] = true; return !had }
	for _, f := range r.Findings {
		if f.Status != rulebook.Wrong && !f.Concerns || f.Status == rulebook.NotHere {
			continue
		}
		for _, n := range f.Numbers {
			for _, a := range n.Assumed {
				if once(a) {
					out.Assumed = append(out.Assumed, a)
				}
			}
		}
		for _, c := range f.Cautions {
			if once(c) {
				out.Cautions = append(out.Cautions, c)
			}
		}
		if f.Status == rulebook.Wrong {
			for _, source := range f.Sources {
				if once(source.Title) {
					out.Sources = append(out.Sources, source.Title)
				}
			}
		}
	}
	return out
}

// sheetOf loads a job and reviews it for a sheet.
func (s *Server) sheetOf(r *http.Request) (*store.Job, *understood, *report.Review, error) {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return nil, nil, nil, err
	}
	u := s.understand(j.Content)
	review, err := s.review(r.Context(), u, system(r))
	return j, u, review, err
}

// correct finds the least changes that leave nothing wrong, when its turn comes.
func (s *Server) correct(ctx context.Context, j *job.Job) (*rulebook.Correction, error) {
	if err := s.turn(ctx); err != nil {
		return nil, err
	}
	defer func() { <-s.turns }()
	return s.Book.Correct(ctx, j)
}

type orderPage struct {
	frame
	Paper printed
	Order *report.Order
}

// jobOrder is the order as it should be placed.
func (s *Server) jobOrder(w http.ResponseWriter, r *http.Request) error {
	j, u, review, err := s.sheetOf(r)
	if err != nil {
		return err
	}
	c, err := s.correct(r.Context(), u.Job)
	if err != nil {
		return err
	}
	return s.show(w, r, http.StatusOK, "order", &orderPage{s.jobFrame(s.texts(r), j, "order"), s.onPaper(u, review), report.NewOrder(s.Book, c, system(r), desk.Spoken)})
}

type correctedPage struct {
	frame
	Changes []report.OrderLine
	Acts    []finding
	Left    []finding
	YAML    string
}

// jobCorrected is the job with the least changes that leave nothing wrong.
func (s *Server) jobCorrected(w http.ResponseWriter, r *http.Request) error {
	j, u, review, err := s.sheetOf(r)
	if err != nil {
		return err
	}
	c, err := s.correct(r.Context(), u.Job)
	if err != nil {
		return err
	}
	p := &correctedPage{frame: s.jobFrame(s.texts(r), j, "corrected")}
	notes := map[string]string{}
	for _, change := range c.Changes {
		now, _ := c.Job.Find(change.Fact.Path)
		why := report.Plain(strings.Join(change.Reasons, "; "), system(r))
		notes[change.Fact.Path] = why
		line := report.OrderLine{Name: change.Fact.Name, Value: value(now, system(r)), Why: why}
		if was, ok := u.Job.Find(change.Fact.Path); ok {
			line.Was = value(was, system(r))
		}
		p.Changes = append(p.Changes, line)
	}
	for _, f := range review.With(rulebook.Wrong) {
		for _, one := range c.Acts {
			if one.Practice.ID == f.Practice {
				p.Acts = append(p.Acts, shownFinding(f, system(r)))
			}
		}
		for _, one := range c.Left {
			if one.Practice.ID == f.Practice {
				p.Left = append(p.Left, shownFinding(f, system(r)))
			}
		}
	}
	var text strings.Builder
	fmt.Fprintf(&text, "# Corrected. %s\n", s.made().Line())
	if err := job.Write(&text, s.Book.Facts, c.Job, notes); err != nil {
		return err
	}
	p.YAML = text.String()
	return s.show(w, r, http.StatusOK, "corrected", p)
}

type checklistPage struct {
	frame
	Paper   printed
	List    *report.Checklist
	Wrong   []report.Item
	Unknown []report.Item
	Marks   map[string]store.Mark
	Done    int
	All     int
}

// jobChecklist is the pre-pour checklist with what was ticked and read.
func (s *Server) jobChecklist(w http.ResponseWriter, r *http.Request) error {
	j, u, review, err := s.sheetOf(r)
	if err != nil {
		return err
	}
	p := &checklistPage{frame: s.jobFrame(s.texts(r), j, "checklist"), Paper: s.onPaper(u, review), List: report.NewChecklist(review)}
	if p.Marks, err = s.Store.Marks(r.Context(), j.ID); err != nil {
		return err
	}
	for _, item := range p.List.Open {
		if item.State == rulebook.Wrong {
			p.Wrong = append(p.Wrong, item)
		} else {
			p.Unknown = append(p.Unknown, item)
		}
	}
	for _, stage := range p.List.Stages {
		for _, item := range stage.Items {
			p.All++
			if p.Marks[item.Practice].Ticked {
				p.Done++
			}
		}
	}
	return s.show(w, r, http.StatusOK, "checklist", p)
}

// Bounds of what is written on a checklist.
const (
	mostReading  = 80
	mostInitials = 8
)

// jobMark keeps a tick, a reading and initials.
func (s *Server) jobMark(w http.ResponseWriter, r *http.Request) error {
	id, practice := r.PathValue("id"), r.PostFormValue("practice")
	if _, ok := s.Book.Practice(practice); !ok {
		return notFound("practice", practice)
	}
	m := store.Mark{Ticked: r.PostFormValue("ticked") != "", Reading: cut(strings.TrimSpace(r.PostFormValue("reading")), mostReading),
		Initials: cut(strings.TrimSpace(r.PostFormValue("initials")), mostInitials)}
	if err := s.Store.SetMark(r.Context(), id, practice, m); err != nil {
		return err
	}
	http.Redirect(w, r, "/jobs/"+id+"/checklist#"+elementID("check", practice), http.StatusSeeOther)
	return nil
}
