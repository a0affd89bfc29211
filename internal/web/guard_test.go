package web

import (
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestEveryAnswerIsGuarded(t *testing.T) {
	s := newSite(t)
	for _, path := range []string{"/", "/library", "/no/such/page", "/health", "/api/practices", "/api/none", "/jobs/none"} {
		h := s.get(path).Header
		assert.Equal(t, policy, h.Get("Content-Security-Policy"), path)
		assert.Equal(t, "nosniff", h.Get("X-Content-Type-Options"), path)
		assert.Equal(t, "no-referrer", h.Get("Referrer-Policy"), path)
		assert.Equal(t, "same-origin", h.Get("Cross-Origin-Resource-Policy"), path)
	}
	assert.NotContains(t, policy, "unsafe", "nothing inline may run")
	assert.NotContains(t, policy, "http", "no other host may be asked for anything")
}

func TestOtherSitesCannotSendForms(t *testing.T) {
	s := newSite(t)
	for _, header := range [][2]string{{"Sec-Fetch-Site", "cross-site"}, {"Origin", "https://elsewhere.example"}} {
		r, err := http.NewRequestWithContext(t.Context(), http.MethodPost, s.address+"/jobs", strings.NewReader("yaml=x"))
		require.NoError(t, err)
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		r.Header.Set(header[0], header[1])
		answer := s.do(r)
		assert.Equal(t, http.StatusForbidden, answer.StatusCode)
		has(t, answer.text, "sent from another site")
	}
}

func TestOnThisMachineOnlyItsNamesAreAnswered(t *testing.T) {
	s := newSite(t)
	for host, status := range map[string]int{"localhost:8420": 200, "127.0.0.1": 200, "[::1]:8420": 200, "rebound.example": 421, "rebound.example:8420": 421, "": 421} {
		r, err := http.NewRequestWithContext(t.Context(), http.MethodGet, s.address+"/", nil)
		require.NoError(t, err)
		if r.Host = host; host == "" {
			r.Host = "."
		}
		assert.Equal(t, status, s.do(r).StatusCode, host)
	}
}

func TestTheTokenIsAskedFor(t *testing.T) {
	s := newSite(t, func(c *Config) { c.Token = NewToken(); c.Public = "https://desk.example" })
	assert.Equal(t, "/token", s.get("/jobs").Header.Get("Location"))
	assert.Equal(t, http.StatusUnauthorized, s.get("/api/practices").StatusCode)
	assert.Equal(t, http.StatusUnauthorized, s.get("/metrics").StatusCode)
	assert.Equal(t, http.StatusOK, s.get("/health").StatusCode)
	assert.Equal(t, http.StatusOK, s.get("/token").StatusCode)

	wrong := s.post("/token", "token", "wrong")
	assert.Equal(t, http.StatusForbidden, wrong.StatusCode)
	has(t, wrong.text, "That is not the token")
	assert.Empty(t, wrong.Cookies())

	right := s.post("/token", "token", " "+strings.ToUpper(s.Token)+" ") // as somebody types it who was read it aloud
	require.Len(t, right.Cookies(), 1)
	cookie := right.Cookies()[0]
	assert.True(t, cookie.HttpOnly && cookie.Secure)
	assert.Equal(t, http.SameSiteStrictMode, cookie.SameSite)
	assert.NotContains(t, cookie.Value, s.Token)

	with := func(name, value string) int {
		r, err := http.NewRequestWithContext(t.Context(), http.MethodGet, s.address+"/api/practices", nil)
		require.NoError(t, err)
		r.Header.Set(name, value)
		return s.do(r).StatusCode
	}
	assert.Equal(t, http.StatusOK, with("Cookie", cookie.Name+"="+cookie.Value))
	assert.Equal(t, http.StatusUnauthorized, with("Cookie", cookie.Name+"=x"+cookie.Value[1:]))
	assert.Equal(t, http.StatusOK, with("Authorization", "Bearer "+s.Token))
	assert.Equal(t, http.StatusUnauthorized, with("Authorization", "Bearer "))
}

func TestTooMuchIsRefusedInPlainWords(t *testing.T) {
	s := newSite(t)
	words := s.post("/", "said", strings.Repeat("wet ", mostWords))
	assert.Equal(t, http.StatusBadRequest, words.StatusCode)
	has(t, words.text, "at most 16 KB are read at once")
	body := s.post("/", "said", strings.Repeat("wet ", mostBody))
	assert.Equal(t, http.StatusRequestEntityTooLarge, body.StatusCode)
	has(t, body.text, "at most 256 KB are taken")
	assert.Equal(t, http.StatusBadRequest, s.get("/?said=%zz").StatusCode)
}

func TestWhoAsksTooOftenWaits(t *testing.T) {
	s := newSite(t, func(c *Config) { c.Rate = 1 })
	var last got
	for range 25 {
		last = s.get("/health")
	}
	assert.Equal(t, http.StatusTooManyRequests, last.StatusCode)
	assert.Equal(t, "1", last.Header.Get("Retry-After"))
	assert.Contains(t, last.text, "Too many requests")
}

func TestAPanicIsAnsweredAndTheServerGoesOn(t *testing.T) {
	s := newSite(t)
	answer := s.recovered(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { panic("on purpose") }))
	page := httpRecord(answer, "/")
	assert.Equal(t, http.StatusInternalServerError, page.Code)
	has(t, page.Body.String(), "Something went wrong in the program")
	lacks(t, page.Body.String(), "on purpose", "the inside of the program is nobody's business")
	assert.Equal(t, http.StatusOK, s.get("/").StatusCode)
}

func TestAFormComesBackToThisServerOnly(t *testing.T) {
	for address, want := range map[string]string{"/jobs/x?units=si": "/jobs/x?units=si", "https://elsewhere.example/": "/", "//elsewhere.example": "/", `/\elsewhere.example`: "/", "": "/"} {
		assert.Equal(t, want, here(address), address)
	}
}

func TestAssetsAreKeptByTheirVersion(t *testing.T) {
	s := newSite(t)
	a := s.assets["page.css"]
	fresh := s.get("/assets/" + a.version + "/page.css")
	assert.Contains(t, fresh.Header.Get("Cache-Control"), "immutable")
	assert.Contains(t, fresh.Header.Get("Content-Type"), "text/css")
	assert.NotContains(t, s.get("/assets/old/page.css").Header.Get("Cache-Control"), "immutable")
	r, err := http.NewRequestWithContext(t.Context(), http.MethodGet, s.address+"/assets/old/page.css", nil)
	require.NoError(t, err)
	r.Header.Set("If-None-Match", fresh.Header.Get("ETag"))
	assert.Equal(t, http.StatusNotModified, s.do(r).StatusCode)
	assert.Equal(t, http.StatusNotFound, s.get("/assets/x/none.css").StatusCode)
}

func TestHealthAndMetrics(t *testing.T) {
	s := newSite(t)
	assert.Contains(t, s.get("/health").text, `"status":"ok"`)
	assert.Contains(t, s.get("/health").text, `"rulebook":"`)
	s.get("/library")
	text := s.get("/metrics").text
	has(t, text, `hearsay_requests_total{route="GET /library",status="200"} 1`)
	has(t, text, "hearsay_review_seconds_count 0")
	s.get(s.keep(shopFloor))
	has(t, s.get("/metrics").text, "hearsay_review_seconds_count 1")
	s.Store.Close()
	assert.Equal(t, http.StatusServiceUnavailable, s.get("/health").StatusCode)
}
