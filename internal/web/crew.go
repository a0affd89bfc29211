package web

import (
	"errors"
	"math/rand/v2"
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
		"POST /crew":              s.crewStart,
		"GET /crew/{code}":        s.crewSession,
		"POST /crew/{code}/close": s.crewClose,
		"GET /join":               s.joinPage,
		"GET /join/{code}":        s.joinQuestion,
		"POST /join/{code}":       s.joinAnswer,
	}
}

type crewPage struct {
	frame
	Crews    []string
	Topics   []string
	Sessions []store.CrewSession // the newest first
	Due      map[string]int      // by crew, things due now
}

// What one session takes.
const (
	sessionBeliefs   = 3
	sessionQuestions = 6
	mostSessions     = 30
	longestName      = 60
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
	p := &crewPage{frame: frame{Title: s.texts(r).say("crew.title")}, Due: map[string]int{}}
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
		if topic, _, _ := strings.Cut(id, "/"); !slices.Contains(p.Topics, topic) {
			p.Topics = append(p.Topics, topic)
		}
	}
	slices.Reverse(x.Sessions)
	p.Sessions = x.Sessions[:min(mostSessions, len(x.Sessions))]
	return s.show(w, r, http.StatusOK, "crew", p)
}

// crewStart makes a session: a talk on a topic, what the crew gets wrong first, and a quiz of new questions on it.
func (s *Server) crewStart(w http.ResponseWriter, r *http.Request) error {
	name, language := strings.TrimSpace(r.PostFormValue("crew")), r.PostFormValue("language")
	if name == "" || len(name) > longestName || !slices.Contains(crew.Languages(), language) {
		return badRequest("fail.crew")
	}
	t, err := s.trainer(r, language)
	if err != nil {
		return err
	}
	x, err := s.Store.ExportCrews(r.Context(), name)
	if err != nil {
		return err
	}
	asked, err := crew.AskedBefore(x.Sessions)
	if err != nil {
		return err
	}
	choice := crew.Choice{Topic: r.PostFormValue("topic"), Rank: crew.Remember(x.Sessions, x.Answers).Rank(), Seed: uint64(rand.Uint32()) + 1, Most: sessionBeliefs}
	beliefs, err := t.Choose(choice)
	if errors.Is(err, crew.ErrNothing) {
		return badRequest("fail.crew")
	}
	if err != nil {
		return err
	}
	z, err := quizOn(t, choice, asked)
	if err != nil {
		return err
	}
	if err := crew.Keep(r.Context(), s.Store, z, store.CrewSession{Crew: name, Beliefs: beliefs, Open: true}); err != nil {
		return err
	}
	http.Redirect(w, r, "/crew/"+z.Code, http.StatusSeeOther)
	return nil
}

// quizOn makes a quiz of new questions on the beliefs chosen, and on further ones of the topic where those do not give enough.
func quizOn(t *crew.Trainer, choice crew.Choice, asked map[string]bool) (*crew.Quiz, error) {
	for {
		beliefs, err := t.Choose(choice)
		if err != nil {
			return nil, err
		}
		z, err := t.Quiz(crew.Plan{Beliefs: beliefs, Questions: sessionQuestions, Seed: choice.Seed, Asked: func(id string) bool { return asked[id] }})
		if !errors.Is(err, crew.ErrAllAsked) || len(beliefs) < choice.Most {
			return z, err
		}
		choice.Most++
	}
}

type crewSessionPage struct {
	frame
	Session *store.CrewSession
	Talk    *crew.Talk
	Quiz    *crew.Quiz // its key is shown once the session is closed
	Answers int
	Right   []int // by question
	Given   []int
}

// crewSession is the projector's view: the talk, the code, and after closing the answers with their reasons.
func (s *Server) crewSession(w http.ResponseWriter, r *http.Request) error {
	z, session, err := crew.Kept(r.Context(), s.Store, r.PathValue("code"))
	if err != nil {
		return noSession(err)
	}
	t, err := s.trainer(r, session.Language)
	if err != nil {
		return err
	}
	p := &crewSessionPage{frame: frame{Title: session.Title + ": " + session.Crew}, Session: session, Quiz: z,
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
	return s.show(w, r, http.StatusOK, "crewsession", p)
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
