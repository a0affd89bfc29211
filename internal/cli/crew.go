package cli

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"

	"github.com/spf13/cobra"

	"hearsay/internal/crew"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// crewOptions are the flags that talks and quizzes share.
type crewOptions struct {
	beliefs  []string
	topic    string
	season   string
	low      string
	job      string
	crew     string
	most     int
	seed     uint64
	language string
	format   string
	title    string
	data     string
}

func (a *app) crewCommand() *cobra.Command {
	c := &cobra.Command{
		Use:   "crew",
		Short: "Toolbox talks and quizzes for a crew, and who has heard what",
		Long: `Crew helps a trainer: talks of ten minutes on what people say, quizzes with a key and
the crew's own numbers, and a memory of what has not sunk in and when to ask again.`,
		Example: `  hearsay crew talk --topic water --format html > talk.html
  hearsay crew quiz --topic water --format html > quiz.html`,
	}
	c.AddCommand(a.crewTalk(), a.crewQuiz(), a.crewRecord(), a.crewDue(), a.crewProgress(), a.crewCost(), a.crewBeliefs(),
		a.crewExport(), a.crewImport(), a.crewBackup(), a.crewRestore(), a.crewForget())
	return c
}

func (o *crewOptions) register(c *cobra.Command) {
	f := c.Flags()
	f.StringArrayVar(&o.beliefs, "belief", nil, "a belief by its name, `topic/name`; may be given several times")
	f.StringVar(&o.topic, "topic", "", "beliefs on this topic, such as water or joints")
	f.StringVar(&o.season, "season", "", "beliefs of the season: cold or hot")
	f.StringVar(&o.low, "low", "", "lowest air temperature of the forecast, such as \"25 F\": chooses the season")
	f.StringVar(&o.job, "job", "", "beliefs behind what is wrong with the job in this `file`")
	f.StringVar(&o.crew, "crew", "", "the crew: what it keeps getting wrong comes first")
	f.Uint64Var(&o.seed, "seed", 0, "number that chooses where more fits than is wanted, and draws the questions")
	f.StringVar(&o.language, "language", "en", "language: en or es")
	f.StringVar(&o.format, "format", "text", "text, md or html")
	f.StringVar(&o.title, "title", "", "title on the sheet")
	f.StringVar(&o.data, "data", "", dataHelp)
}

const dataHelp = "database file (default: HEARSAY_DATA, or hearsay/hearsay.db in your configuration folder)"

func (a *app) crewTalk() *cobra.Command {
	var o crewOptions
	c := &cobra.Command{
		Use:   "talk",
		Short: "Print a toolbox talk of ten minutes on one to four beliefs",
		Example: `  hearsay crew talk --belief water/little-water-is-harmless --belief water/water-late-is-fine
  hearsay crew talk --low "25 F" --language es
  hearsay crew talk --job job.yaml --format html > talk.html`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error { return a.talk(cmd.Context(), o) },
	}
	o.register(c)
	c.Flags().IntVar(&o.most, "most", 3, "how many beliefs, one to four")
	return c
}

func (a *app) talk(ctx context.Context, o crewOptions) error {
	if o.most < 1 || o.most > 4 {
		return badInput{fmt.Errorf("--most %d does not fit ten minutes: write 1 to 4", o.most)}
	}
	t, beliefs, err := a.choose(ctx, o, false)
	if err != nil {
		return err
	}
	talk, err := t.Talk(o.title, beliefs)
	if err != nil {
		return badInput{err}
	}
	made, err := a.madeWith(t)
	if err != nil {
		return err
	}
	talk.Made = &made
	if a.json {
		return a.printJSON(talk)
	}
	var out bytes.Buffer
	switch o.format {
	case "text":
		talk.Text(&out)
	case "md":
		talk.Markdown(&out)
	case "html":
		if err := talk.HTML(&out); err != nil {
			return err
		}
	default:
		return badFormat(o.format)
	}
	_, err = out.WriteTo(a.out)
	return err
}

func badFormat(format string) error {
	return badInput{fmt.Errorf("--format %s is not known: write text, md or html", format)}
}

// trainer makes a trainer; book may be nil.
func (a *app) trainer(language string, book *rulebook.Book) (*crew.Trainer, error) {
	system, err := a.system()
	if err != nil {
		return nil, err
	}
	if !slices.Contains(crew.Languages(), language) {
		return nil, badInput{fmt.Errorf("--language %s is not known: write en or es", language)}
	}
	_, corpusFiles, err := a.knowledge()
	if err != nil {
		return nil, err
	}
	t, err := crew.NewTrainer(corpusFiles, book, language, system)
	return t, a.blame(err)
}

