package cli

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

func (a *app) crewCost() *cobra.Command {
	var file string
	var prices []string
	c := &cobra.Command{
		Use:     "cost --job FILE",
		Short:   "Say what acting on each belief would cost on a job, from the prices given",
		Example: `  hearsay crew cost --job job.yaml --price price.cement="0.09 $/lb" --price price.removal="12 $/ft2"`,
		Args:    cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			if file == "" {
				return badInput{errors.New("name the job with --job")}
			}
			book, err := a.book()
			if err != nil {
				return err
			}
			j, err := a.readJob(book, file)
			if err != nil {
				return err
			}
			for _, p := range prices {
				fact, value, ok := strings.Cut(p, "=")
				if !ok {
					return badInput{fmt.Errorf("--price %s is not a fact with a value: write price.cement=\"0.09 $/lb\"", p)}
				}
				if err := j.Replace(book.Facts, fact, value); err != nil {
					return badInput{err}
				}
			}
			if err := j.Follow(book.Facts); err != nil {
				return badInput{err}
			}
			t, err := a.trainer("en", book)
			if err != nil {
				return err
			}
			costs, missing, err := t.Costs(j)
			if err != nil {
				return err
			}
			if a.json {
				return a.printJSON(map[string]any{"costs": costs, "missing": missing})
			}
			for _, one := range costs {
				fmt.Fprintf(a.out, "%-36s %10s  %s\n", one.Belief, one.Text, one.What)
			}
			if len(missing) > 0 {
				fmt.Fprintf(a.out, "State these to price more: %s\n", strings.Join(missing, ", "))
			}
			return a.sayMade()
		},
	}
	c.Flags().StringVar(&file, "job", "", "the job `file` (- for standard input)")
	c.Flags().StringArrayVar(&prices, "price", nil, "a price, such as price.cement=\"0.09 $/lb\"; may be given several times")
	return c
}
