package web

import (
	"context"
	"fmt"
	"net"
	"net/http"
	"net/url"
	"runtime/debug"
	"strings"
	"time"

	"github.com/klauspost/compress/gzhttp"

	"hearsay/internal/release"
)

const (
	mostBody   = 256 << 10        // bytes of a request
	mostTime   = 10 * time.Second // for one request to be answered in
	mostJudged = 8                // jobs judged at the same time; others wait for their turn
)

// policy lets the page load its own files and nothing else from anywhere.
const policy = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// guard puts around all answers what every one of them needs: headers, limits on size, time and rate, the check of who
// asks, and an answer when the program itself fails.
func (s *Server) guard(inner http.Handler) (http.Handler, error) {
	origins := http.NewCrossOriginProtection()
	names, err := s.names()
	if err != nil {
		return nil, err
	}
	if s.Public != "" {
		if err := origins.AddTrustedOrigin(strings.TrimSuffix(s.Public, "/")); err != nil {
			return nil, fmt.Errorf("the public address %s cannot be used: %w", s.Public, err)
		}
	}
	origins.SetDenyHandler(s.answering(func(http.ResponseWriter, *http.Request) error {
		return problem{http.StatusForbidden, "fail.othersite", nil}
	}))
	compress, err := gzhttp.NewWrapper(gzhttp.MinSize(1400), gzhttp.CompressionLevel(1))
	if err != nil {
		return nil, err
	}
	limits := newLimits(s.Rate)
	h := origins.Handler(s.known(inner))
	checked := s.answering(func(w http.ResponseWriter, r *http.Request) error {
		if len(names) > 0 && !names[hostName(r.Host)] {
			return problem{http.StatusMisdirectedRequest, "fail.host", nil}
		}
		if !limits.allow(s.address(r)) {
			w.Header().Set("Retry-After", "1")
			return problem{http.StatusTooManyRequests, "fail.often", nil}
		}
		ctx, done := context.WithTimeout(r.Context(), mostTime)
		defer done()
		r = r.WithContext(ctx)
		r.Body = http.MaxBytesReader(w, r.Body, mostBody)
		if err := r.ParseForm(); err != nil { // what is not a form is left to be read
			return formProblem(err)
		}
		h.ServeHTTP(w, r)
		return nil
	})
	return s.headers(s.recovered(compress(checked))), nil
}

// names are the host names answered to. Without a token only those of this machine are, so that a page elsewhere cannot
// have a name of its own lead here.
func (s *Server) names() (map[string]bool, error) {
	if s.Token != "" {
		return nil, nil
	}
	names := map[string]bool{"localhost": true, "127.0.0.1": true, "::1": true}
	if s.Public != "" {
		u, err := url.Parse(s.Public)
		if err != nil || u.Host == "" {
			return nil, fmt.Errorf("the public address %q cannot be used: write it as https://desk.example", s.Public)
		}
		names[u.Hostname()] = true
	}
	return names, nil
}

func hostName(host string) string {
	if name, _, err := net.SplitHostPort(host); err == nil {
		return name
	}
	return strings.Trim(host, "[]")
}

func (s *Server) headers(inner http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Hearsay-Rulebook", s.Book.Revision())
		h.Set("Hearsay-Version", release.Version())
		h.Set("Permissions-Policy", "camera=(), microphone=(), geolocation=()")
		inner.ServeHTTP(w, r)
	})
}

// recovered keeps the server going when an answer panics.
func (s *Server) recovered(inner http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			if p := recover(); p != nil {
				if p == http.ErrAbortHandler {
					panic(p)
				}
				s.fail(w, r, fmt.Errorf("panic: %v\n%s", p, debug.Stack()))
			}
		}()
		inner.ServeHTTP(w, r)
	})
}

// address is who asks: behind a proxy, whom the proxy names.
func (s *Server) address(r *http.Request) string {
	if s.Public != "" {
		if all := r.Header.Values("X-Forwarded-For"); len(all) > 0 {
			parts := strings.Split(all[len(all)-1], ",")
			return strings.TrimSpace(parts[len(parts)-1])
		}
	}
	address, _, err := net.SplitHostPort(r.RemoteAddr)
	if err != nil {
		return r.RemoteAddr
	}
	return address
}
