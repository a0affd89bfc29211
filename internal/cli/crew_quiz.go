package cli

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"hearsay/internal/crew"
	"hearsay/internal/store"
)

type quizOptions struct {
	crewOptions
	questions int
	noKey     bool
	ask       bool
	on        string
}

func (a *app) crewQuiz() *cobra.Command {
	var o quizOptions
	c := &cobra.Command{
		Use:   "quiz",
		Short: "Print a quiz with its key, or ask it in the terminal",
		Long: `Quiz asks "myth, holds or depends?" of what is said, and numbers on jobs drawn at random:
the right answer is computed, the wrong ones are the usual mistakes. The same seed gives
the same quiz.

With --crew the quiz is kept as a session of that crew, with a code for answering on the
page and for ` + "`hearsay crew record`" + `, and nothing that this crew was asked before is asked again.`,
		Example: `  hearsay crew quiz --topic water --format html > quiz.html
  hearsay crew quiz --season cold --questions 8 --crew "north yard" --language es
  hearsay crew quiz --topic joints --ask`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error { return a.quiz(cmd.Context(), o) },
	}
	o.register(c)
	f := c.Flags()
	f.IntVar(&o.most, "most", 0, "how many beliefs at most (0: all that fit)")
	f.IntVar(&o.questions, "questions", 10, "how many questions")
	f.BoolVar(&o.noKey, "no-key", false, "leave the key out")
	f.BoolVar(&o.ask, "ask", false, "ask in the terminal")
	f.StringVar(&o.on, "on", "", "date of the session, such as 2026-03-02 (default: now)")
	return c
}

func (a *app) quiz(ctx context.Context, o quizOptions) error {
	if o.questions < 1 || o.questions > 60 {
		return badInput{fmt.Errorf("--questions %d: write 1 to 60", o.questions)}
	}
	if o.seed == 0 {
		o.seed = uint64(rand.Uint32()) + 1
	}
	at, err := onDate(o.on)
	if err != nil {
		return err
	}
	t, beliefs, err := a.choose(ctx, o.crewOptions, true)
	if err != nil {
		return err
	}
	plan := crew.Plan{Title: o.title, Beliefs: beliefs, Questions: o.questions, Seed: o.seed}
	var z *crew.Quiz
	if o.crew == "" {
		z, err = t.Quiz(plan)
	} else {
		z, err = a.keepQuiz(ctx, o, t, plan, at)
	}
	if err != nil {
		return badInput{err}
	}
	made, err := a.madeWith(t)
	if err != nil {
		return err
	}
	z.Made = &made
	if o.ask {
		return a.askQuiz(z)
	}
	return a.printQuiz(z, o)
}

// keepQuiz makes a quiz that asks a crew nothing again, and keeps it as a session.
func (a *app) keepQuiz(ctx context.Context, o quizOptions, t *crew.Trainer, plan crew.Plan, at time.Time) (*crew.Quiz, error) {
	kept, err := openStore(ctx, o.data)
	if err != nil {
		return nil, err
	}
	defer kept.Close()
	sessions, err := kept.CrewSessions(ctx, o.crew)
	if err != nil {
		return nil, err
	}
	asked, err := crew.AskedBefore(sessions)
	if err != nil {
		return nil, err
	}
	plan.Asked = func(id string) bool { return asked[id] }
	z, err := t.Quiz(plan)
	if err != nil {
		return nil, err
	}
	return z, crew.Keep(ctx, kept, z, store.CrewSession{Crew: o.crew, Held: at, Open: true})
}

func (a *app) printQuiz(z *crew.Quiz, o quizOptions) error {
	if a.json {
		return a.printJSON(z)
	}
	var out bytes.Buffer
	switch o.format {
	case "text":
		z.Text(&out, !o.noKey)
	case "md":
		z.Markdown(&out, !o.noKey)
	case "html":
		if err := z.HTML(&out, !o.noKey); err != nil {
			return err
		}
	default:
		return badFormat(o.format)
	}
	_, err := out.WriteTo(a.out)
	return err
}

// askQuiz asks question after question, and explains each answer at once.
func (a *app) askQuiz(z *crew.Quiz) error {
	lines := bufio.NewScanner(a.in)
	right := 0
	for i, q := range z.Questions {
		fmt.Fprintf(a.out, "\n%d. %s\n", i+1, q.Text)
		for n, o := range q.Options {
			fmt.Fprintf(a.out, "   %s  %s\n", crew.Letter(n), o.Text)
		}
		fmt.Fprintf(a.out, "%s: ", z.Say("quiz.choose"))
		given := ""
		if lines.Scan() {
			given = strings.ToUpper(strings.TrimSpace(lines.Text()))
		}
		if given == q.KeyLetter() {
			right++
			fmt.Fprintln(a.out, z.Say("quiz.right"))
		} else {
			fmt.Fprintln(a.out, z.Say("quiz.wrong", "key", q.KeyLetter()+" "+q.Options[q.Key].Text))
		}
		for _, line := range z.Explain(q) {
			fmt.Fprintln(a.out, "   "+line)
		}
	}
	fmt.Fprintln(a.out, "\n"+z.Say("quiz.score", "right", fmt.Sprint(right), "all", fmt.Sprint(len(z.Questions))))
	fmt.Fprintln(a.out, z.Made.Line())
	return lines.Err()
}

// onDate reads the day something is held or looked at; without one it is now.
func onDate(text string) (time.Time, error) {
	if text == "" {
		return time.Now(), nil
	}
	at, err := time.ParseInLocation(time.DateOnly, text, time.Local)
	if err != nil {
		return at, badInput{fmt.Errorf("--on %q is not a date: write it as 2026-03-02", text)}
	}
	return at.Add(12 * time.Hour), nil
}
