package web

import (
	"maps"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"
)

// patterns lists every route, in an order that stays.
func (s *Server) patterns() []string {
	var list []string
	for _, routes := range []map[string]answer{s.routes(), s.crewRoutes(), s.programs()} {
		list = slices.AppendSeq(list, maps.Keys(routes))
	}
	slices.Sort(list)
	return list
}

// FuzzRoutes: whatever is sent to whichever route, it is answered soon, and never by a failure of the program.
func FuzzRoutes(f *testing.F) {
	s := newSite(f, func(c *Config) { c.Rate = 1e9 })
	address := s.keep(shopFloor)
	id := strings.TrimPrefix(address, "/jobs/")
	handler, err := s.Handler()
	if err != nil {
		f.Fatal(err)
	}
	patterns := s.patterns()
	for i, p := range patterns {
		switch {
		case strings.Contains(p, "/api/figures"):
			f.Add(uint16(i), "strength_lost", "", "{\"water\": {\"added\": \"5 gal\"}}")
		case strings.Contains(p, "/api/jobs/{id}/marks"):
			f.Add(uint16(i), id+"/water/over-limit", "", `{"state": "done"}`)
		case strings.Contains(p, "/jobs/{id}"):
			f.Add(uint16(i), id+"/1", "units=si", "said=14 gal in 9 yd&fact=order.slump&value=4 in&version=1")
		case strings.Contains(p, "{topic}/{name}"):
			f.Add(uint16(i), "water/over-limit", "", "")
		case strings.Contains(p, "claim"):
			f.Add(uint16(i), "", "units=si", `{"say": "a few gallons do no harm"}`)
		case strings.Contains(p, "crew"):
			f.Add(uint16(i), "abc", "", "crew=north&language=en&topic=water")
		default:
			f.Add(uint16(i), "order.slump", "find=water&kind=belief&said=patio", `{"say": "driveway 4 inches", "member": {"use": "patio"}}`)
		}
	}
	f.Fuzz(func(t *testing.T, route uint16, path, query, body string) {
		pattern := patterns[int(route)%len(patterns)]
		method, target, _ := strings.Cut(pattern, " ")
		parts := strings.Split(path, "/")
		for strings.Contains(target, "{") {
			start, end := strings.IndexByte(target, '{'), strings.IndexByte(target, '}')
			part := ""
			if name := target[start+1 : end]; name != "$" {
				part, parts = url.PathEscape(parts[0]), append(parts[1:], parts[0])
			}
			target = target[:start] + part + target[end+1:]
		}
		r, err := http.NewRequest(method, "http://localhost"+target, strings.NewReader(body))
		if err != nil {
			return
		}
		r.URL.RawQuery = query
		r.RemoteAddr = "127.0.0.1:9"
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		if strings.HasPrefix(target, "/api/") {
			r.Header.Set("Content-Type", "application/json")
		}
		w := httptest.NewRecorder()
		start := time.Now()
		handler.ServeHTTP(w, r)
		if w.Code >= 500 {
			t.Errorf("%s %s?%s %q: %d %.300s", method, target, query, body, w.Code, w.Body)
		}
		if took := time.Since(start); took > 8*time.Second {
			t.Errorf("%s %s?%s %q took %v", method, target, query, body, took)
		}
	})
}
