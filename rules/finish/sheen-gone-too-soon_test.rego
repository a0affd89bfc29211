package practice.finish["sheen-gone-too-soon_test"]

job(evaporation, bleeding) := {
	"member": {"kind": "slab on ground"},
	"finish": {"judged_by_sheen": true},
	"mix": {"bleeding": bleeding},
	"figure": {"evaporation": evaporation},
}

test_wrong_beyond_the_limit if {
	data.practice.finish["sheen-gone-too-soon"].wrong["evaporation is beyond what this concrete is sure to bleed"] with input as job(0.25, 0.3)
}

test_wrong_faster_than_it_bleeds if {
	data.practice.finish["sheen-gone-too-soon"].wrong["evaporation is faster than this concrete bleeds"] with input as job(0.15, 0.12)
}

test_right_at_the_edges if {
	count(data.practice.finish["sheen-gone-too-soon"].wrong) == 0 with input as job(0.2, 0.2)
	count(data.practice.finish["sheen-gone-too-soon"].wrong) == 0 with input as job(0.1, 0.05)
}

test_not_here_when_they_check_below_plastic if {
	not data.practice.finish["sheen-gone-too-soon"].here with input as {"member": {"kind": "slab on ground"}, "finish": {"judged_by_sheen": false}}
}
