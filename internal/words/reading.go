package words

import (
	"fmt"
	"strings"

	"hearsay/internal/job"
)

// Reading is what was read out of a text.
type Reading struct {
	Facts  []Read   // in the order they were said
	Unread []Unread // what looks like a fact and was not read
}

// Read is one fact that the text states.
type Read struct {
	Path  string
	Value any    // as a job file would write it
	Text  string // the words it was read from
	Note  string // what was taken for granted in reading it; "" as a rule
	Taken bool   // nobody said it: it goes without saying
	at    int    // byte in the text
}

// Unread is a piece of text that looks like a fact. Meanings names what it could mean where that is more than one thing.
type Unread struct {
	Text     string
	Meanings []string
	at       int
}

// Question puts an unread piece as a question where it has several meanings.
func (u Unread) String() string {
	if len(u.Meanings) == 0 {
		return u.Text
	}
	return fmt.Sprintf("%s (%s?)", u.Text, strings.Join(u.Meanings, ", or "))
}

// Job makes a job of what was read. What contradicts something read before it is left out and named as a problem.
func (r *Reading) Job(d *job.Dictionary) (*job.Job, []string) {
	j := job.New()
	return j, r.Add(d, j)
}

// Into adds what was read to a job, with what is wrong with it as the job's warnings and what was not read as its unread.
func (r *Reading) Into(d *job.Dictionary, j *job.Job) {
	j.Warnings = append(j.Warnings, r.Add(d, j)...)
	for _, u := range r.Unread {
		j.Unread = append(j.Unread, u.String())
	}
	if len(j.Stated) == 0 {
		j.Warnings = append(j.Warnings, "No fact about a concrete job was found in these words: say what is placed, how thick, with what concrete, in what weather.")
	}
}

// Add states what was read in a job, and what follows from it. A fact that the job states already stays as it is; where the
// text says otherwise, and where it contradicts what is stated, what it says is left out and named as a problem.
func (r *Reading) Add(d *job.Dictionary, j *job.Job) []string {
	var problems []string
	for _, f := range r.Facts {
		if p := f.add(d, j); p != "" {
			problems = append(problems, p)
		}
	}
	if err := j.Follow(d); err != nil {
		problems = append(problems, err.Error())
	}
	return problems
}

// add states one fact, and gives what is wrong with it.
func (f *Read) add(d *job.Dictionary, j *job.Job) string {
	fact, ok := d.Fact(f.Path)
	if !ok {
		return f.Path + " is not a fact"
	}
	old, stated := j.Find(f.Path)
	next := j.Clone()
	switch {
	case stated && f.Taken:
		return ""
	case stated && old.Taken:
		next.Drop(f.Path)
	case stated && old.From == "":
		if fact.Same(old.Value, f.Value) {
			return ""
		}
		return fmt.Sprintf("The %s is said twice, “%s” and “%s”: the first is taken. Say which is right.", fact.Name, old.Text, f.Text)
	}
	if err := next.StateFrom(d, job.Stated{Text: f.Text, Taken: f.Taken}, f.Path, f.Value); err != nil {
		return fmt.Sprintf("“%s” is not taken as the %s: %v.", f.Text, fact.Name, err)
	}
	if err := next.Clone().Follow(d); err != nil {
		if next.DropTaken(); f.Taken || next.Clone().Follow(d) != nil { // what only goes without saying gives way
			return fmt.Sprintf("“%s” is left out: %v.", f.Text, err)
		}
	}
	if f.Note != "" {
		next.Warnings = append(next.Warnings, f.Note)
	}
	*j = *next
	return ""
}
