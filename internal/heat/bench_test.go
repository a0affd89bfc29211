package heat_test

import (
	"testing"

	"hearsay/internal/heat"
)

// coldNight is a 4 in slab on cold ground, placed at 60 °F in the morning before a clear night of 20 °F.
func coldNight() heat.Job {
	cement, _ := heat.CementType("I")
	return heat.Job{
		Section: heat.Section{
			Concrete: heat.NormalConcrete(15.6, 335, 160, cement), Thickness: 0.1, Edge: &heat.Edge{},
			Ground: []heat.Layer{{Soil: heat.Kersten(heat.Coarse, 2000, 0.05), Thickness: 0.15, Top: 3, Bottom: 4},
				{Soil: heat.Kersten(heat.Fine, 1600, 0.15), Thickness: 3, Top: 4, Bottom: 9}},
		},
		Weather: heat.Daily(-6.7, 4, heat.Hour{Humidity: 0.7, Wind: 3, Cloud: 0.2}, 9, 168, 0),
		Face:    heat.Face{Kind: heat.Outdoors, Sky: 1},
		Gain:    heat.Gain{Early: heat.Ordinary, Freezing: -1},
		Share:   500. / 4000,
	}
}

func BenchmarkRun72Hours(b *testing.B) {
	j := coldNight()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := heat.Run(j.Section, j.Weather, []heat.Change{{Top: j.Face}}, heat.Span{Hours: 72}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLeastCover(b *testing.B) {
	j := coldNight()
	b.ReportAllocs()
	for b.Loop() {
		if n, err := j.LeastCover(); err != nil || !n.Possible {
			b.Fatal(n, err)
		}
	}
}
