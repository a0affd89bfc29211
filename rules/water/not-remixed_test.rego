package practice.water["not-remixed_test"]

test_wrong_too_few_revolutions if {
	data.practice.water["not-remixed"].wrong["the drum turned too little after it went in"] with input as {"water": {"added": 5}, "figure": {"revolutions_since": 10}}
}

test_wrong_for_an_admixture_too if {
	data.practice.water["not-remixed"].wrong["the drum turned too little after it went in"] with input as {"water": {"added": 0, "admixture_added": true}, "figure": {"revolutions_since": 29}}
}

test_right_at_the_limit if {
	data.practice.water["not-remixed"].here with input as {"water": {"added": 5}, "figure": {"revolutions_since": 30}}
	count(data.practice.water["not-remixed"].wrong) == 0 with input as {"water": {"added": 5}, "figure": {"revolutions_since": 30}}
}

test_not_here_without_an_addition if {
	not data.practice.water["not-remixed"].here with input as {"water": {"added": 0, "admixture_added": false}, "figure": {"revolutions_since": 0}}
}
