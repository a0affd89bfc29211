package practice.joints["filled-too-soon_test"]

job(days, share) := {
	"member": {"kind": "slab on ground"}, "joints": {"fill_needed": true, "filled_after": days},
	"figure": {"shrinkage_to_come_aci209": share},
}

test_wrong_after_a_month if {
	data.practice.joints["filled-too-soon"].wrong["the joints are filled while the slab still shortens much"] with input as job(30, 60)
}

test_wrong_after_a_long_cure if {
	data.practice.joints["filled-too-soon"].wrong["more than half of the shrinkage is still to come after so long a wet cure"] with input as job(61, 51)
}

test_right_at_the_edge if {
	count(data.practice.joints["filled-too-soon"].wrong) == 0 with input as job(60, 50)
	data.practice.joints["filled-too-soon"].here with input as job(60, 50)
}

test_not_here_when_joints_stay_open if {
	not data.practice.joints["filled-too-soon"].here with input as {"member": {"kind": "slab on ground"}, "joints": {"fill_needed": false}}
}
