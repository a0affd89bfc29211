package web

import (
	"html/template"
	"io"
	"net/http"
	"slices"

	"hearsay/internal/forecast"
	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/store"
)

type picturesPage struct {
	frame
	Pictures []pictureShown
	Missing  []pictureMissing
	Forecast *forecastForm
}

// pictureShown is a picture in the page. Its SVG is made by the program, with every word in it escaped.
type pictureShown struct {
	report.Picture
	Drawing template.HTML
	Working *result
}

// pictureMissing is a picture that could be drawn if more were said.
type pictureMissing struct {
	Name  string
	Lacks []link
}

// drawn are the pictures that a job may have, each with the figures that it shows, the one drawn from nothing else first.
var drawn = []struct {
	name    string
	figures []string
}{
	{"slab", []string{"lowest_surface", "lowest_with_cover", "lowest_with_needed_cover", "cover_hours_needed"}},
	{"strength", []string{"hours_to_500", "hours_to_500_plain", "hours_to_needed", "hours_to_strip"}},
	{"evaporation", []string{"evaporation_worst"}},
	{"water", []string{"strength_after_water"}},
	{"drying", []string{"days_to_dry"}},
	{"joints", []string{"panels", "largest_joint_spacing"}},
}

// pictureOf is the picture that shows a number of a finding; "" where there is none. What is drawn by the hour needs a forecast.
func pictureOf(f report.Finding, j *job.Job) string {
	_, hourly := j.Find(forecast.Fact)
	for _, n := range f.Numbers {
		for i, p := range drawn {
			if slices.Contains(p.figures, n.Figure) && (hourly || i > 2) {
				return p.name
			}
		}
	}
	return ""
}

// picturesOf draws what a kept job gives, when its turn comes.
func (s *Server) picturesOf(r *http.Request) (*store.Job, *understood, []report.Picture, error) {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return nil, nil, nil, err
	}
	u := s.understand(j.Content)
	if err := s.turn(r.Context()); err != nil {
		return nil, nil, nil, err
	}
	defer func() { <-s.turns }()
	return j, u, report.Pictures(s.Book, u.Job, system(r)), nil
}

// jobPicture gives one picture as a file.
func (s *Server) jobPicture(w http.ResponseWriter, r *http.Request) error {
	_, _, pictures, err := s.picturesOf(r)
	if err != nil {
		return err
	}
	for _, one := range pictures {
		if one.Name+".svg" == r.PathValue("file") {
			w.Header().Set("Content-Type", "image/svg+xml")
			w.Header().Set("Cache-Control", "no-store")
			_, err := io.WriteString(w, s.made().InSVG(one.SVG))
			return err
		}
	}
	return problem{http.StatusNotFound, "fail.nopicture", nil}
}

func (s *Server) jobPictures(w http.ResponseWriter, r *http.Request) error {
	j, u, pictures, err := s.picturesOf(r)
	if err != nil {
		return err
	}
	p := &picturesPage{frame: s.jobFrame(s.texts(r), j, "pictures"), Forecast: s.forecastForm(u, j.ID, "pictures", system(r))}
	has := map[string]bool{}
	for _, one := range pictures {
		has[one.Name] = true
		shown := pictureShown{Picture: one, Drawing: template.HTML(one.SVG)}
		if one.Figure != "" {
			shown.Working = s.result(u.Job, one.Figure, system(r))
		}
		p.Pictures = append(p.Pictures, shown)
	}
	for _, one := range drawn {
		if lacks := s.result(u.Job, one.figures[0], system(r)).Lacks; !has[one.name] && len(lacks) > 0 {
			p.Missing = append(p.Missing, pictureMissing{one.name, lacks})
		}
	}
	return s.show(w, r, http.StatusOK, "pictures", p)
}
