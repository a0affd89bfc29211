package practice.durability["air-short_test"]

driveway := {
	"member": {"kind": "slab on ground"},
	"exposure": {"freezes": true, "outdoors": true},
	"figure": {"air_often_wet": 6, "air_sometimes_wet": 5},
}

wall(wet) := {"member": {"kind": "wall"}, "exposure": {"freezes": true, "outdoors": true, "wet": wet}, "figure": {"air_often_wet": 6, "air_sometimes_wet": 5}}

test_driveway_short if {
	data.practice.durability["air-short"].wrong["it is below what concrete needs that freezes while often wet"] with input as object.union(driveway, {"order": {"air": 3}})
}

test_driveway_at_the_table if {
	got := data.practice.durability["air-short"] with input as object.union(driveway, {"order": {"air": 6}})
	got.here
	count(got.wrong) == 0
}

test_wall_wet_now_and_then if {
	data.practice.durability["air-short"].wrong["it is below what concrete needs that freezes while wet now and then"] with input as object.union(wall("sometimes"), {"order": {"air": 4.5}})
	got := data.practice.durability["air-short"].wrong with input as object.union(wall("sometimes"), {"order": {"air": 5}})
	count(got) == 0
}

test_dry_wall_is_not_here if {
	not data.practice.durability["air-short"].here with input as object.union(wall("dry"), {"order": {"air": 1}})
}

test_indoors_is_not_here if {
	not data.practice.durability["air-short"].here with input as {"member": {"kind": "slab on ground"}, "exposure": {"freezes": false, "outdoors": false}, "order": {"air": 1}}
}
