package words

import "strings"

// stem cuts a word to what its forms share ("placed", "placing" and "places" are one), so that a phrase is known in every
// form it is said in. It need not be a word; it only has to be the same for the forms of one word.
func (v *vocabulary) stem(word string) string {
	word = strings.TrimSuffix(strings.TrimSuffix(word, "'s"), "'")
	if s, ok := v.forms[word]; ok {
		return s
	}
	return cut(word)
}

func cut(w string) string {
	switch {
	case len(w) <= 3:
		return w
	case strings.HasSuffix(w, "ies") && len(w) > 4:
		return w[:len(w)-3] + "y"
	case strings.HasSuffix(w, "sses"), strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "xes"):
		return ending(w[:len(w)-2])
	case strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") && !strings.HasSuffix(w, "us") && !strings.HasSuffix(w, "is"):
		return ending(w[:len(w)-1])
	}
	return ending(w)
}

// ending drops -ing, -ed and a last -e.
func ending(w string) string {
	switch {
	case strings.HasSuffix(w, "ing") && spoken(w[:len(w)-3]):
		w = single(w[:len(w)-3])
	case strings.HasSuffix(w, "ied") && len(w) > 4:
		return w[:len(w)-3] + "y"
	case strings.HasSuffix(w, "eed"):
	case strings.HasSuffix(w, "ed") && spoken(w[:len(w)-2]):
		w = single(w[:len(w)-2])
	}
	if len(w) > 3 && strings.HasSuffix(w, "e") && !strings.HasSuffix(w, "ee") {
		w = w[:len(w)-1]
	}
	return w
}

// spoken says whether s can stand alone as a stem: three letters or more with a vowel among them.
func spoken(s string) bool { return len(s) >= 3 && strings.ContainsAny(s, "aeiouy") }

// single undoes a consonant doubled before an ending ("dropped").
func single(s string) string {
	n := len(s)
	if n > 3 && s[n-1] == s[n-2] && !strings.ContainsRune("lsz", rune(s[n-1])) {
		return s[:n-1]
	}
	return s
}
