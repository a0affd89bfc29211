package web

import (
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/hex"
	"net/http"
	"strings"
	"time"
)

// NewToken makes a token that can be read aloud and that nobody guesses: 26 letters and digits in groups.
func NewToken() string {
	text := strings.ToLower(rand.Text())
	var groups []string
	for ; len(text) > 5; text = text[5:] {
		groups = append(groups, text[:5])
	}
	return strings.Join(append(groups, text), "-")
}

const tokenCookie = "hearsay"

// needsNone are the pages that need no token: they tell nothing, or, under /join, no more than the code of a session gives.
func needsNone(path string) bool {
	return path == "/join" || strings.HasPrefix(path, "/join/") || path == "/health" || path == "/token" || strings.HasPrefix(path, "/assets/")
}

// known lets those pass who have shown the token: a browser with its cookie, a program with its header.
func (s *Server) known(inner http.Handler) http.Handler {
	if s.Token == "" {
		return inner
	}
	return s.answering(func(w http.ResponseWriter, r *http.Request) error {
		if needsNone(r.URL.Path) || s.shown(r) {
			inner.ServeHTTP(w, r)
			return nil
		}
		if strings.HasPrefix(r.URL.Path, "/api/") || r.URL.Path == "/metrics" {
			w.Header().Set("WWW-Authenticate", "Bearer")
			return problem{http.StatusUnauthorized, "fail.token", nil}
		}
		http.Redirect(w, r, "/token", http.StatusSeeOther)
		return nil
	})
}

func (s *Server) shown(r *http.Request) bool {
	if bearer, ok := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer "); ok {
		return same(bearer, s.Token)
	}
	c, err := r.Cookie(tokenCookie)
	return err == nil && same(c.Value, s.pass())
}

func same(a, b string) bool { return subtle.ConstantTimeCompare([]byte(a), []byte(b)) == 1 }

// pass is what the cookie holds: made from the token, so that the cookie does not give it away.
func (s *Server) pass() string {
	sum := hmac.New(sha256.New, []byte(s.Token))
	sum.Write([]byte("cookie"))
	return hex.EncodeToString(sum.Sum(nil))
}

type tokenPage struct {
	frame
	Wrong bool
}

func (s *Server) tokenPage(w http.ResponseWriter, r *http.Request) error {
	return s.show(w, r, http.StatusOK, "token", &tokenPage{frame: frame{Title: s.texts(r).say("token.title")}})
}

// wrongTokenCosts is how long a wrong token is looked at, so that guessing is slow.
const wrongTokenCosts = 500 * time.Millisecond

func (s *Server) tokenGive(w http.ResponseWriter, r *http.Request) error {
	given := strings.ToLower(strings.TrimSpace(r.PostFormValue("token")))
	if s.Token != "" && !same(given, strings.ToLower(s.Token)) {
		time.Sleep(wrongTokenCosts)
		return s.show(w, r, http.StatusForbidden, "token", &tokenPage{frame: frame{Title: s.texts(r).say("token.title")}, Wrong: true})
	}
	http.SetCookie(w, &http.Cookie{Name: tokenCookie, Value: s.pass(), Path: "/", MaxAge: 90 * 24 * 3600, HttpOnly: true, SameSite: http.SameSiteStrictMode, Secure: s.secure()})
	http.Redirect(w, r, "/", http.StatusSeeOther)
	return nil
}
