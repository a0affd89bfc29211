package web

import (
	_ "embed"
	"encoding/json"
	"errors"
	"io"
	"net/http"
	"strings"
	"time"

	"github.com/goccy/go-yaml"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/report"
)

// openAPI describes everything below /api/.
//
//go:embed openapi.yaml
var openAPI []byte

// programs are the answers to programs.
func (s *Server) programs() map[string]answer {
	return map[string]answer{
		"GET /api/openapi.yaml":                   s.apiDocument,
		"GET /api/openapi.json":                   s.apiDocument,
		"POST /api/claim":                         s.apiClaim,
		"POST /api/review":                        s.apiReview,
		"GET /api/beliefs":                        s.apiBeliefs,
		"GET /api/beliefs/{topic}/{name}":         s.apiBelief,
		"POST /api/corrected":                     s.apiCorrected,
		"POST /api/checklist":                     s.apiChecklist,
		"POST /api/order":                         s.apiOrder,
		"GET /api/search":                         s.apiSearch,
		"GET /api/practices":                      s.apiPractices,
		"GET /api/practices/{topic}/{name}":       s.apiPractice,
		"GET /api/limits":                         s.apiLimits,
		"GET /api/limits/{topic}/{name}":          s.apiLimit,
		"GET /api/figures":                        s.apiFigures,
		"GET /api/figures/{name}":                 s.apiFigure,
		"POST /api/figures/{name}":                s.apiCompute,
		"GET /api/sources":                        s.apiSources,
		"GET /api/sources/{id}":                   s.apiSource,
		"GET /api/facts":                          s.apiFacts,
		"GET /api/facts/{id}":                     s.apiFact,
		"GET /api/jobs":                           s.apiJobs,
		"POST /api/jobs":                          s.apiJobCreate,
		"GET /api/jobs/{id}":                      s.apiJob,
		"PUT /api/jobs/{id}":                      s.apiJobChange,
		"DELETE /api/jobs/{id}":                   s.apiJobDelete,
		"GET /api/jobs/{id}/review":               s.apiJobReview,
		"GET /api/jobs/{id}/states":               s.apiJobStates,
		"POST /api/jobs/{id}/states":              s.apiJobKeep,
		"GET /api/jobs/{id}/states/{number}":      s.apiJobState,
		"GET /api/jobs/{id}/changes":              s.apiJobChanges,
		"GET /api/jobs/{id}/marks":                s.apiMarks,
		"PUT /api/jobs/{id}/marks/{topic}/{name}": s.apiMark,
		"GET /api/crews":                          s.apiCrews,
		"GET /api/crews/{crew}/progress":          s.apiCrewProgress,
		"GET /api/crews/{crew}/due":               s.apiCrewDue,
		"GET /api/crews/{crew}/sessions":          s.apiCrewSessions,
		"POST /api/crews/{crew}/sessions":         s.apiCrewTalk,
		"POST /api/sessions/{code}/answers":       s.apiCrewAnswers,
		"GET /api/{path...}":                      s.nothing,
	}
}

func (s *Server) apiDocument(w http.ResponseWriter, r *http.Request) error {
	text, kind := openAPI, "application/yaml"
	if strings.HasSuffix(r.URL.Path, ".json") {
		var err error
		if text, err = yaml.YAMLToJSON(openAPI); err != nil {
			return err
		}
		kind = "application/json"
	}
	w.Header().Set("Content-Type", kind)
	_, err := w.Write(text)
	return err
}

// readJSON reads the body of a request, refusing what does not belong there.
func readJSON(r *http.Request, into any) error {
	decode := json.NewDecoder(r.Body)
	decode.DisallowUnknownFields()
	if err := decode.Decode(into); err != nil {
		return jsonProblem(err)
	}
	if _, err := decode.Token(); !errors.Is(err, io.EOF) {
		return badRequest("fail.json", "why", "something stands after the object")
	}
	return nil
}

func jsonProblem(err error) error {
	var large *http.MaxBytesError
	if errors.As(err, &large) {
		return err
	}
	return badRequest("fail.json", "why", strings.TrimPrefix(err.Error(), "json: "))
}

// sentJob reads a job as one object of facts, with `say` for plain words.
func (s *Server) sentJob(r *http.Request) (*understood, error) {
	body, err := io.ReadAll(r.Body)
	if err != nil {
		return nil, err
	}
	j, say, err := job.ReadJSON(s.Book.Facts, "the job", body)
	if err != nil {
		return nil, err
	}
	if len(say) > mostWords {
		return nil, badRequest("fail.words", "kb", len(say)/1024, "most", mostWords/1024)
	}
	u := &understood{Job: j, Spoken: map[string]bool{}}
	s.hear(u, say, time.Now(), nil)
	return u, nil
}

func (s *Server) apiReview(w http.ResponseWriter, r *http.Request) error {
	u, err := s.sentJob(r)
	if err != nil {
		return err
	}
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, review)
}

func (s *Server) apiChecklist(w http.ResponseWriter, r *http.Request) error {
	u, err := s.sentJob(r)
	if err != nil {
		return err
	}
	review, err := s.review(r.Context(), u, system(r))
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, report.NewChecklist(review))
}

// correctedJSON is a corrected job as programs get it.
type correctedJSON struct {
	YAML    string              `json:"yaml"`
	Changes []changeJSON        `json:"changes"`
	Acts    []string            `json:"acts"` // practices that something at the site must mend first
	Left    []string            `json:"left"` // practices still wrong
	Facts   []report.Understood `json:"facts"`
}

type changeJSON struct {
	Fact     string   `json:"fact"`
	Was      string   `json:"was"`
	Now      string   `json:"now"`
	Practice string   `json:"practice"`
	Reasons  []string `json:"reasons"`
}

func (s *Server) apiCorrected(w http.ResponseWriter, r *http.Request) error {
	u, err := s.sentJob(r)
	if err != nil {
		return err
	}
	c, err := s.correct(r.Context(), u.Job)
	if err != nil {
		return err
	}
	out := correctedJSON{Changes: []changeJSON{}, Acts: []string{}, Left: []string{}}
	for _, change := range c.Changes {
		out.Changes = append(out.Changes, changeJSON{change.Fact.Path, change.Was, change.Now, change.Practice.ID, append([]string{}, change.Reasons...)})
	}
	for _, one := range c.Acts {
		out.Acts = append(out.Acts, one.Practice.ID)
	}
	for _, one := range c.Left {
		out.Left = append(out.Left, one.Practice.ID)
	}
	var text strings.Builder
	if err := job.Write(&text, s.Book.Facts, c.Job, nil); err != nil {
		return err
	}
	out.YAML = text.String()
	out.Facts = report.NewReview(s.Book, c.After, system(r)).Understood
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiOrder(w http.ResponseWriter, r *http.Request) error {
	u, err := s.sentJob(r)
	if err != nil {
		return err
	}
	c, err := s.correct(r.Context(), u.Job)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, report.NewOrder(s.Book, c, system(r), desk.Spoken))
}

func (s *Server) apiSearch(w http.ResponseWriter, r *http.Request) error {
	return writeJSON(w, http.StatusOK, nonNil(s.library.find(r.URL.Query().Get("find"), mostFound)))
}

func nonNil[T any](list []T) []T { return append([]T{}, list...) }
