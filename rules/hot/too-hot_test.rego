package practice.hot["too-hot_test"]

test_wrong_when_hotter if {
	data.practice.hot["too-hot"].wrong["it is above the highest temperature"] with input as {"load": {"temperature": 98}}
}

test_right_at_the_limit if {
	count(data.practice.hot["too-hot"].wrong) == 0 with input as {"load": {"temperature": 95}}
	data.practice.hot["too-hot"].here with input as {"load": {"temperature": 95}}
}

test_right_when_cooler if {
	count(data.practice.hot["too-hot"].wrong) == 0 with input as {"load": {"temperature": 70}}
}

test_not_here_without_a_temperature if {
	not data.practice.hot["too-hot"].here with input as {}
}
