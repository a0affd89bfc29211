package web

import (
	"net/http"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/forecast"
	"hearsay/internal/job"
	"hearsay/internal/store"
)

// jobJSON is a kept job as programs get it.
type jobJSON struct {
	ID      string    `json:"id"`
	Version int       `json:"version"`
	Created time.Time `json:"created"`
	Changed time.Time `json:"changed"`
	State   int       `json:"state"`
	Name    string    `json:"name"`
	Title   string    `json:"title"`
	Said    string    `json:"said"`
	SaidAt  time.Time `json:"said_at"`
	contentJSON
}

type contentJSON struct {
	Facts    map[string]any `json:"facts"`
	Dropped  []string       `json:"dropped"`
	NotKnown []string       `json:"not_known"`
	// ForecastBegins is when the hourly forecast begins, where it tells.
	ForecastBegins time.Time `json:"forecast_begins,omitzero"`
}

// jobSent is a job as programs send it.
type jobSent struct {
	Title    string         `json:"title"`
	Said     string         `json:"said"`
	Facts    map[string]any `json:"facts"`
	Dropped  []string       `json:"dropped"`
	NotKnown []string       `json:"not_known"`
	Version  int            `json:"version"` // that was changed; 0 changes any

	ForecastBegins time.Time `json:"forecast_begins"`
}

func jobOut(j *store.Job) jobJSON {
	return jobJSON{ID: j.ID, Version: j.Version, Created: j.Created, Changed: j.Changed, State: j.Number, Name: j.Name, Title: j.Title,
		Said: j.Said, SaidAt: j.SaidAt, contentJSON: contentOut(j.Content)}
}

func contentOut(c store.Content) contentJSON {
	out := contentJSON{Facts: map[string]any{}, Dropped: nonNil(c.Dropped), NotKnown: nonNil(c.Skipped), ForecastBegins: begins(c)}
	for _, st := range c.Stated {
		out.Facts[st.Fact] = st.Written
	}
	return out
}

// content checks a job that was sent, and gives what is kept of it. Facts keep the order of the dictionary.
func (s *Server) content(sent jobSent) (*store.Content, error) {
	if len(sent.Said) > mostWords {
		return nil, badRequest("fail.words", "kb", len(sent.Said)/1024, "most", mostWords/1024)
	}
	c := &store.Content{Title: cut(sent.Title, mostTitle), Said: sent.Said, SaidAt: time.Now(), Dropped: sent.Dropped, Skipped: sent.NotKnown}
	for path := range sent.Facts {
		if _, ok := s.Book.Facts.Fact(path); !ok {
			return nil, notFound("fact", path)
		}
	}
	for _, f := range s.Book.Facts.Facts() {
		written, ok := sent.Facts[f.Path]
		if !ok {
			continue
		}
		one := store.Stated{Fact: f.Path, Written: written}
		if text, ok := written.(string); ok && f.Kind == job.KindSeries { // as it came, a table or JSON
			read, err := forecast.Read("", []byte(text))
			if err != nil {
				return nil, problem{http.StatusUnprocessableEntity, "fail.job", []any{"problems", f.Path + ": " + err.Error()}}
			}
			one.Written, one.Begins = read.Rows, read.Begins
		} else if f.Path == forecast.Fact {
			one.Begins = sent.ForecastBegins
		}
		c.Stated = append(c.Stated, one)
	}
	var why []string
	for _, refused := range s.understand(*c).Refused {
		if _, ok := sent.Facts[refused.Fact]; ok {
			why = append(why, refused.Fact+": "+refused.Why)
		}
	}
	if len(why) > 0 {
		return nil, problem{http.StatusUnprocessableEntity, "fail.job", []any{"problems", strings.Join(why, "\n")}}
	}
	return c, nil
}

func (s *Server) apiJobs(w http.ResponseWriter, r *http.Request) error {
	list, err := s.Store.Jobs(r.Context(), r.URL.Query().Get("find"), mostListed)
	if err != nil {
		return err
	}
	out := []map[string]any{}
	for _, l := range list {
		out = append(out, map[string]any{"id": l.ID, "title": l.Title, "said": l.Said, "states": l.States, "changed": l.Changed})
	}
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiJobCreate(w http.ResponseWriter, r *http.Request) error {
	var sent jobSent
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	c, err := s.content(sent)
	if err != nil {
		return err
	}
	j, err := s.Store.CreateJob(r.Context(), *c)
	if err != nil {
		return err
	}
	w.Header().Set("Location", "/api/jobs/"+j.ID)
	return writeJSON(w, http.StatusCreated, jobOut(j))
}

func (s *Server) apiJob(w http.ResponseWriter, r *http.Request) error {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, jobOut(j))
}

