package practice.finish["cement-dusted_test"]

job(dusted) := {"member": {"kind": "slab on ground"}, "finish": {"cement_dusted": dusted}}

test_wrong_when_dusted if {
	data.practice.finish["cement-dusted"].wrong["cement is worked into the bleed water"] with input as job(true)
}

test_right_without if {
	count(data.practice.finish["cement-dusted"].wrong) == 0 with input as job(false)
	data.practice.finish["cement-dusted"].here with input as job(false)
}

test_not_here_in_a_column if {
	not data.practice.finish["cement-dusted"].here with input as {"member": {"kind": "column"}, "finish": {"cement_dusted": true}}
}
