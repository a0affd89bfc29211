package web

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"net/http"
	"net/url"
	"strings"
	"time"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

// jobPage shows a kept job with everything about it.
func (s *Server) jobPage(w http.ResponseWriter, r *http.Request) error {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	return s.showJob(w, r, http.StatusOK, j, nil)
}

// clash is what two people wrote into one box at the same time.
type clash struct{ Theirs string }

func (s *Server) showJob(w http.ResponseWriter, r *http.Request, status int, j *store.Job, wrongAnswer *mistake) error {
	t := s.texts(r)
	if wrongAnswer != nil && wrongAnswer.Why == "" {
		wrongAnswer.Why = t.say(wrongAnswer.key, "name", wrongAnswer.Fact)
	}
	u := s.understand(j.Content)
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	p := &deskPage{frame: s.jobFrame(t, j, "job"), Action: "/jobs/" + j.ID, Said: j.Said, Saw: mark(j.Said), Mistake: wrongAnswer,
		Review: s.shownReview(t, u, review, "/jobs/"+j.ID), Facts: s.factNames(u.Job)}
	p.Wide = true
	p.Forecast = s.forecastForm(u, j.ID, "understood", system(r))
	if wrongAnswer != nil && (p.Review.correct(wrongAnswer) || p.Forecast.correct(wrongAnswer)) {
		p.Mistake = nil
	}
	if err := s.claimBeside(r, p, u); err != nil {
		return err
	}
	return s.show(w, r, status, "desk", p)
}

func (s *Server) jobFrame(t texts, j *store.Job, tab string) frame {
	title := jobTitle(t, j.Title, j.Said)
	return frame{Title: title, Job: &head{j.ID, title, j.Title}, Tab: tab}
}

// jobTitle is what a job is called: its title, or how its words begin.
func jobTitle(t texts, title, said string) string {
	if title != "" {
		return title
	}
	words := strings.Join(strings.Fields(said), " ")
	if words == "" {
		return t.say("job.untitled")
	}
	if len(words) <= 60 {
		return words
	}
	return cut(words, 57) + "…"
}

// factNames lists the facts that the job does not state yet.
func (s *Server) factNames(j *job.Job) []string {
	var list []string
	for _, f := range s.Book.Facts.Facts() {
		if _, ok := j.Find(f.Path); !ok && f.Kind != job.KindSize && f.Kind != job.KindSeries {
			list = append(list, f.Name)
		}
	}
	return list
}

// mark tells one text from another, so that nobody writes over words they have not seen.
func mark(said string) string {
	sum := sha256.Sum256([]byte(said))
	return hex.EncodeToString(sum[:6])
}

// notTaken stops a change whose answer could not be used.
type notTaken struct{ *mistake }

func (notTaken) Error() string { return "the answer could not be used" }

// clashed stops a change of words that somebody else has changed meanwhile.
type clashed struct{ job store.Job }

func (clashed) Error() string { return "somebody else changed the words" }

// jobChange takes one change of a job: new words, an answer, a correction, a fact taken out.
func (s *Server) jobChange(w http.ResponseWriter, r *http.Request) error {
	if err := withFile(r); err != nil {
		return err
	}
	id, form := r.PathValue("id"), r.PostForm
	changed, err := s.Store.ChangeJob(r.Context(), id, func(j *store.Job) error {
		if saw := form.Get("saw"); form.Has("said") && saw != "" && saw != mark(j.Said) && form.Get("said") != j.Said {
			return clashed{*j}
		}
		if practice := form.Get("mend"); practice != "" {
			return s.mendOne(r, &j.Content, practice)
		}
		wrong, err := s.change(&j.Content, form, time.Now())
		if err == nil && wrong != nil {
			return notTaken{wrong}
		}
		return err
	})
	var wrong notTaken
	var twice clashed
	switch {
	case errors.As(err, &wrong):
		j, err := s.Store.Job(r.Context(), id)
		if err != nil {
			return err
		}
		return s.showJob(w, r, http.StatusUnprocessableEntity, j, wrong.mistake)
	case errors.As(err, &twice):
		return s.showClash(w, r, &twice.job, form.Get("said"))
	case err != nil:
		return err
	}
	http.Redirect(w, r, "/jobs/"+changed.ID+place(form), http.StatusSeeOther)
	return nil
}

// place is where on the page somebody goes on after a change, without a script.
func place(form url.Values) string {
	switch form.Get("to") {
	case "question", "understood", "wrong":
		return "#" + form.Get("to")
	case "pictures":
		return "/pictures"
	}
	return ""
}

// showClash keeps what the other has written as a state of its own, and shows both.
func (s *Server) showClash(w http.ResponseWriter, r *http.Request, j *store.Job, mine string) error {
	if err := s.Store.KeepState(r.Context(), j.ID, j.Name); err != nil {
		return err
	}
	theirs := j.Said
	j.Said = mine
	t := s.texts(r)
	u := s.understand(j.Content)
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	p := &deskPage{frame: s.jobFrame(t, j, "job"), Action: "/jobs/" + j.ID, Said: mine, Saw: mark(theirs), Clash: &clash{theirs},
		Review: s.shownReview(t, u, review, "/jobs/"+j.ID), Facts: s.factNames(u.Job)}
	p.Wide = true
	return s.show(w, r, http.StatusConflict, "desk", p)
}

func (s *Server) mendOne(r *http.Request, c *store.Content, practice string) error {
	if practice == "all" {
		return s.mendAll(r, c)
	}
	if _, ok := s.Book.Practice(practice); !ok {
		return notFound("practice", practice)
	}
	one, err := s.Book.JudgeOne(r.Context(), s.understand(*c).Job, practice)
	if err != nil {
		return err
	}
	if one.Status != rulebook.Wrong || len(one.Mend) == 0 {
		return nil // it was mended meanwhile, or something must happen at the site first
	}
	return s.mend(c, one.Mend)
}

func (s *Server) mendAll(r *http.Request, c *store.Content) error {
	correction, err := s.correct(r.Context(), s.understand(*c).Job)
	if err != nil {
		return err
	}
	for _, change := range correction.Changes {
		if now, ok := correction.Job.Find(change.Fact.Path); ok {
			state(c, change.Fact.Path, stated(now))
		}
	}
	return nil
}

func (s *Server) jobDelete(w http.ResponseWriter, r *http.Request) error {
	if err := s.Store.DeleteJob(r.Context(), r.PathValue("id")); err != nil {
		return err
	}
	http.Redirect(w, r, "/jobs", http.StatusSeeOther)
	return nil
}

func (s *Server) jobYAML(w http.ResponseWriter, r *http.Request) error {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	w.Header().Set("Content-Type", "application/yaml; charset=utf-8")
	w.Header().Set("Content-Disposition", fmt.Sprintf("attachment; filename=%q", "job-"+j.ID+".yaml"))
	if _, err := fmt.Fprintf(w, "# %s\n", s.made().Line()); err != nil {
		return err
	}
	return s.writeYAML(w, j.Content)
}
