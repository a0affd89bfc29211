package web

import (
	"net/http"
	"slices"
	"sort"
	"strings"

	"hearsay/internal/belief"
	"hearsay/internal/rulebook"
)

// Kinds of things the library holds.
const (
	kindBelief   = "belief"
	kindPractice = "practice"
	kindLimit    = "limit"
	kindFigure   = "figure"
	kindSource   = "source"
	kindFact     = "fact"
)

// volume is one thing in the library.
type volume struct {
	Kind    string `json:"kind"`
	ID      string `json:"id"`
	Topic   string `json:"topic,omitempty"`
	Title   string `json:"title"`
	Address string `json:"address"`
	words   string // what it is found by, in lower case
}

// library is the list of everything the rulebook knows, to leaf through and to search.
type library struct {
	volumes []volume
	entries []*belief.Entry
}

func newLibrary(b *rulebook.Book, c *belief.Corpus) (*library, error) {
	l := &library{}
	for _, id := range c.IDs() {
		e, err := c.Entry(id)
		if err != nil {
			return nil, err
		}
		l.entries = append(l.entries, e)
		topic, _, _ := strings.Cut(id, "/")
		l.add(volume{Kind: kindBelief, ID: id, Topic: topic, Title: firstUpper(e.Belief), Address: "/beliefs/" + id}, e.Fact, e.Do)
	}
	for _, p := range b.Practices() {
		l.add(volume{Kind: kindPractice, ID: p.ID, Topic: p.Topic, Title: p.Title, Address: "/practices/" + p.ID}, p.Why, p.Do)
	}
	for _, x := range b.Limits.Limits() {
		l.add(volume{Kind: kindLimit, ID: x.Topic + "/" + x.Name, Topic: x.Topic, Title: x.What, Address: "/limits/" + x.Topic + "/" + x.Name}, x.Condition, x.Source)
	}
	for _, f := range b.Figures.Figures() {
		if !f.Private {
			l.add(volume{Kind: kindFigure, ID: f.Name, Title: f.Title, Address: "/figures/" + f.Name}, f.Method)
		}
	}
	for _, w := range b.Limits.Works() {
		l.add(volume{Kind: kindSource, ID: w.ID, Title: w.Title, Address: "/sources/" + w.ID}, w.By, w.Number)
	}
	for _, f := range b.Facts.Facts() {
		l.add(volume{Kind: kindFact, ID: f.Path, Topic: f.Group, Title: f.Name, Address: "/facts/" + f.Path}, append([]string{f.Ask}, f.Words...)...)
	}
	return l, nil
}

func (l *library) add(v volume, words ...string) {
	v.words = strings.ToLower(v.Title + " " + v.ID + " " + strings.Join(words, " "))
	l.volumes = append(l.volumes, v)
}

// find gives what holds every word looked for, the best first: words in the title count more than words elsewhere, whole
// words more than parts.
func (l *library) find(text string, most int) []volume {
	wanted := strings.Fields(strings.ToLower(text))
	if len(wanted) == 0 {
		return nil
	}
	type hit struct {
		volume
		score int
	}
	var hits []hit
	for _, v := range l.volumes {
		if score := v.score(wanted); score > 0 {
			hits = append(hits, hit{v, score})
		}
	}
	sort.SliceStable(hits, func(i, j int) bool { return hits[i].score > hits[j].score })
	var list []volume
	for _, h := range hits[:min(most, len(hits))] {
		list = append(list, h.volume)
	}
	return list
}

func (v volume) score(wanted []string) int {
	title, sum := " "+strings.ToLower(v.Title+" "+strings.NewReplacer("/", " ", "-", " ", ".", " ", "_", " ").Replace(v.ID))+" ", 0
	for _, w := range wanted {
		switch {
		case strings.Contains(title, " "+w+" "):
			sum += 8
		case strings.Contains(title, " "+w):
			sum += 5
		case strings.Contains(title, w):
			sum += 3
		case strings.Contains(v.words, w):
			sum++
		default:
			return 0
		}
	}
	switch phrase := " " + strings.Join(wanted, " ") + " "; {
	case title[:min(len(title), len(phrase))] == phrase:
		sum += 8
	case strings.Contains(title, phrase):
		sum += 4
	}
	return sum
}

// shelf is a heading of the library with what stands under it.
type shelf struct {
	Topic   string
	Volumes []volume
}

type libraryPage struct {
	frame
	Find    string
	Found   []volume
	Looked  bool
	Kind    string // the kind listed
	Kinds   []string
	Shelves []shelf
}

// mostFound is how much of what was found is shown.
const mostFound = 40

func (s *Server) libraryPage(w http.ResponseWriter, r *http.Request) error {
	find := strings.TrimSpace(r.URL.Query().Get("find"))
	p := &libraryPage{frame: frame{Title: s.texts(r).say("library.title")}, Find: find, Looked: find != "", Kinds: s.library.kinds(), Kind: r.URL.Query().Get("kind")}
	if p.Looked {
		p.Found = s.library.find(find, mostFound)
		return s.show(w, r, http.StatusOK, "library", p)
	}
	if !slices.Contains(p.Kinds, p.Kind) {
		p.Kind = p.Kinds[0]
	}
	p.Shelves = s.library.shelves(p.Kind)
	return s.show(w, r, http.StatusOK, "library", p)
}

// kinds lists the kinds of which there is something.
func (l *library) kinds() []string {
	var kinds []string
	for _, kind := range []string{kindBelief, kindPractice, kindFigure, kindLimit, kindFact, kindSource} {
		if slices.ContainsFunc(l.volumes, func(v volume) bool { return v.Kind == kind }) {
			kinds = append(kinds, kind)
		}
	}
	return kinds
}

// shelves puts the things of one kind under their topics.
func (l *library) shelves(kind string) []shelf {
	var shelves []shelf
	for _, v := range l.volumes {
		if v.Kind != kind {
			continue
		}
		if n := len(shelves); n == 0 || shelves[n-1].Topic != v.Topic {
			shelves = append(shelves, shelf{Topic: v.Topic})
		}
		last := &shelves[len(shelves)-1]
		last.Volumes = append(last.Volumes, v)
	}
	return shelves
}
