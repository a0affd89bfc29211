package report

import (
	"fmt"
	"slices"
	"strings"
)

// messageWidth is what one text message holds.
const messageWidth = 160

// message puts the order into two or three short lines.
func (o *Order) message() []string {
	var parts []string
	for _, l := range o.Lines {
		switch {
		case l.Value == "no" || l.Value == "none":
		case l.Value == "yes":
			parts = append(parts, l.Name)
		default:
			parts = append(parts, l.Name+" "+l.Value)
		}
	}
	lines := []string{short("Order: " + strings.Join(parts, ", ") + ".")}
	if tell := whole(append(slices.Clone(o.First), o.Customer...)); tell != "" {
		lines = append(lines, tell)
	}
	return append(lines, safetyLine)
}

// mostToldShort is how many things a text message tells.
const mostToldShort = 2

// whole gives the first sentences of texts, the most important first, as far as they go whole into one message. Only where not even
// the first goes in is it cut.
func whole(texts []string) string {
	var tell []string
	for _, text := range texts {
		first, _, _ := strings.Cut(text, ". ")
		first = strings.TrimSuffix(first, ".") + "."
		if next := append(tell, first); len(strings.Join(next, " ")) <= messageWidth {
			tell = next
		}
		if len(tell) == mostToldShort {
			break
		}
	}
	if len(tell) == 0 && len(texts) > 0 {
		return short(texts[0])
	}
	return strings.Join(tell, " ")
}

// short cuts a line at a word, to the width of a message.
func short(line string) string {
	if len(line) <= messageWidth {
		return line
	}
	cut := strings.LastIndexByte(line[:messageWidth-2], ' ')
	return line[:max(cut, 0)] + " …"
}

// Text prints the order for a person.
func (o *Order) Text(w Writer, look Look) {
	fmt.Fprintln(w, look.paint(bold, "Place the order so"+suffix(o.Title)))
	for _, l := range o.Lines {
		line := l.Value
		if l.Was != "" {
			line += " (was " + l.Was + ")"
		} else if l.Proposed {
			line += " (proposed)"
		}
		if l.Why != "" {
			line += ": " + l.Why
		}
		fmt.Fprintf(w, "  %-15s %s\n", l.Name, look.wrap(18, line))
	}
	if len(o.Open) > 0 {
		fmt.Fprintf(w, "  not decided     %s\n", look.wrap(18, strings.Join(o.Open, ", ")))
	}
	o.list(w, look, "Before it can be placed", o.First)
	o.list(w, look, "Tell the customer", o.Customer)
	o.list(w, look, "For a licensed engineer to decide", o.Engineer)
	o.list(w, look, "As a text message", o.Message)
	fmt.Fprintf(w, "\n%s\n", look.paint(faint, look.wrap(0, o.Note)))
	fmt.Fprintln(w, look.paint(faint, look.wrap(0, o.Made.Line())))
}

func (o *Order) list(w Writer, look Look, title string, items []string) {
	if len(items) == 0 {
		return
	}
	fmt.Fprintf(w, "\n%s\n", look.paint(bold, title))
	for _, i := range items {
		fmt.Fprintf(w, "  - %s\n", look.wrap(4, i))
	}
}
