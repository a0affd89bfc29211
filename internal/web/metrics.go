package web

import (
	"net/http"
	"strconv"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"

	"hearsay/internal/release"
)

// metrics counts what is asked and how long it takes, by the pattern of the address: no names, no words.
type metrics struct {
	registry *prometheus.Registry
	requests *prometheus.CounterVec
	seconds  *prometheus.HistogramVec
	judged   prometheus.Histogram
	text     http.Handler
}

func newMetrics() *metrics {
	m := &metrics{
		registry: prometheus.NewRegistry(),
		requests: prometheus.NewCounterVec(prometheus.CounterOpts{Name: "hearsay_requests_total", Help: "Requests answered."}, []string{"route", "status"}),
		seconds: prometheus.NewHistogramVec(prometheus.HistogramOpts{Name: "hearsay_request_seconds", Help: "Time to answer a request.",
			Buckets: []float64{.001, .003, .01, .03, .1, .3, 1, 3}}, []string{"route"}),
		judged: prometheus.NewHistogram(prometheus.HistogramOpts{Name: "hearsay_review_seconds", Help: "Time to judge one job with every practice.",
			Buckets: []float64{.001, .003, .01, .03, .1, .3, 1, 3}}),
	}
	m.registry.MustRegister(m.requests, m.seconds, m.judged, collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}))
	m.text = promhttp.HandlerFor(m.registry, promhttp.HandlerOpts{})
	return m
}

func (m *metrics) show(w http.ResponseWriter, r *http.Request) error {
	m.text.ServeHTTP(w, r)
	return nil
}

// count measures the answers to one pattern.
func (m *metrics) count(pattern string, inner http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		start := time.Now()
		seen := &statusWriter{ResponseWriter: w, status: http.StatusOK}
		inner.ServeHTTP(seen, r)
		m.requests.WithLabelValues(pattern, strconv.Itoa(seen.status)).Inc()
		m.seconds.WithLabelValues(pattern).Observe(time.Since(start).Seconds())
	})
}

// statusWriter remembers the status that was sent.
type statusWriter struct {
	http.ResponseWriter
	status int
}

func (w *statusWriter) WriteHeader(status int) {
	w.status = status
	w.ResponseWriter.WriteHeader(status)
}

// Unwrap lets the server reach what lies below.
func (w *statusWriter) Unwrap() http.ResponseWriter { return w.ResponseWriter }

// health says whether the server can do its work.
func (s *Server) health(w http.ResponseWriter, r *http.Request) error {
	if err := s.Store.Check(r.Context()); err != nil {
		s.Log.Error("the database does not answer", "error", err)
		return writeJSON(w, http.StatusServiceUnavailable, map[string]string{"status": "the database does not answer"})
	}
	from := "built in"
	if s.Elsewhere {
		from = "elsewhere"
	}
	return writeJSON(w, http.StatusOK, map[string]string{"status": "ok", "version": release.Version(), "rulebook": s.Book.Revision(), "from": from})
}
