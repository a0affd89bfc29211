package web

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"net/http"
	"sort"
	"strings"
	"testing"

	"github.com/getkin/kin-openapi/openapi3"
	"github.com/getkin/kin-openapi/openapi3filter"
	"github.com/getkin/kin-openapi/routers"
	"github.com/getkin/kin-openapi/routers/gorillamux"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func described(t *testing.T) (*openapi3.T, routers.Router) {
	t.Helper()
	doc, err := openapi3.NewLoader().LoadFromData(openAPI)
	require.NoError(t, err)
	require.NoError(t, doc.Validate(t.Context()))
	router, err := gorillamux.NewRouter(doc)
	require.NoError(t, err)
	return doc, router
}

// TestTheDocumentNamesEveryRoute holds the document against the routes, both ways.
func TestTheDocumentNamesEveryRoute(t *testing.T) {
	doc, _ := described(t)
	var written, served []string
	for path, item := range doc.Paths.Map() {
		for method := range item.Operations() {
			written = append(written, method+" "+path)
		}
	}
	for pattern := range (&Server{}).programs() {
		if !strings.Contains(pattern, "openapi") && !strings.Contains(pattern, "...") {
			served = append(served, pattern)
		}
	}
	sort.Strings(written)
	sort.Strings(served)
	assert.Equal(t, served, written)
}

// exchange is one request to the interface and the status it must be answered with.
type exchange struct {
	method, path, body string
	status             int
}

