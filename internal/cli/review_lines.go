package cli

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"runtime"
	"runtime/debug"
	"sync"

	"hearsay/internal/job"
	"hearsay/internal/report"
	"hearsay/internal/rulebook"
)

// lineReviewer reviews one job a line, several at a time; what comes out keeps the order of the lines.
type lineReviewer struct {
	app    *app
	book   *rulebook.Book
	report *report.Reporter
	name   string
	judge  func(context.Context, *job.Job) (*rulebook.Review, error)
	texts  sync.Pool // of *[]byte, written lines
}

// reviewed is what one line came to: an object, or what made it unusable.
type reviewed struct {
	text *[]byte
	bad  bool
	err  error // the program failed
}

// reviewLines reviews one job a line. A line that cannot be used gives an object with its error, and the next line goes on. The
// working of its numbers is left out unless it is asked for.
func (a *app) reviewLines(book *rulebook.Book, name string, working bool) error {
	system, err := a.system()
	if err != nil {
		return err
	}
	in, done, err := a.open(name)
	if err != nil {
		return err
	}
	defer done()
	debug.SetMemoryLimit(192 << 20) // little is kept from line to line
	r := &lineReviewer{app: a, book: book, report: report.NewReporter(book, system), name: name, judge: book.JudgeTersely}
	if working {
		r.judge = book.Judge
	}
	workers := runtime.GOMAXPROCS(0)
	queue := make(chan chan reviewed, 4*workers) // in the order of the lines, and no longer than this
	read := make(chan error, 1)
	go func() { read <- r.hand(in, workers, queue) }()
	return r.write(queue, read)
}

// hand gives each line to the next worker that is free, and queues the place where its result will come.
func (r *lineReviewer) hand(in io.Reader, workers int, queue chan chan reviewed) error {
	defer close(queue)
	free := make(chan struct{}, workers)
	lines := bufio.NewScanner(in)
	lines.Buffer(make([]byte, 1<<20), 1<<24)
	for n := 1; lines.Scan(); n++ {
		if len(bytes.TrimSpace(lines.Bytes())) == 0 {
			continue
		}
		line, where := bytes.Clone(lines.Bytes()), fmt.Sprintf("%s line %d", r.name, n)
		place := make(chan reviewed, 1)
		queue <- place
		free <- struct{}{}
		go func() {
			place <- r.one(where, line)
			<-free
		}()
	}
	if err := lines.Err(); err != nil {
		return badInput{fmt.Errorf("%s: %w: a job must fit on a line of at most 16 MB", r.name, err)}
	}
	return nil
}

// write writes the results in their order.
func (r *lineReviewer) write(queue chan chan reviewed, read chan error) error {
	out := bufio.NewWriter(r.app.out)
	defer out.Flush()
	pace := r.app.pace("jobs")
	defer pace.end()
	for place := range queue {
		one := <-place
		if one.err != nil {
			return one.err
		}
		if one.bad {
			r.app.status = exitBadInput
		}
		if _, err := out.Write(*one.text); err != nil {
			return err
		}
		r.texts.Put(one.text)
		pace.step()
	}
	return <-read
}

func (r *lineReviewer) one(where string, line []byte) reviewed {
	text, ok := r.texts.Get().(*[]byte)
	if !ok {
		text = new([]byte)
	}
	out := reviewed{text: text}
	review, err := r.review(where, line)
	if err != nil {
		problem, err := json.Marshal(map[string]string{"error": err.Error()})
		*text, out.bad, out.err = append(append((*text)[:0], problem...), '\n'), true, err
		return out
	}
	*text, out.err = r.report.AppendLine((*text)[:0], review)
	return out
}

func (r *lineReviewer) review(where string, line []byte) (*rulebook.Review, error) {
	j, say, err := job.ReadJSON(r.book.Facts, where, line)
	if err != nil {
		return nil, err
	}
	if say != "" {
		if err := r.app.hear(r.book, j, say); err != nil {
			return nil, err
		}
	}
	return r.judge(context.Background(), j)
}
