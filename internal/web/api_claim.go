package web

import (
	"net/http"
)

func (s *Server) apiClaim(w http.ResponseWriter, r *http.Request) error {
	var sent struct {
		Say string `json:"say"`
	}
	if err := readJSON(r, &sent); err != nil {
		return err
	}
	if len(sent.Say) > mostWords {
		return badRequest("fail.words", "kb", len(sent.Say)/1024, "most", mostWords/1024)
	}
	a, err := s.hearClaim(sent.Say)
	if err != nil {
		return err
	}
	if a == nil {
		return badRequest("fail.noclaim")
	}
	out, err := s.claimed(a, system(r))
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, out)
}

func (s *Server) apiBeliefs(w http.ResponseWriter, r *http.Request) error {
	list := []*beliefShown{}
	for _, e := range s.library.entries {
		list = append(list, s.shownBelief(e, system(r)))
	}
	return writeJSON(w, http.StatusOK, list)
}

func (s *Server) apiBelief(w http.ResponseWriter, r *http.Request) error {
	e, err := s.entry(r)
	if err != nil {
		return err
	}
	return writeJSON(w, http.StatusOK, s.shownBelief(e, system(r)))
}