// TestTheDocumentHolds sends requests to every operation and checks both what is sent and what comes back against the
// document. Every object in it is closed, so that a field nobody described is an error.
func TestTheDocumentHolds(t *testing.T) {
	s := newSite(t)
	doc, router := described(t)
	seen := map[string]bool{}
	check := func(x exchange) map[string]any {
		t.Helper()
		r, err := http.NewRequestWithContext(t.Context(), x.method, s.address+x.path, strings.NewReader(x.body))
		require.NoError(t, err)
		if x.body != "" {
			r.Header.Set("Content-Type", "application/json")
		}
		route, params, err := router.FindRoute(r)
		require.NoError(t, err, "%s %s", x.method, x.path)
		seen[route.Operation.OperationID] = true
		input := &openapi3filter.RequestValidationInput{Request: r, PathParams: params, Route: route,
			Options: &openapi3filter.Options{AuthenticationFunc: openapi3filter.NoopAuthenticationFunc, IncludeResponseStatus: true}}
		if x.status < 400 {
			require.NoError(t, openapi3filter.ValidateRequest(t.Context(), input), "%s %s", x.method, x.path)
			r.Body = io.NopCloser(strings.NewReader(x.body))
		}
		answer := s.do(r)
		require.Equal(t, x.status, answer.StatusCode, "%s %s: %s", x.method, x.path, answer.text)
		err = openapi3filter.ValidateResponse(t.Context(), &openapi3filter.ResponseValidationInput{RequestValidationInput: input,
			Status: answer.StatusCode, Header: answer.Header, Body: io.NopCloser(bytes.NewReader([]byte(answer.text))), Options: input.Options})
		var wrong *openapi3.SchemaError
		if errors.As(err, &wrong) {
			require.Failf(t, "the answer is not what the document says", "%s %s: at %v: %s", x.method, x.path, wrong.JSONPointer(), wrong.Reason)
		}
		require.NoError(t, err, "%s %s", x.method, x.path)
		var object map[string]any
		_ = json.Unmarshal([]byte(answer.text), &object)
		return object
	}
	job := `{"order.strength": "4000 psi", "order": {"slump": "4 in", "ratio_limit": 0.5}, "mix": {"cementitious": "5.5 bags/yd3", "water": "255 lb/yd3"}, "load.volume": "9 yd3", "water.added": "14 gal"}`
	for _, x := range []exchange{
		{"POST", "/api/review", job, 200}, {"POST", "/api/review?units=si", job, 200}, {"POST", "/api/review", `{"say": "9 yards at 4000 psi"}`, 200},
		{"POST", "/api/review", `{}`, 200}, {"POST", "/api/review", `[`, 422}, {"POST", "/api/review", `{"order.slump": "4 gal"}`, 422},
		{"POST", "/api/review", `{"order.slmp": "4 in"}`, 422}, {"POST", "/api/review?units=parsecs", `{}`, 400},
		{"POST", "/api/claim", `{"say": "a little more water never hurt anybody"}`, 200}, {"POST", "/api/claim?units=si", `{"say": "the moon is made of cheese"}`, 200},
		{"POST", "/api/claim", `{"say": " "}`, 400}, {"POST", "/api/claim", `{"sya": "x"}`, 400},
		{"GET", "/api/beliefs", "", 200}, {"GET", "/api/beliefs/water/extra-evaporates?units=si", "", 200}, {"GET", "/api/beliefs/water/none", "", 404},
		{"POST", "/api/corrected", job, 200}, {"POST", "/api/checklist", job, 200}, {"POST", "/api/order", job, 200},
		{"POST", "/api/checklist", `{}`, 200}, {"POST", "/api/order", `{}`, 200}, {"POST", "/api/order?units=si", job, 200},
		{"GET", "/api/search?find=water", "", 200}, {"GET", "/api/search?find=", "", 200},
		{"GET", "/api/practices", "", 200}, {"GET", "/api/practices/water/over-limit", "", 200}, {"GET", "/api/practices/water/no-such", "", 404},
		{"GET", "/api/limits", "", 200}, {"GET", "/api/limits?units=si", "", 200}, {"GET", "/api/limits/water/gallon", "", 200}, {"GET", "/api/limits/water/none", "", 404},
		{"GET", "/api/figures", "", 200}, {"GET", "/api/figures/wcm", "", 200}, {"GET", "/api/figures/none", "", 404},
		{"POST", "/api/figures/wcm", `{"mix.water": "280 lb/yd3", "mix.cementitious": "5.5 bags/yd3"}`, 200}, {"POST", "/api/figures/wcm", `{}`, 200}, {"POST", "/api/figures/none", `{}`, 404},
		{"GET", "/api/sources", "", 200}, {"GET", "/api/sources/aci-318", "", 200}, {"GET", "/api/sources/none", "", 404},
		{"GET", "/api/facts", "", 200}, {"GET", "/api/facts/order.slump", "", 200}, {"GET", "/api/facts/none", "", 404},
		{"GET", "/api/jobs", "", 200}, {"GET", "/api/jobs/none", "", 404}, {"GET", "/api/jobs/none/review", "", 404}, {"GET", "/api/jobs/none/marks", "", 404},
		{"POST", "/api/jobs", `{"facts": {"order.slump": "4 gal"}}`, 422}, {"POST", "/api/jobs", `{"slump": 4}`, 400}, {"POST", "/api/jobs", `{} {}`, 400},
	} {
		check(x)
	}
	kept := check(exchange{"POST", "/api/jobs", `{"title": "Shop floor", "said": "9 yards", "facts": {"order.slump": "4 in"}, "not_known": ["weather.low"]}`, 201})
	at := "/api/jobs/" + kept["id"].(string)
	for _, x := range []exchange{
		{"GET", at, "", 200}, {"GET", at + "/review?units=si", "", 200}, {"GET", "/api/jobs?find=shop", "", 200},
		{"POST", at + "/states", `{"name": "as ordered"}`, 201},
		{"PUT", at, `{"facts": {"order.slump": "6 in"}, "version": 1}`, 200}, {"PUT", at, `{"facts": {}, "version": 1}`, 409}, {"PUT", at, `{"facts": {"no.fact": 1}}`, 404},
		{"GET", at + "/states", "", 200}, {"GET", at + "/states/1", "", 200}, {"GET", at + "/states/9", "", 404},
		{"GET", at + "/changes?since=1", "", 200}, {"GET", at + "/changes?since=9", "", 404},
		{"PUT", at + "/marks/water/over-limit", `{"ticked": true, "reading": "0.48", "initials": "JR"}`, 200}, {"GET", at + "/marks", "", 200},
		{"PUT", at + "/marks/water/none", `{"ticked": true, "reading": "", "initials": ""}`, 404},
		{"PUT", at, `{"facts": {"weather.forecast": "hour, air [F]\n0, 40\n24, 20\n"}}`, 200}, {"PUT", at, `{"facts": {"weather.forecast": "hour, air\n0, 40\n"}}`, 422},
		{"PUT", at, `{"facts": {"weather.forecast": [{"hour": 0, "air": "40 F"}]}, "forecast_begins": "2026-12-03T07:00:00-06:00"}`, 200}, {"GET", at, "", 200},
		{"DELETE", at, "", 204}, {"DELETE", at, "", 404},
	} {
		check(x)
	}
	code := strings.TrimPrefix(s.post("/crew", "crew", "north yard", "topic", "water", "language", "en").Header.Get("Location"), "/crew/")
	check(exchange{"POST", "/api/sessions/" + code + "/answers", `{"answers": {"Ana": "A A A A A A", "14": "B - B A C -"}, "present": ["Luis"]}`, 200})
	check(exchange{"POST", "/api/jobs", `{"facts": {"water.added": "14 gal"}}`, 201})
	for _, x := range []exchange{
		{"POST", "/api/sessions/" + code + "/answers", `{"answers": {"Ana": "A A"}}`, 422}, {"POST", "/api/sessions/NONE/answers", `{"answers": {}}`, 404}, {"POST", "/api/sessions/" + code + "/answers", `{"answers": {"a:b": "A"}}`, 400},
		{"GET", "/api/crews", "", 200}, {"GET", "/api/crews/north%20yard/progress", "", 200}, {"GET", "/api/crews/nobody/progress", "", 404},
		{"GET", "/api/crews/north%20yard/due?on=2099-01-01&person=ana", "", 200}, {"GET", "/api/crews/north%20yard/due?on=soon", "", 400}, {"GET", "/api/crews/north%20yard/due?job=none", "", 404},
		{"GET", "/api/crews/north%20yard/sessions", "", 200}, {"POST", "/api/crews/south/sessions", `{"beliefs": ["water/extra-evaporates"], "present": ["Ana"], "held": "2026-03-02T07:00:00Z"}`, 201},
		{"POST", "/api/crews/south/sessions", `{"beliefs": []}`, 400}, {"POST", "/api/crews/south/sessions", `{"beliefs": ["water/none"]}`, 404}, {"GET", "/api/crews/south/due", "", 200},
	} {
		check(x)
	}
	var missed []string
	for _, item := range doc.Paths.Map() {
		for _, operation := range item.Operations() {
			if !seen[operation.OperationID] {
				missed = append(missed, operation.OperationID)
			}
		}
	}
	assert.Empty(t, missed, "operations that no request was sent to")
}

func TestTheDocumentIsServed(t *testing.T) {
	s := newSite(t)
	assert.Equal(t, string(openAPI), s.get("/api/openapi.yaml").text)
	var doc map[string]any
	require.NoError(t, json.Unmarshal([]byte(s.get("/api/openapi.json").text), &doc))
	assert.Equal(t, "3.1.0", doc["openapi"])
}