// choose finds the beliefs that the flags ask for. The rulebook is read only where it is needed.
func (a *app) choose(ctx context.Context, o crewOptions, numbers bool) (*crew.Trainer, []string, error) {
	var book *rulebook.Book
	var err error
	if numbers || o.job != "" || o.low != "" {
		if book, err = a.book(); err != nil {
			return nil, nil, err
		}
	}
	t, err := a.trainer(o.language, book)
	if err != nil {
		return nil, nil, err
	}
	choice := crew.Choice{Beliefs: o.beliefs, Topic: o.topic, Season: o.season, Seed: o.seed, Most: o.most}
	if choice.Season == "" {
		if choice.Season, err = forecastSeason(book, o.low); err != nil {
			return nil, nil, err
		}
	}
	if o.job != "" {
		if choice.Practices, err = a.wrongPractices(book, o.job); err != nil {
			return nil, nil, err
		}
		if len(choice.Practices) == 0 {
			return nil, nil, badInput{fmt.Errorf("nothing is known to be wrong with %s, so it chooses no belief; choose by --topic or --season", o.job)}
		}
	}
	if len(o.beliefs) == 0 && o.topic == "" && choice.Season == "" && o.job == "" && o.crew == "" {
		return nil, nil, badInput{errors.New("choose what it is about: --belief, --topic, --season, --low, --job or --crew (`hearsay crew beliefs` lists the beliefs)")}
	}
	if o.crew != "" {
		if err := a.knowCrew(ctx, o, &choice); err != nil {
			return nil, nil, err
		}
	}
	beliefs, err := t.Choose(choice)
	if err != nil {
		return nil, nil, badInput{err}
	}
	return t, beliefs, nil
}

// knowCrew lets what a crew gets wrong come first. Where nothing else chooses, that alone is chosen.
func (a *app) knowCrew(ctx context.Context, o crewOptions, choice *crew.Choice) error {
	kept, err := openStore(ctx, o.data)
	if err != nil {
		return err
	}
	defer kept.Close()
	m, err := remember(ctx, kept, o.crew)
	if err != nil {
		return err
	}
	choice.Rank = m.Rank()
	if len(o.beliefs) > 0 || o.topic != "" || choice.Season != "" || o.job != "" {
		return nil
	}
	choice.Only = slices.Sorted(maps.Keys(choice.Rank))
	if len(choice.Only) == 0 {
		return badInput{fmt.Errorf("nothing is known that %s gets wrong: choose by --topic, --season or --belief", o.crew)}
	}
	return nil
}

// forecastSeason is cold where the forecast goes below the limit for cold weather.
func forecastSeason(book *rulebook.Book, low string) (string, error) {
	if low == "" {
		return "", nil
	}
	q, err := quantity.ParseAs(low, "F")
	if err != nil {
		return "", badInput{fmt.Errorf("--low: %w", err)}
	}
	l, ok := book.Limits.Find("limit.cold.cold_weather")
	if !ok {
		return "", errors.New("the rulebook has no limit for cold weather")
	}
	if limit, ok := l.Value.(float64); !ok || q.Value >= limit {
		return "", badInput{errors.New("the forecast is not cold: choose by --season hot, --topic or --belief")}
	}
	return "cold", nil
}

// wrongPractices lists what is wrong with a job.
func (a *app) wrongPractices(book *rulebook.Book, name string) ([]string, error) {
	j, err := a.readJob(book, name)
	if err != nil {
		return nil, err
	}
	review, err := book.Judge(context.Background(), j)
	if err != nil {
		return nil, err
	}
	wrong := []string{}
	for _, one := range review.Judgements {
		if one.Status == rulebook.Wrong {
			wrong = append(wrong, one.Practice.ID)
		}
	}
	return wrong, nil
}

func (a *app) crewBeliefs() *cobra.Command {
	var language string
	c := &cobra.Command{
		Use:   "beliefs",
		Short: "List the beliefs that talks and quizzes can be about",
		Args:  cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			t, err := a.trainer(language, nil)
			if err != nil {
				return err
			}
			list := []crew.Lesson{}
			for _, id := range t.Beliefs() {
				l, err := t.Lesson(id)
				if err != nil {
					return err
				}
				list = append(list, l)
			}
			made, err := a.madeWith(t)
			if err != nil {
				return err
			}
			if a.json {
				return a.printList("beliefs", list, made)
			}
			for _, l := range list {
				fmt.Fprintf(a.out, "%-38s %s\n", l.Belief, l.Saying)
			}
			fmt.Fprintln(a.out, made.Line())
			return nil
		},
	}
	c.Flags().StringVar(&language, "language", "en", "language: en or es")
	return c
}
