package practice.cold["chloride-with-metal_test"]

dosed(metal) := {
	"cold": {"accelerator": "calcium chloride"},
	"metal": object.union({"prestressed": false, "aluminum": false, "galvanized": false, "reinforced": false}, metal),
	"figure": {"chloride_by_cementitious": 0.98, "accelerator_chloride_limit": 0.3},
}

test_wrong_with_each_metal if {
	data.practice.cold["chloride-with-metal"].wrong["prestressing steel is in it"] with input as dosed({"prestressed": true})
	data.practice.cold["chloride-with-metal"].wrong["aluminum is in it"] with input as dosed({"aluminum": true})
	data.practice.cold["chloride-with-metal"].wrong["galvanized steel is in it or below it"] with input as dosed({"galvanized": true})
	data.practice.cold["chloride-with-metal"].wrong["with it there is more chloride than its steel may have"] with input as dosed({"reinforced": true})
}

test_right_in_plain_concrete if {
	count(data.practice.cold["chloride-with-metal"].wrong) == 0 with input as dosed({})
	data.practice.cold["chloride-with-metal"].here with input as dosed({})
}

test_right_at_the_limit if {
	count(data.practice.cold["chloride-with-metal"].wrong) == 0 with input as object.union(dosed({"reinforced": true}), {"figure": {"chloride_by_cementitious": 0.3}})
}

test_not_here_without_chloride if {
	not data.practice.cold["chloride-with-metal"].here with input as {"cold": {"accelerator": "non-chloride"}, "metal": {"prestressed": true}}
}
