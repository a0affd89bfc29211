package practice.delivery["too-old_test"]

late := "it is discharged after the time limit in force"

turned := "the drum has turned more than the limit in force"

test_wrong_after_the_limit_of_the_order if {
	data.practice.delivery["too-old"].wrong[late] with input as {"figure": {"load_age": 100}, "load": {"time_limit": 90, "limit_waived": false}}
}

test_wrong_after_the_default_of_an_old_edition if {
	data.practice.delivery["too-old"].wrong[late] with input as {
		"figure": {"load_age": 95},
		"load": {"limit_source": "standard", "limit_waived": false},
		"job": {"delivery_standard": "2013 to 2020"},
	}
}

test_right_by_an_edition_without_a_limit if {
	count(data.practice.delivery["too-old"].wrong) == 0 with input as {
		"figure": {"load_age": 95},
		"load": {"limit_source": "standard", "limit_waived": false},
		"job": {"delivery_standard": "2021 on"},
	}
}

test_wrong_after_too_many_turns_in_an_old_edition if {
	data.practice.delivery["too-old"].wrong[turned] with input as {
		"figure": {"load_age": 60},
		"load": {"limit_source": "standard", "limit_waived": false, "revolutions": 310},
		"job": {"delivery_standard": "to 2013"},
	}
}

test_right_by_a_later_edition_after_many_turns if {
	count(data.practice.delivery["too-old"].wrong) == 0 with input as {
		"figure": {"load_age": 60},
		"load": {"limit_source": "standard", "limit_waived": false, "revolutions": 310},
		"job": {"delivery_standard": "2013 to 2020"},
	}
}

test_right_when_set_aside_and_the_load_holds if {
	count(data.practice.delivery["too-old"].wrong) == 0 with input as {
		"figure": {"load_age": 110, "slump_least": 3},
		"load": {"waived_limit": 90, "limit_waived": true, "slump": 4, "temperature": 80},
		"water": {"added": 0},
	}
}

test_wrong_when_set_aside_but_watered if {
	data.practice.delivery["too-old"].wrong["the limit was set aside only while slump and temperature hold"] with input as {"figure": {"load_age": 110}, "load": {"waived_limit": 90, "limit_waived": true}, "water": {"added": 8}}
}

test_wrong_when_set_aside_but_stiff if {
	data.practice.delivery["too-old"].wrong["the limit was set aside only while slump and temperature hold"] with input as {"figure": {"load_age": 110, "slump_least": 3}, "load": {"waived_limit": 90, "limit_waived": true, "slump": 2}}
}

test_wrong_when_set_aside_but_hot if {
	data.practice.delivery["too-old"].wrong["the limit was set aside only while slump and temperature hold"] with input as {"figure": {"load_age": 110}, "load": {"waived_limit": 90, "limit_waived": true, "temperature": 97}}
}

test_right_at_the_limit if {
	count(data.practice.delivery["too-old"].wrong) == 0 with input as {"figure": {"load_age": 90}, "load": {"time_limit": 90, "limit_waived": false}}
}

test_not_here_without_a_load if {
	not data.practice.delivery["too-old"].here with input as {"figure": {}}
}
