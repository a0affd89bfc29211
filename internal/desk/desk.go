// Package desk owns the talk at the order desk: what has been said, what is wrong so far, and the one question to ask next.
package desk

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"hearsay/internal/job"
	"hearsay/internal/quantity"
	"hearsay/internal/rulebook"
)

// Said is one fact read out of plain words, with the words.
type Said struct {
	Fact  string
	Value any // as job.State takes it
	Text  string
	Taken bool // nobody said it: it goes without saying
}

// Listen reads plain words: the facts in them, and what looks like a fact but could not be read.
type Listen func(text string) (facts []Said, unread []string)

// Desk is one order being talked through.
type Desk struct {
	book   *rulebook.Book
	listen Listen
	Job    *job.Job
	review *rulebook.Review
	known  map[string]bool // practices already reported wrong
}

// Reply is what came of one line.
type Reply struct {
	Understood []string // each fact as it was read, in words
	Unread     []string
	Problems   []string // what could not be taken, with what would be right
	Wrong      []*rulebook.Judgement
	Mended     []string // practices that are no longer wrong
}

// New starts at the desk with a job that may hold facts already.
func New(book *rulebook.Book, listen Listen, j *job.Job) (*Desk, error) {
	d := &Desk{book: book, listen: listen, Job: j, known: map[string]bool{}}
	_, err := d.judge()
	return d, err
}

// Hear takes one line: an answer to the question asked, or anything else that is said of the job.
func (d *Desk) Hear(line string) (Reply, error) {
	question, asked := d.Next()
	if asked && (dontKnow(line) || d.senseless(question, line)) {
		d.Job.NotKnown = append(d.Job.NotKnown, question.Fact)
		return Reply{Understood: []string{"not known: " + d.name(question.Fact)}}, nil
	}
	var r Reply
	if said, ok, problem := d.answer(question, asked, line); ok {
		d.take(said, &r)
	} else if problem != "" {
		r.Problems = append(r.Problems, problem)
		return r, nil
	} else {
		facts, unread := d.listen(line)
		if asked && len(facts) == 0 {
			f, _ := d.book.Facts.Fact(question.Fact)
			if said, ok := d.inContext(f, line); ok {
				facts, unread = []Said{said}, nil
			}
		}
		for _, f := range facts {
			if f.Fact == basis && d.named() {
				continue // bags that are told beside a strength are the cement in the mix
			}
			d.take(f, &r)
		}
		r.Unread = unread
	}
	newly, err := d.judge()
	r.Wrong, r.Mended = newly.wrong, newly.mended
	return r, err
}

// Put takes a fact that follows from what was said, and adds to the reply what comes of it.
func (d *Desk) Put(s Said, r *Reply) error {
	d.take(s, r)
	newly, err := d.judge()
	r.Wrong, r.Mended = append(r.Wrong, newly.wrong...), append(r.Mended, newly.mended...)
	return err
}

// senseless says whether a line is a plain no to a question for a number that is never nought.
func (d *Desk) senseless(q rulebook.Question, line string) bool {
	f, _ := d.book.Facts.Fact(q.Fact)
	return f.Kind == job.KindQuantity && oneOf(plain(line), no) && (f.Usual == nil || f.Usual.Low > 0)
}

func dontKnow(line string) bool {
	return oneOf(line, []string{"dont know", "i dont know", "do not know", "i do not know", "no idea", "not sure", "unknown", "skip", "skip it", "pass", "next", "dunno", "dk", "idk", "i dunno",
		"no clue", "couldnt tell you", "cant say", "he didnt say", "she didnt say", "they didnt say", "didnt say", "not known", "nobody knows", "im not sure", "i have no idea", "who knows", "havent decided",
		"not decided", "undecided", "he doesnt know", "she doesnt know", "they dont know", "we dont know", "dont know yet", "not yet", "ask me later", "beats me", "hard to say", "no telling", "dont know that", "i wouldnt know", "tbd", "n/a", "na",
		"whatever you have", "whatever you got", "up to you", "dont care", "doesnt matter", "he doesnt care"})
}

// basis says whether an order goes by bags alone, which it does not where it names a strength or a ratio.
const basis = "order.basis"

func (d *Desk) named() bool {
	for _, path := range []string{"order.strength", "order.ratio_limit", basis} {
		if _, ok := d.Job.Find(path); ok {
			return true
		}
	}
	return false
}

// answer reads a line as the bare answer to the question asked: a value of that fact. A bare number counts in the unit that
// the question named; where it cannot be that, the problem says why.
func (d *Desk) answer(q rulebook.Question, asked bool, line string) (said Said, ok bool, problem string) {
	if !asked {
		return Said{}, false, ""
	}
	f, _ := d.book.Facts.Fact(q.Fact)
	text := strings.TrimSpace(line)
	agreed, refused := oneOf(text, yes) || oneOf(plain(text), yes), oneOf(text, no) || oneOf(plain(text), no)
	_, hasNone := f.Choice("none")
	switch {
	case refused && hasNone:
		return Said{Fact: q.Fact, Value: "none", Text: text}, true, ""
	case f.Kind == job.KindFlag && (agreed || refused):
		return Said{Fact: q.Fact, Value: agreed && !refused, Text: text}, true, ""
	case f.Kind == job.KindChoice && agreed:
		return Said{}, false, "Say which: " + choices(f) + "."
	case f.Kind == job.KindQuantity && refused && f.Usual != nil && f.Usual.Low <= 0:
		return Said{Fact: q.Fact, Value: strings.TrimSpace("0 " + f.Unit), Text: text}, true, ""
	}
	var err error
	for _, try := range []string{text, text + " " + f.Unit, plain(text), plain(text) + " " + f.Unit} {
		if err = d.Job.Clone().Replace(d.book.Facts, q.Fact, try); err == nil {
			return Said{Fact: q.Fact, Value: try, Text: text}, true, ""
		}
	}
	if _, bare := strconv.ParseFloat(text, 64); bare == nil && f.Kind == job.KindQuantity {
		return Said{}, false, err.Error()
	}
	return Said{}, false, ""
}

