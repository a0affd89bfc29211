package web

import (
	"net/http"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var hrefs = regexp.MustCompile(`(?:href|src|action)="([^"#?]+)`)

// TestEveryPageOfTheLibraryAnswersAndLeadsSomewhere opens every page that the library lists and every address on them.
func TestEveryPageOfTheLibraryAnswersAndLeadsSomewhere(t *testing.T) {
	s := newSite(t, func(c *Config) { c.Rate = 1e6 })
	handler, err := s.Handler()
	require.NoError(t, err)
	seen, queue := map[string]bool{}, []string{"/", "/library", "/jobs"}
	for _, v := range s.library.volumes {
		queue = append(queue, v.Address)
	}
	for len(queue) > 0 {
		path := queue[0]
		queue = queue[1:]
		if seen[path] {
			continue
		}
		seen[path] = true
		page := httpRecord(handler, "http://localhost"+path)
		if path == "/settings" {
			continue // takes forms only
		}
		if !assert.Equal(t, http.StatusOK, page.Code, path) {
			continue
		}
		body := page.Body.String()
		lacks(t, body, "⟨", "%s shows a text that does not exist", path)
		lacks(t, body, "ZgotmplZ", path)
		for _, m := range hrefs.FindAllStringSubmatch(body, -1) {
			assert.True(t, strings.HasPrefix(m[1], "/"), "%s leads away: %s", path, m[1])
			queue = append(queue, m[1])
		}
	}
	assert.Greater(t, len(seen), 300)
}

func TestTheLibraryFinds(t *testing.T) {
	s := newSite(t)
	best := s.library.find("water-cement ratio limit", 5)
	require.NotEmpty(t, best)
	assert.Equal(t, "/practices/water/over-limit", s.library.find(s.practice("water/over-limit").Title, 5)[0].Address)
	assert.Equal(t, "/facts/order.slump", s.library.find("ordered slump", 5)[0].Address)
	assert.Empty(t, s.library.find("xylophone", 5))
	assert.Empty(t, s.library.find("  ", 5))
	has(t, s.get("/library?find=xylophone").text, "Nothing here has “xylophone” in it")
}

func TestAFigureIsComputedOnItsPage(t *testing.T) {
	s := newSite(t)
	page := s.get("/figures/wcm?mix.water=280&unit.mix.water=lb/yd3&mix.cementitious=5.5+bags/yd3").text
	has(t, page, `<p class="answer">0.542</p>`)
	has(t, page, "517 lb/yd³")
	has(t, s.get("/figures/wcm?mix.water=280").text, "aria-invalid", "a unit is never guessed")
	has(t, s.get("/figures/wcm?mix.water=280+lb/yd3").text, "To know it, fill in")
}

func TestALimitShowsItsNumberItsSourceAndWhoUsesIt(t *testing.T) {
	s := newSite(t)
	page := s.get("/limits/water/gallon").text
	has(t, page, "8.33 lb/gal")
	has(t, page, `href="/sources/navy"`)
	has(t, s.get("/limits/water/gallon?units=si").text, "kg/L")
}
