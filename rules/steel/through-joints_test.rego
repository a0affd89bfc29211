package practice.steel["through-joints_test"]

job(through, ratio) := {
	"member": {"kind": "slab on ground"}, "joints": {"made": true}, "metal": {"reinforced": true},
	"steel": {"through_joints": through}, "figure": {"steel_through_joints": ratio},
}

test_wrong_with_heavy_steel_through_the_joint if {
	data.practice.steel["through-joints"].wrong["more steel runs through the joints than lets them open"] with input as job("continuous", 0.4)
}

test_right_at_the_small_ratio if {
	count(data.practice.steel["through-joints"].wrong) == 0 with input as job("continuous", 0.1)
	data.practice.steel["through-joints"].here with input as job("continuous", 0.1)
}

test_not_here_when_cut if {
	not data.practice.steel["through-joints"].here with input as job("cut", 0)
}
