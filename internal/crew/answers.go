package crew

import (
	"fmt"
	"strings"

	"hearsay/internal/store"
)

// ReadAnswers reads what stands on the answer sheets, one person a line: "Ana: B C - A", a letter for each question and a
// dash where none was chosen.
func (z *Quiz) ReadAnswers(text string) ([]store.CrewAnswer, error) {
	var list []store.CrewAnswer
	for n, line := range strings.Split(text, "\n") {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		name, letters, ok := strings.Cut(line, ":")
		name = strings.TrimSpace(name)
		if !ok || name == "" {
			return nil, fmt.Errorf("line %d: write a name or number, a colon and the letters: Ana: B C - A", n+1)
		}
		given := strings.FieldsFunc(strings.ToUpper(letters), func(r rune) bool { return strings.ContainsRune(" ,;\t", r) })
		if len(given) == 1 && len(given[0]) > 1 {
			given = strings.Split(given[0], "")
		}
		if len(given) != len(z.Questions) {
			return nil, fmt.Errorf("line %d: %s has %d letters for %d questions; write - where none was chosen", n+1, name, len(given), len(z.Questions))
		}
		for i, letter := range given {
			if letter == "-" {
				continue
			}
			q := z.Questions[i]
			chosen := int(letter[0]) - 'A'
			if len(letter) != 1 || chosen < 0 || chosen >= len(q.Options) {
				return nil, fmt.Errorf("line %d: %s answers question %d with %s; its letters go from A to %s", n+1, name, i+1, letter, Letter(len(q.Options)-1))
			}
			list = append(list, z.Answer(name, i, chosen))
		}
	}
	return list, nil
}

// Answer is a choice as it is kept.
func (z *Quiz) Answer(person string, question, chosen int) store.CrewAnswer {
	q := z.Questions[question]
	return store.CrewAnswer{Code: z.Code, Person: person, Question: question, Belief: q.Belief, Chosen: chosen, Correct: chosen == q.Key}
}
