package web

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/store"
)

// problem is something that the person asking can mend: its HTTP status, and the key of its text with what stands in it.
type problem struct {
	status int
	key    string
	with   []any
}

func (p problem) Error() string { return fmt.Sprintln(append([]any{p.key}, p.with...)...) }

func badRequest(key string, with ...any) problem { return problem{http.StatusBadRequest, key, with} }

func notFound(kind, name string) problem {
	return problem{http.StatusNotFound, "fail.unknown." + kind, []any{"name", name}}
}

// asProblem says what an error is to the person asking; expected is false where it is the program's own fault.
func asProblem(err error) (p problem, expected bool) {
	var problems job.Problems
	var large *http.MaxBytesError
	switch {
	case errors.As(err, &p):
		return p, true
	case errors.As(err, &problems):
		return problem{http.StatusUnprocessableEntity, "fail.job", []any{"problems", problems.Error()}}, true
	case errors.As(err, &large):
		return problem{http.StatusRequestEntityTooLarge, "fail.large", []any{"kb", large.Limit / 1024}}, true
	case errors.Is(err, store.ErrNotFound):
		return problem{http.StatusNotFound, "fail.nojob", nil}, true
	case errors.Is(err, context.DeadlineExceeded):
		return problem{http.StatusServiceUnavailable, "fail.slow", nil}, true
	}
	return problem{http.StatusInternalServerError, "fail.own", nil}, false
}

// formProblem is a form, or the part of an address after ?, that cannot be read.
func formProblem(err error) error {
	var large *http.MaxBytesError
	if errors.As(err, &large) {
		return err
	}
	return badRequest("fail.form")
}

type failPage struct {
	frame
	Text []string
}

// fail answers with what went wrong, as a page or, below /api/, as JSON.
func (s *Server) fail(w http.ResponseWriter, r *http.Request, err error) {
	if errors.Is(r.Context().Err(), context.Canceled) {
		return // nobody waits for it any more
	}
	p, expected := asProblem(err)
	if !expected {
		s.Log.Error("request failed", "method", r.Method, "path", r.URL.Path, "error", err)
	}
	text := s.texts(r).say(p.key, p.with...)
	if strings.HasPrefix(r.URL.Path, "/api/") {
		err = writeJSON(w, p.status, map[string]string{"error": text})
	} else {
		err = s.show(w, r, p.status, "fail", &failPage{frame: frame{Title: s.texts(r).say("fail.title")}, Text: strings.Split(text, "\n")})
	}
	if err != nil {
		s.Log.Error("what went wrong could not be said", "error", err)
	}
}

func (s *Server) nothing(http.ResponseWriter, *http.Request) error {
	return problem{http.StatusNotFound, "fail.nopage", nil}
}

func writeJSON(w http.ResponseWriter, status int, v any) error {
	w.Header().Set("Content-Type", "application/json; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	encode := json.NewEncoder(w)
	encode.SetEscapeHTML(false)
	return encode.Encode(v)
}
