package crew

import (
	"time"

	"github.com/open-spaced-repetition/go-fsrs/v3"
)

// Review is one time somebody was asked about a belief.
type Review struct {
	At    time.Time
	Right bool
}

// schedule says when somebody should be asked again, by the Free Spaced Repetition Scheduler (version 5, with its published
// weights and a wanted recall of 90 %). Crews meet days apart, so its steps of minutes are left out.
func schedule(reviews []Review) fsrs.Card {
	settings := fsrs.DefaultParam()
	settings.EnableShortTerm = false
	method := fsrs.NewFSRS(settings)
	card := fsrs.NewCard()
	for _, r := range reviews {
		rating := fsrs.Good
		if !r.Right {
			rating = fsrs.Again
		}
		card = method.Next(card, r.At, rating).Card
	}
	return card
}

// firstAsking is when somebody who was told a thing and never asked about it should be asked.
const firstAsking = 24 * time.Hour
