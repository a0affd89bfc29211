package report

import (
	"fmt"
	"slices"
	"strings"

	"hearsay/internal/quantity"
	"hearsay/internal/release"
	"hearsay/internal/rulebook"
)

// Checklist is the pre-pour checklist of a job: every practice that concerns it, by stage, with what is open first.
type Checklist struct {
	Title     string       `json:"title"`
	Open      []Item       `json:"open"` // wrong or not yet known
	Stages    []StageItems `json:"stages"`
	Unsure    []Question   `json:"unsure"` // what would tell whether more practices concern the job
	Stated    []Understood `json:"stated"`
	Cautions  []string     `json:"cautions"`
	Statement string       `json:"statement"`
	Made      release.Made `json:"made"`
	system    quantity.System
}

// StageItems is what is checked at one stage.
type StageItems struct {
	Stage string `json:"stage"`
	Items []Item `json:"items"`
}

// Item is one line to tick.
type Item struct {
	Practice string `json:"practice"`
	State    string `json:"state"` // wrong, right, ask
	Stage    string `json:"stage"`
	Watch    string `json:"watch"` // what would be wrong
	Do       string `json:"do"`
	Hold     string `json:"hold"` // the number to hold it against; "" where there is none
	Ask      string `json:"ask"`  // what is still to be asked

	asks []string
}

var stageTitle = map[string]string{"order": "When ordering", "before": "Before placing", "during": "While placing", "after": "Afterwards"}

// NewChecklist makes the checklist of a reviewed job.
func NewChecklist(r *Review) *Checklist {
	c := &Checklist{Title: r.Title, Stated: r.Understood, Open: []Item{}, Cautions: []string{}, system: r.System,
		Statement: codeFirst, Made: r.Made}
	byStage := map[string][]Item{}
	questions := map[string]string{}
	for _, q := range r.Questions {
		questions[q.Fact] = q.Question
	}
	for _, f := range r.Findings {
		if !f.Concerns || f.Status == rulebook.NotHere {
			continue
		}
		item := f.item(questions, r.System)
		byStage[f.Stage] = append(byStage[f.Stage], item)
		if f.Status != rulebook.Right {
			c.Open = append(c.Open, item)
		}
		for _, caution := range f.Cautions {
			if !slices.Contains(c.Cautions, caution) {
				c.Cautions = append(c.Cautions, caution)
			}
		}
	}
	for _, stage := range rulebook.Stages {
		if items := byStage[stage]; len(items) > 0 {
			c.Stages = append(c.Stages, StageItems{stage, items})
		}
	}
	c.Unsure = r.Questions[:min(5, len(r.Questions))]
	return c
}

func (f Finding) item(questions map[string]string, system quantity.System) Item {
	item := Item{Practice: f.Practice, State: f.Status, Stage: f.Stage, Watch: f.What, Do: f.Do}
	if len(f.Numbers) > 0 {
		item.Hold = f.Numbers[0].Line(system)
	}
	var asks []string
	for _, fact := range f.Asks {
		if q, ok := questions[fact]; ok && len(asks) < 2 {
			asks = append(asks, q)
		}
	}
	item.Ask, item.asks = strings.Join(asks, " "), asks
	return item
}

// Text prints the checklist for a terminal or a plain printer.
func (c *Checklist) Text(w Writer, look Look) {
	fmt.Fprintf(w, "%s\n", look.paint(bold, "Pre-pour checklist"+suffix(c.Title)))
	fmt.Fprintln(w, "Date: __________   Checked by: ____________________")
	if len(c.Open) > 0 {
		fmt.Fprintln(w, look.paint(bold, fmt.Sprintf("\nOpen (%d):", len(c.Open))))
		for _, i := range c.Open {
			fmt.Fprintf(w, "  ! %s\n", look.wrap(4, i.openLine()))
		}
	}
	for _, s := range c.Stages {
		fmt.Fprintf(w, "\n%s\n", look.paint(bold, stageTitle[s.Stage]))
		for _, i := range s.Items {
			fmt.Fprintf(w, "[ ] %s\n", look.wrap(4, i.Do))
			if i.Hold != "" {
				fmt.Fprintf(w, "    %s\n", look.wrap(4, i.Hold))
			}
			fmt.Fprintf(w, "    %-6s reading ____________  initials ______  %s\n", i.State, look.paint(faint, i.Practice))
		}
	}
	c.unsure(w, look)
	for _, text := range append(slices.Clone(c.Cautions), c.Statement, c.Made.Line()) {
		fmt.Fprintf(w, "%s\n", look.wrap(0, text))
	}
}

func (c *Checklist) unsure(w Writer, look Look) {
	if len(c.Unsure) == 0 {
		fmt.Fprintln(w, "\nNothing that is still unknown can change this list.")
		return
	}
	fmt.Fprintln(w, "\nStill to be asked, for the rest of the list:")
	for _, q := range c.Unsure {
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, q.Question))
	}
	fmt.Fprintln(w)
}

func (i Item) openLine() string {
	if i.State == rulebook.Wrong {
		line := "WRONG: " + i.Watch
		if i.Hold != "" {
			line += " (" + i.Hold + ")"
		}
		return line
	}
	return "Not known: " + i.Watch + "? " + i.Ask
}

// Wrong lists what is open because it is wrong.
func (c *Checklist) Wrong() []string {
	var wrong []string
	for _, i := range c.Open {
		if i.State == rulebook.Wrong {
			wrong = append(wrong, strings.TrimPrefix(i.openLine(), "WRONG: "))
		}
	}
	return wrong
}

// ToAsk lists what is to be asked, each question once: for what is open because it is not known, and for the rest of the list.
func (c *Checklist) ToAsk() []string {
	var asks []string
	for _, i := range c.Open {
		if i.State == rulebook.Ask {
			asks = append(asks, i.asks...)
		}
	}
	for _, q := range c.Unsure {
		asks = append(asks, q.Question)
	}
	return once(asks)
}

func once(texts []string) []string {
	var kept []string
	for _, t := range texts {
		if !slices.Contains(kept, t) {
			kept = append(kept, t)
		}
	}
	return kept
}

func suffix(title string) string {
	if title == "" {
		return ""
	}
	return ": " + title
}

// Markdown prints the checklist as Markdown.
func (c *Checklist) Markdown(w Writer) {
	fmt.Fprintf(w, "# Pre-pour checklist%s\n\nDate: ______ Checked by: ______\n", suffix(c.Title))
	if len(c.Open) > 0 {
		fmt.Fprint(w, "\n## Open\n\n")
		for _, i := range c.Open {
			fmt.Fprintf(w, "- **%s**\n", i.openLine())
		}
	}
	for _, s := range c.Stages {
		fmt.Fprintf(w, "\n## %s\n\n| | Check | Hold it against | State | Reading | Initials |\n| --- | --- | --- | --- | --- | --- |\n", stageTitle[s.Stage])
		for _, i := range s.Items {
			fmt.Fprintf(w, "| [ ] | %s | %s | %s | | |\n", cell(i.Do), cell(i.Hold), i.State)
		}
	}
	if len(c.Unsure) > 0 {
		fmt.Fprint(w, "\n## Still to be asked\n\n")
		for _, q := range c.Unsure {
			fmt.Fprintf(w, "- %s\n", q.Question)
		}
	}
	fmt.Fprint(w, "\n## Cautions\n\n")
	for _, text := range append(slices.Clone(c.Cautions), c.Statement, c.Made.Line()) {
		fmt.Fprintf(w, "- %s\n", text)
	}
}

func cell(text string) string { return strings.ReplaceAll(text, "|", "\\|") }
