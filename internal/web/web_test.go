package web

import (
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"net/url"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/reckon"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
	"hearsay/internal/words"
	"hearsay/rules"
)

var theBook = sync.OnceValues(func() (*rulebook.Book, error) { return rulebook.Load(rules.Files) })

var theCorpus = sync.OnceValues(func() (*belief.Corpus, error) { return belief.Load(corpus.Files) })

var theReckoner = sync.OnceValues(func() (*reckon.Reckoner, error) { return reckon.New(rules.Files, corpus.Files) })

// site is a server that runs for one test.
type site struct {
	testing.TB
	*Server
	address string
	client  *http.Client
}

// newSite starts a server with the whole rulebook and an empty database.
func newSite(t testing.TB, with ...func(*Config)) *site {
	t.Helper()
	book, err := theBook()
	require.NoError(t, err)
	kept, err := store.Open(t.Context(), filepath.Join(t.TempDir(), "kept.db"))
	require.NoError(t, err)
	beliefs, err := theCorpus()
	require.NoError(t, err)
	reader, err := words.New(book.Facts, corpus.Files)
	require.NoError(t, err)
	reckoner, err := theReckoner()
	require.NoError(t, err)
	c := Config{Book: book, Reckon: reckoner, Words: reader, Corpus: beliefs, Store: kept, Log: slog.New(slog.NewTextHandler(t.Output(), nil))}
	for _, change := range with {
		change(&c)
	}
	s, err := New(c)
	require.NoError(t, err)
	handler, err := s.Handler()
	require.NoError(t, err)
	server := httptest.NewServer(handler)
	t.Cleanup(func() { server.Close(); kept.Close() })
	client := server.Client()
	client.CheckRedirect = func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }
	return &site{t, s, server.URL, client}
}

// got is an answer that was read.
type got struct {
	*http.Response
	text string
}

func (s *site) do(r *http.Request) got {
	s.Helper()
	answer, err := s.client.Do(r)
	require.NoError(s, err)
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	require.NoError(s, err)
	return got{answer, string(text)}
}

func (s *site) get(path string) got {
	s.Helper()
	r, err := http.NewRequestWithContext(s.Context(), http.MethodGet, s.address+path, nil)
	require.NoError(s, err)
	return s.do(r)
}

// post sends a form: names and values by turns.
func (s *site) post(path string, fields ...string) got {
	s.Helper()
	form := url.Values{}
	for i := 0; i+1 < len(fields); i += 2 {
		form.Add(fields[i], fields[i+1])
	}
	r, err := http.NewRequestWithContext(s.Context(), http.MethodPost, s.address+path, strings.NewReader(form.Encode()))
	require.NoError(s, err)
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	return s.do(r)
}

// keep brings in a job and gives its address.
func (s *site) keep(yaml string) string {
	s.Helper()
	answer := s.post("/jobs", "yaml", yaml)
	require.Equal(s, http.StatusSeeOther, answer.StatusCode, answer.text)
	return answer.Header.Get("Location")
}

// shopFloor is a load that would go over its ratio.
const shopFloor = `title: Shop floor
order: {strength: 4000 psi, slump: 4 in, ratio_limit: 0.50}
mix: {cementitious: 5.5 bags/yd3, water: 255 lb/yd3}
load: {volume: 9 yd3}
water: {added: 14 gal}
`

// httpRecord sends one request to a handler without a network.
func httpRecord(h http.Handler, path string) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, path, nil))
	return w
}

// practice gives a practice of the rulebook, whose words may change.
func (s *site) practice(id string) *rulebook.Practice {
	s.Helper()
	p, ok := s.Book.Practice(id)
	require.True(s, ok, id)
	return p
}

func contentSaid(words string) store.Content { return store.Content{Said: words, SaidAt: time.Now()} }

// has checks that a page says something, without printing the whole page where it does not.
func has(t *testing.T, page, want string, of ...any) {
	t.Helper()
	if !strings.Contains(page, want) {
		assert.Fail(t, "the page does not say: "+want, of...)
	}
}

func lacks(t *testing.T, page, unwanted string, of ...any) {
	t.Helper()
	if strings.Contains(page, unwanted) {
		assert.Fail(t, "the page says: "+unwanted, of...)
	}
}
