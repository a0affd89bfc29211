package web

import (
	"net/http"
	"net/url"
	"strings"
	"time"

	"hearsay/internal/store"
)

// deskPage is the page with the box: empty, with a claim answered, or with a job.
type deskPage struct {
	frame
	Action  string // where the box sends what was said
	Said    string
	Claim   *claim
	Review  *reviewed
	Saw     string // tells which words the box was filled with
	Clash   *clash
	Recent  []jobLine
	Facts   []string // names of facts that can be stated without being asked for
	Mistake *mistake // in what was added; one in a field stands beside the field
	// Forecast is where an hourly forecast is brought in; nil where the job has one.
	Forecast *forecastForm
}

// home shows the box, and the answer to a claim in the address (/?said=…).
func (s *Server) home(w http.ResponseWriter, r *http.Request) error {
	t := s.texts(r)
	p := &deskPage{frame: frame{Title: t.say("home.title")}, Action: "/", Said: r.URL.Query().Get("said")}
	if len(p.Said) > mostWords {
		return badRequest("fail.address")
	}
	if strings.TrimSpace(p.Said) != "" {
		if err := s.answerClaim(r, p); err != nil {
			return err
		}
	} else {
		list, err := s.Store.Jobs(r.Context(), "", 5)
		if err != nil {
			return err
		}
		p.Recent = jobLines(t, list)
	}
	return s.show(w, r, http.StatusOK, "desk", p)
}

// say takes what was typed into the box: a job is kept and shown at its own address, a claim is answered.
func (s *Server) say(w http.ResponseWriter, r *http.Request) error {
	said := r.PostForm.Get("said")
	c := store.Content{SaidAt: time.Now()}
	if err := changeWords(&c, said, time.Now()); err != nil {
		return err
	}
	if strings.TrimSpace(said) == "" {
		http.Redirect(w, r, "/", http.StatusSeeOther)
		return nil
	}
	if r.PostForm.Get("as") == "job" {
		return s.keepNew(w, r, c)
	}
	answer, err := s.hearClaim(said)
	if err != nil {
		return err
	}
	if s.take(s.understand(c), answer) != takenAsJob {
		http.Redirect(w, r, "/?said="+url.QueryEscape(said), http.StatusSeeOther)
		return nil
	}
	return s.keepNew(w, r, c)
}

// keepNew keeps a new job and shows it.
func (s *Server) keepNew(w http.ResponseWriter, r *http.Request, c store.Content) error {
	j, err := s.Store.CreateJob(r.Context(), c)
	if err != nil {
		return err
	}
	http.Redirect(w, r, "/jobs/"+j.ID, http.StatusSeeOther)
	return nil
}
