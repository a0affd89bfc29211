package practice.moisture["no-retarder_test"]

slab(facts) := {"member": {"kind": "slab on ground"}, "floor": object.union({"covering": "resilient", "retarder": "direct", "sheet_permeance": 0.02, "sheet_thickness": 15}, facts)}

test_no_sheet if {
	got := data.practice.moisture["no-retarder"].wrong with input as slab({"retarder": "none"})
	got == {"there is no sheet below the slab"}
}

test_sheet_too_open_and_at_the_edge if {
	got := data.practice.moisture["no-retarder"].wrong with input as slab({"sheet_permeance": 0.3})
	got == {"the sheet lets too much vapor through"}
	edge := data.practice.moisture["no-retarder"].wrong with input as slab({"sheet_permeance": 0.1, "sheet_thickness": 10})
	count(edge) == 0
}

test_sheet_too_thin if {
	got := data.practice.moisture["no-retarder"].wrong with input as slab({"sheet_thickness": 6})
	got == {"the sheet is too thin to survive the work"}
}

test_good_sheet_is_right if {
	got := data.practice.moisture["no-retarder"] with input as slab({})
	got.here
	count(got.wrong) == 0
}

test_heated_room_without_covering if {
	got := data.practice.moisture["no-retarder"].wrong with input as slab({"covering": "none", "conditioned_room": true, "retarder": "none"})
	got == {"there is no sheet below the slab"}
}

test_bare_shed_is_not_here if {
	not data.practice.moisture["no-retarder"].here with input as slab({"covering": "none", "conditioned_room": false, "retarder": "none"})
}
