package web

import (
	"net/url"
	"slices"
	"strings"
	"time"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

// Bounds of what one job can hold.
const (
	mostWords = 16 << 10 // bytes said
	mostTitle = 120      // bytes of a title
)

// mistake is an answer that was not taken, to be shown where it was given.
type mistake struct {
	Fact, Value, Unit string
	Why               string // "" where key says it
	key               string // of the text that says why, with the fact as its name
}

// change applies what a form of the job's page asks for. It gives the answer that could not be taken, if there was one,
// and leaves the content as it was then.
func (s *Server) change(c *store.Content, form url.Values, now time.Time) (*mistake, error) {
	if form.Has("said") {
		if err := changeWords(c, form.Get("said"), now); err != nil {
			return nil, err
		}
	}
	if form.Has("title") {
		c.Title = cut(strings.TrimSpace(form.Get("title")), mostTitle)
	}
	if path := form.Get("drop"); path != "" { // its form has the field to correct it too
		drop(c, path)
		return nil, nil
	}
	if path := form.Get("restore"); path != "" {
		c.Dropped = without(c.Dropped, path)
	}
	if path := form.Get("skip"); path != "" && !slices.Contains(c.Skipped, path) {
		if _, ok := s.Book.Facts.Fact(path); !ok {
			return nil, notFound("fact", path)
		}
		c.Skipped = append(c.Skipped, path)
	}
	if path := form.Get("unskip"); path != "" {
		c.Skipped = without(c.Skipped, path)
	}
	if path := form.Get("set"); path != "" {
		return s.set(c, path, form)
	}
	return nil, nil
}

func changeWords(c *store.Content, said string, now time.Time) error {
	said = strings.ReplaceAll(said, "\r\n", "\n")
	if len(said) > mostWords {
		return badRequest("fail.words", "kb", len(said)/1024, "most", mostWords/1024)
	}
	if said != c.Said {
		c.Said, c.SaidAt = said, now
	}
	return nil
}

func cut(text string, most int) string {
	if len(text) <= most {
		return text
	}
	return strings.ToValidUTF8(text[:most], "")
}

func without(list []string, item string) []string {
	return slices.DeleteFunc(slices.Clone(list), func(x string) bool { return x == item })
}

// drop takes a fact out, whether it was answered or read from the words.
func drop(c *store.Content, path string) {
	c.Stated = slices.DeleteFunc(slices.Clone(c.Stated), func(st store.Stated) bool { return st.Fact == path })
	if !slices.Contains(c.Dropped, path) {
		c.Dropped = append(slices.Clone(c.Dropped), path)
	}
}

// set states a fact anew, unless the value cannot be used or contradicts the rest.
func (s *Server) set(c *store.Content, path string, form url.Values) (*mistake, error) {
	value, unit := form.Get("value"), form.Get("unit")
	f, ok := s.fact(path)
	if !ok || f.Kind == job.KindSize {
		return &mistake{Fact: path, Value: value, Unit: unit, key: "fail.unknown.fact"}, nil
	}
	path = f.Path
	if strings.TrimSpace(value) == "" && f.Kind == job.KindSeries {
		return &mistake{Fact: path, key: "forecast.empty"}, nil
	}
	if strings.TrimSpace(value) == "" {
		return &mistake{Fact: path, Value: value, Unit: unit, key: "field.empty"}, nil
	}
	if f.Kind == job.KindSeries {
		return s.setForecast(c, form.Get("name"), value)
	}
	next := *c
	state(&next, path, written(f, value, unit))
	for _, r := range s.understand(next).Refused {
		if r.Fact == path {
			return &mistake{Fact: path, Value: value, Unit: unit, Why: r.Why}, nil
		}
	}
	*c = next
	return nil, nil
}

// fact finds a fact by its path or by its name.
func (s *Server) fact(name string) (*job.Fact, bool) {
	if f, ok := s.Book.Facts.Fact(strings.TrimSpace(name)); ok {
		return f, true
	}
	for _, f := range s.Book.Facts.Facts() {
		if strings.EqualFold(f.Name, strings.TrimSpace(name)) {
			return f, true
		}
	}
	return nil, false
}

// state puts a fact first among what was answered, so that what contradicts it is refused and not it.
func state(c *store.Content, path string, value any) {
	kept := slices.DeleteFunc(slices.Clone(c.Stated), func(st store.Stated) bool { return st.Fact == path })
	c.Stated = append(kept, store.Stated{Fact: path, Written: value})
	c.Dropped = without(c.Dropped, path)
	c.Skipped = without(c.Skipped, path)
}

// mend puts the corrections of one finding into the content.
func (s *Server) mend(c *store.Content, mend map[string]any) error {
	mended, err := rulebook.Mended(s.Book.Facts, s.understand(*c).Job, mend)
	if err != nil {
		return err
	}
	for path := range mend {
		if now, ok := mended.Find(path); ok && now.From == "" {
			state(c, path, stated(now))
		}
	}
	return nil
}

// stated gives the value of a fact as a job states it, in the unit of the fact.
func stated(s job.Stated) any {
	text := strings.Trim(job.Written(s), `"`)
	switch v := s.Value.(type) {
	case []float64:
		var items []any
		for _, item := range strings.Split(strings.Trim(text, "[]"), ", ") {
			items = append(items, strings.Trim(item, `"`))
		}
		return items
	case []map[string]float64:
		var rows []any
		for _, row := range v {
			cells := map[string]any{"hour": row["hour"]}
			for column, unit := range s.Fact.Columns {
				if n, ok := row[column]; ok {
					cells[column] = map[string]any{"value": n, "unit": unit}
				}
			}
			rows = append(rows, cells)
		}
		return rows
	case bool:
		return v
	}
	return text
}
