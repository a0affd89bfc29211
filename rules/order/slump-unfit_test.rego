package practice.order["slump-unfit_test"]

slab(slump, raised) := {"order": {"slump": slump, "slump_raised_with": raised}, "member": {"kind": "slab on ground"}}

test_wrong_too_stiff if {
	data.practice.order["slump-unfit"].wrong["it is stiffer than this work can be placed"] with input as slab(0.5, "nothing")
}

test_wrong_too_wet_without_an_admixture if {
	data.practice.order["slump-unfit"].wrong["it is wetter than this work takes without an admixture"] with input as slab(6, "nothing")
}

test_wrong_raised_with_water if {
	data.practice.order["slump-unfit"].wrong["water is to raise it where an admixture should"] with input as slab(5, "water")
}

test_wrong_beyond_slump if {
	data.practice.order["slump-unfit"].wrong["it is beyond what slump can measure, even with an admixture"] with input as slab(10, "admixture")
}

test_right_at_the_edges if {
	every case in [[1, "nothing"], [4, "water"], [5, "nothing"], [9, "admixture"]] {
		count(data.practice.order["slump-unfit"].wrong) == 0 with input as slab(case[0], case[1])
	}
}

test_not_here_without_a_slump if {
	not data.practice.order["slump-unfit"].here with input as {"member": {"kind": "slab on ground"}}
}
