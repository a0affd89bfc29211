package crew

import (
	"html/template"
	"io"
)

// bar is one belief in the picture, in pixels.
type bar struct {
	Y                        int
	Saying                   string
	First, Now               float64 // lengths
	FirstCount, NowCount, Of int
	Back                     int
}

const (
	barFull = 420.0 // length of the whole crew
	barStep = 62
)

var picture = template.Must(template.New("progress").Funcs(template.FuncMap{"add": func(a, b int) int { return a + b }}).Parse(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 {{.Height}}" width="640" height="{{.Height}}" role="img" aria-label="{{.Title}}" font-family="Source Sans 3, Segoe UI, Roboto, Helvetica Neue, Arial, Liberation Sans, sans-serif" font-size="14">
<rect width="640" height="{{.Height}}" fill="#fff"/><text x="10" y="22" font-size="16" font-weight="bold">{{.Title}}</text>
<rect x="10" y="32" width="14" height="10" fill="#b9b3a6"/><text x="30" y="42">{{.FirstText}}</text><rect x="230" y="32" width="14" height="10" fill="#171512"/><text x="250" y="42">{{.NowText}}</text>
{{range .Bars}}<text x="10" y="{{.Y}}">{{.Saying}}</text>
<rect x="10" y="{{add .Y 6}}" width="420" height="12" fill="none" stroke="#57524a" stroke-width=".5"/><rect x="10" y="{{add .Y 6}}" width="{{.First}}" height="12" fill="#b9b3a6"/><text x="440" y="{{add .Y 16}}">{{.FirstCount}} / {{.Of}}</text>
<rect x="10" y="{{add .Y 20}}" width="420" height="12" fill="none" stroke="#57524a" stroke-width=".5"/><rect x="10" y="{{add .Y 20}}" width="{{.Now}}" height="12" fill="#171512"/><text x="440" y="{{add .Y 31}}">{{.NowCount}} / {{.Of}}{{if .Back}} ({{$.BackText}} {{.Back}}){{end}}</text>
{{end}}</svg>
`))

// Picture draws how many held each belief at the first asking and how many do now, as SVG.
func (t *Trainer) Picture(w io.Writer, title string, progress []Progress) error {
	var bars []bar
	for _, p := range progress {
		if p.Asked == 0 {
			continue
		}
		l, err := t.Lesson(p.Belief)
		if err != nil {
			return err
		}
		share := barFull / float64(p.Asked)
		bars = append(bars, bar{Y: 70 + barStep*len(bars), Saying: l.Saying, First: share * float64(p.First), Now: share * float64(p.Now),
			FirstCount: p.First, NowCount: p.Now, Of: p.Asked, Back: p.Back})
	}
	return picture.Execute(w, map[string]any{"Title": title, "Bars": bars, "Height": 70 + barStep*len(bars), "FirstText": t.words.Say("progress.first"),
		"NowText": t.words.Say("progress.now"), "BackText": t.words.Say("progress.back")})
}
