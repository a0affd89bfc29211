package desk

import (
	"slices"
	"strings"

	"hearsay/internal/job"
)

// plain takes off what people put around a bare answer: "about 60", "it's 4 inches I think", "yeah, 3/4".
func plain(line string) string {
	text := strings.Trim(strings.ToLower(strings.TrimSpace(line)), ".!?, ")
	for changed := true; changed; {
		changed = false
		for _, lead := range hedges {
			if rest, ok := strings.CutPrefix(text, lead+" "); ok {
				text, changed = strings.TrimLeft(rest, ", "), true
			} else if rest, ok := strings.CutPrefix(text, lead+", "); ok {
				text, changed = strings.TrimLeft(rest, ", "), true
			}
		}
		for _, tail := range trailers {
			if rest, ok := strings.CutSuffix(text, " "+tail); ok {
				text, changed = strings.TrimRight(rest, ", "), true
			}
		}
	}
	return text
}

// hedges lead to an answer and trailers follow it, without changing it.
var (
	hedges = []string{"about", "around", "roughly", "maybe", "probably", "say", "like", "i think", "i guess", "call it", "its", "it's", "it is", "should be", "he says", "she says", "they say", "just", "only",
		"well", "uh", "um", "oh", "yeah", "yes", "yep", "sure", "ok", "okay", "approximately", "approx", "figure", "make it", "make that", "that's", "we want", "he wants", "they want", "going to be", "gonna be", "will be",
		"it will be", "it'll be", "at", "we'll say", "let's say", "somewhere around", "right around", "close to", "a little over", "nearly", "almost"}
	trailers = []string{"i think", "i guess", "or so", "maybe", "probably", "he says", "she says", "they say", "i believe", "give or take", "about", "please", "sir", "ma'am", "right now", "for sure"}
)

// yes and no are what people say for them.
var (
	yes = []string{"yes", "yeah", "yep", "yup", "ya", "y", "sure", "sure is", "it is", "they are", "they will", "it will", "he is", "she is", "he will", "he does", "they do", "it does", "we do", "we will", "i think so", "i believe so", "correct", "right", "thats right",
		"uh huh", "of course", "absolutely", "definitely", "always", "affirmative", "you bet", "for sure", "yes sir", "yes maam", "yes it is", "yes it will", "yes it does", "yes they are", "yes they will", "yes they do", "yes we do", "yes we will", "yes he does", "yes he will", "probably", "most likely", "i guess so", "ok", "okay", "10-4", "ten four"}
	no = []string{"no", "nope", "nah", "naw", "n", "none", "nothing", "no way", "not at all", "never", "no sir", "no maam", "negative", "uh uh", "it isnt", "it wont", "it doesnt", "they arent", "they wont", "they dont", "we dont", "we wont", "he doesnt", "he wont",
		"no it isnt", "no it wont", "no it doesnt", "no they arent", "no they wont", "no they dont", "no we dont", "no we wont", "no he doesnt", "no he wont", "not that i know", "not that i know of", "i dont think so", "dont think so", "probably not", "not really", "not this time", "not needed", "nope none", "none at all", "no none"}
)

// oneOf says whether a line is one of the plain answers, whatever its points and apostrophes.
func oneOf(line string, answers []string) bool {
	text := strings.NewReplacer("'", "", "’", "", ",", "").Replace(strings.Trim(strings.ToLower(strings.TrimSpace(line)), ".!? "))
	return slices.Contains(answers, strings.Join(strings.Fields(text), " "))
}

// inContext reads a line that says nothing by itself as the answer to the question asked: with the name of the fact before it.
func (d *Desk) inContext(f *job.Fact, line string) (Said, bool) {
	names := []string{f.Name}
	names = append(names, f.Words...)
	for _, name := range names {
		facts, _ := d.listen(name + " " + plain(line))
		for _, s := range facts {
			if s.Fact == f.Path && strings.Contains(strings.ToLower(s.Text), firstWord(plain(line))) {
				return Said{Fact: f.Path, Value: s.Value, Text: strings.TrimSpace(line)}, true
			}
		}
	}
	return Said{}, false
}

func firstWord(text string) string {
	word, _, _ := strings.Cut(text, " ")
	return word
}
