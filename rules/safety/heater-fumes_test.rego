package practice.safety["heater-fumes_test"]

tent(heater, people, air) := {"protection": {"heater": heater}, "safety": {"people_in_enclosure": people, "ventilated": air}}

test_fumes if {
	data.practice.safety["heater-fumes"].wrong["the heater exhausts where people work, and the air is neither changed nor measured"] with input as tent("unvented", true, false)
}

test_ventilated_is_right if {
	got := data.practice.safety["heater-fumes"] with input as tent("unvented", true, true)
	got.here
	count(got.wrong) == 0
}

test_vented_or_empty_is_not_here if {
	not data.practice.safety["heater-fumes"].here with input as tent("vented", true, false)
	not data.practice.safety["heater-fumes"].here with input as tent("unvented", false, false)
}
