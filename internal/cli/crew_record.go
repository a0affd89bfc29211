package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"hearsay/internal/crew"
	"hearsay/internal/rulebook"
	"hearsay/internal/store"
)

func remember(ctx context.Context, kept *store.Store, name string) (*crew.Memory, error) {
	x, err := kept.ExportCrews(ctx, name)
	if err != nil {
		return nil, err
	}
	return crew.Remember(x.Sessions, x.Answers), nil
}

// kept runs f with the database open.
func (a *app) kept(ctx context.Context, data string, f func(*store.Store) error) error {
	s, err := openStore(ctx, data)
	if err != nil {
		return err
	}
	err = f(s)
	if errors.Is(err, store.ErrNotFound) {
		err = badInput{errors.New("there is nothing by that name or code; `hearsay crew progress` lists the crews")}
	}
	return errors.Join(err, s.Close())
}

func (a *app) crewRecord() *cobra.Command {
	var data, crewName, file, on, title string
	var present, answers, beliefs []string
	c := &cobra.Command{
		Use:   "record [CODE]",
		Short: "Keep who was there and what they answered",
		Long: `Record keeps the answers of a quiz by the code on its sheet, a letter for each question
and a dash for none; or, without a code, a talk that was held, by its beliefs.`,
		Example: `  hearsay crew record K7PM2Q --answers "Ana: B C A -" --answers "Luis: A C A D"
  hearsay crew record K7PM2Q --file answers.txt
  hearsay crew record --crew "north yard" --belief water/extra-evaporates --present "Ana, Luis, 14"`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			var names []string
			for _, p := range present {
				for _, n := range strings.Split(p, ",") {
					names = append(names, strings.TrimSpace(n))
				}
			}
			at, err := onDate(on)
			if err != nil {
				return err
			}
			if len(args) == 0 {
				return a.recordTalk(cmd.Context(), data, store.CrewSession{Crew: crewName, Title: title, Beliefs: beliefs, Held: at, Present: names})
			}
			text, err := a.answerText(answers, file)
			if err != nil {
				return err
			}
			return a.recordQuiz(cmd.Context(), data, args[0], names, text)
		},
	}
	f := c.Flags()
	f.StringVar(&data, "data", "", dataHelp)
	f.StringVar(&crewName, "crew", "", "the crew that heard the talk")
	f.StringVar(&title, "title", "", "title of the talk")
	f.StringArrayVar(&beliefs, "belief", nil, "what the talk was on, `topic/name`; may be given several times")
	f.StringArrayVar(&present, "present", nil, "names or numbers of who was there")
	f.StringArrayVar(&answers, "answers", nil, "the answers of one person: \"Ana: B C - A\"")
	f.StringVar(&file, "file", "", "answers from this `file`, a person a line (- for standard input)")
	f.StringVar(&on, "on", "", "date of the talk, such as 2026-03-02 (default: now)")
	return c
}

func (a *app) answerText(answers []string, file string) (string, error) {
	text := strings.Join(answers, "\n")
	if file == "" {
		return text, nil
	}
	in, done, err := a.open(file)
	if err != nil {
		return "", err
	}
	defer done()
	more, err := io.ReadAll(in)
	return text + "\n" + string(more), err
}

func (a *app) recordTalk(ctx context.Context, data string, s store.CrewSession) error {
	if s.Crew == "" || len(s.Beliefs) == 0 {
		return badInput{errors.New("name the crew and what it heard: --crew and --belief; or give the code on the quiz")}
	}
	t, err := a.trainer("en", nil)
	if err != nil {
		return err
	}
	if _, err := t.Choose(crew.Choice{Beliefs: s.Beliefs}); err != nil {
		return badInput{err}
	}
	return a.kept(ctx, data, func(kept *store.Store) error {
		done, err := kept.CreateCrewSession(ctx, s)
		if err != nil {
			return err
		}
		fmt.Fprintf(a.out, "Kept: session %s, %d beliefs, %d present.\n", done.Code, len(s.Beliefs), len(s.Present))
		return a.sayMade()
	})
}

func (a *app) recordQuiz(ctx context.Context, data, code string, present []string, text string) error {
	return a.kept(ctx, data, func(kept *store.Store) error {
		z, _, err := crew.Kept(ctx, kept, code)
		if err != nil {
			return err
		}
		answers, err := z.ReadAnswers(text)
		if err != nil {
			return badInput{err}
		}
		if len(present) > 0 {
			if err := kept.AddPresent(ctx, code, present); err != nil {
				return err
			}
		}
		if err := kept.Answer(ctx, code, answers, true); err != nil {
			return err
		}
		right := map[string]int{}
		for _, one := range answers {
			if one.Correct {
				right[one.Person]++
			} else {
				right[one.Person] += 0
			}
		}
		for _, name := range slices.Sorted(maps.Keys(right)) {
			fmt.Fprintf(a.out, "%-20s %s\n", name, z.Say("quiz.score", "right", fmt.Sprint(right[name]), "all", fmt.Sprint(len(z.Questions))))
		}
		return a.sayMade()
	})
}

