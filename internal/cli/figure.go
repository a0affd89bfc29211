package cli

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

func (a *app) figureCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "figure [NAME FACT=VALUE…]",
		Short: "Compute one number from facts, with its working and its source",
		Long: `Figure computes one number from the facts given, and shows how. Alone it lists the
figures with what each needs and gives.`,
		Example: `  hearsay figure
  hearsay figure wcm mix.water="280 lb/yd3" mix.cementitious="5.5 bags/yd3"
  hearsay figure evaporation weather.air="80 F" weather.humidity="50 %" weather.wind="12 mph" load.temperature="87 F"`,
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			if len(args) == 0 {
				return a.listFigures(book)
			}
			return a.computeFigure(book, args[0], args[1:])
		},
	}
}

func (a *app) listFigures(book *rulebook.Book) error {
	list := []report.FigureEntry{}
	for _, f := range book.Figures.Figures() {
		list = append(list, report.NewFigureEntry(book, f))
	}
	if a.json {
		return a.printList("figures", list, book.Made())
	}
	look := a.look()
	for _, e := range list {
		e.Text(a.out, look)
	}
	fmt.Fprintln(a.out, book.Made().Line())
	return nil
}

func (a *app) computeFigure(book *rulebook.Book, name string, given []string) error {
	system, err := a.system()
	if err != nil {
		return err
	}
	f, ok := book.Figures.Find(strings.ReplaceAll(name, "-", "_"))
	if !ok {
		return badInput{fmt.Errorf("no figure is called %q: did you mean %s? (`hearsay figure` lists them)", name, nearestFigure(book, name))}
	}
	j := job.New()
	for _, g := range given {
		path, value, ok := strings.Cut(g, "=")
		if !ok {
			return badInput{fmt.Errorf("%q is not FACT=VALUE: write for example order.slump=\"4 in\"", g)}
		}
		if err := j.State(book.Facts, path, readGiven(book.Facts, path, value)); err != nil {
			return badInput{err}
		}
	}
	if err := j.Follow(book.Facts); err != nil {
		return badInput{err}
	}
	sheet := book.Figures.Sheet(j)
	out := report.NewFigure(book, sheet.Result(f.Name), system)
	out.Missing = append([]string{}, sheet.Lacks(f.Name)...)
	made := book.Made()
	out.Made = &made
	if !out.Known {
		a.status = exitOpen
	}
	if a.json {
		return a.printJSON(out)
	}
	out.Text(a.out, a.look())
	return nil
}

// readGiven splits the value of a list at its commas; other values stay as they are.
func readGiven(facts *job.Dictionary, path, value string) any {
	f, ok := facts.Fact(path)
	if !ok || f.Kind != job.KindList {
		return value
	}
	var items []any
	for _, item := range strings.Split(value, ",") {
		item = strings.TrimSpace(item)
		if _, err := quantity.ParseAs(item, f.Unit); err != nil {
			item += " " + f.Unit // the last item may carry the unit for all
			if parts := strings.Fields(value); len(parts) > 1 {
				item = strings.Fields(item)[0] + " " + parts[len(parts)-1]
			}
		}
		items = append(items, item)
	}
	return items
}

func nearestFigure(book *rulebook.Book, name string) string {
	var names []string
	for _, f := range book.Figures.Figures() {
		names = append(names, f.Name)
	}
	return rulebook.Nearest(name, names)
}
