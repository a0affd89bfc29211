package web

import (
	"context"
	"maps"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/release"
)

// request is one to a route: what stands for its wildcards, with / between, the query, and the body.
type request struct{ path, query, body string }

// JOB and SESSION stand in requests for a job and a session that the site keeps. A body that begins with its boundary is a form
// with files.
const fileForm = "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"night.csv\"\r\n\r\nhour,air [F]\n0,40\n24,20\n\r\n--x--\r\n"

// reached has, for every route, a request that comes through to what the route is for.
var reached = map[string][]request{
	"GET /{$}":                        {{"", "", ""}},
	"POST /{$}":                       {{"", "", "said=driveway 4 inches thick, 14 gal in 9 yd"}, {"", "", "said=a few gallons do no harm"}},
	"GET /jobs":                       {{"", "find=shop", ""}},
	"POST /jobs":                      {{"", "", "yaml=order: {slump: 4 in}"}, {"", "", strings.ReplaceAll(fileForm, "hour,air [F]\n0,40\n24,20", "order: {slump: 4 in}")}},
	"GET /jobs/{id}":                  {{"JOB", "", ""}},
	"POST /jobs/{id}":                 {{"JOB", "", "said=14 gal in 9 yd"}, {"JOB", "", "set=order.slump&value=4&unit=in"}, {"JOB", "", fileForm}},
	"POST /jobs/{id}/delete":          {{"JOB", "", ""}},
	"POST /jobs/{id}/keep":            {{"JOB", "", "name=as ordered"}},
	"GET /jobs/{id}/states":           {{"JOB", "with=1", ""}},
	"POST /jobs/{id}/states/{number}": {{"JOB/1", "", ""}},
	"GET /jobs/{id}/job.yaml":         {{"JOB", "", ""}},
	"GET /jobs/{id}/order":            {{"JOB", "", ""}},
	"GET /jobs/{id}/checklist":        {{"JOB", "", ""}},
	"POST /jobs/{id}/checklist":       {{"JOB", "", "practice=water/over-limit&ticked=on&reading=0.48&initials=JR"}},
	"GET /jobs/{id}/pictures":         {{"JOB", "", ""}},
	"GET /jobs/{id}/pictures/{file}":  {{"JOB/water.svg", "", ""}},
	"GET /jobs/{id}/corrected":        {{"JOB", "", ""}},
	"GET /library":                    {{"", "find=water&kind=belief", ""}},
	"GET /beliefs/{topic}/{name}":     {{"water/extra-evaporates", "", ""}},
	"GET /practices/{topic}/{name}":   {{"water/over-limit", "", ""}},
	"GET /limits/{topic}/{name}":      {{"water/gallon", "", ""}},
	"GET /figures/{name}":             {{"wcm", "", ""}},
	"GET /sources/{id}":               {{"aci-318", "", ""}},
	"GET /facts/{id}":                 {{"order.slump", "", ""}},
	"POST /settings":                  {{"", "", "units=si&here=/jobs"}},
	"GET /token":                      {{"", "", ""}},
	"POST /token":                     {{"", "", "token=abc"}},
	"GET /health":                     {{"", "", ""}},
	"GET /metrics":                    {{"", "", ""}},
	"GET /assets/{version}/{name}":    {{"x/page.css", "", ""}},
	"GET /{path...}":                  {{"nothing", "", ""}},

	"GET /crew":               {{"", "crew=north", ""}},
	"GET /crew/progress":      {{"", "crew=north", ""}},
	"POST /crew":              {{"", "", "crew=north&language=en&topic=joints"}},
	"GET /crew/{code}":        {{"SESSION", "", ""}},
	"POST /crew/{code}/close": {{"SESSION", "", "open=yes"}},
	"POST /crew/{code}/paper": {{"SESSION", "", "answers=Ana: A B C - A B"}},
	"GET /join":               {{"", "code=SESSION", ""}, {"", "code=abc&name=Ana", ""}},
	"GET /join/{code}":        {{"SESSION", "name=Ana", ""}},
	"POST /join/{code}":       {{"SESSION", "", "name=Ana&question=0&chosen=1"}},

	"GET /api/openapi.yaml":                   {{"", "", ""}},
	"GET /api/openapi.json":                   {{"", "", ""}},
	"POST /api/claim":                         {{"", "units=si", `{"say": "a few gallons do no harm"}`}},
	"POST /api/review":                        {{"", "", `{"say": "driveway 4 inches", "member": {"use": "patio"}}`}},
	"GET /api/beliefs":                        {{"", "", ""}},
	"GET /api/beliefs/{topic}/{name}":         {{"water/extra-evaporates", "units=si", ""}},
	"POST /api/corrected":                     {{"", "", `{"water.added": "14 gal", "load.volume": "9 yd3"}`}},
	"POST /api/checklist":                     {{"", "", `{"order": {"slump": "4 in"}}`}},
	"POST /api/order":                         {{"", "", `{"order": {"slump": "4 in"}}`}},
	"GET /api/search":                         {{"", "find=water", ""}},
	"GET /api/practices":                      {{"", "", ""}},
	"GET /api/practices/{topic}/{name}":       {{"water/over-limit", "", ""}},
	"GET /api/limits":                         {{"", "", ""}},
	"GET /api/limits/{topic}/{name}":          {{"water/gallon", "", ""}},
	"GET /api/figures":                        {{"", "", ""}},
	"GET /api/figures/{name}":                 {{"wcm", "", ""}},
	"POST /api/figures/{name}":                {{"strength_lost", "", `{"water.added": "5 gal", "order.volume": "9 yd3"}`}},
	"GET /api/sources":                        {{"", "", ""}},
	"GET /api/sources/{id}":                   {{"aci-318", "", ""}},
	"GET /api/facts":                          {{"", "", ""}},
	"GET /api/facts/{id}":                     {{"order.slump", "", ""}},
	"GET /api/jobs":                           {{"", "find=shop", ""}},
	"POST /api/jobs":                          {{"", "", `{"title": "Shop floor", "said": "9 yards", "facts": {"order.slump": "4 in"}, "not_known": ["weather.low"]}`}},
	"GET /api/jobs/{id}":                      {{"JOB", "", ""}},
	"PUT /api/jobs/{id}":                      {{"JOB", "", `{"facts": {"weather.forecast": "hour, air [F]\n0, 40\n24, 20\n"}}`}},
	"DELETE /api/jobs/{id}":                   {{"JOB", "", ""}},
	"GET /api/jobs/{id}/review":               {{"JOB", "units=si", ""}},
	"GET /api/jobs/{id}/states":               {{"JOB", "", ""}},
	"POST /api/jobs/{id}/states":              {{"JOB", "", `{"name": "as ordered"}`}},
	"GET /api/jobs/{id}/states/{number}":      {{"JOB/1", "", ""}},
	"GET /api/jobs/{id}/changes":              {{"JOB", "since=1", ""}},
	"GET /api/jobs/{id}/marks":                {{"JOB", "", ""}},
	"PUT /api/jobs/{id}/marks/{topic}/{name}": {{"JOB/water/over-limit", "", `{"ticked": true, "reading": "0.48", "initials": "JR"}`}},
	"GET /api/crews":                          {{"", "", ""}},
	"GET /api/crews/{crew}/progress":          {{"north", "", ""}},
	"GET /api/crews/{crew}/due":               {{"north", "on=2099-01-01&person=ana", ""}},
	"GET /api/crews/{crew}/sessions":          {{"north", "", ""}},
	"POST /api/crews/{crew}/sessions":         {{"north", "", `{"beliefs": ["water/extra-evaporates"], "present": ["Ana"], "held": "2026-03-02T07:00:00Z"}`}},
	"POST /api/sessions/{code}/answers":       {{"SESSION", "", `{"answers": {"Ana": "A A A A A A"}, "present": ["Luis"]}`}},
	"GET /api/{path...}":                      {{"nothing", "", ""}},
}

