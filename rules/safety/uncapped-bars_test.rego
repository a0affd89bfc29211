package practice.safety["uncapped-bars_test"]

bars(upright, capped) := {"safety": {"upright_bars": upright, "bars_capped": capped}}

test_uncapped if {
	data.practice.safety["uncapped-bars"].wrong["somebody could fall on them"] with input as bars(true, false)
}

test_capped_is_right if {
	got := data.practice.safety["uncapped-bars"] with input as bars(true, true)
	got.here
	count(got.wrong) == 0
}

test_no_upright_bars_is_not_here if {
	not data.practice.safety["uncapped-bars"].here with input as bars(false, false)
}
