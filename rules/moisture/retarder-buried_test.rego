package practice.moisture["retarder-buried_test"]

floor(covering, retarder) := {"floor": {"covering": covering, "retarder": retarder}}

test_sand_on_the_sheet if {
	data.practice.moisture["retarder-buried"].wrong["sand or fill on the sheet holds water below the covering"] with input as floor("wood", "buried")
}

test_directly_on_the_sheet_is_right if {
	got := data.practice.moisture["retarder-buried"] with input as floor("wood", "direct")
	got.here
	count(got.wrong) == 0
}

test_bare_floor_is_not_here if {
	not data.practice.moisture["retarder-buried"].here with input as floor("none", "buried")
}