// refused are the routes whose request is understood and refused.
var refused = map[string]int{"GET /{path...}": http.StatusNotFound, "GET /api/{path...}": http.StatusNotFound}

// known is a site with a job, an earlier state of it, and a session of a crew.
type known struct {
	*site
	handler      http.Handler
	job, session string
}

func newKnown(t testing.TB) *known {
	k := &known{site: newSite(t, func(c *Config) { c.Rate = 1e9 })}
	var err error
	k.handler, err = k.Handler()
	require.NoError(t, err)
	k.fill()
	return k
}

// fill keeps what requests ask for, again where one has deleted or closed it.
func (k *known) fill() {
	if _, err := k.Store.StateOf(context.Background(), k.job, 1); err != nil {
		k.job = strings.TrimPrefix(k.ask("POST /jobs", request{body: "yaml=" + url.QueryEscape(shopFloor)}).Header().Get("Location"), "/jobs/")
		k.ask("POST /jobs/{id}/keep", request{path: "JOB", body: "name=as ordered"})
	}
	if k.session == "" {
		k.session = strings.TrimPrefix(k.ask("POST /crew", request{body: "crew=north&language=en&topic=water"}).Header().Get("Location"), "/crew/")
	}
	k.ask("POST /crew/{code}/close", request{path: "SESSION", body: "open=yes"})
}

