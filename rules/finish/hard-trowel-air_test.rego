package practice.finish["hard-trowel-air_test"]

job(order, load) := {"finish": {"final": "hard trowel"}, "order": order, "load": load}

test_wrong_with_an_air_entrained_order if {
	data.practice.finish["hard-trowel-air"].wrong["the concrete is air-entrained"] with input as job({"entrained_air": true}, {})
}

test_wrong_with_too_much_air_ordered if {
	data.practice.finish["hard-trowel-air"].wrong["more air is ordered than a hard-troweled floor stands"] with input as job({"air": 5}, {})
}

test_wrong_with_too_much_air_measured if {
	data.practice.finish["hard-trowel-air"].wrong["more air was measured than a hard-troweled floor stands"] with input as job({}, {"air": 4.2})
}

test_right_at_the_edge if {
	count(data.practice.finish["hard-trowel-air"].wrong) == 0 with input as job({"air": 3, "entrained_air": false}, {"air": 3})
}

test_not_here_when_broomed if {
	not data.practice.finish["hard-trowel-air"].here with input as {"finish": {"final": "broom"}, "order": {"entrained_air": true}}
}
