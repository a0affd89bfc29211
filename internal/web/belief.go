package web

import (
	"cmp"
	"net/http"
	"slices"
	"strings"

	"hearsay/internal/belief"
	"hearsay/internal/limit"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
)

// beliefShown is an entry of the corpus as it is shown, and its JSON form.
type beliefShown struct {
	ID        string          `json:"id"`
	Belief    string          `json:"belief"`
	Verdict   belief.Verdict  `json:"verdict"`
	DependsOn string          `json:"depends_on,omitempty"`
	Practices []string        `json:"practices"`
	Sources   []report.Source `json:"sources"`
	Fact      string          `json:"fact"`
	About     string          `json:"about"` // what the belief takes for granted
	Why       string          `json:"why"`
	Do        string          `json:"do"`
	Numbers   []string        `json:"numbers"`
	Say       string          `json:"say"`
	Changed   []string        `json:"changed,omitempty"` // what a pack changed in it

	Cited   []cited `json:"-"` // the numbers, each with where it is from
	Links   []link  `json:"-"` // the practices
	Figures []link  `json:"-"`
}

// cited is a line with the works and remarks that stand in brackets at its end.
type cited struct {
	Text string
	Note []link // without an address where it is a remark
}

// citedLine parts a line from what stands in brackets at its end, where that begins with a work.
func citedLine(b *limit.Book, line string) cited {
	open := strings.LastIndex(line, "(")
	if open < 0 || !strings.HasSuffix(line, ")") {
		return cited{Text: line}
	}
	c := cited{Text: strings.TrimSpace(line[:open])}
	for _, part := range strings.FieldsFunc(line[open+1:len(line)-1], func(r rune) bool { return r == ',' || r == ';' }) {
		one := link{Title: strings.TrimSpace(part)}
		if w, ok := b.Work(one.Title); ok {
			one = link{"/sources/" + w.ID, cmp.Or(w.Number, w.By), w.ID}
		}
		c.Note = append(c.Note, one)
	}
	if c.Note[0].Address == "" {
		return cited{Text: line}
	}
	return c
}

func (s *Server) shownBelief(e *belief.Entry, system quantity.System) *beliefShown {
	plain := func(text string) string { return report.Plain(text, system) }
	out := &beliefShown{ID: e.ID, Belief: firstUpper(e.Belief), Verdict: e.Verdict, DependsOn: plain(e.DependsOn), Practices: nonNil(e.Practices),
		Fact: plain(e.Fact), About: plain(e.Saying), Why: plain(e.Why), Do: plain(e.Do), Say: plain(e.Say), Numbers: []string{}, Changed: e.Changed(),
		Links: practiceLinks(s.Book, e.Practices)}
	for _, n := range e.Numbers {
		out.Numbers = append(out.Numbers, plain(n))
		out.Cited = append(out.Cited, citedLine(s.Book.Limits, plain(n)))
	}
	var cites []limit.Cite
	for _, x := range e.Sources {
		cites = append(cites, limit.Cite{Source: x.Work, Where: x.Where, Basis: x.Basis})
	}
	out.Sources = report.Sources(s.Book.Limits, cites)
	for _, name := range e.Figures {
		if f, ok := s.Book.Figures.Find(name); ok {
			out.Figures = append(out.Figures, link{"/figures/" + name, f.Title, name})
		}
	}
	return out
}

type beliefPage struct {
	frame
	Entry *beliefShown
	Said  []string
}

// mostSaid is how many ways of saying a belief its page shows.
const mostSaid = 9

func (s *Server) beliefPage(w http.ResponseWriter, r *http.Request) error {
	e, err := s.entry(r)
	if err != nil {
		return err
	}
	p := &beliefPage{frame: frame{Title: firstUpper(e.Belief)}, Entry: s.shownBelief(e, system(r))}
	for _, voice := range belief.VoiceNames() {
		said := e.Said[voice]
		p.Said = append(p.Said, said[:min(len(said), mostSaid/len(belief.VoiceNames()))]...)
	}
	return s.show(w, r, http.StatusOK, "belief", p)
}

func (s *Server) entry(r *http.Request) (*belief.Entry, error) {
	id := r.PathValue("topic") + "/" + r.PathValue("name")
	if s.Corpus == nil || !slices.Contains(s.Corpus.IDs(), id) {
		return nil, notFound("belief", id)
	}
	return s.Corpus.Entry(id)
}

// beliefLinks leads to the beliefs that want is true of.
func (s *Server) beliefLinks(want func(*belief.Entry) bool) []link {
	var list []link
	for _, e := range s.library.entries {
		if want(e) {
			list = append(list, link{"/beliefs/" + e.ID, firstUpper(e.Belief), e.ID})
		}
	}
	return list
}
