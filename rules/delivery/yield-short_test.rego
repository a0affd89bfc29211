package practice.delivery["yield-short_test"]

job(share) := {"mix": {"density": 145}, "figure": {"relative_yield": share}}

test_wrong_when_short if {
	data.practice.delivery["yield-short"].wrong["it fills less than the ticket says"] with input as job(0.965)
}

test_wrong_when_over if {
	data.practice.delivery["yield-short"].wrong["it fills more than the ticket says, so each yard holds less cement"] with input as job(1.04)
}

test_right_at_either_edge if {
	count(data.practice.delivery["yield-short"].wrong) == 0 with input as job(0.98)
	count(data.practice.delivery["yield-short"].wrong) == 0 with input as job(1.02)
}

test_not_here_without_a_unit_weight if {
	not data.practice.delivery["yield-short"].here with input as {"mix": {}}
}
