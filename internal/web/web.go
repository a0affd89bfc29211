// Package web owns the page and the HTTP interface: what a browser or a program asks for, and what it is answered with.
// It judges nothing itself: the engine and the words are those of the commands.
package web

import (
	"log/slog"
	"maps"
	"net/http"
	"time"

	"hearsay/internal/belief"
	"hearsay/internal/reckon"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
	"hearsay/internal/words"
)

// Config is what a server needs.
type Config struct {
	Book   *rulebook.Book
	Store  *store.Store
	Words  *words.Reader
	Corpus *belief.Corpus
	Reckon *reckon.Reckoner
	// Token is what everybody must know to use the page; "" asks for none, which is for loopback alone.
	Token string
	// Public is the address people use ("https://desk.example"), where it is not the one listened on.
	Public string
	// Elsewhere says that the rulebook is not the built-in one.
	Elsewhere bool
	// Rate is how many requests a second one address may make; 0 means 250.
	Rate float64
	Log  *slog.Logger
	// Now tells the time to what falls due; nil is the clock.
	Now func() time.Time
}

// Server answers requests. It is safe for use by several goroutines at once.
type Server struct {
	Config
	looks    map[string]*look // by language
	assets   map[string]*asset
	library  *library
	metrics  *metrics
	trainers trainers
	turns    chan struct{} // one for each job that may be judged at the same time
}

// New makes a server. It fails on a template or a text that cannot be used.
func New(c Config) (*Server, error) {
	if c.Rate == 0 {
		c.Rate = 250
	}
	if c.Log == nil {
		c.Log = slog.New(slog.DiscardHandler)
	}
	s := &Server{Config: c, metrics: newMetrics(), turns: make(chan struct{}, mostJudged)}
	var err error
	if s.assets, err = loadAssets(assetFiles); err != nil {
		return nil, err
	}
	if s.looks, err = loadLooks(s.assets); err != nil {
		return nil, err
	}
	if s.library, err = newLibrary(c.Book, c.Corpus); err != nil {
		return nil, err
	}
	return s, nil
}

// Handler gives everything the server answers, guarded.
func (s *Server) Handler() (http.Handler, error) {
	mux := http.NewServeMux()
	for pattern, answer := range s.all() {
		mux.Handle(pattern, s.metrics.count(pattern, s.answering(answer)))
	}
	return s.guard(mux)
}

// made says by what answers are made.
func (s *Server) made() release.Made {
	m := s.Book.Made()
	if s.Corpus != nil {
		m.Corpus = s.Corpus.Revision()
	}
	return m
}

// answer answers one request, or says why it cannot.
type answer func(w http.ResponseWriter, r *http.Request) error

// all lists every route: the pages, those of crews, and the interface for programs.
func (s *Server) all() map[string]answer {
	all := s.routes()
	maps.Copy(all, s.crewRoutes())
	for pattern, answer := range s.programs() {
		all[pattern] = exactUnits(answer)
	}
	return all
}

func (s *Server) routes() map[string]answer {
	return map[string]answer{
		"GET /{$}":                        s.home,
		"POST /{$}":                       s.say,
		"GET /jobs":                       s.jobList,
		"POST /jobs":                      s.jobCreate,
		"GET /jobs/{id}":                  s.jobPage,
		"POST /jobs/{id}":                 s.jobChange,
		"POST /jobs/{id}/delete":          s.jobDelete,
		"POST /jobs/{id}/keep":            s.jobKeep,
		"GET /jobs/{id}/states":           s.jobStates,
		"POST /jobs/{id}/states/{number}": s.jobRevert,
		"GET /jobs/{id}/job.yaml":         s.jobYAML,
		"GET /jobs/{id}/order":            s.jobOrder,
		"GET /jobs/{id}/checklist":        s.jobChecklist,
		"POST /jobs/{id}/checklist":       s.jobMark,
		"GET /jobs/{id}/pictures":         s.jobPictures,
		"GET /jobs/{id}/pictures/{file}":  s.jobPicture,
		"GET /jobs/{id}/corrected":        s.jobCorrected,
		"GET /library":                    s.libraryPage,
		"GET /beliefs/{topic}/{name}":     s.beliefPage,
		"GET /practices/{topic}/{name}":   s.practicePage,
		"GET /limits/{topic}/{name}":      s.limitPage,
		"GET /figures/{name}":             s.figurePage,
		"GET /sources/{id}":               s.sourcePage,
		"GET /facts/{id}":                 s.factPage,
		"POST /settings":                  s.settings,
		"GET /token":                      s.tokenPage,
		"POST /token":                     s.tokenGive,
		"GET /health":                     s.health,
		"GET /metrics":                    s.metrics.show,
		"GET /assets/{version}/{name}":    s.asset,
		"GET /{path...}":                  s.nothing,
	}
}

// answering turns what went wrong into a page in plain words.
func (s *Server) answering(a answer) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if err := a(w, r); err != nil {
			s.fail(w, r, err)
		}
	})
}
