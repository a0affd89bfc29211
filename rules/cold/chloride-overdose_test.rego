package practice.cold["chloride-overdose_test"]

test_wrong_above_the_dose if {
	data.practice.cold["chloride-overdose"].wrong["the dose is above the largest"] with input as {"cold": {"chloride_dose": 4}}
}

test_right_at_the_dose if {
	count(data.practice.cold["chloride-overdose"].wrong) == 0 with input as {"cold": {"chloride_dose": 2}}
	data.practice.cold["chloride-overdose"].here with input as {"cold": {"chloride_dose": 2}}
}

test_not_here_without_chloride if {
	not data.practice.cold["chloride-overdose"].here with input as {"cold": {"chloride_dose": 0}}
}
