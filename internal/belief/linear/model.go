package linear

import (
	"cmp"
	"encoding/binary"
	"fmt"
	"math"
	"slices"
	"sync"

	"hearsay/internal/belief/wording"
)

// Model holds trained classes in the form in which they are used: for each feature the classes it speaks for or against.
// It reads its weights from the bytes it was opened on, so that opening costs nothing.
type Model struct {
	classes  int
	features int
	scales   []float32 // of each class: what one step of a weight is worth
	offsets  []float32 // of each class

	hashes  []byte // features × uint32, sorted
	rarity  []byte // features × float32
	starts  []byte // (features+1) × uint32 into weights
	weights []byte // per feature: (uvarint step to the class, int8 weight) …

	look sync.Once
	most float32 // of rarity
}

// Class is one trained class.
type Class struct {
	Weights []float32 // by column of the space
	Offset  float32
}

// steps is the number of steps of a weight on either side of zero.
const steps = 127

// Write packs a space and its classes. Of the weights of each class all but the share keep, the largest, are dropped.
func Write(s *Space, classes []Class, keep float64) []byte {
	scales := make([]float32, len(classes))
	least := make([]float32, len(classes))
	for i, c := range classes {
		least[i] = smallestKept(c.Weights, keep)
		scales[i] = max(slices.Max(c.Weights), -slices.Min(c.Weights)) / steps
	}
	var starts, weights []byte
	for col := range s.Hashes {
		starts = binary.LittleEndian.AppendUint32(starts, uint32(len(weights)))
		last := 0
		for i, c := range classes {
			w := c.Weights[col]
			if max(w, -w) < least[i] || scales[i] == 0 {
				continue
			}
			step := int8(math.Round(float64(w / scales[i])))
			if step == 0 {
				continue
			}
			weights = binary.AppendUvarint(weights, uint64(i-last))
			weights = append(weights, byte(step))
			last = i
		}
	}
	starts = binary.LittleEndian.AppendUint32(starts, uint32(len(weights)))

	out := binary.LittleEndian.AppendUint32(nil, uint32(len(classes)))
	out = binary.LittleEndian.AppendUint32(out, uint32(len(s.Hashes)))
	for i, c := range classes {
		out = appendFloat(out, scales[i])
		out = appendFloat(out, c.Offset)
	}
	for _, h := range s.Hashes {
		out = binary.LittleEndian.AppendUint32(out, h)
	}
	for _, r := range s.Rarity {
		out = appendFloat(out, r)
	}
	return append(append(out, starts...), weights...)
}

func appendFloat(out []byte, f float32) []byte {
	return binary.LittleEndian.AppendUint32(out, math.Float32bits(f))
}

// smallestKept gives the size of the smallest weight that is kept.
func smallestKept(weights []float32, keep float64) float32 {
	sizes := make([]float32, len(weights))
	for i, w := range weights {
		sizes[i] = max(w, -w)
	}
	slices.Sort(sizes)
	drop := int(float64(len(sizes)) * (1 - keep))
	if drop >= len(sizes) {
		return float32(math.Inf(1))
	}
	return max(sizes[drop], math.SmallestNonzeroFloat32)
}

// Open uses packed bytes. They must not change while the model is used.
func Open(data []byte) (*Model, error) {
	if len(data) < 8 {
		return nil, fmt.Errorf("the model is cut short: %d bytes", len(data))
	}
	m := &Model{classes: int(binary.LittleEndian.Uint32(data)), features: int(binary.LittleEndian.Uint32(data[4:]))}
	data = data[8:]
	need := m.classes*8 + m.features*8 + (m.features+1)*4
	if m.classes < 0 || m.features < 0 || need > len(data) {
		return nil, fmt.Errorf("the model is cut short: %d bytes after its head, %d needed", len(data), need)
	}
	for i := range m.classes {
		m.scales = append(m.scales, float(data, 2*i))
		m.offsets = append(m.offsets, float(data, 2*i+1))
	}
	data = data[m.classes*8:]
	m.hashes, data = data[:m.features*4], data[m.features*4:]
	m.rarity, data = data[:m.features*4], data[m.features*4:]
	m.starts, m.weights = data[:(m.features+1)*4], data[(m.features+1)*4:]
	if int(word(m.starts, m.features)) != len(m.weights) {
		return nil, fmt.Errorf("the model is cut short: %d bytes of weights, %d needed", len(m.weights), word(m.starts, m.features))
	}
	return m, nil
}

