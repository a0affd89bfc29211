package report

import (
	"html/template"
)

// sheet is the printable checklist: one or two pages of letter or A4, black on white, with nothing outside itself.
var sheet = template.Must(template.New("checklist").Funcs(template.FuncMap{"stage": func(s string) string { return stageTitle[s] }}).Parse(`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pre-pour checklist{{with .Title}}: {{.}}{{end}}</title>
<style>
@page { margin: 9mm 10mm }
body { font: 10pt/1.3 Georgia, "Times New Roman", serif; color: #000; background: #fff; max-width: 195mm; margin: 1em auto; padding: 0 1em }
h1 { font-size: 14pt; margin: 0 0 .2em } h2 { font-size: 11pt; margin: .7em 0 .1em; border-bottom: 1.5pt solid #000; break-after: avoid }
table { width: 100%; border-collapse: collapse; font-size: 9pt } td, th { text-align: left; vertical-align: top; padding: 2pt 4pt; border-bottom: .5pt solid #555 }
tr { break-inside: avoid } .box { width: 12pt } .box i { display: inline-block; width: 8pt; height: 8pt; border: 1pt solid #000 }
.hold { width: 25% } .reading { width: 44pt } .initials { width: 34pt } .state { width: 28pt } .open { border: 1.5pt solid #000; padding: 4pt 8pt; margin: .5em 0 } ul { margin: .3em 0; padding-left: 1.2em } li { margin: 1pt 0; break-inside: avoid }
.small { font-size: 8.5pt; margin: .3em 0 } .line { display: inline-block; min-width: 90pt; border-bottom: .5pt solid #000 }
@media print { body { max-width: none; margin: 0; padding: 0; font-size: 8pt; line-height: 1.16 } table { font-size: 7.5pt } td, th { padding: 1pt 3pt } .small { font-size: 6.5pt } .two { columns: 2; column-gap: 5mm } }
</style></head><body>
<h1>Pre-pour checklist{{with .Title}}: {{.}}{{end}}</h1>
<p>Date <span class="line">&nbsp;</span> Checked by <span class="line">&nbsp;</span></p>
{{if or .Wrong .ToAsk}}<section class="open" aria-label="Open">
{{with .Wrong}}<strong>Open: wrong ({{len .}})</strong><ul class="two">{{range .}}<li>{{.}}</li>{{end}}</ul>{{end}}
{{with .ToAsk}}<strong>Open: still to be asked ({{len .}})</strong><ul class="two">{{range .}}<li>{{.}}</li>{{end}}</ul>{{end}}
</section>{{end}}
{{range .Stages}}<h2>{{stage .Stage}}</h2>
<table><thead><tr><th class="box" aria-label="Tick"></th><th>Check</th><th class="hold">Hold it against</th><th class="state">State</th><th class="reading">Reading</th><th class="initials">Initials</th></tr></thead><tbody>
{{range .Items}}<tr><td class="box"><i></i></td><td>{{.Do}}</td><td>{{.Hold}}</td><td>{{.State}}</td><td></td><td></td></tr>
{{end}}</tbody></table>{{end}}
<h2>Stated</h2><p class="small">{{range $i, $u := .Stated}}{{if $i}}; {{end}}{{.Name}}: {{.Text}}{{end}}.</p>
<h2>Cautions</h2><ul class="small two">{{range .Cautions}}<li>{{.}}</li>{{end}}<li>{{.Statement}}</li><li>{{.Made.Line}}</li></ul>
</body></html>
`))

// HTML prints the checklist as a page that stands on its own.
func (c *Checklist) HTML(w Writer) error { return sheet.Execute(w, c) }
