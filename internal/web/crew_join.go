package web

import (
	"errors"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"time"

	"hearsay/internal/crew"
	"hearsay/internal/store"
)

// The pages under /join are for the phones of a crew: whoever has the code of an open session answers its questions under
// a name or number, and needs nothing else.

type joinPage struct {
	frame
	Code     string
	Name     string
	Quiz     *crew.Quiz
	Question *crew.Question // nil where all are answered
	Number   int            // of the question, from 0
	Before   *answered      // what was just answered
}

// answered is an answer with the key and why.
type answered struct {
	Right bool
	Key   string
	Why   []string
}

func (s *Server) clock() time.Time {
	if s.Now != nil {
		return s.Now()
	}
	return time.Now()
}

func (s *Server) joinPage(w http.ResponseWriter, r *http.Request) error {
	code, name := strings.ToUpper(strings.TrimSpace(r.URL.Query().Get("code"))), strings.TrimSpace(r.URL.Query().Get("name"))
	if code != "" && name != "" {
		http.Redirect(w, r, "/join/"+url.PathEscape(code)+"?name="+url.QueryEscape(name), http.StatusSeeOther)
		return nil
	}
	return s.show(w, r, http.StatusOK, "join", &joinPage{frame: frame{Title: s.texts(r).say("join.title"), Bare: true}, Code: code})
}

func (s *Server) joinQuestion(w http.ResponseWriter, r *http.Request) error {
	return s.nextQuestion(w, r, strings.TrimSpace(r.URL.Query().Get("name")), nil)
}

// nextQuestion shows the first question of a session that somebody has not answered.
func (s *Server) nextQuestion(w http.ResponseWriter, r *http.Request, name string, before *answered) error {
	z, session, err := crew.Kept(r.Context(), s.Store, r.PathValue("code"))
	if err != nil {
		return noSession(err)
	}
	if name == "" || len(name) > longestName {
		return badRequest("fail.name")
	}
	answers, err := s.Store.SessionAnswers(r.Context(), session.Code)
	if err != nil {
		return err
	}
	done := map[int]bool{}
	for _, a := range answers {
		if strings.EqualFold(a.Person, name) {
			done[a.Question] = true
		}
	}
	p := &joinPage{frame: frame{Title: session.Title, Bare: true}, Code: session.Code, Name: name, Quiz: z, Before: before}
	for i := range z.Questions {
		if !done[i] && session.Open {
			p.Question, p.Number = &z.Questions[i], i
			break
		}
	}
	return s.show(w, r, http.StatusOK, "join", p)
}

// joinAnswer keeps one answer; it is on the disk when the phone hears of it.
func (s *Server) joinAnswer(w http.ResponseWriter, r *http.Request) error {
	z, _, err := crew.Kept(r.Context(), s.Store, r.PathValue("code"))
	if err != nil {
		return noSession(err)
	}
	name := strings.TrimSpace(r.PostFormValue("name"))
	if name == "" || len(name) > longestName {
		return badRequest("fail.name")
	}
	question, err1 := strconv.Atoi(r.PostFormValue("question"))
	chosen, err2 := strconv.Atoi(r.PostFormValue("chosen"))
	if err1 != nil || err2 != nil || question < 0 || question >= len(z.Questions) || chosen < 0 || chosen >= len(z.Questions[question].Options) {
		return badRequest("fail.form")
	}
	answer := z.Answer(name, question, chosen)
	answer.Answered = s.clock()
	if err := s.Store.Answer(r.Context(), z.Code, []store.CrewAnswer{answer}, false); errors.Is(err, store.ErrClosed) {
		return problem{http.StatusConflict, "fail.closed", nil}
	} else if err != nil {
		return err
	}
	q := z.Questions[question]
	return s.nextQuestion(w, r, name, &answered{answer.Correct, q.KeyLetter() + " " + q.Options[q.Key].Text, z.Explain(q)})
}