func word(data []byte, i int) uint32   { return binary.LittleEndian.Uint32(data[4*i:]) }
func float(data []byte, i int) float32 { return math.Float32frombits(word(data, i)) }

// Classes gives the number of classes.
func (m *Model) Classes() int { return m.classes }

// Scores gives the score of a sentence in every class: above zero speaks for it. Known is the share of the sentence's
// features that the model has seen.
func (m *Model) Scores(fs []wording.Feature) (scores []float32, known float64) {
	v := m.Vector(fs)
	sums := make([]float32, m.classes)
	for k, i := range v.Columns {
		m.add(sums, int(i), v.Values[k])
	}
	for i := range sums {
		sums[i] = sums[i]*m.scales[i] + m.offsets[i]
	}
	if len(fs) == 0 {
		return sums, 0
	}
	return sums, float64(len(v.Columns)) / float64(len(fs))
}

// Vector places a sentence in the space of the model.
func (m *Model) Vector(fs []wording.Feature) Vector {
	v := Vector{Columns: make([]int32, 0, len(fs)), Values: make([]float32, 0, len(fs))}
	blocks := make([]uint8, 0, len(fs))
	for _, f := range fs {
		if i, ok := m.find(f.Hash); ok {
			v.Columns = append(v.Columns, int32(i))
			v.Values = append(v.Values, weigh(f.Count, float(m.rarity, i)))
			blocks = append(blocks, f.Block)
		}
	}
	level(v.Values, blocks)
	return v
}

// Wider places a sentence in the space of the model and, of the features that the model does not know, those that are known
// otherwise. These are as rare as the rarest that it knows.
func (m *Model) Wider(fs []wording.Feature, known map[uint32]bool) Vector {
	type placed struct {
		column int32
		value  float32
		block  uint8
	}
	var all []placed
	for _, f := range fs {
		if i, ok := m.find(f.Hash); ok {
			all = append(all, placed{int32(i), weigh(f.Count, float(m.rarity, i)), f.Block})
		} else if known[f.Hash] {
			all = append(all, placed{int32(m.features) + int32(f.Hash>>2), weigh(f.Count, m.rarest()), f.Block})
		}
	}
	slices.SortFunc(all, func(a, b placed) int { return cmp.Compare(a.column, b.column) })
	v := Vector{Columns: make([]int32, len(all)), Values: make([]float32, len(all))}
	blocks := make([]uint8, len(all))
	for i, p := range all {
		v.Columns[i], v.Values[i], blocks[i] = p.column, p.value, p.block
	}
	level(v.Values, blocks)
	return v
}

// rarest gives the rarity of a feature that one sentence alone has.
func (m *Model) rarest() float32 {
	m.look.Do(func() {
		for i := range m.features {
			m.most = max(m.most, float(m.rarity, i))
		}
	})
	return m.most
}

func (m *Model) find(h uint32) (int, bool) {
	low, high := 0, m.features
	for low < high {
		mid := int(uint(low+high) >> 1)
		if word(m.hashes, mid) < h {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low, low < m.features && word(m.hashes, low) == h
}

func (m *Model) add(sums []float32, feature int, value float32) {
	w := m.weights[word(m.starts, feature):word(m.starts, feature+1)]
	class := 0
	for len(w) > 0 {
		step, n := binary.Uvarint(w)
		if n <= 0 || n >= len(w) || class+int(step) >= len(sums) {
			return
		}
		class += int(step)
		sums[class] += value * float32(int8(w[n]))
		w = w[n+1:]
	}
}
