package web

import (
	"html/template"
	"net/http"

	"hearsay/internal/report"
)

type picturesPage struct {
	frame
	Pictures []pictureShown
}

// pictureShown is a picture in the page. Its SVG is made by the program, with every word in it escaped.
type pictureShown struct {
	report.Picture
	Drawing template.HTML
	Working *result
}

func (s *Server) jobPictures(w http.ResponseWriter, r *http.Request) error {
	j, err := s.Store.Job(r.Context(), r.PathValue("id"))
	if err != nil {
		return err
	}
	u := s.understand(j.Content)
	if err := s.turn(r.Context()); err != nil {
		return err
	}
	pictures := report.Pictures(s.Book, u.Job, system(r))
	<-s.turns
	p := &picturesPage{frame: s.jobFrame(s.texts(r), j, "pictures")}
	for _, one := range pictures {
		shown := pictureShown{Picture: one, Drawing: template.HTML(one.SVG)}
		if one.Figure != "" {
			shown.Working = s.result(u.Job, one.Figure, system(r))
		}
		p.Pictures = append(p.Pictures, shown)
	}
	return s.show(w, r, http.StatusOK, "pictures", p)
}
