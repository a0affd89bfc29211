package practice.order["unfit-strength_test"]

test_wrong_too_weak if {
	data.practice.order["unfit-strength"].wrong["it is below the least strength for this use and exposure"] with input as {"order": {"strength": 3000}, "figure": {"least_strength": 4500}}
}

test_right_at_the_limit if {
	data.practice.order["unfit-strength"].here with input as {"order": {"strength": 4500}, "figure": {"least_strength": 4500}}
	count(data.practice.order["unfit-strength"].wrong) == 0 with input as {"order": {"strength": 4500}, "figure": {"least_strength": 4500}}
}

test_not_here_without_a_strength if {
	not data.practice.order["unfit-strength"].here with input as {"order": {"basis": "bags"}, "figure": {"least_strength": 4500}}
}
