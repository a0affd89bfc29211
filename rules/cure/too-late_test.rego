package practice.cure["too-late_test"]

test_wrong_when_it_dries_first if {
	data.practice.cure["too-late"].wrong["it dries out before curing starts"] with input as {
		"cure": {"method": "sheet", "delay": 2},
		"figure": {"water_lost_before_curing": 0.3},
	}
}

test_wrong_by_the_next_morning if {
	data.practice.cure["too-late"].wrong["it stands uncovered for hours after finishing"] with input as {"cure": {"method": "sheet", "delay": 14}}
}

test_wrong_when_hosed_now_and_then if {
	data.practice.cure["too-late"].wrong["hosed down now and then, it dries out between the wettings"] with input as {"cure": {"method": "sprinkled"}}
}

test_right_at_the_edge if {
	count(data.practice.cure["too-late"].wrong) == 0 with input as {
		"cure": {"method": "compound", "delay": 6},
		"figure": {"water_lost_before_curing": 0.113},
	}
}

test_not_here_without_curing if {
	not data.practice.cure["too-late"].here with input as {"cure": {"method": "none", "delay": 3}}
}
