package practice.durability.sulfate_test

limits := {"ratio_s1": 0.5, "ratio_s2": 0.45, "wcm": 0.44}

soil(percent, mix) := {"exposure": {"sulfate_soil": percent, "sulfate_water": 0, "seawater": false}, "mix": mix, "cold": {"accelerator": "none"}, "figure": limits}

test_moderate_begins_at_a_tenth if {
	job := soil(0.1, {"sulfate_resistance": "none", "cement_type": "I"})
	got := data.practice.durability.sulfate.wrong with input as job
	got == {"the cement is not made to stand moderate sulfate"}
}

test_below_a_tenth_is_not_here if {
	not data.practice.durability.sulfate.here with input as soil(0.09, {"sulfate_resistance": "none"})
}

test_type_two_stands_moderate_sulfate if {
	got := data.practice.durability.sulfate with input as soil(0.19, {"sulfate_resistance": "moderate", "cement_type": "II"})
	got.here
	count(got.wrong) == 0
}

test_type_two_does_not_stand_severe_sulfate if {
	data.practice.durability.sulfate.wrong["the cement stands moderate sulfate only"] with input as soil(0.2, {"sulfate_resistance": "moderate", "cement_type": "II"})
}

test_ordinary_cement_in_severe_sulfate if {
	data.practice.durability.sulfate.wrong["ordinary cement does not stand severe sulfate"] with input as soil(0.5, {"cement_type": "I"})
}

test_sea_water_is_moderate if {
	job := {"exposure": {"seawater": true}, "mix": {"sulfate_resistance": "none"}, "figure": limits}
	data.practice.durability.sulfate.wrong["the cement is not made to stand moderate sulfate"] with input as job
}

test_ratio_in_moderate_sulfate if {
	job := object.union(soil(0.15, {"sulfate_resistance": "high"}), {"figure": {"wcm": 0.51}})
	got := data.practice.durability.sulfate.wrong with input as job
	got == {"the water-cement ratio is above the limit for moderate sulfate"}
}

test_ratio_in_severe_sulfate if {
	job := object.union(soil(0.5, {"sulfate_resistance": "high"}), {"figure": {"wcm": 0.46}})
	got := data.practice.durability.sulfate.wrong with input as job
	got == {"the water-cement ratio is above the limit for severe sulfate"}
}

test_calcium_chloride_in_severe_sulfate if {
	job := object.union(soil(0.3, {"sulfate_resistance": "high"}), {"cold": {"accelerator": "calcium chloride"}})
	got := data.practice.durability.sulfate.wrong with input as job
	got == {"calcium chloride makes severe sulfate worse"}
}
