package web

import (
	"net/http"
	"slices"
	"strings"

	"hearsay/internal/belief"
	"hearsay/internal/figure"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// link leads to another page of the library.
type link struct {
	Address string
	Title   string
	ID      string
}

func practiceLinks(b *rulebook.Book, ids []string) []link {
	var list []link
	for _, id := range ids {
		if p, ok := b.Practice(id); ok {
			list = append(list, link{"/practices/" + id, p.Title, id})
		}
	}
	return list
}

// readLinks leads to the facts and figures that a rule reads.
func readLinks(b *rulebook.Book, paths []string) []link {
	var list []link
	for _, path := range paths {
		if name, ok := strings.CutPrefix(path, "figure."); ok {
			if f, ok := b.Figures.Find(name); ok {
				list = append(list, link{"/figures/" + name, f.Title, path})
			}
		} else if f, ok := b.Facts.Fact(path); ok {
			list = append(list, link{"/facts/" + path, f.Name, path})
		}
	}
	return list
}

// limitShown is a limit with its numbers in rows.
type limitShown struct {
	report.Limit
	Address string
	Cells   []report.Cell
}

func showLimit(l report.Limit, system quantity.System) limitShown {
	topic, name, _ := strings.Cut(strings.TrimPrefix(l.Name, "limit."), ".")
	return limitShown{l, "/limits/" + topic + "/" + name, l.Cells(system)}
}

type practicePage struct {
	frame
	report.Practice
	Shown   []limitShown
	Reads   []link
	Beliefs []link
}

func (s *Server) practicePage(w http.ResponseWriter, r *http.Request) error {
	id := r.PathValue("topic") + "/" + r.PathValue("name")
	p, ok := s.Book.Practice(id)
	if !ok {
		return notFound("practice", id)
	}
	page := &practicePage{frame: frame{Title: p.Title}, Practice: report.NewPractice(s.Book, p, system(r)), Reads: readLinks(s.Book, p.Reads)}
	page.Beliefs = s.beliefLinks(func(e *belief.Entry) bool { return slices.Contains(e.Practices, id) })
	for _, l := range page.Practice.Limits {
		page.Shown = append(page.Shown, showLimit(l, system(r)))
	}
	return s.show(w, r, http.StatusOK, "practice", page)
}

type limitPage struct {
	frame
	Limit     limitShown
	Practices []link
}

func (s *Server) limitPage(w http.ResponseWriter, r *http.Request) error {
	path := "limit." + r.PathValue("topic") + "." + r.PathValue("name")
	l, ok := s.Book.Limits.Find(path)
	if !ok {
		return notFound("limit", path)
	}
	page := &limitPage{frame: frame{Title: l.What}, Limit: showLimit(report.NewLimit(s.Book, l, system(r)), system(r))}
	for _, p := range s.Book.Practices() {
		if slices.Contains(p.Limits, path) {
			page.Practices = append(page.Practices, link{"/practices/" + p.ID, p.Title, p.ID})
		}
	}
	return s.show(w, r, http.StatusOK, "limit", page)
}

type sourcePage struct {
	frame
	report.Work
	Rests []link
}

func (s *Server) sourcePage(w http.ResponseWriter, r *http.Request) error {
	x, ok := s.Book.Limits.Work(r.PathValue("id"))
	if !ok {
		return notFound("source", r.PathValue("id"))
	}
	page := &sourcePage{frame: frame{Title: x.Title}, Work: report.NewWork(s.Book, x)}
	for _, path := range page.Work.Limits {
		l, _ := s.Book.Limits.Find(path)
		page.Rests = append(page.Rests, link{"/limits/" + l.Topic + "/" + l.Name, l.What, path})
	}
	for _, name := range page.Work.Figures {
		f, _ := s.Book.Figures.Find(name)
		page.Rests = append(page.Rests, link{"/figures/" + name, f.Title, name})
	}
	page.Rests = append(page.Rests, s.beliefLinks(func(e *belief.Entry) bool {
		return slices.ContainsFunc(e.Sources, func(x belief.Source) bool { return x.Work == page.ID })
	})...)
	return s.show(w, r, http.StatusOK, "source", page)
}

type factPage struct {
	frame
	Fact            *job.Fact
	Usual, Possible string
	Unit            string
	Practices       []link
	Figures         []link
}

func (s *Server) factPage(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.Book.Facts.Fact(r.PathValue("id"))
	if !ok {
		return notFound("fact", r.PathValue("id"))
	}
	page := &factPage{frame: frame{Title: f.Name}, Fact: f, Usual: span(f.Usual, f.Unit, system(r)), Possible: span(f.Possible, f.Unit, system(r)),
		Unit: quantity.Symbol(quantity.Quantity{Unit: f.Unit}.To(system(r)).Unit), Practices: practiceLinks(s.Book, s.Book.ReadersOf(f.Path))}
	for _, x := range s.Book.Figures.Figures() {
		if !x.Private && slices.Contains(s.Book.Figures.Needs(x.Name), f.Path) {
			page.Figures = append(page.Figures, link{"/figures/" + x.Name, x.Title, x.Name})
		}
	}
	return s.show(w, r, http.StatusOK, "fact", page)
}

func span(x *job.Range, unit string, system quantity.System) string {
	if x == nil {
		return ""
	}
	print := func(v float64) string { return quantity.Quantity{Value: v, Unit: unit}.Print(system) }
	return print(x.Low) + " – " + print(x.High)
}

// figurePage shows a figure, and computes it from what is filled in.
type figurePage struct {
	frame
	Figure    *figure.Figure
	Method    string
	Unit      string
	Sources   []report.Source
	Fields    []*field
	Practices []link
	Result    *result
	Problems  []string
}

// result is a computed figure as it is shown.
type result struct {
	report.Figure
	Shown, Range string
	Lacks        []link
}

func (s *Server) figurePage(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.Book.Figures.Find(r.PathValue("name"))
	if !ok {
		return notFound("figure", r.PathValue("name"))
	}
	page := &figurePage{frame: frame{Title: f.Title}, Figure: f, Method: report.Plain(f.Method, system(r)), Sources: report.Sources(s.Book.Limits, f.Cites),
		Unit: quantity.Symbol(quantity.Quantity{Unit: f.Unit}.To(system(r)).Unit)}
	for _, p := range s.Book.Practices() {
		if slices.Contains(p.Reads, "figure."+f.Name) {
			page.Practices = append(page.Practices, link{"/practices/" + p.ID, p.Title, p.ID})
		}
	}
	given, asked := r.URL.Query(), false
	j := job.New()
	for _, path := range s.Book.Figures.Needs(f.Name) {
		fact, ok := s.Book.Facts.Fact(path)
		if !ok || fact.Kind == job.KindSeries {
			continue
		}
		field := newField(fact, system(r))
		page.Fields = append(page.Fields, field)
		field.Value, field.Unit = given.Get(path), given.Get("unit."+path)
		if strings.TrimSpace(field.Value) == "" {
			continue
		}
		asked = true
		if err := j.State(s.Book.Facts, path, written(fact, field.Value, field.Unit)); err != nil {
			field.Error = err.Error()
		}
	}
	if asked {
		if err := j.Follow(s.Book.Facts); err != nil {
			page.Problems = append(page.Problems, err.Error())
		}
		page.Result = s.result(j, f.Name, system(r))
	}
	return s.show(w, r, http.StatusOK, "figure", page)
}

func (s *Server) result(j *job.Job, name string, system quantity.System) *result {
	out := &result{Figure: report.NewFigure(s.Book, s.Book.Figures.Sheet(j).Result(name), system)}
	print := func(v *float64) string { return quantity.Quantity{Value: *v, Unit: out.Unit}.Print(system) }
	if out.Value != nil {
		out.Shown = print(out.Value)
	}
	if out.Low != nil && *out.Low != *out.High {
		out.Range = print(out.Low) + " – " + print(out.High)
	}
	out.Lacks = readLinks(s.Book, out.Missing)
	return out
}
