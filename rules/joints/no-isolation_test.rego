package practice.joints["no-isolation_test"]

job(against) := {"member": {"kind": "slab on ground"}, "joints": {"against": against}}

test_wrong_when_tight if {
	data.practice.joints["no-isolation"].wrong["it is cast tight against walls, columns or older slabs"] with input as job("tight")
}

test_right_with_strips if {
	count(data.practice.joints["no-isolation"].wrong) == 0 with input as job("isolated")
	data.practice.joints["no-isolation"].here with input as job("isolated")
}

test_not_here_when_it_meets_nothing if {
	not data.practice.joints["no-isolation"].here with input as job("nothing")
}

test_edge_no_member_but_a_slab if {
	not data.practice.joints["no-isolation"].here with input as {"member": {"kind": "wall"}, "joints": {"against": "tight"}}
}