func (a *app) crewDue() *cobra.Command {
	var data, name, person, on, jobFile string
	c := &cobra.Command{
		Use:   "due",
		Short: "List what a crew should be asked again, and who",
		Long: `Due lists what falls due for a crew by spaced repetition. With a job, only what bears on
it: beliefs behind practices that concern the job and are not known to be right there.`,
		Example: `  hearsay crew due --crew "north yard"
  hearsay crew due --crew "north yard" --job job.yaml --on 2026-03-09`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			at, err := onDate(on)
			if err != nil {
				return err
			}
			if name == "" {
				return badInput{errors.New("name the crew with --crew")}
			}
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				return a.listDue(cmd.Context(), kept, name, person, jobFile, at)
			})
		},
	}
	f := c.Flags()
	f.StringVar(&data, "data", "", dataHelp)
	f.StringVar(&name, "crew", "", "the crew")
	f.StringVar(&person, "person", "", "one person alone")
	f.StringVar(&jobFile, "job", "", "only what bears on the job in this `file`")
	f.StringVar(&on, "on", "", "as of this date, such as 2026-03-09 (default: now)")
	return c
}

func (a *app) listDue(ctx context.Context, kept *store.Store, name, person, jobFile string, at time.Time) error {
	m, err := remember(ctx, kept, name)
	if err != nil {
		return err
	}
	t, err := a.trainer("en", nil)
	if err != nil {
		return err
	}
	bears := func(string) bool { return true }
	if jobFile != "" {
		if bears, err = a.bearsOn(ctx, t, jobFile); err != nil {
			return err
		}
	}
	list := []crew.Due{}
	for _, d := range m.Due(at) {
		if (person == "" || strings.EqualFold(person, d.Person)) && bears(d.Belief) {
			list = append(list, d)
		}
	}
	made, err := a.madeWith(t)
	if err != nil {
		return err
	}
	if a.json {
		return a.printList("due", list, made)
	}
	if len(list) == 0 {
		fmt.Fprintln(a.out, "Nothing is due.")
	}
	for _, d := range list {
		l, err := t.Lesson(d.Belief)
		if err != nil {
			return err
		}
		state := "known when asked last"
		switch {
		case d.Asked == 0:
			state = "told, never asked"
		case d.Believe:
			state = "wrong when asked last"
		}
		fmt.Fprintf(a.out, "%s  %-16s %-36s %s. %s\n", d.Due.Local().Format(time.DateOnly), d.Person, d.Belief, l.Saying, state)
	}
	fmt.Fprintln(a.out, made.Line())
	return nil
}

// bearsOn says of a belief whether a practice behind it concerns a job and is not known to be right there.
func (a *app) bearsOn(ctx context.Context, t *crew.Trainer, file string) (func(string) bool, error) {
	book, err := a.book()
	if err != nil {
		return nil, err
	}
	j, err := a.readJob(book, file)
	if err != nil {
		return nil, err
	}
	review, err := book.Judge(ctx, j)
	if err != nil {
		return nil, err
	}
	practices := []string{}
	for _, one := range review.Judgements {
		if one.Status == rulebook.Wrong || one.Status == rulebook.Ask && one.Concerns {
			practices = append(practices, one.Practice.ID)
		}
	}
	beliefs, err := t.Choose(crew.Choice{Practices: practices})
	if err != nil && !errors.Is(err, crew.ErrNothing) {
		return nil, err
	}
	return func(id string) bool { return slices.Contains(beliefs, id) }, nil
}

func (a *app) crewProgress() *cobra.Command {
	var data, name, picture, language string
	c := &cobra.Command{
		Use:   "progress",
		Short: "Say how a crew stands with each belief, in numbers and as a picture",
		Example: `  hearsay crew progress
  hearsay crew progress --crew "north yard" --picture progress.svg`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			return a.kept(cmd.Context(), data, func(kept *store.Store) error {
				if name == "" {
					return a.listCrews(cmd.Context(), kept)
				}
				return a.progress(cmd.Context(), kept, name, picture, language)
			})
		},
	}
	f := c.Flags()
	f.StringVar(&data, "data", "", dataHelp)
	f.StringVar(&name, "crew", "", "the crew; without it the crews are listed")
	f.StringVar(&picture, "picture", "", "write a picture of it to this SVG `file`")
	f.StringVar(&language, "language", "en", "language of the picture: en or es")
	return c
}

func (a *app) listCrews(ctx context.Context, kept *store.Store) error {
	crews, err := kept.Crews(ctx)
	if err != nil {
		return err
	}
	made, err := a.made()
	if err != nil {
		return err
	}
	if a.json {
		return a.printList("crews", crews, made)
	}
	for _, name := range crews {
		people, err := kept.CrewPeople(ctx, name)
		if err != nil {
			return err
		}
		fmt.Fprintf(a.out, "%s: %s\n", name, strings.Join(people, ", "))
	}
	fmt.Fprintln(a.out, made.Line())
	return nil
}

func (a *app) progress(ctx context.Context, kept *store.Store, name, picture, language string) error {
	m, err := remember(ctx, kept, name)
	if err != nil {
		return err
	}
	t, err := a.trainer(language, nil)
	if err != nil {
		return err
	}
	list := m.Progress()
	made, err := a.madeWith(t)
	if err != nil {
		return err
	}
	if picture != "" {
		var svg strings.Builder
		if err := t.Picture(&svg, t.Words().Say("progress.title", "crew", name), list); err != nil {
			return err
		}
		if err := writeSVG(picture, svg.String(), made); err != nil {
			return err
		}
	}
	if a.json {
		return a.printList("progress", list, made)
	}
	fmt.Fprintf(a.out, "%-38s %5s %6s %6s %5s %5s\n", "belief", "told", "asked", "first", "now", "back")
	for _, p := range list {
		fmt.Fprintf(a.out, "%-38s %5d %6d %6d %5d %5d\n", p.Belief, p.Told, p.Asked, p.First, p.Now, p.Back)
	}
	fmt.Fprintln(a.out, "first, now: people who held it at the first asking, and at the last; back: who had known better before")
	fmt.Fprintln(a.out, made.Line())
	return nil
}