func (s *Server) apiJobChange(w http.ResponseWriter, r *http.Request) error {
	var sent jobSent
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	c, err := s.content(sent)
	if err != nil {
		return err
	}
	j, err := s.Store.ChangeJob(r.Context(), r.PathValue("id"), func(j *store.Job) error {
		if sent.Version != 0 && sent.Version != j.Version {
			return problem{http.StatusConflict, "fail.version", []any{"version", j.Version}}
		}
		if c.Said == j.Said {
			c.SaidAt = j.SaidAt
		}
		j.Content = *c
		return nil
	})
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, jobOut(j))
}

func (s *Server) apiJobDelete(w http.ResponseWriter, r *http.Request) error {
	if err := s.Store.DeleteJob(r.Context(), r.PathValue("id")); err != nil {
		return err
	}
	w.WriteHeader(http.StatusNoContent)
	return nil
}

func (s *Server) apiJobReview(w http.ResponseWriter, r *http.Request) error {
	_, _, review, err := s.sheetOf(r)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, review)
}

// stateJSON is one state of a job.
type stateJSON struct {
	State   int       `json:"state"`
	Name    string    `json:"name"`
	Kept    bool      `json:"kept"`
	Began   time.Time `json:"began"`
	Changed time.Time `json:"changed"`
	Said    string    `json:"said"`
	contentJSON
}

func stateOut(st *store.State) stateJSON {
	return stateJSON{st.Number, st.Name, st.Kept, st.Began, st.Changed, st.Said, contentOut(st.Content)}
}

func (s *Server) apiJobStates(w http.ResponseWriter, r *http.Request) error {
	states, err := s.Store.States(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	out := []stateJSON{}
	for i := range states {
		out = append(out, stateOut(&states[i]))
	}
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiJobState(w http.ResponseWriter, r *http.Request) error {
	number, _ := strconv.Atoi(r.PathValue("number"))
	st, err := s.Store.StateOf(r.Context(), r.PathValue("id"), number)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, stateOut(st))
}

func (s *Server) apiJobKeep(w http.ResponseWriter, r *http.Request) error {
	var sent struct {
		Name string `json:"name"`
	}
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	id := r.PathValue("id")
	if err := s.Store.KeepState(r.Context(), id, cut(sent.Name, mostTitle)); err != nil {
		return err
	}
	j, err := s.Store.Job(r.Context(), id)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusCreated, stateOut(&j.State))
}

// apiJobChanges says what changed since an earlier state (?since=2).
func (s *Server) apiJobChanges(w http.ResponseWriter, r *http.Request) error {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	number, _ := strconv.Atoi(r.URL.Query().Get("since"))
	earlier, err := s.Store.StateOf(r.Context(), j.ID, number)
	if err != nil {
		return err
	}
	c, err := s.compare(r.Context(), earlier.Content, j.Content, system(r))
	if err != nil {
		return err
	}
	facts, findings := []map[string]string{}, []map[string]string{}
	for _, f := range c.Facts {
		facts = append(facts, map[string]string{"fact": f.Fact, "was": f.Was, "now": f.Now})
	}
	for _, f := range c.Findings {
		findings = append(findings, map[string]string{"practice": f.ID, "was": f.Was, "now": f.Now})
	}
	return writeJSON(w, http.StatusOK, map[string]any{"since": number, "facts": facts, "findings": findings})
}

// markJSON is what stands beside one line of a checklist.
type markJSON struct {
	Ticked   bool   `json:"ticked"`
	Reading  string `json:"reading"`
	Initials string `json:"initials"`
}

func (s *Server) apiMarks(w http.ResponseWriter, r *http.Request) error {
	if _, err := s.Store.Job(r.Context(), r.PathValue("id")); err != nil {
		return err
	}
	marks, err := s.Store.Marks(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	out := map[string]markJSON{}
	for practice, m := range marks {
		out[practice] = markJSON{m.Ticked, m.Reading, m.Initials}
	}
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiMark(w http.ResponseWriter, r *http.Request) error {
	practice := r.PathValue("topic") + "/" + r.PathValue("name")
	if _, ok := s.Book.Practice(practice); !ok {
		return notFound("practice", practice)
	}
	var m markJSON
	if err := readJSON(r, &m); err != nil {
		return err
	}
	m.Reading, m.Initials = cut(m.Reading, mostReading), cut(m.Initials, mostInitials)
	if err := s.Store.SetMark(r.Context(), r.PathValue("id"), practice, store.Mark{Ticked: m.Ticked, Reading: m.Reading, Initials: m.Initials}); err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, m)
}
