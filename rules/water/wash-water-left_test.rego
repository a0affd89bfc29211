package practice.water["wash-water-left_test"]

test_wrong_not_counted if {
	data.practice.water["wash-water-left"].wrong["it was not counted as mixing water"] with input as {"water": {"wash": 20, "wash_counted": false}}
}

test_right_counted if {
	data.practice.water["wash-water-left"].here with input as {"water": {"wash": 20, "wash_counted": true}}
	count(data.practice.water["wash-water-left"].wrong) == 0 with input as {"water": {"wash": 20, "wash_counted": true}}
}

test_not_here_with_an_empty_drum if {
	not data.practice.water["wash-water-left"].here with input as {"water": {"wash": 0, "wash_counted": false}}
}
