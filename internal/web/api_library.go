package web

import (
	"net/http"

	"hearsay/internal/job"
	"hearsay/internal/report"
)

func (s *Server) apiPractices(w http.ResponseWriter, r *http.Request) error {
	list := report.Practices{}
	for _, p := range s.Book.Practices() {
		list = append(list, report.NewPractice(s.Book, p, system(r)))
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiPractice(w http.ResponseWriter, r *http.Request) error {
	id := r.PathValue("topic") + "/" + r.PathValue("name")
	p, ok := s.Book.Practice(id)
	if !ok {
		return notFound("practice", id)
	}
	return writeJSON(w, http.StatusOK, report.NewPractice(s.Book, p, system(r)))
}

func (s *Server) apiLimits(w http.ResponseWriter, r *http.Request) error {
	list := []report.Limit{}
	for _, l := range s.Book.Limits.Limits() {
		list = append(list, report.NewLimit(s.Book, l, system(r)))
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiLimit(w http.ResponseWriter, r *http.Request) error {
	path := "limit." + r.PathValue("topic") + "." + r.PathValue("name")
	l, ok := s.Book.Limits.Find(path)
	if !ok {
		return notFound("limit", path)
	}
	return writeJSON(w, http.StatusOK, report.NewLimit(s.Book, l, system(r)))
}

func (s *Server) apiFigures(w http.ResponseWriter, _ *http.Request) error {
	list := []report.FigureEntry{}
	for _, f := range s.Book.Figures.Figures() {
		if !f.Private {
			list = append(list, report.NewFigureEntry(s.Book, f))
		}
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiFigure(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.Book.Figures.Find(r.PathValue("name"))
	if !ok {
		return notFound("figure", r.PathValue("name"))
	}
	return writeJSON(w, http.StatusOK, report.NewFigureEntry(s.Book, f))
}

// apiCompute computes a figure from the facts sent: {"mix.water": "280 lb/yd3", …}.
func (s *Server) apiCompute(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.Book.Figures.Find(r.PathValue("name"))
	if !ok {
		return notFound("figure", r.PathValue("name"))
	}
	u, err := s.sentJob(r)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, report.NewFigure(s.Book, s.Book.Figures.Sheet(u.Job).Result(f.Name), system(r)))
}

func (s *Server) apiSources(w http.ResponseWriter, _ *http.Request) error {
	list := report.Works{}
	for _, x := range s.Book.Limits.Works() {
		list = append(list, report.NewWork(s.Book, x))
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiSource(w http.ResponseWriter, r *http.Request) error {
	x, ok := s.Book.Limits.Work(r.PathValue("id"))
	if !ok {
		return notFound("source", r.PathValue("id"))
	}
	return writeJSON(w, http.StatusOK, report.NewWork(s.Book, x))
}

func (s *Server) apiFacts(w http.ResponseWriter, r *http.Request) error {
	list := report.Facts{}
	for _, f := range s.Book.Facts.Facts() {
		if f.Kind != job.KindSize {
			list = append(list, report.NewFact(s.Book, f, system(r)))
		}
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiFact(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.Book.Facts.Fact(r.PathValue("id"))
	if !ok {
		return notFound("fact", r.PathValue("id"))
	}
	return writeJSON(w, http.StatusOK, report.NewFact(s.Book, f, system(r)))
}
