package practice.hot["dry-ground-and-forms_test"]

test_wrong_when_left_dry if {
	data.practice.hot["dry-ground-and-forms"].wrong["they are not dampened"] with input as {"ground": {"dry_and_hot": true, "dampened": false}}
}

test_right_when_dampened if {
	count(data.practice.hot["dry-ground-and-forms"].wrong) == 0 with input as {"ground": {"dry_and_hot": true, "dampened": true}}
	data.practice.hot["dry-ground-and-forms"].here with input as {"ground": {"dry_and_hot": true, "dampened": true}}
}

test_not_here_when_damp_anyway if {
	not data.practice.hot["dry-ground-and-forms"].here with input as {"ground": {"dry_and_hot": false, "dampened": false}}
}
