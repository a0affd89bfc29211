package web

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"io/fs"
	"net/http"
	"path"
	"regexp"
	"strings"
	"sync"

	"hearsay/internal/crew"
	"hearsay/internal/quantity"
)

//go:embed templates/*.html
var templateFiles embed.FS

// look is how the pages look in one language.
type look struct {
	language string
	texts    texts
	pages    map[string]*template.Template
}

// shared are the templates that every page can use.
var shared = []string{"templates/page.html", "templates/parts.html"}

func loadLooks(assets map[string]*asset) (map[string]*look, error) {
	languages, err := loadTexts()
	if err != nil {
		return nil, err
	}
	files, err := fs.Glob(templateFiles, "templates/*.html")
	if err != nil {
		return nil, err
	}
	looks := map[string]*look{}
	for language, own := range languages {
		l := &look{language, own, map[string]*template.Template{}}
		functions := template.FuncMap{
			"t": own.say, "count": own.count,
			"language": func() string { return language },
			"address":  func(name string) string { return "/assets/" + assets[name].version + "/" + name },
			"id":       func(parts ...string) string { return elementID(parts...) },
			"join":     strings.Join,
			"add":      func(a, b int) int { return a + b },
			"letter":   crew.Letter,
			"tie":      func(text string) string { return numberAndUnit.ReplaceAllString(text, "$1\u00a0$2") },
		}
		for _, file := range files {
			if file == shared[0] || file == shared[1] {
				continue
			}
			t, err := template.New("page.html").Funcs(functions).ParseFS(templateFiles, append([]string{file}, shared...)...)
			if err != nil {
				return nil, fmt.Errorf("the template %s: %w", file, err)
			}
			l.pages[strings.TrimSuffix(path.Base(file), ".html")] = t
		}
		looks[language] = l
	}
	return looks, nil
}

// numberAndUnit is what must not be parted at the end of a line.
var numberAndUnit = regexp.MustCompile(`(\d) ([^\s\d])`)

// elementID makes a name for a place in the page out of names of the rulebook: "water/over-limit" becomes "water-over-limit".
func elementID(parts ...string) string {
	return strings.NewReplacer("/", "-", ".", "-", " ", "-").Replace(strings.Join(parts, "-"))
}

// frame is what every page has around its own content.
type frame struct {
	Title  string
	Here   string // the address, to come back to after a change of settings
	Metric bool
	Wide   bool   // the page has two columns where there is room
	Made   string // by what it was made
	Bare   bool   // it has no head and no foot: who sees it may see nothing else
	Job    *head
	Tab    string // which side of the job is shown
}

// head is what the tabs of a job need.
type head struct {
	ID    string
	Title string // what it is called
	Given string // the title somebody gave it; "" where it is called by its words
}

func (f *frame) framed() *frame { return f }

// Section is the part of the page that is marked in its head.
func (f *frame) Section() string {
	switch {
	case f.Job != nil || strings.HasPrefix(f.Here, "/jobs"):
		return "jobs"
	case f.Here == "/" || strings.HasPrefix(f.Here, "/?"):
		return "ask"
	case strings.HasPrefix(f.Here, "/crew"):
		return "crew"
	case strings.HasPrefix(f.Here, "/token"), strings.HasPrefix(f.Here, "/join"):
		return ""
	}
	return "library"
}

// framed is a page's content with its frame.
type framed interface{ framed() *frame }

var buffers = sync.Pool{New: func() any { return new(bytes.Buffer) }}

// show renders a page whole before the first byte of it is sent, so that what fails never shows half a page.
func (s *Server) show(w http.ResponseWriter, r *http.Request, status int, name string, content framed) error {
	f := content.framed()
	f.Here, f.Metric, f.Made = r.URL.RequestURI(), system(r) == quantity.SI, s.made().Line()
	buffer := buffers.Get().(*bytes.Buffer)
	defer buffers.Put(buffer)
	buffer.Reset()
	if err := s.lookFor(r).pages[name].Execute(buffer, content); err != nil {
		return fmt.Errorf("page %s: %w", name, err)
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	_, err := w.Write(buffer.Bytes())
	return err
}

func (s *Server) lookFor(r *http.Request) *look {
	if c, err := r.Cookie("language"); err == nil {
		if l, ok := s.looks[c.Value]; ok {
			return l
		}
	}
	return s.looks[firstLanguage]
}

func (s *Server) texts(r *http.Request) texts { return s.lookFor(r).texts }
