package practice.steel["on-the-ground_test"]

job(position, depth) := {
	"member": {"kind": "slab on ground"}, "metal": {"reinforced": true},
	"steel": {"position": position, "depth": depth}, "figure": {"mid_depth": 2},
}

test_wrong_when_nothing_holds_it_up if {
	data.practice.steel["on-the-ground"].wrong["nothing holds it up while the concrete is placed"] with input as job("on the ground", 2)
	data.practice.steel["on-the-ground"].wrong["nothing holds it up while the concrete is placed"] with input as job("pulled up", 2)
	data.practice.steel["on-the-ground"].wrong["nothing holds it up while the concrete is placed"] with input as job("walked in", 2)
}

test_wrong_below_the_middle if {
	data.practice.steel["on-the-ground"].wrong["it lies below the middle of the slab"] with input as job("supported", 3)
}

test_right_at_the_middle if {
	count(data.practice.steel["on-the-ground"].wrong) == 0 with input as job("supported", 2)
	data.practice.steel["on-the-ground"].here with input as job("supported", 2)
}

test_not_here_in_a_plain_slab if {
	not data.practice.steel["on-the-ground"].here with input as {"member": {"kind": "slab on ground"}, "metal": {"reinforced": false}, "steel": {}}
}