func (k *known) ask(pattern string, one request) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	k.handler.ServeHTTP(w, k.make(pattern, one))
	return w
}

// make makes a request to a route; nil where no client could send it.
func (k *known) make(pattern string, one request) *http.Request {
	put := strings.NewReplacer("JOB", k.job, "SESSION", k.session).Replace
	method, target, _ := strings.Cut(pattern, " ")
	parts := strings.Split(put(one.path), "/")
	for strings.Contains(target, "{") {
		start, end := strings.IndexByte(target, '{'), strings.IndexByte(target, '}')
		part := ""
		if name := target[start+1 : end]; name != "$" {
			part, parts = url.PathEscape(parts[0]), append(parts[1:], parts[0])
		}
		target = target[:start] + part + target[end+1:]
	}
	r, err := http.NewRequest(method, "http://localhost"+target, strings.NewReader(one.body))
	if err != nil {
		return nil
	}
	r.URL.RawQuery = put(one.query)
	r.RemoteAddr = "127.0.0.1:9"
	switch {
	case strings.HasPrefix(target, "/api/"):
		r.Header.Set("Content-Type", "application/json")
	case strings.HasPrefix(one.body, "--x"):
		r.Header.Set("Content-Type", "multipart/form-data; boundary=x")
	default:
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	}
	return r
}

// TestEveryRouteIsReached: each route has a request that comes through to what it is for, so that the fuzzing below begins behind
// every door; and every answer says by what it was made.
func TestEveryRouteIsReached(t *testing.T) {
	k := newKnown(t)
	routes := slices.Sorted(maps.Keys(k.all()))
	require.Equal(t, routes, slices.Sorted(maps.Keys(reached)), "write a request for each route into reached, and none for others")
	for _, pattern := range routes {
		for _, one := range reached[pattern] {
			w := k.ask(pattern, one)
			if want := refused[pattern]; want != 0 {
				assert.Equal(t, want, w.Code, pattern)
			} else {
				assert.Less(t, w.Code, 400, "%s %+v: %.300s", pattern, one, w.Body)
			}
			assert.Equal(t, k.Book.Revision(), w.Header().Get("Hearsay-Rulebook"), pattern)
			assert.Equal(t, release.Version(), w.Header().Get("Hearsay-Version"), pattern)
			k.fill()
		}
	}
}

// FuzzRoutes: whatever is sent to whichever route, it is answered soon, and never by a failure of the program.
func FuzzRoutes(f *testing.F) {
	k := newKnown(f)
	patterns := slices.Sorted(maps.Keys(k.all()))
	for i, p := range patterns {
		for _, one := range reached[p] {
			f.Add(uint16(i), one.path, one.query, one.body)
		}
	}
	f.Fuzz(func(t *testing.T, route uint16, path, query, body string) {
		pattern := patterns[int(route)%len(patterns)]
		r := k.make(pattern, request{path, query, body})
		if r == nil {
			return
		}
		w := httptest.NewRecorder()
		start := time.Now()
		k.handler.ServeHTTP(w, r)
		if w.Code >= 500 {
			t.Errorf("%s %s %q: %d %.300s", r.Method, r.URL, body, w.Code, w.Body)
		}
		if took := time.Since(start); took > 8*time.Second {
			t.Errorf("%s %s %q took %v", r.Method, r.URL, body, took)
		}
		if method, target, _ := strings.Cut(pattern, " "); method == "DELETE" || strings.HasSuffix(target, "/delete") || strings.HasSuffix(target, "/close") {
			k.fill()
		}
	})
}
