package cli

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"hearsay/internal/desk"
	"hearsay/internal/forecast"
	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

func (a *app) orderCommand() *cobra.Command {
	var file, weather string
	c := &cobra.Command{
		Use:   "order [WORDS…]",
		Short: "Talk an order through: what is wrong so far, the next question, the order as it should be placed",
		Long: `Order takes what the caller says, a line at a time, asks the one question that
settles most, and shows what is wrong so far. It ends when nothing that is still
unknown can change the order, or when you type "done". Answer in plain words, or
"don't know". With --file everything typed is kept at once and the talk goes on
from there next time.

Words: "?" shows what is wrong so far, "facts" what was understood, "forget FACT"
takes a fact out, "done" ends.`,
		Example: "  hearsay order --file oak-street.yaml \"nine yards of 4000 for a driveway, tomorrow at 7\"",
		RunE: func(_ *cobra.Command, args []string) error {
			return a.order(file, weather, strings.Join(args, " "))
		},
	}
	c.Flags().StringVar(&file, "file", "", "keep the order in this `file`, and go on from it")
	c.Flags().StringVar(&weather, "forecast", "", forecastUse)
	return c
}

// talk is one order at the keyboard.
type talk struct {
	*app
	desk *desk.Desk
	book *rulebook.Book
	file string
	from time.Time // when the forecast begins, where it tells
	say  io.Writer // where the talk is shown
}

func (a *app) order(file, weather, first string) error {
	book, err := a.book()
	if err != nil {
		return err
	}
	reader, err := a.words(book)
	if err != nil {
		return err
	}
	hear := func(text string) ([]desk.Said, []string) { return listen(reader)(text, time.Now()) }
	j, err := kept(book, file)
	if err != nil {
		return err
	}
	from, err := a.stateForecast(book.Facts, j, weather)
	if err != nil {
		return err
	}
	d, err := desk.New(book, hear, j)
	if err != nil {
		return err
	}
	t := &talk{app: a, desk: d, book: book, file: file, from: from, say: a.out}
	if a.json { // the talk goes beside, so that only the order is on standard output
		t.say = a.err
	}
	if err := t.run(first); err != nil {
		return err
	}
	return t.finish()
}

// kept reads the order kept in a file, or starts a new one.
func kept(book *rulebook.Book, file string) (*job.Job, error) {
	if file == "" {
		return job.New(), nil
	}
	text, err := os.ReadFile(file)
	if errors.Is(err, fs.ErrNotExist) {
		return job.New(), nil
	}
	if err != nil {
		return nil, badInput{err}
	}
	j, _, err := job.Read(book.Facts, file, text)
	return j, err
}

func (t *talk) run(first string) error {
	if first != "" {
		if err := t.hear(first); err != nil {
			return err
		}
	}
	in := bufio.NewScanner(t.in)
	in.Buffer(nil, 1<<20)
	for {
		q, more := t.desk.Next()
		if !more {
			fmt.Fprintln(t.say, "Nothing that is still unknown can change the order.")
			return nil
		}
		t.ask(q)
		if !in.Scan() {
			return in.Err()
		}
		done, err := t.line(strings.TrimSpace(in.Text()))
		if done || err != nil {
			return err
		}
	}
}

func (t *talk) ask(q rulebook.Question) {
	f, _ := t.book.Facts.Fact(q.Fact)
	hint := quantity.Symbol(f.Unit)
	switch f.Kind {
	case job.KindFlag:
		hint = "yes or no"
	case job.KindChoice:
		var names []string
		for _, c := range f.Choices {
			names = append(names, c.Value)
		}
		if len(names) > mostChoices {
			names = append(names[:mostChoices], "…")
		}
		hint = strings.Join(names, ", ")
	}
	if hint != "" && hint != "1" {
		hint = " [" + hint + "]"
	}
	fmt.Fprintf(t.say, "%s%s\n> ", q.Text, hint)
}

// mostChoices is how many answers are named beside a question.
const mostChoices = 8

