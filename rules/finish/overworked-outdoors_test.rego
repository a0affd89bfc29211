package practice.finish["overworked-outdoors_test"]

job(finish) := {"member": {"kind": "slab on ground"}, "exposure": {"outdoors": true}, "finish": finish}

test_wrong_when_troweled if {
	data.practice.finish["overworked-outdoors"].wrong["it is to be steel-troweled"] with input as job({"final": "light trowel"})
}

test_wrong_with_many_passes if {
	data.practice.finish["overworked-outdoors"].wrong["it is worked over too often"] with input as job({"final": "broom", "passes": 5})
}

test_right_at_the_edge if {
	count(data.practice.finish["overworked-outdoors"].wrong) == 0 with input as job({"final": "broom", "passes": 3})
	data.practice.finish["overworked-outdoors"].here with input as job({"final": "broom"})
}

test_not_here_indoors if {
	not data.practice.finish["overworked-outdoors"].here with input as {"member": {"kind": "slab on ground"}, "exposure": {"outdoors": false}}
}
