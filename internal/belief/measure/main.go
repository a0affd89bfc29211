// Command measure tells how well claims are answered: on files of sentences with their right answers, one JSON object a line
// ({"text", "id", "verdict", "also", "voice"}; an id of null means that no belief covers it), or by cross-validation inside the
// corpus, where the model is trained without the sentences that it is then measured on.
//
//	go run ./internal/belief/measure FILE...
//	go run ./internal/belief/measure -hold-out voice
//	go run ./internal/belief/measure -hold-out tenth
package main

import (
	"flag"
	"fmt"
	"os"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/belief/training"
	"hearsay/internal/belief/wording"
)

func main() {
	holdOut := flag.String("hold-out", "", "cross-validate inside the corpus: voice (leave out one voice at a time) or tenth (one sentence in ten)")
	misses := flag.Bool("misses", false, "list what was answered wrong")
	flag.Parse()
	if err := run(*holdOut, *misses, flag.Args()); err != nil {
		fmt.Fprintln(os.Stderr, "measure:", err)
		os.Exit(1)
	}
}

func run(holdOut string, misses bool, files []string) error {
	if holdOut != "" {
		c, err := belief.Read(corpus.Files)
		if err != nil {
			return err
		}
		results, err := crossValidate(c, holdOut)
		if err != nil {
			return err
		}
		return report("held out by "+holdOut, results, misses)
	}
	if len(files) == 0 {
		return fmt.Errorf("name a file of sentences, or give -hold-out voice")
	}
	c, err := belief.Load(corpus.Files)
	if err != nil {
		return err
	}
	for _, file := range files {
		results, err := answerFile(c, file)
		if err != nil {
			return err
		}
		if err := report(file, results, misses); err != nil {
			return err
		}
	}
	return nil
}

func crossValidate(c *belief.Corpus, holdOut string) ([]result, error) {
	head, err := c.Head()
	if err != nil {
		return nil, err
	}
	sentences, err := c.Sentences()
	if err != nil {
		return nil, err
	}
	verdicts := map[string]belief.Verdict{}
	for _, b := range head.Beliefs {
		verdicts[b.ID] = b.Verdict
	}
	concepts := wording.NewConcepts(head.Concepts)
	set := training.NewSet(head.Beliefs, sentences, concepts)
	folds, leave := set.ByVoice(), []int{0, 1, 2}
	switch holdOut {
	case "voice":
	case "tenth":
		folds, leave = set.AtRandom(10), []int{0}
	default:
		return nil, fmt.Errorf("-hold-out %s is not known: write voice or tenth", holdOut)
	}
	held, err := set.Validate(folds, leave)
	if err != nil {
		return nil, err
	}
	settings := training.Calibrated(held)
	results := make([]result, len(held))
	for i, h := range held {
		m := h.Match.Calibrated(settings)
		results[i] = result{text: h.Text, voice: h.Voice, belief: h.Belief, stance: h.Stance, wanted: belief.Unknown, decision: settings.Decide(m, verdicts[m.Ranked[0].Belief])}
		if h.Belief != "" {
			results[i].wanted = verdicts[h.Belief].On(h.Stance)
		}
		for _, r := range m.Ranked[:3] {
			results[i].near = append(results[i].near, r.Belief)
		}
	}
	return results, nil
}
