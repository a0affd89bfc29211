package practice.cure["cold-water_test"]

test_wrong_with_cold_water if {
	data.practice.cure["cold-water"].wrong["the water is much colder than the concrete"] with input as {
		"cure": {"method": "wet"},
		"figure": {"curing_water_difference": 35},
	}
}

test_wrong_when_it_freezes if {
	data.practice.cure["cold-water"].wrong["the water will freeze overnight"] with input as {
		"cure": {"method": "wet"},
		"weather": {"low": 25},
		"protection": {"cover": "plastic"},
	}
}

test_right_at_the_edge if {
	count(data.practice.cure["cold-water"].wrong) == 0 with input as {
		"cure": {"method": "wet"},
		"figure": {"curing_water_difference": 20},
		"weather": {"low": 32},
		"protection": {"cover": "none"},
	}
}

test_right_in_a_heated_enclosure if {
	count(data.practice.cure["cold-water"].wrong) == 0 with input as {"cure": {"method": "wet"}, "weather": {"low": 10}, "protection": {"cover": "enclosure"}}
}

test_not_here_under_a_sheet if {
	not data.practice.cure["cold-water"].here with input as {"cure": {"method": "sheet"}}
}
