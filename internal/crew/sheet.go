package crew

import (
	"html/template"
	"io"
)

// sheetStyle is for letter and A4 paper, black on white; nothing is fetched from elsewhere.
const sheetStyle = `@page { margin: 14mm }
body { font: 11pt/1.35 Georgia, "Times New Roman", serif; color: #000; background: #fff; max-width: 185mm; margin: 1em auto; padding: 0 1em }
h1 { font-size: 17pt; margin: 0 0 .2em } h2 { font-size: 13pt; margin: 1.1em 0 .2em; border-bottom: 1.5pt solid #000; break-after: avoid }
h3 { font-size: 10pt; margin: .6em 0 0; break-after: avoid } p, ul, ol { margin: .1em 0 .3em }
.remember { border: 1.5pt solid #000; padding: 4pt 8pt; font-weight: bold; break-inside: avoid }
.question { break-inside: avoid; margin: .9em 0 } .question ol { list-style: upper-alpha; columns: 2 } .question li::marker { font-weight: bold }
.key { break-before: page } .key li { break-inside: avoid; margin-bottom: .5em } .line { display: inline-block; min-width: 60mm; border-bottom: .5pt solid #000 } .small { font-size: 9pt }
`

var talkSheet = template.Must(template.New("talk").Parse(`<!doctype html>
<html lang="{{.Language}}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>{{.Title}}</title>
<style>` + sheetStyle + `</style></head><body>
<h1>{{.Title}}</h1>
<p>{{.Length}}. {{.Say "talk.date"}} <span class="line">&nbsp;</span> {{.Say "talk.crew"}} <span class="line">&nbsp;</span></p>
{{$talk := .}}{{range .Lessons}}<section><h2>{{.Saying}}</h2>
{{range $talk.Parts .}}<h3>{{.Head}}</h3>{{with .Text}}<p>{{.}}</p>{{end}}{{if .List}}<ul>{{range .List}}<li>{{.}}</li>{{end}}</ul>{{end}}
{{end}}</section>{{end}}
<p class="small">{{.Say "talk.foot"}}{{with .Made}} {{.Line}}{{end}}</p>
<p>{{.Say "talk.heard"}} <span class="line">&nbsp;</span> <span class="line">&nbsp;</span></p>
</body></html>
`))

var quizSheet = template.Must(template.New("quiz").Funcs(template.FuncMap{"add": func(a, b int) int { return a + b }}).Parse(`<!doctype html>
<html lang="{{.Language}}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>{{.Title}}</title>
<style>` + sheetStyle + `</style></head><body>
<h1>{{.Title}}</h1><p>{{.Number}}. {{.Say "quiz.name"}} <span class="line">&nbsp;</span></p>
{{range $i, $q := .Questions}}<section class="question"><p><b>{{add $i 1}}.</b> {{.Text}}</p><ol>{{range .Options}}<li>{{.Text}}</li>{{end}}</ol></section>
{{end}}{{with .Made}}<p class="small">{{.Line}}</p>{{end}}{{if .WithKey}}{{$quiz := .}}<section class="key"><h2>{{.Say "quiz.key"}}: {{.Title}} ({{.Number}})</h2>
<ol>{{range .Questions}}<li><b>{{.KeyLetter}}</b> {{(index .Options .Key).Text}}{{range $quiz.Explain .}}<br><span class="small">{{.}}</span>{{end}}</li>{{end}}</ol></section>{{end}}
</body></html>
`))

// HTML prints the talk as a page that stands on its own.
func (t *Talk) HTML(w io.Writer) error { return talkSheet.Execute(w, t) }

// HTML prints the quiz as a page that stands on its own, the key on a sheet of its own where it is wanted.
func (z *Quiz) HTML(w io.Writer, key bool) error {
	return quizSheet.Execute(w, struct {
		*Quiz
		WithKey bool
	}{z, key})
}
