package web

import (
	"context"
	"errors"
	"maps"
	"math/rand/v2"
	"net/http"
	"slices"
	"strings"

	"hearsay/internal/crew"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

// What one session takes.
const (
	sessionBeliefs   = 3
	mostBeliefs      = 4
	sessionQuestions = 6
)

// crewStart makes a session: a talk on what was chosen, what the crew gets wrong first, and a quiz of new questions on it.
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
	choice := crew.Choice{Topic: r.PostFormValue("topic"), Beliefs: r.PostForm["belief"], Rank: crew.Remember(x.Sessions, x.Answers).Rank(),
		Seed: uint64(rand.Uint32()) + 1, Most: sessionBeliefs}
	if err := s.chosen(r.Context(), t, &choice, r.PostFormValue("job")); err != nil {
		return err
	}
	beliefs, err := t.Choose(choice)
	if errors.Is(err, crew.ErrNothing) {
		return badRequest("fail.nothing")
	}
	if err != nil {
		return err
	}
	z, err := quizOn(t, choice, asked)
	if errors.Is(err, crew.ErrAllAsked) {
		return problem{http.StatusConflict, "fail.allasked", []any{"crew", name}}
	}
	if err != nil {
		return err
	}
	if err := crew.Keep(r.Context(), s.Store, z, store.CrewSession{Crew: name, Beliefs: beliefs, Open: true}); err != nil {
		return err
	}
	http.Redirect(w, r, "/crew/"+z.Code, http.StatusSeeOther)
	return nil
}

// chosen completes a choice: beliefs that exist and fit into a talk, what is wrong with a job, or, where nothing else is
// chosen, what the crew gets wrong.
func (s *Server) chosen(ctx context.Context, t *crew.Trainer, c *crew.Choice, jobID string) error {
	if len(c.Beliefs) > mostBeliefs {
		return badRequest("fail.manybeliefs", "most", mostBeliefs)
	}
	for _, id := range c.Beliefs {
		if !slices.Contains(t.Beliefs(), id) {
			return notFound("belief", id)
		}
	}
	if jobID != "" {
		wrong, err := s.practicesOf(ctx, jobID, func(one *rulebook.Judgement) bool { return one.Status == rulebook.Wrong })
		if err != nil {
			return err
		}
		if len(wrong) == 0 {
			return badRequest("fail.nothingwrong")
		}
		c.Practices = wrong
	}
	if len(c.Beliefs) == 0 && c.Topic == "" && jobID == "" {
		if len(c.Rank) == 0 {
			return badRequest("fail.choose")
		}
		c.Only = slices.Sorted(maps.Keys(c.Rank))
	}
	return nil
}

// practicesOf lists the practices that came out on a kept job as want says.
func (s *Server) practicesOf(ctx context.Context, jobID string, want func(*rulebook.Judgement) bool) ([]string, error) {
	j, err := s.Store.Job(ctx, jobID)
	if err != nil {
		return nil, err
	}
	review, err := s.judge(ctx, s.understand(j.Content).Job)
	if err != nil {
		return nil, err
	}
	list := []string{}
	for _, one := range review.Judgements {
		if want(one) {
			list = append(list, one.Practice.ID)
		}
	}
	return list, nil
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
