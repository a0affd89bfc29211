package words

// packs reads so many containers of one size as what is in them all: "two five-gallon pails", "3 55-gal drums".
func (r *reading) packs(n number, i int) (item, int) {
	if !n.single() || n.part || n.low < 2 || n.low > 99 || n.loose {
		return item{}, i
	}
	if it, j := r.eachPack(n, i); j > i {
		return it, j
	}
	m, j := r.v.oneNumber(r.ts, i)
	if j == i || !m.single() || m.loose {
		return item{}, i
	}
	units, k := r.v.unitAt(r.ts, j)
	if k == j || !liquid(units) && units[0] != "lb" && units[0] != "kg" || !containers[text(r.ts, k)] {
		return item{}, i
	}
	all := n.low * m.low
	return item{kind: aQuantity, num: number{low: all, high: all}, units: units}, k + 1
}

// eachPack reads the same where the size follows: "3 pails, five gallons each".
func (r *reading) eachPack(n number, i int) (item, int) {
	if !containers[text(r.ts, i)] {
		return item{}, i
	}
	at := skipWord(r.ts, i+1, ",", "of", "at", "(")
	m, j := r.v.oneNumber(r.ts, at)
	if j == at || !m.single() || m.loose {
		return item{}, i
	}
	units, k := r.v.unitAt(r.ts, j)
	if k == j || !liquid(units) && units[0] != "lb" && units[0] != "kg" {
		return item{}, i
	}
	if t := text(r.ts, k); t != "each" && t != "apiece" && text(r.ts, at-1) != "of" {
		return item{}, i
	} else if t == "each" || t == "apiece" {
		k++
	}
	all := n.low * m.low
	return item{kind: aQuantity, num: number{low: all, high: all}, units: units}, k
}

var containers = set([]string{"pail", "pails", "bucket", "buckets", "jug", "jugs", "can", "cans", "bottle", "bottles", "drums", "kegs", "totes", "jerrycans"})

// cementType reads the number of a type of cement as people who write it out do: "type one", "type 1/2", "type 3".
func (r *reading) cementType(i, j int) (string, bool) {
	if text(r.ts, i-1) != "type" {
		return "", false
	}
	if j == i+3 && text(r.ts, i) == "1" && text(r.ts, i+2) == "2" {
		return "iandii", true
	}
	if j != i+1 {
		return "", false
	}
	t, ok := types[text(r.ts, i)]
	return t, ok
}

var types = map[string]string{"1": "i", "one": "i", "2": "ii", "two": "ii", "3": "iii", "three": "iii", "4": "iv", "four": "iv", "5": "v", "five": "v"}
