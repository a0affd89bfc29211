package cli

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"hearsay/internal/job"
	"hearsay/internal/layout"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// slabFigures are what a slab's plan is read with: joints, steel, drying, and what to test before it is covered.
var slabFigures = []string{"largest_joint_spacing", "panels", "least_joint_depth", "drag_steel", "minimum_steel", "crack_control_steel",
	"steel_depth", "drying_shrinkage", "joint_opening", "water_to_dry", "days_to_dry", "moisture_tests_needed", "probe_depth"}

func (a *app) planCommand() *cobra.Command {
	var svg, forecast string
	c := &cobra.Command{
		Use:   "plan JOB.yaml",
		Short: "Draw the joint plan of a slab, with its steel, its drying time and what to test before it is covered",
		Long: `Plan lays the panels of a slab out at the largest spacing its thickness and concrete
allow, and prints beside it the steel, the drying time and the moisture tests. --svg writes
the plan as a drawing.`,
		Example: "  hearsay plan floor.yaml\n  hearsay plan --svg plan.svg floor.yaml",
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
			return a.plan(book, j, svg)
		},
	}
	c.Flags().StringVar(&svg, "svg", "", "write the plan as a drawing to this `file`")
	c.Flags().StringVar(&forecast, "forecast", "", forecastUse)
	return c
}

func (a *app) plan(book *rulebook.Book, j *job.Job, svg string) error {
	system, err := a.system()
	if err != nil {
		return err
	}
	sheet := book.Figures.Sheet(j)
	aspect, ok := book.Limits.Find("limit.joints.most_aspect")
	if !ok {
		return errors.New("the limit joints.most_aspect is missing from the rulebook")
	}
	most, _ := aspect.Value.(float64)
	slab, err := slabOf(j, most, sheet.Result("largest_joint_spacing").Low, sheet.Result("least_joint_depth").High)
	if err != nil {
		return badInput{err}
	}
	plan, err := layout.New(slab)
	if err != nil {
		return badInput{err}
	}
	if svg != "" {
		if err := writeSVG(svg, plan.SVG(system), book.Made()); err != nil {
			return err
		}
	}
	var figures []report.Figure
	for _, name := range slabFigures {
		if _, ok := book.Figures.Find(name); !ok {
			continue
		}
		if r := sheet.Result(name); r.Known || r.Bounded {
			figures = append(figures, report.NewFigure(book, r, system))
		}
	}
	if a.json {
		return a.printJSON(map[string]any{"plan": plan.Text(system), "svg": plan.SVG(system), "figures": figures, "made": book.Made()})
	}
	fmt.Fprintln(a.out, plan.Text(system))
	for _, f := range figures {
		f.Text(a.out, a.look())
	}
	fmt.Fprintln(a.out, book.Made().Line())
	return nil
}

// slabOf gathers what a joint plan needs. aspect is the largest length of a panel over its width, spacing is the largest distance between joints in ft, depth that of the joint in in.
func slabOf(j *job.Job, aspect, spacing, depth float64) (layout.Slab, error) {
	number := func(path string) float64 {
		v, _ := j.Value(path)
		n, _ := v.(float64)
		return n
	}
	s := layout.Slab{Length: number("member.length"), Width: number("member.width"), Thickness: number("member.thickness"),
		Spacing: spacing, Aspect: aspect, JointDepth: depth}
	if s.Length == 0 || s.Width == 0 || s.Thickness == 0 || spacing == 0 {
		return s, errors.New("a joint plan needs the slab's length, width and thickness: state member.size and member.thickness")
	}
	against, _ := j.Value("joints.against")
	s.Walls = against == "tight" || against == "isolated"
	return s, nil
}
