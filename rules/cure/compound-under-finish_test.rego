package practice.cure["compound-under-finish_test"]

job(covering, removed) := {"cure": {"method": "compound", "compound_removed": removed}, "floor": {"covering": covering}}

test_wrong_below_vinyl if {
	data.practice.cure["compound-under-finish"].wrong["it keeps the covering from bonding"] with input as job("resilient", false)
}

test_right_when_it_is_removed if {
	count(data.practice.cure["compound-under-finish"].wrong) == 0 with input as job("coating", true)
	data.practice.cure["compound-under-finish"].here with input as job("coating", true)
}

test_not_here_on_a_bare_floor if {
	not data.practice.cure["compound-under-finish"].here with input as job("none", false)
}
