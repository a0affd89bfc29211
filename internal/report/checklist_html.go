package report

import (
	"html/template"
)

// sheet is the printable checklist: one or two pages of letter or A4, black on white, with nothing outside itself.
var sheet = template.Must(template.New("checklist").Funcs(template.FuncMap{"stage": func(s string) string { return stageTitle[s] }, "open": Item.openLine}).Parse(`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pre-pour checklist{{with .Title}}: {{.}}{{end}}</title>
<style>
@page { margin: 12mm }
body { font: 10pt/1.3 Georgia, "Times New Roman", serif; color: #000; background: #fff; max-width: 190mm; margin: 1em auto; padding: 0 1em }
h1 { font-size: 15pt; margin: 0 0 .2em } h2 { font-size: 11.5pt; margin: .9em 0 .2em; border-bottom: 1.5pt solid #000 }
table { width: 100%; border-collapse: collapse; font-size: 9pt } td, th { text-align: left; vertical-align: top; padding: 2pt 4pt; border-bottom: .5pt solid #555 }
tr { break-inside: avoid } .box { width: 14pt } .box span { display: inline-block; width: 9pt; height: 9pt; border: 1pt solid #000 }
.reading { width: 60pt } .initials { width: 40pt } .state { width: 32pt } .open { border: 1.5pt solid #000; padding: 4pt 8pt; margin: .6em 0 } .open li { margin: 2pt 0 }
.small { font-size: 8.5pt } .line { display: inline-block; min-width: 90pt; border-bottom: .5pt solid #000 }
</style></head><body>
<h1>Pre-pour checklist{{with .Title}}: {{.}}{{end}}</h1>
<p>Date <span class="line">&nbsp;</span> Checked by <span class="line">&nbsp;</span></p>
{{with .Open}}<section class="open" aria-label="Open"><strong>Open ({{len .}})</strong><ul>{{range .}}<li>{{open .}}</li>{{end}}</ul></section>{{end}}
{{range .Stages}}<h2>{{stage .Stage}}</h2>
<table><thead><tr><th class="box"><span hidden>tick</span></th><th>Check</th><th>Hold it against</th><th class="state">State</th><th class="reading">Reading</th><th class="initials">Initials</th></tr></thead><tbody>
{{range .Items}}<tr><td class="box"><span></span></td><td>{{.Do}}</td><td>{{.Hold}}</td><td>{{.State}}</td><td></td><td></td></tr>
{{end}}</tbody></table>{{end}}
{{with .Unsure}}<h2>Still to be asked</h2><ul>{{range .}}<li>{{.Question}}</li>{{end}}</ul>{{end}}
<h2>Stated</h2><p class="small">{{range $i, $u := .Stated}}{{if $i}}; {{end}}{{.Name}}: {{.Text}}{{end}}.</p>
<h2>Cautions</h2><ul class="small">{{range .Cautions}}<li>{{.}}</li>{{end}}<li>{{.Statement}}</li><li>{{.Made.Line}}</li></ul>
</body></html>
`))

// HTML prints the checklist as a page that stands on its own.
func (c *Checklist) HTML(w Writer) error { return sheet.Execute(w, c) }
