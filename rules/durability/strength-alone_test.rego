package practice.durability["strength-alone_test"]

salted := {"exposure": {"salted": true, "freezes": true, "outdoors": true, "wet": "often"}, "member": {"kind": "slab on ground"}}

test_wrong_under_salt if {
	data.practice.durability["strength-alone"].wrong["its strength says little about frost, salt or sulfate"] with input as object.union(salted, {"order": {"taken_as_durable": true}})
}

test_wrong_in_sulfate_at_its_edge if {
	job := {"order": {"taken_as_durable": true}, "exposure": {"sulfate_soil": 0.1, "freezes": false, "salted": false}}
	data.practice.durability["strength-alone"].wrong["its strength says little about frost, salt or sulfate"] with input as job
}

test_not_taken_as_proof if {
	got := data.practice.durability["strength-alone"] with input as object.union(salted, {"order": {"taken_as_durable": false}})
	got.here
	count(got.wrong) == 0
}

test_not_here_indoors if {
	job := {"order": {"taken_as_durable": true}, "exposure": {"freezes": false, "seawater": false, "external_chloride": false, "sulfate_soil": 0, "sulfate_water": 0}}
	not data.practice.durability["strength-alone"].here with input as job
}
