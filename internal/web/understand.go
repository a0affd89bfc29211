package web

import (
	"context"
	"slices"
	"strings"
	"time"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
	"hearsay/internal/words"
)

// understood is a job as it was understood: from what was said and what was answered or corrected.
type understood struct {
	Job     *job.Job
	Spoken  map[string]bool // facts read from words
	Dropped []words.Read    // read from words, and not meant
	Refused []refusal
	Unread  []string
}

// refusal is a statement that was not taken, with why. The rest stands without it.
type refusal struct {
	Fact string
	Name string
	Text string
	Why  string
}

// understand reads a job. What was answered or corrected counts before what was said; what contradicts the rest is
// refused, and the rest stays.
func (s *Server) understand(c store.Content) *understood {
	u := &understood{Job: job.New(), Spoken: map[string]bool{}}
	u.Job.Title, u.Job.NotKnown = c.Title, c.Skipped
	for _, st := range c.Stated {
		u.take(s.Book.Facts, st.Fact, st.Written, job.Stated{Text: textOf(st.Written)})
	}
	s.hear(u, c.Said, c.SaidAt, c.Dropped)
	s.startInForecast(u, c)
	return u
}

// hear adds what plain words say to a job, save what is stated in it already and what is not meant.
func (s *Server) hear(u *understood, said string, at time.Time, dropped []string) {
	if strings.TrimSpace(said) == "" {
		return
	}
	read := s.Words.Read(said, at)
	for _, unread := range read.Unread {
		u.Unread = append(u.Unread, unread.String())
	}
	for _, fact := range read.Facts {
		old, known := u.Job.Find(fact.Path)
		switch {
		case slices.Contains(dropped, fact.Path):
			u.Dropped = append(u.Dropped, fact)
		case known && old.From == "" && (!u.Spoken[fact.Path] || old.Fact.Same(old.Value, fact.Value)): // answered, or said again
		case u.take(s.Book.Facts, fact.Path, fact.Value, job.Stated{Text: fact.Text, Taken: fact.Taken}):
			u.Spoken[fact.Path] = true
			if fact.Note != "" {
				u.Job.Warnings = append(u.Job.Warnings, fact.Note)
			}
		}
	}
}

func textOf(written any) string {
	switch v := written.(type) {
	case string:
		return v
	case []any:
		var items []string
		for _, item := range v {
			items = append(items, textOf(item))
		}
		return strings.Join(items, ", ")
	case bool:
		return map[bool]string{true: "yes", false: "no"}[v]
	}
	return ""
}

// take puts a fact into the job, or notes why it cannot, save for what only goes without saying.
func (u *understood) take(facts *job.Dictionary, path string, value any, as job.Stated) bool {
	next := u.Job.Clone()
	err := next.StateFrom(facts, as, path, value)
	if err == nil {
		err = next.Follow(facts)
	}
	if err != nil && as.Taken {
		return false
	}
	if err != nil {
		name := path
		if f, ok := facts.Fact(path); ok {
			name = f.Name
		}
		u.Refused = append(u.Refused, refusal{path, name, as.Text, err.Error()})
		return false
	}
	u.Job = next
	return true
}

// figures counts the facts read from words that carry a number.
func (u *understood) figures() int {
	n := 0
	for path := range u.Spoken {
		if s, ok := u.Job.Find(path); ok && s.Fact.Kind != job.KindFlag && s.Fact.Kind != job.KindChoice {
			n++
		}
	}
	return n
}

// judge judges a job with every practice, when its turn comes.
func (s *Server) judge(ctx context.Context, j *job.Job) (*rulebook.Review, error) {
	if err := s.turn(ctx); err != nil {
		return nil, err
	}
	defer func() { <-s.turns }()
	start := time.Now()
	defer func() { s.metrics.judged.Observe(time.Since(start).Seconds()) }()
	return s.Book.Judge(ctx, j)
}

// turn waits for a turn to judge; the turn is given back by receiving from s.turns.
func (s *Server) turn(ctx context.Context) error {
	select {
	case s.turns <- struct{}{}:
		return nil
	case <-ctx.Done():
		return ctx.Err()
	}
}

// review judges a job and shows it in the unit system.
func (s *Server) review(ctx context.Context, u *understood, system quantity.System) (*report.Review, error) {
	judged, err := s.judge(ctx, u.Job)
	if err != nil {
		return nil, err
	}
	out := report.NewReview(s.Book, judged, system)
	out.Unread = append(out.Unread, u.Unread...)
	return out, nil
}
