package practice.order["thickness-unfit_test"]

slab(use, thickness) := {"member": {"kind": "slab on ground", "use": use, "thickness": thickness}}

test_wrong_at_a_house if {
	data.practice.order["thickness-unfit"].wrong["it is thinner than a slab at a house should be"] with input as slab("driveway", 3)
}

test_wrong_by_the_code if {
	data.practice.order["thickness-unfit"].wrong["it is thinner than the code's least for a floor"] with input as slab("basement floor", 3)
}

test_wrong_for_work if {
	data.practice.order["thickness-unfit"].wrong["it is thinner than slabs for this work usually are"] with input as slab("warehouse floor", 5)
}

test_right_at_the_limit if {
	every case in [["driveway", 4], ["basement floor", 3.5], ["warehouse floor", 6]] {
		data.practice.order["thickness-unfit"].here with input as slab(case[0], case[1])
		count(data.practice.order["thickness-unfit"].wrong) == 0 with input as slab(case[0], case[1])
	}
}

test_not_here_for_a_wall if {
	not data.practice.order["thickness-unfit"].here with input as {"member": {"kind": "wall", "use": "wall", "thickness": 2}}
}

test_wrong_for_any_slab if {
	data.practice.order["thickness-unfit"].wrong["it is thinner than any slab on the ground should be"] with input as {"member": {"kind": "slab on ground", "thickness": 3}}
	count(data.practice.order["thickness-unfit"].wrong) == 0 with input as {"member": {"kind": "slab on ground", "thickness": 3.5}}
}
