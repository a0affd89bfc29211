package practice.strength["failed-by-one_test"]

test_within_the_shortfall if {
	data.practice.strength["failed-by-one"].wrong["the test is not below what a single test may give"] with input as {"strength": {"rejected": true}, "figure": {"single_margin": 100}}
}

test_at_the_shortfall if {
	data.practice.strength["failed-by-one"].wrong["the test is not below what a single test may give"] with input as {"strength": {"rejected": true}, "figure": {"single_margin": 0}}
}

test_below_the_shortfall if {
	got := data.practice.strength["failed-by-one"] with input as {"strength": {"rejected": true}, "figure": {"single_margin": -1}}
	got.here
	count(got.wrong) == 0
}

test_not_rejected_is_not_here if {
	not data.practice.strength["failed-by-one"].here with input as {"strength": {"rejected": false}, "figure": {"single_margin": 100}}
}
