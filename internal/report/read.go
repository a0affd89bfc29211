package report

import (
	"fmt"
	"io"
	"strings"

	"hearsay/internal/quantity"
)

// read writes what was understood, each fact with the words it was read from.
func (r *Review) read(w io.Writer, look Look) {
	if len(r.Understood) == 0 {
		return
	}
	fmt.Fprintln(w, look.paint(bold, "Understood:"))
	for _, u := range r.Understood {
		fmt.Fprintf(w, "  %s %s\n", look.wrap(4, u.Name+": "+u.Print(r.System)), look.paint(faint, "“"+strings.Join(strings.Fields(u.Text), " ")+"”"))
	}
	fmt.Fprintln(w)
}

// Print writes the value as people read it.
func (u Understood) Print(system quantity.System) string {
	switch v := u.Value.(type) {
	case float64:
		return quantity.Quantity{Value: v, Unit: u.Unit}.Print(system)
	case []float64:
		var items []string
		for _, x := range v {
			items = append(items, quantity.Quantity{Value: x, Unit: u.Unit}.Print(system))
		}
		return strings.Join(items, ", ")
	case bool:
		if v {
			return "yes"
		}
		return "no"
	}
	return fmt.Sprint(u.Value)
}
