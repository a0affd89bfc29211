package practice.finish["evaporation-high_test"]

job(measure, now, worst) := {
	"member": {"kind": "slab on ground"},
	"finish": {"drying_measure": measure},
	"figure": {"evaporation": now, "evaporation_worst": worst},
}

test_wrong_now if {
	data.practice.finish["evaporation-high"].wrong["nothing is done against drying, and evaporation is beyond the limit"] with input as job("none", 0.26, 0.1)
}

test_wrong_later if {
	data.practice.finish["evaporation-high"].wrong["nothing is done against drying, and evaporation goes beyond the limit later"] with input as job("none", 0.1, 0.3)
}

test_right_with_fog if {
	count(data.practice.finish["evaporation-high"].wrong) == 0 with input as job("fogging", 0.3, 0.4)
}

test_right_at_the_edge if {
	count(data.practice.finish["evaporation-high"].wrong) == 0 with input as job("none", 0.2, 0.2)
	data.practice.finish["evaporation-high"].here with input as job("none", 0.2, 0.2)
}

test_wrong_sooner_where_it_hardly_bleeds if {
	data.practice.finish["evaporation-high"].wrong["nothing is done against drying, and evaporation is beyond the limit"] with input as object.union(job("none", 0.12, 0.12), {"mix": {"low_bleed": true}})
	count(data.practice.finish["evaporation-high"].wrong) == 0 with input as object.union(job("none", 0.12, 0.12), {"mix": {"low_bleed": false}})
}

test_wrong_soonest_in_an_overlay if {
	data.practice.finish["evaporation-high"].wrong["nothing is done against drying, and evaporation is beyond the limit"] with input as {
		"member": {"kind": "topping"},
		"mix": {"low_bleed": true},
		"finish": {"drying_measure": "none"},
		"figure": {"evaporation": 0.07},
	}
}

test_not_here_in_a_wall if {
	not data.practice.finish["evaporation-high"].here with input as {"member": {"kind": "wall"}}
}
