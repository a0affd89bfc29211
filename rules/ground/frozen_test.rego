package practice.ground.frozen_test

test_wrong_when_frozen if {
	data.practice.ground.frozen.wrong["the ground is frozen"] with input as {"ground": {"state": "frozen"}}
}

test_right_when_thawed if {
	count(data.practice.ground.frozen.wrong) == 0 with input as {"ground": {"state": "thawed"}}
	data.practice.ground.frozen.here with input as {"ground": {"state": "thawed"}}
}

test_not_here_when_never_frozen if {
	not data.practice.ground.frozen.here with input as {"ground": {"state": "not frozen"}}
}
