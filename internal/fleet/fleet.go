// Package fleet owns the following of a rulebook that is published elsewhere: it asks an HTTP server for a bundle, again and
// again, and hands over each that is new and good. What is bad or cannot be reached changes nothing.
package fleet

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"log/slog"
	"math/rand/v2"
	"net/http"
	"net/url"
	"time"

	"hearsay/internal/rulebook"
)

const (
	mostBytes = 16 << 20         // of a bundle, packed
	mostWait  = 20 * time.Second // for one to arrive
	spread    = 0.1              // of the time between two requests, so that many servers do not ask at once
)

// Least is the shortest time between two requests.
const Least = time.Second

// Follower follows a rulebook.
type Follower struct {
	address string
	every   time.Duration
	key     *rulebook.Key
	take    func(*rulebook.Bundle) error
	log     *slog.Logger
	client  *http.Client
	tag     string // of the last good bundle, as the server names it
	refused string // the tag of the last bad one, which is not fetched again
}

// New makes a follower. The address is http or https; key, which may be nil, is the one that bundles must be signed with; take is
// called with each new bundle, and says whether it is good.
func New(address string, every time.Duration, key *rulebook.Key, log *slog.Logger, take func(*rulebook.Bundle) error) (*Follower, error) {
	u, err := url.Parse(address)
	if err != nil || u.Scheme != "http" && u.Scheme != "https" || u.Host == "" {
		return nil, fmt.Errorf("%q is no address of a bundle: write it as https://rules.example/rulebook.tar.gz", address)
	}
	if every < Least {
		return nil, fmt.Errorf("every %v is too often: ask at most every %v", every, Least)
	}
	client := &http.Client{Timeout: mostWait, CheckRedirect: func(r *http.Request, via []*http.Request) error {
		if len(via) > 3 || via[0].URL.Scheme == "https" && r.URL.Scheme != "https" {
			return errors.New("it leads on to elsewhere too often, or to an address without TLS")
		}
		return nil
	}}
	return &Follower{address: address, every: every, key: key, take: take, log: log, client: client}, nil
}

// Name is the address without a password in it, for logs and for people.
func (f *Follower) Name() string {
	u, err := url.Parse(f.address)
	if err != nil {
		return ""
	}
	u.RawQuery = ""
	return u.Redacted()
}

// Follow asks until the context ends. What goes wrong is logged, and asked for again.
func (f *Follower) Follow(ctx context.Context) {
	for {
		wait := time.Duration(float64(f.every) * (1 + spread*(2*rand.Float64()-1)))
		select {
		case <-ctx.Done():
			return
		case <-time.After(wait):
		}
		f.Poll(ctx)
	}
}

// Poll asks once, and says whether a new rulebook was taken.
func (f *Follower) Poll(ctx context.Context) bool {
	b, tag, err := f.fetch(ctx)
	if err == nil && b == nil {
		return false
	}
	if err == nil {
		err = f.take(b)
	}
	if err != nil {
		if tag != "" {
			f.refused = tag
		}
		f.log.Error("the rulebook from elsewhere was not taken; the one before goes on", "from", f.Name(), "error", err)
		return false
	}
	f.tag, f.refused = tag, ""
	f.log.Info("a new rulebook was taken", "from", f.Name(), "revision", b.Revision)
	return true
}

// fetch gets the bundle if it is another than the last; nil where it is not.
func (f *Follower) fetch(ctx context.Context) (b *rulebook.Bundle, tag string, err error) {
	request, err := http.NewRequestWithContext(ctx, http.MethodGet, f.address, nil)
	if err != nil {
		return nil, "", err
	}
	for _, known := range []string{f.tag, f.refused} {
		if known != "" {
			request.Header.Add("If-None-Match", known)
		}
	}
	answer, err := f.client.Do(request)
	if err != nil {
		return nil, "", fmt.Errorf("the server does not answer: %w", withoutAddress(err))
	}
	defer answer.Body.Close()
	tag = answer.Header.Get("ETag")
	switch {
	case answer.StatusCode == http.StatusNotModified, tag != "" && (tag == f.tag || tag == f.refused) && answer.StatusCode == http.StatusOK:
		return nil, tag, nil
	case answer.StatusCode != http.StatusOK:
		return nil, "", fmt.Errorf("the server answers %s", answer.Status)
	}
	text, err := io.ReadAll(io.LimitReader(answer.Body, mostBytes+1))
	if err != nil {
		return nil, "", fmt.Errorf("the bundle did not arrive whole: %w", withoutAddress(err))
	}
	if len(text) > mostBytes {
		return nil, tag, fmt.Errorf("the bundle is larger than %d MB", mostBytes>>20)
	}
	b, err = rulebook.ReadBundle(bytes.NewReader(text), f.key)
	return b, tag, err
}

// withoutAddress takes the address, which may hold a password, out of an error of the client.
func withoutAddress(err error) error {
	var wrapped *url.Error
	if errors.As(err, &wrapped) {
		return wrapped.Err
	}
	return err
}
