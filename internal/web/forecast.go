package web

import (
	"errors"
	"io"
	"net/http"
	"slices"
	"time"

	"hearsay/internal/forecast"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/store"
)

// An hourly forecast comes to the page as a file, chosen or dropped, or as its text. It is kept as the rows that were
// read; where it tells when it begins, that is kept, too, so that the job's start hour in it follows the job's start.

// withFile reads a form that may carry a file: what the file says counts as the value that the form sends.
func withFile(r *http.Request) error {
	if err := r.ParseMultipartForm(mostBody); errors.Is(err, http.ErrNotMultipart) {
		return nil
	} else if err != nil {
		return formProblem(err)
	}
	name, text, err := sentFile(r)
	if err == nil && len(text) > 0 {
		r.PostForm.Set("value", string(text))
		r.PostForm.Set("name", name)
	}
	return err
}

// sentFile gives the file of a form; nothing where none was chosen.
func sentFile(r *http.Request) (name string, text []byte, err error) {
	file, head, err := r.FormFile("file")
	if err != nil {
		return "", nil, nil
	}
	defer file.Close()
	text, err = io.ReadAll(file)
	return head.Filename, text, err
}

// setForecast states an hourly forecast.
func (s *Server) setForecast(c *store.Content, name, text string) (*mistake, error) {
	f, err := forecast.Read(name, []byte(text))
	if err != nil {
		return &mistake{Fact: forecast.Fact, Value: text, Why: err.Error()}, nil
	}
	next := *c
	stateForecast(&next, f)
	for _, r := range s.understand(next).Refused {
		if r.Fact == forecast.Fact {
			return &mistake{Fact: forecast.Fact, Value: text, Why: r.Why}, nil
		}
	}
	*c = next
	return nil, nil
}

// stateForecast puts a forecast into what is kept of a job. A start hour stated before was counted in another one.
func stateForecast(c *store.Content, f *forecast.Forecast) {
	state(c, forecast.Fact, f.Rows)
	c.Stated[len(c.Stated)-1].Begins = f.Begins
	if !f.Begins.IsZero() {
		c.Stated = slices.DeleteFunc(c.Stated, func(st store.Stated) bool { return st.Fact == forecast.StartFact })
		c.Dropped = without(c.Dropped, forecast.StartFact)
	}
}

// forecastForm is where an hourly forecast is brought in.
type forecastForm struct {
	Action, To string
	Field      *field
}

// forecastForm makes the form that brings a forecast into a job; nil where it has one.
func (s *Server) forecastForm(u *understood, id, to string, system quantity.System) *forecastForm {
	f, ok := s.Book.Facts.Fact(forecast.Fact)
	if _, has := u.Job.Find(forecast.Fact); has || !ok {
		return nil
	}
	form := &forecastForm{"/jobs/" + id, to, newField(f, system)}
	form.Field.ID = elementID("bring", forecast.Fact)
	return form
}

func (f *forecastForm) correct(m *mistake) bool {
	if f == nil || m.Fact != forecast.Fact {
		return false
	}
	f.Field.correct(m)
	return true
}

// begins is when the forecast of a job begins; zero where there is none or it does not tell.
func begins(c store.Content) time.Time {
	for _, st := range c.Stated {
		if st.Fact == forecast.Fact {
			return st.Begins
		}
	}
	return time.Time{}
}

// startInForecast states the hour of the forecast at which the job starts: where both tell the time, or where the forecast
// tells none, its first.
func (s *Server) startInForecast(u *understood, c store.Content) {
	at := begins(c)
	if slices.Contains(c.Dropped, forecast.StartFact) {
		return
	}
	if hour, ok := forecast.StartHour(u.Job, at); ok {
		text := forecast.Written(hour)
		if !at.IsZero() {
			text += " after " + at.Format("Jan 2, 3:04 pm")
		}
		u.take(s.Book.Facts, forecast.StartFact, forecast.Written(hour), job.Stated{Text: text})
	}
}