// line takes one typed line; done says that the talk ends.
func (t *talk) line(text string) (done bool, err error) {
	word, rest, _ := strings.Cut(text, " ")
	switch {
	case text == "":
		return false, nil
	case strings.EqualFold(text, "done"), strings.EqualFold(text, "quit"):
		return true, nil
	case text == "?", asksWrong(text):
		if len(t.desk.Wrong()) == 0 {
			fmt.Fprintln(t.say, "  Nothing is known to be wrong so far.")
		}
		t.sayWrong(t.desk.Wrong())
		return false, nil
	case strings.EqualFold(text, "facts"):
		for _, s := range t.desk.Job.Stated {
			fmt.Fprintf(t.say, "  %s: %s\n", s.Fact.Name, desk.Spoken(s, quantity.US))
		}
		return false, nil
	case strings.EqualFold(word, "forget"):
		if err := t.desk.Forget(strings.TrimSpace(rest)); err != nil {
			fmt.Fprintf(t.say, "  %v\n", err)
			return false, nil
		}
		return false, t.keep()
	}
	return false, t.hear(text)
}

// asksWrong says whether the line asks what is wrong so far, in words.
func asksWrong(text string) bool {
	text = strings.ToLower(strings.NewReplacer("'", "", "’", "", "?", "", ".", "", ",", "").Replace(text))
	switch strings.Join(strings.Fields(text), " ") {
	case "whats wrong", "whats wrong so far", "what is wrong", "what is wrong so far", "whats wrong with it", "what is wrong with it", "anything wrong", "anything wrong so far",
		"is anything wrong", "so whats wrong", "how are we doing":
		return true
	}
	return false
}

func (t *talk) hear(text string) error {
	r, err := t.desk.Hear(text)
	if err != nil {
		return err
	}
	if err := t.startHour(text, &r); err != nil {
		return err
	}
	for _, u := range r.Understood {
		fmt.Fprintf(t.say, "  %s\n", u)
	}
	for _, u := range r.Unread {
		fmt.Fprintf(t.say, "  not read: %s\n", u)
	}
	for _, p := range r.Problems {
		fmt.Fprintf(t.say, "  not taken: %s\n", p)
	}
	if len(r.Understood)+len(r.Unread)+len(r.Problems) == 0 {
		fmt.Fprintln(t.say, "  Nothing in that was read as a fact. Say it with its number and unit, or say don't know.")
	}
	for _, id := range r.Mended {
		fmt.Fprintf(t.say, "  no longer wrong: %s\n", id)
	}
	t.sayWrong(r.Wrong)
	return t.keep()
}

// startHour puts the hour of the forecast at which placing starts, where the day and the hour may have been told just now.
func (t *talk) startHour(text string, r *desk.Reply) error {
	untold := t.desk.Job.Clone()
	untold.Drop(forecast.StartFact)
	hour, ok := forecast.StartHour(untold, t.from)
	if known, _ := t.desk.Job.Value(forecast.StartFact); !ok || known == hour {
		return nil
	}
	return t.desk.Put(desk.Said{Fact: forecast.StartFact, Value: forecast.Written(hour), Text: text}, r)
}

func (t *talk) sayWrong(wrong []*rulebook.Judgement) {
	for _, one := range wrong {
		fmt.Fprintf(t.say, "  WRONG: %s: %s [%s]\n", one.Practice.Title, strings.Join(one.Reasons, "; "), one.Practice.ID)
	}
}

// keep writes the order to its file so that a dying terminal loses nothing: a new file, forced to disk, put in the old one's
// place.
func (t *talk) keep() error {
	if t.file == "" {
		return nil
	}
	temp, err := os.CreateTemp(filepath.Dir(t.file), ".order-*")
	if err != nil {
		return badInput{fmt.Errorf("the order cannot be kept: %w", err)}
	}
	defer os.Remove(temp.Name())
	if _, err := fmt.Fprintf(temp, "# %s\n", t.book.Made().Line()); err != nil {
		return err
	}
	if err := job.Write(temp, t.book.Facts, t.desk.Job, nil); err != nil {
		return err
	}
	if err := temp.Sync(); err != nil {
		return err
	}
	if err := temp.Close(); err != nil {
		return err
	}
	return os.Rename(temp.Name(), t.file)
}

func (t *talk) finish() error {
	system, err := t.system()
	if err != nil {
		return err
	}
	correction, err := t.book.Correct(context.Background(), t.desk.Job)
	if err != nil {
		return err
	}
	sheet := report.NewOrder(t.book, correction, system, desk.Spoken)
	t.status = status(report.NewReview(t.book, t.desk.Review(), system))
	if t.json {
		return t.printJSON(sheet)
	}
	fmt.Fprintln(t.out)
	sheet.Text(t.out, t.look())
	if n := t.desk.Later(); n > 0 {
		fmt.Fprintf(t.out, "For the placing itself %d more facts matter: `hearsay review` asks for them.\n", n)
	}
	return nil
}
