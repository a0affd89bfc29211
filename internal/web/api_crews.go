package web

import (
	"errors"
	"net/http"
	"slices"
	"strings"
	"time"

	"hearsay/internal/crew"
	"hearsay/internal/store"
)

func (s *Server) apiCrews(w http.ResponseWriter, r *http.Request) error {
	names, err := s.Store.Crews(r.Context())
	if err != nil {
		return err
	}
	out := []map[string]any{}
	for _, name := range names {
		people, err := s.Store.CrewPeople(r.Context(), name)
		if err != nil {
			return err
		}
		out = append(out, map[string]any{"crew": name, "people": nonNil(people)})
	}
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiCrewProgress(w http.ResponseWriter, r *http.Request) error {
	_, m, err := s.remember(r.Context(), r.PathValue("crew"))
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, nonNil(m.Progress()))
}

// apiCrewDue lists what falls due up to a day (?on=2026-03-09), of one person (?person=), on what bears on a kept job (?job=).
func (s *Server) apiCrewDue(w http.ResponseWriter, r *http.Request) error {
	_, m, err := s.remember(r.Context(), r.PathValue("crew"))
	if err != nil {
		return err
	}
	q, at := r.URL.Query(), s.clock()
	if on := q.Get("on"); on != "" {
		day, err := time.ParseInLocation(time.DateOnly, on, time.Local)
		if err != nil {
			return badRequest("fail.day", "day", on)
		}
		at = day.AddDate(0, 0, 1)
	}
	bears := func(string) bool { return true }
	if id := q.Get("job"); id != "" {
		t, err := s.trainer(r, "en")
		if err != nil {
			return err
		}
		if bears, err = s.bearsOn(r.Context(), t, id); err != nil {
			return err
		}
	}
	list := slices.DeleteFunc(m.Due(at), func(d crew.Due) bool {
		return !bears(d.Belief) || q.Get("person") != "" && !strings.EqualFold(q.Get("person"), d.Person)
	})
	return writeJSON(w, http.StatusOK, nonNil(list))
}

// sessionJSON is a session without its quiz, whose key is not for everybody.
type sessionJSON struct {
	Code     string    `json:"code"`
	Crew     string    `json:"crew"`
	Title    string    `json:"title"`
	Language string    `json:"language"`
	Beliefs  []string  `json:"beliefs"`
	Quiz     bool      `json:"quiz"`
	Open     bool      `json:"open"`
	Held     time.Time `json:"held"`
	Present  []string  `json:"present"`
}

func sessionOut(c *store.CrewSession) sessionJSON {
	return sessionJSON{c.Code, c.Crew, c.Title, c.Language, nonNil(c.Beliefs), c.Quiz != "", c.Open, c.Held, nonNil(c.Present)}
}

func (s *Server) apiCrewSessions(w http.ResponseWriter, r *http.Request) error {
	x, _, err := s.remember(r.Context(), r.PathValue("crew"))
	if err != nil {
		return err
	}
	out := []sessionJSON{}
	for i := range x.Sessions {
		out = append(out, sessionOut(&x.Sessions[i]))
	}
	return writeJSON(w, http.StatusOK, out)
}

// apiCrewTalk records a talk that was held.
func (s *Server) apiCrewTalk(w http.ResponseWriter, r *http.Request) error {
	var sent struct {
		Title   string    `json:"title"`
		Beliefs []string  `json:"beliefs"`
		Present []string  `json:"present"`
		Held    time.Time `json:"held"`
	}
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	name := strings.TrimSpace(r.PathValue("crew"))
	if name == "" || len(name) > longestName || len(sent.Beliefs) == 0 || slices.ContainsFunc(sent.Present, func(p string) bool { return strings.TrimSpace(p) == "" || len(p) > longestName }) {
		return badRequest("fail.talk")
	}
	for _, id := range sent.Beliefs {
		if !slices.Contains(s.Corpus.IDs(), id) {
			return notFound("belief", id)
		}
	}
	done, err := s.Store.CreateCrewSession(r.Context(), store.CrewSession{Crew: name, Title: cut(sent.Title, mostTitle), Language: crew.Languages()[0],
		Beliefs: sent.Beliefs, Present: sent.Present, Held: sent.Held})
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusCreated, sessionOut(done))
}

// apiCrewAnswers records answers of a quiz: by person, a letter for each question and - for none.
func (s *Server) apiCrewAnswers(w http.ResponseWriter, r *http.Request) error {
	var sent struct {
		Present []string          `json:"present"`
		Answers map[string]string `json:"answers"`
	}
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	var lines []string
	for person, letters := range sent.Answers {
		if strings.ContainsAny(person, ":\n#") || strings.TrimSpace(person) == "" || strings.Contains(letters, "\n") {
			return badRequest("fail.name")
		}
		lines = append(lines, person+": "+letters)
	}
	slices.Sort(lines)
	code := r.PathValue("code")
	var wrong unreadable
	if err := s.keepAnswers(r.Context(), code, strings.Join(lines, "\n")); errors.As(err, &wrong) {
		return problem{http.StatusUnprocessableEntity, "fail.job", []any{"problems", wrong.Error()}}
	} else if err != nil {
		return err
	}
	if len(sent.Present) > 0 {
		if err := s.Store.AddPresent(r.Context(), code, sent.Present); err != nil {
			return err
		}
	}
	z, session, err := crew.Kept(r.Context(), s.Store, code)
	if err != nil {
		return noSession(err)
	}
	answers, err := s.Store.SessionAnswers(r.Context(), session.Code)
	if err != nil {
		return err
	}
	scores := map[string]int{}
	for _, a := range answers {
		scores[a.Person] += map[bool]int{true: 1}[a.Correct]
	}
	return writeJSON(w, http.StatusOK, map[string]any{"code": session.Code, "questions": len(z.Questions), "right": scores})
}
