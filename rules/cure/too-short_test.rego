package practice.cure["too-short_test"]

short := "the cement needs more days at this temperature"

job(days) := {"cure": {"method": "sheet", "days": days}, "figure": {"curing_days_needed": 7}}

test_wrong_after_a_day if {
	data.practice.cure["too-short"].wrong[short] with input as job(1)
}

test_right_at_the_edge if {
	count(data.practice.cure["too-short"].wrong) == 0 with input as job(7)
	data.practice.cure["too-short"].here with input as job(7)
}

test_not_here_under_compound if {
	not data.practice.cure["too-short"].here with input as {"cure": {"method": "compound", "days": 2}}
}

test_not_here_without_curing if {
	not data.practice.cure["too-short"].here with input as {"cure": {"method": "none", "days": 0}}
}
