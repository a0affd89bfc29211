package web

import (
	"context"
	"errors"
	"net/http"
	"slices"
	"strings"
	"sync"

	"hearsay/internal/crew"
	"hearsay/internal/quantity"
	"hearsay/internal/store"
)

// trainers are made when they are first asked for, one for each language and unit system.
type trainers struct {
	lock sync.Mutex
	made map[trainerKey]*crew.Trainer
}

type trainerKey struct {
	language string
	system   quantity.System
}

func (s *Server) trainer(r *http.Request, language string) (*crew.Trainer, error) {
	s.trainers.lock.Lock()
	defer s.trainers.lock.Unlock()
	key := trainerKey{language, system(r)}
	if t := s.trainers.made[key]; t != nil {
		return t, nil
	}
	t, err := crew.NewTrainer(s.Corpus.Files(), s.Book, language, key.system)
	if err != nil {
		return nil, err
	}
	if s.trainers.made == nil {
		s.trainers.made = map[trainerKey]*crew.Trainer{}
	}
	s.trainers.made[key] = t
	return t, nil
}

func (s *Server) crewRoutes() map[string]answer {
	return map[string]answer{
		"GET /crew":               s.crewPage,
		"GET /crew/progress":      s.crewProgress,
		"POST /crew":              s.crewStart,
		"GET /crew/{code}":        s.crewSession,
		"POST /crew/{code}/close": s.crewClose,
		"POST /crew/{code}/paper": s.crewPaper,
		"GET /join":               s.joinPage,
		"GET /join/{code}":        s.joinQuestion,
		"POST /join/{code}":       s.joinAnswer,
	}
}

type crewPage struct {
	frame
	Crews    []string
	Topics   []crewTopic
	Jobs     []jobLine
	Sessions []store.CrewSession // the newest first
	Due      map[string]int      // by crew, things due now
	Crew     string              // filled in
}

// crewTopic is a topic with what can be taught on it.
type crewTopic struct {
	Name    string
	Beliefs []link
}

const (
	mostSessions = 30
	longestName  = 60
)

func (s *Server) crewPage(w http.ResponseWriter, r *http.Request) error {
	t, err := s.trainer(r, "en")
	if err != nil {
		return err
	}
	x, err := s.Store.ExportCrews(r.Context(), "")
	if err != nil {
		return err
	}
	p := &crewPage{frame: frame{Title: s.texts(r).say("crew.title")}, Due: map[string]int{}, Crew: r.URL.Query().Get("crew")}
	if p.Crews, err = s.Store.Crews(r.Context()); err != nil {
		return err
	}
	for _, name := range p.Crews {
		own, err := s.Store.ExportCrews(r.Context(), name)
		if err != nil {
			return err
		}
		p.Due[name] = len(crew.Remember(own.Sessions, own.Answers).Due(s.clock()))
	}
	for _, id := range t.Beliefs() {
		l, err := t.Lesson(id)
		if err != nil {
			return err
		}
		topic, _, _ := strings.Cut(id, "/")
		if n := len(p.Topics); n == 0 || p.Topics[n-1].Name != topic {
			p.Topics = append(p.Topics, crewTopic{Name: topic})
		}
		last := &p.Topics[len(p.Topics)-1]
		last.Beliefs = append(last.Beliefs, link{Title: l.Saying, ID: id})
	}
	jobs, err := s.Store.Jobs(r.Context(), "", mostListed)
	if err != nil {
		return err
	}
	p.Jobs = jobLines(s.texts(r), jobs)
	slices.Reverse(x.Sessions)
	p.Sessions = x.Sessions[:min(mostSessions, len(x.Sessions))]
	return s.show(w, r, http.StatusOK, "crew", p)
}

type crewSessionPage struct {
	frame
	Session *store.CrewSession
	Talk    *crew.Talk
	Quiz    *crew.Quiz // its key is shown once the session is closed
	Answers int
	Right   []int // by question
	Given   []int
	Paper   string // answers from paper that could not be read, with why
	Why     string
	Join    string // where phones answer
}

// crewSession is the projector's view: the talk, the code, and after closing the answers with their reasons.
func (s *Server) crewSession(w http.ResponseWriter, r *http.Request) error {
	return s.showSession(w, r, http.StatusOK, "", "")
}

func (s *Server) showSession(w http.ResponseWriter, r *http.Request, status int, paper, why string) error {
	z, session, err := crew.Kept(r.Context(), s.Store, r.PathValue("code"))
	if err != nil {
		return noSession(err)
	}
	t, err := s.trainer(r, session.Language)
	if err != nil {
		return err
	}
	p := &crewSessionPage{frame: frame{Title: session.Title + ": " + session.Crew}, Session: session, Quiz: z, Paper: paper, Why: why, Join: s.joinAddress(r),
		Right: make([]int, len(z.Questions)), Given: make([]int, len(z.Questions))}
	if len(session.Beliefs) > 0 {
		if p.Talk, err = t.Talk("", session.Beliefs); err != nil {
			return err
		}
	}
	answers, err := s.Store.SessionAnswers(r.Context(), session.Code)
	if err != nil {
		return err
	}
	p.Answers = len(answers)
	for _, a := range answers {
		if p.Given[a.Question]++; a.Correct {
			p.Right[a.Question]++
		}
	}
	return s.show(w, r, status, "crewsession", p)
}

// joinAddress is what the crew types into their phones.
func (s *Server) joinAddress(r *http.Request) string {
	if s.Public != "" {
		return strings.TrimSuffix(s.Public, "/") + "/join"
	}
	if r.TLS != nil {
		return "https://" + r.Host + "/join"
	}
	return r.Host + "/join"
}

// crewPaper keeps the answers that stand on sheets of paper.
func (s *Server) crewPaper(w http.ResponseWriter, r *http.Request) error {
	text := r.PostFormValue("answers")
	var wrong unreadable
	if err := s.keepAnswers(r.Context(), r.PathValue("code"), text); errors.As(err, &wrong) {
		return s.showSession(w, r, http.StatusUnprocessableEntity, text, wrong.Error())
	} else if err != nil {
		return err
	}
	http.Redirect(w, r, "/crew/"+r.PathValue("code")+"#answers", http.StatusSeeOther)
	return nil
}

// unreadable are answers that could not be read, with the line and what to write.
type unreadable struct{ error }

// keepAnswers reads and keeps answers, one person a line. What was kept of somebody before is replaced.
func (s *Server) keepAnswers(ctx context.Context, code, text string) error {
	z, session, err := crew.Kept(ctx, s.Store, code)
	if err != nil {
		return noSession(err)
	}
	answers, err := z.ReadAnswers(strings.ReplaceAll(text, "\r\n", "\n"))
	if err != nil {
		return unreadable{err}
	}
	for i := range answers {
		if len(answers[i].Person) > longestName {
			return badRequest("fail.name")
		}
		answers[i].Code, answers[i].Answered = session.Code, s.clock()
	}
	return s.Store.Answer(ctx, session.Code, answers, true)
}

func (s *Server) crewClose(w http.ResponseWriter, r *http.Request) error {
	if err := s.Store.CloseCrewSession(r.Context(), r.PathValue("code"), r.PostFormValue("open") == "yes"); err != nil {
		return noSession(err)
	}
	http.Redirect(w, r, "/crew/"+r.PathValue("code"), http.StatusSeeOther)
	return nil
}

// noSession says that a code leads nowhere.
func noSession(err error) error {
	if errors.Is(err, store.ErrNotFound) || errors.Is(err, crew.ErrNoQuiz) {
		return problem{http.StatusNotFound, "fail.nosession", nil}
	}
	return err
}
