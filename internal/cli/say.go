package cli

import (
	"fmt"
	"strings"
	"time"

	"hearsay/internal/desk"
	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/internal/words"
)

// words gives the reader of plain words, made at its first use.
func (a *app) words(book *rulebook.Book) (*words.Reader, error) {
	a.readerLock.Lock()
	defer a.readerLock.Unlock()
	if a.reader == nil {
		_, corpusFiles, err := a.knowledge()
		if err != nil {
			return nil, err
		}
		reader, err := words.New(book.Facts, corpusFiles)
		if err != nil {
			return nil, a.blame(err)
		}
		a.reader = reader
	}
	return a.reader, nil
}

// hear adds to a job what a text states. What the job states already stays as it is.
func (a *app) hear(book *rulebook.Book, j *job.Job, text string) error {
	if strings.TrimSpace(text) == "" {
		return badInput{fmt.Errorf("nothing was said: describe the job in a sentence or two, for example \"driveway 20x40 at 4 inches, 3000 psi\"")}
	}
	reader, err := a.words(book)
	if err != nil {
		return err
	}
	read := reader.Read(text, time.Now())
	read.Into(book.Facts, j)
	return nil
}

// listen gives the reader as the page takes it.
func listen(reader *words.Reader) func(string, time.Time) ([]desk.Said, []string) {
	return func(text string, at time.Time) ([]desk.Said, []string) {
		read := reader.Read(text, at)
		said := make([]desk.Said, 0, len(read.Facts))
		for _, f := range read.Facts {
			said = append(said, desk.Said{Fact: f.Path, Value: f.Value, Text: f.Text, Taken: f.Taken})
		}
		unread := make([]string, 0, len(read.Unread))
		for _, u := range read.Unread {
			unread = append(unread, u.String())
		}
		return said, unread
	}
}
