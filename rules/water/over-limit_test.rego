package practice.water["over-limit_test"]

test_wrong_over_the_ratio if {
	data.practice.water["over-limit"].wrong["it would go over the water-cement ratio ordered"] with input as {
		"water": {"added": 14},
		"figure": {"wcm_after_water": 0.55},
		"order": {"ratio_limit": 0.5},
	}
}
