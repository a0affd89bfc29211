package words

import "time"

// kind says what an item is.
type kind int

const (
	aWord kind = iota
	aQuantity
	aClock
	aSize
	aDate
	aBreak
)

// item is one piece of the text as it is understood: a word, a number with its unit, a time, a size, a date, or a place
// where the talk pauses.
type item struct {
	kind       kind
	stem       string // of a word
	id, exact  int32  // of its stem, and of the word in this form; 0 where no pattern holds it
	text       string // of a word, in lower case
	start, end int    // bytes in the text
	num        number
	units      []string // how the unit of a number may be read; none for a bare number
	glue       bool     // a number that leans on a word before it, such as #5 or R-10
	parts      []part   // of a size
	clock      clock
	date       time.Time
	pause      int // of a break: pauseComma to pauseParagraph
	negBy      int // the item that negates this one; -1 when none does
	unsure     bool
	filler     bool
	cost       float64 // of all items before it, see costs
}

// part is one length of a size.
type part struct {
	num  number
	unit string // "" when it was not said
}

// How much a pause parts what stands on its two sides.
const (
	pauseComma = iota + 1
	pauseColon
	pauseSemicolon
	pauseSentence
	pauseParagraph
)

// reading is the state of one text being read.
type reading struct {
	*Reader
	text  string
	ts    []token
	items []item
	now   time.Time
}

// itemize turns the tokens into items.
func (r *reading) itemize() {
	r.items = make([]item, 0, len(r.ts))
	for i := 0; i < len(r.ts); {
		if r.ts[i].line && i > 0 {
			r.pause(i, pauseSentence)
		}
		i = r.next(i)
	}
}

// next reads the item at token i and gives the token after it.
func (r *reading) next(i int) int {
	t := r.ts[i]
	if t.digits || r.v.starts[t.text] || !t.letters || daysInWords[t.text] > 0 || decades[t.text] > 0 || t.text == "day" {
		for _, read := range [...]func(int) (item, int){r.dateAt, r.timeAt, r.sizeAt, r.quantityAt} {
			if it, j := read(i); j > i {
				r.add(it, i, j)
				return j
			}
		}
	}
	if t.letters {
		if len(t.text) <= 2 && i+1 < len(r.ts) && r.ts[i+1].digits && r.ts[i+1].glued && len(r.ts[i+1].text) == 3 && r.v.prefixes[t.text] == nil {
			r.add(item{kind: aWord, text: "standard", stem: "standard", filler: true}, i, i+2) // "C138"
			return i + 2
		}
		if j := r.joinedWord(i); j > i {
			return j
		}
		if day, ok := r.shortDay(i); ok {
			r.add(item{kind: aWord, text: day, stem: r.v.stem(day)}, i, i+1)
			return i + 1
		}
		if t.text == "saw" && seeing[text(r.ts, i-1)] && !sawn[text(r.ts, i+1)] {
			r.add(item{kind: aWord, text: "seen", stem: r.v.stem("seen")}, i, i+1)
			return i + 1
		}
		r.add(item{kind: aWord, text: t.text, stem: r.v.stem(t.text), filler: r.v.fillers[t.text]}, i, i+1)
		if neg, ok := r.v.contraction(t.text); ok {
			r.items[len(r.items)-1].stem = neg
		}
		return i + 1
	}
	return r.sign(i)
}

// joinedWord reads words written with a stroke or points: "w/cm", "w/o", "o.c.".
func (r *reading) joinedWord(i int) int {
	if text(r.ts, i+1) == "/" && r.ts[i+1].glued && i+2 < len(r.ts) && r.ts[i+2].letters && r.ts[i+2].glued {
		word := r.ts[i].text + "/" + r.ts[i+2].text
		if s, ok := r.v.joined[word]; ok {
			r.add(item{kind: aWord, text: s, stem: r.v.stem(s)}, i, i+3)
			return i + 3
		}
	}
	if t := text(r.ts, i+1); text(r.ts, i) == "w" && t != "/" && t != "c" && t != "cm" && t != "-" {
		r.add(item{kind: aWord, text: "with", stem: "with", filler: true}, i, i+1)
		return i + 1
	}
	if text(r.ts, i) == "n" && i > 0 {
		r.add(item{kind: aWord, text: "and", stem: "and"}, i, i+1)
		return i + 1
	}
	if text(r.ts, i) == "w" && text(r.ts, i+1) == "/" && r.ts[i+1].glued {
		r.add(item{kind: aWord, text: "with", stem: "with", filler: true}, i, i+2)
		return i + 2
	}
	return i
}

