package report

import (
	"regexp"
	"slices"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// told are the topics a customer has a hand in: wrong or open, they are worth a sentence. Those of the weather and the site are so
// where something of these was spoken of: of heat nobody need be told in November.
var told = map[string]struct{ always bool }{"cure": {true}, "water": {}, "cold": {}, "hot": {}, "ground": {}, "safety": {}}

// theirs are the groups of facts that a customer decides; outside the groups of what surrounds the work.
var (
	theirs  = []string{"protection", "cure", "ground", "water"}
	outside = []string{"weather", "ground", "load", "protection", "water", "safety"}
)

// mostTold is how many sentences a customer takes in.
const mostTold = 6

// tell gathers what to say to the customer, what is wrong first, and what is for an engineer to decide.
func (o *Order) tell(b *rulebook.Book, c *rulebook.Correction, system quantity.System) {
	var wrong, open []string
	reporter, does := NewReporter(b, system), map[*rulebook.Practice]string{}
	for _, one := range c.After.Judgements {
		p, do := one.Practice, reporter.finding(one).doWithNumber(system)
		does[p] = do
		switch {
		case p.Engineer && one.Concerns && one.Status != rulebook.Right && (one.Status == rulebook.Wrong || p.Stage != "after"):
			o.Engineer = append(o.Engineer, p.Title+": "+do)
		case one.Status == rulebook.Wrong && !p.Act:
			wrong = append(wrong, do)
		case one.Status == rulebook.Ask && worthTelling(b, c.Job, one):
			open = append(open, do)
		}
	}
	for _, change := range c.Changes {
		wrong = append(wrong, does[change.Practice])
	}
	for _, text := range append(wrong, open...) {
		if len(o.Customer) < mostTold && !slices.Contains(o.Customer, text) {
			o.Customer = append(o.Customer, text)
		}
	}
}

// given is where an instruction speaks of a number that stands beside it.
var given = regexp.MustCompile(`\b(\S+) given\b`)

// doWithNumber is what to do, with the number that it speaks of as given: the one of the unit or the name that the word before
// says, or else the first.
func (f Finding) doWithNumber(system quantity.System) string {
	at := given.FindStringSubmatchIndex(f.Do)
	if at == nil {
		return f.Do
	}
	word := f.Do[at[2]:at[3]]
	best, value := -1, ""
	for _, n := range f.Numbers {
		right := n.right(system)
		if right == "" {
			continue
		}
		fit := 0
		if strings.Contains(right, word) {
			fit = 2
		} else if strings.Contains(n.Name, word) {
			fit = 1
		}
		if fit == 0 {
			right = n.Name + " " + right
		}
		if fit > best {
			best, value = fit, right
		}
	}
	if value == "" {
		return f.Do
	}
	return f.Do[:at[1]] + " (" + value + ")" + f.Do[at[1]:]
}

// worthTelling says whether an open practice is worth a sentence: one that concerns the job, or a grave one that hangs on what
// the customer does.
func worthTelling(b *rulebook.Book, j *job.Job, one *rulebook.Judgement) bool {
	p := one.Practice
	topic, ok := told[p.Topic]
	if !ok || !one.Concerns && (p.Severity != "stop" || !slices.ContainsFunc(one.Asks, func(path string) bool { return slices.Contains(theirs, group(path)) })) {
		return false
	}
	return topic.always && one.Concerns || slices.ContainsFunc(b.HangsOn(p), func(path string) bool {
		_, spoken := j.Value(path)
		return spoken && slices.Contains(outside, group(path))
	})
}

func group(path string) string {
	name, _, _ := strings.Cut(path, ".")
	return name
}

// waterLine and safetyLine go with every order.
const (
	waterLine  = "Let nobody add water at the site to make it flow: ask for a water reducer instead."
	safetyLine = "Wet concrete burns skin and eyes, often without pain at first: gloves, boots, glasses; rinse at once with clean water."
)
