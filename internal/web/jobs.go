package web

import (
	"errors"
	"io"
	"net/http"
	"strings"
	"time"

	"hearsay/internal/job"
	"hearsay/internal/store"
)

type jobsPage struct {
	frame
	Find  string
	Jobs  []jobLine
	YAML  string // that could not be imported
	Error string
}

// jobLine is a kept job in the list.
type jobLine struct {
	ID, Title string
	Changed   time.Time
}

// mostListed is how many jobs are listed; older ones are found by their words.
const mostListed = 100

func (s *Server) jobList(w http.ResponseWriter, r *http.Request) error {
	return s.showJobs(w, r, http.StatusOK, &jobsPage{Find: strings.TrimSpace(r.URL.Query().Get("find"))})
}

func (s *Server) showJobs(w http.ResponseWriter, r *http.Request, status int, p *jobsPage) error {
	list, err := s.Store.Jobs(r.Context(), p.Find, mostListed)
	if err != nil {
		return err
	}
	p.Title = s.texts(r).say("jobs.title")
	p.Jobs = jobLines(s.texts(r), list)
	return s.show(w, r, status, "jobs", p)
}

func jobLines(t texts, list []store.Line) []jobLine {
	lines := make([]jobLine, len(list))
	for i, l := range list {
		lines[i] = jobLine{l.ID, jobTitle(t, l.Title, l.Said), l.Changed.Local()}
	}
	return lines
}

// jobCreate keeps a job from YAML: a file sent, or a text pasted.
func (s *Server) jobCreate(w http.ResponseWriter, r *http.Request) error {
	source, err := sentYAML(r)
	if err != nil {
		return err
	}
	c, err := s.readYAML("job.yaml", source)
	var problems job.Problems
	if errors.As(err, &problems) {
		return s.showJobs(w, r, http.StatusUnprocessableEntity, &jobsPage{YAML: string(source), Error: problems.Error()})
	}
	if err != nil {
		return err
	}
	return s.keepNew(w, r, *c)
}

func sentYAML(r *http.Request) ([]byte, error) {
	if err := r.ParseMultipartForm(mostBody); err != nil && !errors.Is(err, http.ErrNotMultipart) {
		return nil, formProblem(err)
	}
	if _, text, err := sentFile(r); err != nil || len(text) > 0 {
		return text, err
	}
	return []byte(r.PostFormValue("yaml")), nil
}

// readYAML reads a job file into what is kept of a job.
func (s *Server) readYAML(name string, source []byte) (*store.Content, error) {
	j, say, err := job.Read(s.Book.Facts, name, source)
	if err != nil {
		return nil, err
	}
	return contentOf(j, say), nil
}

// contentOf gives what is kept of a job that was read.
func contentOf(j *job.Job, say string) *store.Content {
	c := &store.Content{Title: cut(j.Title, mostTitle), Said: say, SaidAt: time.Now(), Skipped: j.NotKnown}
	for _, st := range j.Stated {
		if st.From == "" {
			c.Stated = append(c.Stated, store.Stated{Fact: st.Fact.Path, Written: stated(st)})
		}
	}
	return c
}

// writeYAML writes a job as the YAML that the commands read: every fact that was understood, and the words they came from
// as a remark.
func (s *Server) writeYAML(w io.Writer, c store.Content) error {
	j := s.understand(c).Job.Clone()
	if words := strings.Join(strings.Fields(c.Said), " "); words != "" {
		j.About = "As said: " + words
	}
	return job.Write(w, s.Book.Facts, j, nil)
}