// sign reads a sign that is no part of a number: the pauses are kept, the rest is dropped.
func (r *reading) sign(i int) int {
	t := r.ts[i]
	switch t.text {
	case ",", "(", ")", "–", "[", "]":
		r.pause(i, pauseComma)
	case ":":
		r.pause(i, pauseColon)
	case ";":
		r.pause(i, pauseSemicolon)
	case "-", "/":
		if t.text == "-" && !t.glued {
			r.pause(i, pauseComma)
		}
	case "!", "?", "…":
		r.pause(i, pauseSentence)
	case ".":
		switch {
		case i+1 == len(r.ts) || r.ts[i+1].capital || r.ts[i+1].line:
			r.pause(i, pauseSentence)
		case !r.ts[i+1].glued && !(i > 0 && r.v.abbreviations[r.ts[i-1].text]):
			r.pause(i, pauseSentence)
		}
	case "=", "@", "~", "≈":
		word := map[string]string{"=": "is", "@": "at", "~": "about", "≈": "about"}[t.text]
		r.add(item{kind: aWord, text: word, stem: word, filler: true}, i, i+1)
	case "&", "+":
		r.add(item{kind: aWord, text: "and", stem: "and"}, i, i+1)
	case "%":
		r.add(item{kind: aWord, text: "percent", stem: "percent"}, i, i+1)
	}
	return i + 1
}

func (r *reading) pause(i, level int) {
	if n := len(r.items); n > 0 && r.items[n-1].kind == aBreak {
		r.items[n-1].pause = max(level, r.items[n-1].pause)
		return
	}
	r.items = append(r.items, item{kind: aBreak, pause: level, start: r.ts[i].start, end: r.ts[i].end, negBy: -1})
}

func (r *reading) add(it item, from, to int) {
	it.start, it.end, it.negBy = r.ts[from].start, r.ts[to-1].end, -1
	r.items = append(r.items, it)
}

// timeAt reads a time of day, or the hours from one to another ("from 2 till 5"), which are a quantity that begins at a time.
func (r *reading) timeAt(i int) (item, int) {
	c, j := r.v.clockAt(r.ts, i)
	sure := j > i
	if sure && text(r.ts, i-1) == "to" && sinking[text(r.ts, i-2)] && text(r.ts, i+1) != ":" {
		return item{}, i // "going to 10 tomorrow night"
	}
	if p := text(r.ts, i-2); (text(r.ts, i-1) == "of" || text(r.ts, i-1) == "in" || text(r.ts, i-1) == "between") && (p == "low" || p == "lows" || p == "high" || p == "highs") {
		return item{}, i // "a low of five to ten tonight"
	}
	if !sure {
		n, k := r.v.oneNumber(r.ts, i)
		if k == i || n.part || n.low < 1 || n.low > 12 {
			return item{}, i
		}
		c, j = clock{hour: n.low}, k
	}
	at := skipWord(r.ts, j, "till", "til", "until", "to", "-", "–")
	if t := text(r.ts, i-1); at == j && !sure && (t == "about" || t == "around") && text(r.ts, i-2) == "at" && seeing[text(r.ts, j)] {
		return item{kind: aClock, clock: c}, j // "at about five I saw"
	}
	if at == j {
		if sure {
			return item{kind: aClock, clock: c}, j
		}
		return item{}, i
	}
	spoken := text(r.ts, j) == "till" || text(r.ts, j) == "until" || text(r.ts, j) == "til"
	d, k := r.v.clockAt(r.ts, at)
	if k == at && (spoken || sure) {
		n, l := r.v.oneNumber(r.ts, at)
		if _, u := r.v.unitAt(r.ts, l); l > at && u == l && !n.part && n.low >= 1 && n.low <= 12 {
			d, k = clock{hour: n.low}, l
		}
	}
	if k == at {
		if sure {
			return item{kind: aClock, clock: c}, j
		}
		return item{}, i
	}
	hours := hoursBetween(c, d)
	return item{kind: aQuantity, num: number{low: hours, high: hours}, units: []string{"h"}, clock: c}, k
}

// words gives the text from the first byte of item a to the last of item b.
func (r *reading) words(a, b int) string {
	return r.text[r.items[a].start:r.items[b].end]
}

// sinking are the words that lead to a temperature at night, not to an hour.
var sinking = set([]string{"going", "down", "dropping", "drops", "drop", "falling", "falls", "fall", "dips", "dipping", "sinks"})

// seeing are the words after which "saw" is no tool, sawn those after it that make it one all the same: "he saw the cracks", "we saw joints".
var (
	seeing = set([]string{"i", "we", "he", "she", "they", "you", "who", "never", "nobody", "anybody", "just"})
	sawn   = set([]string{"joints", "joint", "cut", "cuts", "cutting", "it", "them", "every", "at", "in", "tomorrow", "tonight"})
)

// shortDay reads the short name of a day of the week where a time follows it or a word such as "for" leads to it: "sat 7am".
func (r *reading) shortDay(i int) (string, bool) {
	day, ok := shortDays[r.ts[i].text]
	if !ok {
		return "", false
	}
	if leads := text(r.ts, i-1); leads == "for" || leads == "next" || leads == "by" || leads == "till" || leads == "until" {
		return day, true
	}
	at := skipWord(r.ts, i+1, "at", "@", ".", "around", "morning")
	_, j := r.v.clockAt(r.ts, at)
	return day, j > at
}

var shortDays = map[string]string{"mon": "monday", "tue": "tuesday", "tues": "tuesday", "wed": "wednesday", "thu": "thursday", "thur": "thursday", "thurs": "thursday",
	"fri": "friday", "sat": "saturday", "sun": "sunday"}
