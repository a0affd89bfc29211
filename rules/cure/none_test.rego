package practice.cure.none_test

test_wrong_without_curing if {
	data.practice.cure.none.wrong["no curing is planned"] with input as {"cure": {"method": "none"}}
}

test_right_under_a_sheet if {
	count(data.practice.cure.none.wrong) == 0 with input as {"cure": {"method": "sheet"}}
	data.practice.cure.none.here with input as {"cure": {"method": "sheet"}}
}

test_not_here_when_nothing_is_said if {
	not data.practice.cure.none.here with input as {"cure": {}}
}
