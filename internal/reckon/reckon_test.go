package reckon_test

import (
	"math"
	"testing"
	"time"

	"hearsay/corpus"
	"hearsay/internal/belief"
	"hearsay/internal/reckon"
	"hearsay/rules"
)

// desk is a reckoner with the corpus it reckons for.
type desk struct {
	*reckon.Reckoner
	*belief.Corpus
}

func newDesk(t *testing.T) desk {
	t.Helper()
	r, err := reckon.New(rules.Files, corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	c, err := belief.Read(corpus.Files)
	if err != nil {
		t.Fatal(err)
	}
	return desk{r, c}
}

func (d desk) of(t *testing.T, id, said string) reckon.Reckoning {
	t.Helper()
	e, err := d.Entry(id)
	if err != nil {
		t.Fatal(err)
	}
	out, err := d.Of(said, e, time.Date(2025, 6, 2, 9, 0, 0, 0, time.UTC))
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// A gallon in a yard takes 150 to 400 psi (Adjusting slump in the field, Concrete Construction): 14 gallons in 9 yards take 233 to
// 622.
func TestWhatTheFactsSaidComeTo(t *testing.T) {
	d := newDesk(t)
	got := d.of(t, "water/little-water-is-harmless", "fourteen gallons in nine yards won't hurt")
	if len(got.Figures) == 0 || got.Figures[0].Figure.Name != "strength_lost" {
		t.Fatalf("%+v", got)
	}
	loss := got.Figures[0]
	if math.Abs(loss.Low-150*14/9.0) > 1 || math.Abs(loss.High-400*14/9.0) > 1 {
		t.Errorf("strength lost %v to %v, wanted 233 to 622", loss.Low, loss.High)
	}
	if none := d.of(t, "water/little-water-is-harmless", "a bit of water won't hurt"); !none.Empty() {
		t.Errorf("computed from nothing: %+v", none)
	}
}

func TestANumberClaimedIsHeldAgainstTheFigure(t *testing.T) {
	d := newDesk(t)
	for said, want := range map[string]float64{
		"a gallon in a yard costs you 50 psi of strength":           50.0 / 150,
		"a gallon a yard costs fifty psi":                           50.0 / 150,
		"each gallon per yard takes a couple of hundred psi off it": 1,
		"one gallon per yard drops the strength by 2,000 psi":       5,
	} {
		got := d.of(t, "water/rule-of-one-gallon", said).Claimed
		if len(got) != 1 || math.Abs(got[0].Off()-want) > 0.01 {
			t.Errorf("%s: %+v, wanted one number off by %.2f", said, got, want)
		}
	}
}

func TestEveryFigureThatAnEntryNamesIsThere(t *testing.T) {
	d := newDesk(t)
	for _, id := range d.IDs() {
		d.of(t, id, "one gallon in a yard, 50 psi")
	}
}
