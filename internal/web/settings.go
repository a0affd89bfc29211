package web

import (
	"net/http"
	"strings"

	"hearsay/internal/quantity"
)

// system is the unit system somebody reads: ?units=si for one answer, a cookie for all.
func system(r *http.Request) quantity.System {
	units := r.URL.Query().Get("units")
	if c, err := r.Cookie("units"); err == nil && units == "" {
		units = c.Value
	}
	if units == "si" {
		return quantity.SI
	}
	return quantity.US
}

// exactUnits refuses a unit system that does not exist, where a program would not see that it got another.
func exactUnits(inner answer) answer {
	return func(w http.ResponseWriter, r *http.Request) error {
		switch r.URL.Query().Get("units") {
		case "", "us", "si":
			return inner(w, r)
		}
		return badRequest("fail.units", "units", r.URL.Query().Get("units"))
	}
}

// settings keeps the unit system, and comes back to the page it was changed on.
func (s *Server) settings(w http.ResponseWriter, r *http.Request) error {
	units := r.PostFormValue("units")
	if units != "si" {
		units = "us"
	}
	http.SetCookie(w, &http.Cookie{Name: "units", Value: units, Path: "/", MaxAge: 400 * 24 * 3600, HttpOnly: true, SameSite: http.SameSiteLaxMode, Secure: s.secure()})
	http.Redirect(w, r, here(r.PostFormValue("here")), http.StatusSeeOther)
	return nil
}

// here lets a form send people back to a page of this server only.
func here(address string) string {
	if !strings.HasPrefix(address, "/") || strings.HasPrefix(address, "//") || strings.Contains(address, "\\") {
		return "/"
	}
	return address
}

// secure says whether people reach the server through TLS.
func (s *Server) secure() bool { return strings.HasPrefix(s.Public, "https://") }
