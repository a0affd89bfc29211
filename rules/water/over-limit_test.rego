package practice.water["over-limit_test"]

load(added, after, ticket) := {"water": {"added": added}, "figure": {"wcm_after_water": after, "ticket_water": ticket}, "order": {"ratio_limit": 0.5}}

test_wrong_over_the_ratio if {
	data.practice.water["over-limit"].wrong["it would go over the water-cement ratio ordered"] with input as load(14, 0.55, 20)
}

test_wrong_over_the_ticket if {
	data.practice.water["over-limit"].wrong["it is more than the ticket allows"] with input as load(14, 0.48, 10)
}

test_right_at_both_limits if {
	data.practice.water["over-limit"].here with input as load(10, 0.5, 10)
	count(data.practice.water["over-limit"].wrong) == 0 with input as load(10, 0.5, 10)
}

test_not_here_without_water if {
	not data.practice.water["over-limit"].here with input as load(0, 0.45, 10)
}
