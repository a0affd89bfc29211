package practice.joints["cut-too-late_test"]

job(hours) := {"member": {"kind": "slab on ground"}, "joints": {"made": true, "cut_after": hours}, "figure": {"saw_latest": 12}}

test_wrong_the_next_day if {
	data.practice.joints["cut-too-late"].wrong["the saw comes after the slab has begun to crack by itself"] with input as job(24)
}

test_right_at_the_latest_hour if {
	count(data.practice.joints["cut-too-late"].wrong) == 0 with input as job(12)
	data.practice.joints["cut-too-late"].here with input as job(12)
}

test_not_here_when_grooved_while_soft if {
	not data.practice.joints["cut-too-late"].here with input as job(0)
}
