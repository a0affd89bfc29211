package crew

import (
	"context"
	"encoding/json"
	"errors"

	"hearsay/internal/store"
)

// ErrNoQuiz says that a session was a talk alone.
var ErrNoQuiz = errors.New("that session has no quiz")

// Keep keeps a quiz as a session, whose code the quiz then carries.
func Keep(ctx context.Context, kept *store.Store, z *Quiz, s store.CrewSession) error {
	text, err := json.Marshal(z)
	if err != nil {
		return err
	}
	s.Quiz, s.Language = string(text), z.Language
	if s.Title == "" {
		s.Title = z.Title
	}
	done, err := kept.CreateCrewSession(ctx, s)
	if err != nil {
		return err
	}
	z.Code = done.Code
	return nil
}

// Kept gives the quiz of a session by its code.
func Kept(ctx context.Context, kept *store.Store, code string) (*Quiz, *store.CrewSession, error) {
	s, err := kept.CrewSession(ctx, code)
	if err != nil {
		return nil, nil, err
	}
	if s.Quiz == "" {
		return nil, s, ErrNoQuiz
	}
	z, err := ReadQuiz([]byte(s.Quiz))
	if err != nil {
		return nil, s, err
	}
	z.Code = s.Code
	return z, s, nil
}
