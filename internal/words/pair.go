package words

// pair reads the two halves in which people say a number of three or four digits: "two-eighty" and "five sixty-four" are
// hundreds and the rest, "thirty-three ten" and "twelve fifty" as well. Token j is the one after the first half.
func (v *vocabulary) pair(ts []token, i, j int) (float64, int) {
	high, _ := v.belowHundred(ts, i)
	at := skipHyphen(ts, j)
	low, k := v.belowHundred(ts, at)
	if k == at || low < 10 || high < 1 || high == low || v.labels[text(ts, i-1)] || ts[at].text == "dozen" || ts[at].text == "couple" || ts[j-1].text == "couple" {
		return 0, j
	}
	if t := text(ts, k); t == "-" || t == "hundred" || t == "thousand" || t == "x" || t == "by" {
		return 0, j // "six twelve-inch", "twelve twenty-five hundred"
	}
	if t := text(ts, i-1); t == "x" || t == "by" || high == 1 && ones[t] {
		return 0, j
	}
	switch {
	case high < 10 && low < 20 && at == j && low != 10:
		return 0, j // "three twelve", "five fifteen" are times and things of twelve as often
	case high >= 10 && high < 13 && low < 60 && int(low)%15 == 0 && !v.batched(ts, k):
		return 0, j // a time
	case high < 13 && v.clockLeads(ts, i) && low < 60 && int(low)%15 == 0:
		return 0, j
	case high >= 10 && high+10 >= low && high < low && !v.batched(ts, k):
		return 0, j // "thirty forty minutes", "fifty sixty feet": about that
	}
	if u, l := v.unitAt(ts, k); l > k {
		switch u[0] {
		case "lb", "lb/yd3", "psi", "kg", "kg/m3", "rev":
		case "deg?", "F", "C":
			if high >= 3 {
				return 0, j
			}
		default:
			return 0, j // "two twenty foot walls"
		}
		if packed[text(ts, l)] || packed[text(ts, l+1)] {
			return 0, j // "two fifty pound bags"
		}
	}
	return 100*high + low, k
}

// ones are the words after which "one" is a thing and not a hundred: "the worst one seventy-eight".
var ones = set([]string{"worst", "best", "high", "highest", "low", "lowest", "top", "bottom", "first", "second", "third", "last", "next", "other", "this", "that", "every", "each",
	"wet", "dry", "wettest", "driest", "any", "which", "another", "only", "good", "bad", "weak", "strong", "core", "test", "just", "no", "number"})

// packed are the things of which so many of so much are counted.
var packed = set([]string{"bag", "bags", "sack", "sacks", "pail", "pails", "bucket", "buckets", "drums", "boxes", "bundle", "bundles", "pallets", "tanks", "bottles", "bale", "bales"})

// batched says whether token k speaks of a weight that goes into a batch or of a strength.
func (v *vocabulary) batched(ts []token, k int) bool {
	switch text(skipTo(ts, k), 0) {
	case "sand", "stone", "rock", "gravel", "cement", "water", "ash", "fly", "slag", "pounds", "lbs", "lb", "psi", "coarse", "fine", "aggregate":
		return true
	}
	return false
}

// skipTo gives the tokens after an "of".
func skipTo(ts []token, k int) []token {
	return ts[min(len(ts), skipWord(ts, k, "of")):]
}

// clockLeads says whether the word before token i leads to a time.
func (v *vocabulary) clockLeads(ts []token, i int) bool {
	switch text(ts, i-1) {
	case "at", "by", "till", "til", "until", "around", "about", "since", "from", "before", "after", "start", "starting", "started":
		return true
	}
	return false
}
