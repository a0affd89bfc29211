package linear

import (
	"math"
	"slices"

	"hearsay/internal/belief/wording"
)

// Space maps features to columns and weighs them: rare ones more (inverse document frequency), each block of features
// brought to length one.
type Space struct {
	Hashes []uint32  // sorted; the position is the column
	Rarity []float32 // of each column
}

// NewSpace takes the columns from the sentences: pieces of words that occur in one sentence alone are left out.
func NewSpace(sentences [][]wording.Feature) *Space {
	in := map[uint32]int32{}
	block := map[uint32]uint8{}
	for _, fs := range sentences {
		for _, f := range fs {
			in[f.Hash]++
			block[f.Hash] = f.Block
		}
	}
	s := &Space{}
	for h, n := range in {
		if block[h] == wording.BlockWords || n > 1 {
			s.Hashes = append(s.Hashes, h)
		}
	}
	slices.Sort(s.Hashes)
	s.Rarity = make([]float32, len(s.Hashes))
	for i, h := range s.Hashes {
		s.Rarity[i] = float32(math.Log(float64(1+len(sentences))/float64(1+in[h])) + 1)
	}
	return s
}

// Vector places a sentence in the space. Features it does not know are left out.
func (s *Space) Vector(fs []wording.Feature) Vector {
	v := Vector{Columns: make([]int32, 0, len(fs)), Values: make([]float32, 0, len(fs))}
	blocks := make([]uint8, 0, len(fs))
	for _, f := range fs {
		c, ok := slices.BinarySearch(s.Hashes, f.Hash)
		if !ok {
			continue
		}
		v.Columns = append(v.Columns, int32(c))
		v.Values = append(v.Values, weigh(f.Count, s.Rarity[c]))
		blocks = append(blocks, f.Block)
	}
	level(v.Values, blocks)
	return v
}

// weigh gives the value of a feature before leveling: a second mention counts less than the first. What is denied has a
// negative count, and counts against.
func weigh(count, rarity float32) float32 {
	if count < 0 {
		return -weigh(-count, rarity)
	}
	if count == 1 {
		return rarity
	}
	return (1 + float32(math.Log(float64(count)))) * rarity
}

// level brings the values of each block to length one.
func level(values []float32, blocks []uint8) {
	var squares [wording.Blocks]float64
	for i, x := range values {
		squares[blocks[i]] += float64(x) * float64(x)
	}
	for i := range values {
		values[i] /= float32(math.Sqrt(squares[blocks[i]]))
	}
}