// choices names what may be said.
func choices(f *job.Fact) string {
	var names []string
	for _, c := range f.Choices {
		names = append(names, c.Value)
	}
	return strings.Join(names, ", ")
}

// take puts a fact into the job. What was said later counts; what contradicts the rest is refused, and the rest stays.
func (d *Desk) take(s Said, r *Reply) {
	before, had := d.Job.Find(s.Fact)
	if s.Taken && had {
		return
	}
	next := d.Job.Clone()
	next.Drop(s.Fact)
	err := next.StateFrom(d.book.Facts, job.Stated{Text: s.Text, Taken: s.Taken}, s.Fact, s.Value)
	if err == nil {
		err = next.Follow(d.book.Facts)
	}
	if err != nil && !s.Taken { // what only goes without saying gives way
		if next.DropTaken(); next.Follow(d.book.Facts) == nil {
			err = nil
		}
	}
	if err != nil && s.Taken {
		return
	}
	if err != nil {
		r.Problems = append(r.Problems, err.Error())
		return
	}
	d.Job = next
	now, _ := next.Find(s.Fact)
	text := fmt.Sprintf("%s: %s", now.Fact.Name, Spoken(now, quantity.US))
	if s.Taken {
		text += " (taken for granted; say so if it is not)"
	}
	if had && before.From == "" && now.Fact.Same(before.Value, s.Value) {
		return
	}
	if had && before.From == "" {
		text += fmt.Sprintf(" (was %s)", Spoken(before, quantity.US))
	}
	r.Understood = append(r.Understood, text)
}

// Spoken gives the value of a fact as one would say it.
func Spoken(s job.Stated, system quantity.System) string {
	switch v := s.Value.(type) {
	case float64:
		if s.Fact.Kind == job.KindTime {
			return strings.Trim(job.Written(s), `"`)
		}
		return quantity.Quantity{Value: v, Unit: s.Fact.Unit}.Print(system)
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case string:
		if c, ok := s.Fact.Choice(v); ok {
			return c.Name
		}
		return v
	}
	return job.Written(s)
}

func (d *Desk) name(fact string) string {
	f, _ := d.book.Facts.Fact(fact)
	return f.Name
}

type change struct {
	wrong  []*rulebook.Judgement
	mended []string
}

// judge judges the job anew and says what became wrong and what is no longer wrong.
func (d *Desk) judge() (change, error) {
	var c change
	review, err := d.book.Judge(context.Background(), d.Job)
	if err != nil {
		return c, err
	}
	d.review = review
	now := map[string]bool{}
	for _, one := range review.Judgements {
		if one.Status != rulebook.Wrong {
			continue
		}
		now[one.Practice.ID] = true
		if !d.known[one.Practice.ID] {
			c.wrong = append(c.wrong, one)
		}
	}
	for id := range d.known {
		if !now[id] {
			c.mended = append(c.mended, id)
		}
	}
	slices.Sort(c.mended)
	d.known = now
	return c, nil
}

// Wrong lists what is wrong so far.
func (d *Desk) Wrong() []*rulebook.Judgement {
	var list []*rulebook.Judgement
	for _, one := range d.review.Judgements {
		if one.Status == rulebook.Wrong {
			list = append(list, one)
		}
	}
	return list
}

// Review gives the job as it is judged now.
func (d *Desk) Review() *rulebook.Review { return d.review }

// Next gives the question that settles most of what can still change the order: first of the things that the order names, then of
// others on which its practices hang. There is none when nothing unknown can change the order.
func (d *Desk) Next() (rulebook.Question, bool) {
	if len(d.Job.Stated)+len(d.Job.NotKnown) == 0 {
		if f, ok := d.book.Facts.Fact(opening); ok {
			return rulebook.Question{Fact: opening, Text: f.Ask}, true
		}
	}
	order := &rulebook.Review{Job: d.Job}
	for _, one := range d.review.Judgements {
		if one.Practice.Stage == "order" {
			order.Judgements = append(order.Judgements, one)
		}
	}
	questions := d.book.Questions(order)
	if len(questions) == 0 {
		return rulebook.Question{}, false
	}
	named := func(q rulebook.Question) bool {
		return slices.ContainsFunc(d.book.OrderLines(), func(l rulebook.OrderLine) bool { return l.Fact == q.Fact })
	}
	return questions[max(0, slices.IndexFunc(questions, named))], true
}

// opening is the fact asked for before anything has been said.
const opening = "member.use"

// Later counts the questions that concern the placing and not the order.
func (d *Desk) Later() int { return len(d.book.Questions(d.review)) }

// Forget takes a fact out again. It fails when the fact does not exist or was not stated.
func (d *Desk) Forget(path string) error {
	s, ok := d.Job.Find(path)
	if !ok || s.From != "" {
		return fmt.Errorf("%q was not stated; `facts` lists what was understood", path)
	}
	next := d.Job.Clone()
	next.Drop(path)
	if err := next.Follow(d.book.Facts); err != nil {
		return err
	}
	d.Job = next
	_, err := d.judge()
	return err
}
