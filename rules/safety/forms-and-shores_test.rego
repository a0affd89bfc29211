package practice.safety["forms-and-shores_test"]

shores(removed, agreed) := {"safety": {"supports_removed": removed, "designer_agreed": agreed}}

test_without_the_designer if {
	data.practice.safety["forms-and-shores"].wrong["the designer has not agreed to it"] with input as shores(true, false)
}

test_agreed_is_right if {
	got := data.practice.safety["forms-and-shores"] with input as shores(true, true)
	got.here
	count(got.wrong) == 0
}

test_shores_that_stay_are_not_here if {
	not data.practice.safety["forms-and-shores"].here with input as shores(false, false)
}
