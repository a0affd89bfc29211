package practice.durability["reactive-aggregate_test"]

outdoors(mix) := {"mix": mix, "exposure": {"outdoors": true}}

test_nothing_done if {
	data.practice.durability["reactive-aggregate"].wrong["no measure is taken against the reaction"] with input as outdoors({"reactive": true, "reaction_measure": "none"})
}

test_expansion_at_the_limit_is_not_here if {
	not data.practice.durability["reactive-aggregate"].here with input as outdoors({"expansion": 0.2, "reaction_measure": "none"})
}

test_expansion_over_the_limit if {
	data.practice.durability["reactive-aggregate"].wrong["no measure is taken against the reaction"] with input as outdoors({"expansion": 0.21, "reaction_measure": "none"})
}

test_too_many_alkalis if {
	job := object.union(outdoors({"reactive": true, "reaction_measure": "low alkali"}), {"figure": {"alkali_loading": 5.1}})
	data.practice.durability["reactive-aggregate"].wrong["there are too many alkalis in a yard for a low alkali loading"] with input as job
	few := object.union(job, {"figure": {"alkali_loading": 5}})
	got := data.practice.durability["reactive-aggregate"].wrong with input as few
	count(got) == 0
}

test_fly_ash_is_right if {
	got := data.practice.durability["reactive-aggregate"] with input as outdoors({"reactive": true, "reaction_measure": "pozzolan"})
	got.here
	count(got.wrong) == 0
}

test_dry_indoors_is_not_here if {
	job := {"mix": {"reactive": true, "reaction_measure": "none"}, "exposure": {"outdoors": false, "moist": false}}
	not data.practice.durability["reactive-aggregate"].here with input as job
}
