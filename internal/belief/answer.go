package belief

// Answer is the answer to a claim. Texts hold quantities in braces until Print is called.
type Answer struct {
	Said       string  `json:"said"`
	Answered   bool    `json:"answered"`
	Belief     *string `json:"belief"`
	Stance     *Stance `json:"stance"`
	Verdict    Verdict `json:"verdict"`
	Confidence float64 `json:"confidence"` // chance that belief and verdict are right
	Near       []Near  `json:"near"`       // up to three, best first
	Far        bool    `json:"far"`        // nothing the corpus covers is near

	Changed []string `json:"changed,omitempty"` // what a pack changed in the answer

	Text    *Text    `json:"text,omitempty"`
	Numbers []string `json:"numbers,omitempty"`
	Sources []Source `json:"sources,omitempty"`

	Entry    *Entry   `json:"-"` // the entry that answers
	Decision Decision `json:"-"`
}

// Near is a belief that a sentence may mean.
type Near struct {
	Belief string  `json:"belief"`
	Score  float64 `json:"score"` // chance that it is the one
	Saying string  `json:"saying"`
}

// Text is what an entry says, in the order in which it is best told.
type Text struct {
	DependsOn string `json:"depends_on,omitempty"`
	Fact      string `json:"fact"`
	Belief    string `json:"belief"`
	Why       string `json:"why"`
	Do        string `json:"do"`
	Say       string `json:"say"`
}

// Changed says what a pack changed in an entry.
func (e *Entry) Changed() []string {
	switch {
	case e.Pack == "":
		return nil
	case e.Replaces:
		return []string{"belief of pack " + e.Pack + ", in the place of the built-in one"}
	}
	return []string{"belief of pack " + e.Pack}
}

// nearest is how many beliefs an answer offers.
const nearest = 3

// Answer finds the belief that a sentence states or denies and gives the verdict on the sentence as it was said. Where it
// is not sure enough it gives no verdict and offers the nearest beliefs; where nothing is near it says so by Far.
func (c *Corpus) Answer(text string) (Answer, error) {
	m, err := c.match(text)
	if err != nil {
		return Answer{}, err
	}
	best, err := c.Entry(m.Ranked[0].Belief)
	if err != nil {
		return Answer{}, err
	}
	d := m.Decide(best.Verdict)
	a := Answer{Said: text, Verdict: d.Verdict, Answered: d.Answered, Far: d.Far, Confidence: d.Confidence, Decision: d}
	for _, r := range m.Ranked[:min(nearest, len(m.Ranked))] {
		saying, err := c.saying(r.Belief)
		if err != nil {
			return Answer{}, err
		}
		a.Near = append(a.Near, Near{r.Belief, r.Chance, saying})
	}
	if !d.Answered {
		return a, nil
	}
	a.Belief, a.Stance = &best.ID, &d.Stance
	a.Entry, a.Numbers, a.Sources = best, best.Numbers, best.Sources
	a.Changed = best.Changed()
	a.Text = &Text{best.DependsOn, best.Fact, best.Saying, best.Why, best.Do, best.Say}
	return a, nil
}

// Print gives the answer with every text put through print, which turns {4 in} into what is shown.
func (a Answer) Print(print func(string) string) Answer {
	if a.Text != nil {
		t := Text{print(a.Text.DependsOn), print(a.Text.Fact), print(a.Text.Belief), print(a.Text.Why), print(a.Text.Do), print(a.Text.Say)}
		a.Text = &t
	}
	numbers := make([]string, len(a.Numbers))
	for i, n := range a.Numbers {
		numbers[i] = print(n)
	}
	a.Numbers = numbers
	return a
}
