package rulebook

import (
	"sort"

	"hearsay/internal/job"
)

// Question is a fact worth asking for, with the practices whose answer hangs on it.
type Question struct {
	Fact    string
	Text    string
	Settles []string // practices, by id
	weight  float64
}

// severityWeight says how much an open answer of each severity matters when questions are ranked.
var severityWeight = map[string]float64{"stop": 4, "fix": 2, "mind": 1}

// Questions lists the facts that could still change an answer, the one that settles most first. A fact counts more for a
// practice the fewer other facts that practice still lacks, and the worse it would be if it were wrong. What the job says
// nobody knows is not asked again.
func (b *Book) Questions(r *Review) []Question {
	found := map[string]*Question{}
	for _, j := range r.Judgements {
		for fact, share := range shares(j) {
			if contains(r.Job.NotKnown, fact) {
				continue
			}
			q, ok := found[fact]
			if !ok {
				f, _ := b.Facts.Fact(fact)
				q = &Question{Fact: fact, Text: f.Ask}
				found[fact] = q
			}
			q.Settles = append(q.Settles, j.Practice.ID)
			q.weight += severityWeight[j.Practice.Severity] * share
		}
	}
	b.firstThingsFirst(found)
	questions := make([]Question, 0, len(found))
	for _, q := range found {
		questions = append(questions, *q)
	}
	sort.Slice(questions, func(i, k int) bool {
		if questions[i].weight != questions[k].weight {
			return questions[i].weight > questions[k].weight
		}
		return questions[i].Fact < questions[k].Fact
	})
	return questions
}

// firstThingsFirst lets a choice or a flag that is itself asked for come before what some value of it would settle: whether there is
// an accelerator before how much of it is dosed.
func (b *Book) firstThingsFirst(found map[string]*Question) {
	for path, q := range found {
		f, _ := b.Facts.Fact(path)
		if f.Kind != job.KindChoice && f.Kind != job.KindFlag {
			continue
		}
		for _, i := range f.Implies {
			for _, then := range i.Then {
				if settled, ok := found[then.Fact.Path]; ok && then.Fact.Kind != job.KindChoice && then.Fact.Kind != job.KindFlag {
					q.weight = max(q.weight, settled.weight*justMore)
				}
			}
		}
	}
}

// justMore puts one question just before another.
const justMore = 1.001

// shares gives, for each fact an open practice hangs on, how near it comes to settling the practice alone: a fact that
// every open way needs settles it by ruling them all out, one among many does little, and one that settles it alone and for
// certain counts half as much again.
func shares(j *Judgement) map[string]float64 {
	const alone = 1.5
	share := map[string]float64{}
	for _, o := range j.Open {
		for _, f := range o.Facts {
			share[f] += 1 / (float64(len(o.Facts)) * float64(len(j.Open)))
		}
	}
	if len(share) == 1 {
		for f := range share {
			share[f] *= alone
		}
	}
	return share
}
