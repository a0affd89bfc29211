package web

import (
	"context"
	"net/http"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/store"
)

type statesPage struct {
	frame
	States  []stateLine
	Compare *comparison
}

// stateLine is one state of a job in the list.
type stateLine struct {
	Number  int
	Name    string
	Kept    bool
	Now     bool
	Changed time.Time
}

// comparison is what changed between an earlier state of a job and the newest.
type comparison struct {
	With     stateLine
	Facts    []factChange
	Findings []findingChange
}

// factChange is a fact that differs; "" stands for not stated.
type factChange struct{ Fact, Name, Was, Now string }

// findingChange is a practice that came out differently.
type findingChange struct {
	link
	Was, Now string
}

func (s *Server) jobStates(w http.ResponseWriter, r *http.Request) error {
	id := r.PathValue("id")
	j, err := s.Store.Job(r.Context(), id)
	if err != nil {
		return err
	}
	states, err := s.Store.States(r.Context(), id)
	if err != nil {
		return err
	}
	p := &statesPage{frame: s.jobFrame(s.texts(r), j, "states")}
	for i := range states {
		p.States = append(p.States, lineOf(&states[i], j.Number))
	}
	if with := r.URL.Query().Get("with"); with != "" {
		number, _ := strconv.Atoi(with)
		earlier, err := s.Store.StateOf(r.Context(), id, number)
		if err != nil {
			return err
		}
		if p.Compare, err = s.compare(r.Context(), earlier.Content, j.Content, system(r)); err != nil {
			return err
		}
		p.Compare.With = lineOf(earlier, j.Number)
	}
	return s.show(w, r, http.StatusOK, "states", p)
}

func lineOf(st *store.State, newest int) stateLine {
	return stateLine{st.Number, st.Name, st.Kept, st.Number == newest, st.Changed.Local()}
}

// compare judges two contents and says what differs.
func (s *Server) compare(ctx context.Context, was, now store.Content, system quantity.System) (*comparison, error) {
	before, after := s.understand(was), s.understand(now)
	c := &comparison{}
	for _, f := range s.Book.Facts.Facts() {
		x, hadIt := before.Job.Find(f.Path)
		y, hasIt := after.Job.Find(f.Path)
		change := factChange{Fact: f.Path, Name: f.Name}
		if hadIt {
			change.Was = value(x, system)
		}
		if hasIt {
			change.Now = value(y, system)
		}
		if change.Was != change.Now {
			c.Facts = append(c.Facts, change)
		}
	}
	old, err := s.review(ctx, before, system)
	if err != nil {
		return nil, err
	}
	fresh, err := s.review(ctx, after, system)
	if err != nil {
		return nil, err
	}
	status := map[string]string{}
	for _, f := range old.Findings {
		status[f.Practice] = f.Status
	}
	for _, f := range fresh.Findings {
		if status[f.Practice] != f.Status {
			c.Findings = append(c.Findings, findingChange{practiceLink(f), status[f.Practice], f.Status})
		}
	}
	return c, nil
}

func practiceLink(f report.Finding) link { return link{"/practices/" + f.Practice, f.What, f.Practice} }

// jobKeep keeps the job as it stands now, to compare with later.
func (s *Server) jobKeep(w http.ResponseWriter, r *http.Request) error {
	id := r.PathValue("id")
	if err := s.Store.KeepState(r.Context(), id, cut(strings.TrimSpace(r.PostFormValue("name")), mostTitle)); err != nil {
		return err
	}
	http.Redirect(w, r, "/jobs/"+id+"/states", http.StatusSeeOther)
	return nil
}

// jobRevert makes an earlier state the newest. The state before stays among the earlier ones.
func (s *Server) jobRevert(w http.ResponseWriter, r *http.Request) error {
	id := r.PathValue("id")
	number, err := strconv.Atoi(r.PathValue("number"))
	if err != nil {
		return store.ErrNotFound
	}
	earlier, err := s.Store.StateOf(r.Context(), id, number)
	if err != nil {
		return err
	}
	if _, err := s.Store.ChangeJob(r.Context(), id, func(j *store.Job) error {
		j.Content, j.Kept = earlier.Content, true // kept: what it was stays a state of its own
		return nil
	}); err != nil {
		return err
	}
	http.Redirect(w, r, "/jobs/"+id, http.StatusSeeOther)
	return nil
}
