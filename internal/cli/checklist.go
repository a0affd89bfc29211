package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"hearsay/internal/report"
)

func (a *app) checklistCommand() *cobra.Command {
	var format, forecast string
	c := &cobra.Command{
		Use:   "checklist JOB.yaml",
		Short: "Print the pre-pour checklist of a job",
		Long: `Checklist lists every practice that concerns the job, by stage, with its state, the
number to hold it against, and room for a tick, a reading and initials. What is
open stands at the top.`,
		Example: "  hearsay checklist job.yaml\n  hearsay checklist --format html job.yaml > checklist.html",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			j, err := a.readJob(book, args[0])
			if err != nil {
				return err
			}
			if _, err := a.stateForecast(book.Facts, j, forecast); err != nil {
				return err
			}
			result, err := a.judge(book, j, false)
			if err != nil {
				return err
			}
			a.status = status(result)
			return a.printChecklist(report.NewChecklist(result), format)
		},
	}
	c.Flags().StringVar(&format, "format", "text", "text, markdown or html")
	c.Flags().StringVar(&forecast, "forecast", "", forecastUse)
	return c
}

func (a *app) printChecklist(list *report.Checklist, format string) error {
	if a.json {
		return a.printJSON(list)
	}
	switch format {
	case "text":
		list.Text(a.out, a.look())
	case "markdown", "md":
		list.Markdown(a.out)
	case "html":
		return list.HTML(a.out)
	default:
		return badInput{fmt.Errorf("--format %s is not known: write text, markdown or html", format)}
	}
	return nil
}
