package practice.cure["compound-thin_test"]

job(coverage) := {"cure": {"method": "compound"}, "figure": {"compound_coverage": coverage, "compound_coverage_allowed": 200}}

test_wrong_when_stretched if {
	data.practice.cure["compound-thin"].wrong["there is too little of it for this area"] with input as job(310)
}

test_right_at_the_edge if {
	count(data.practice.cure["compound-thin"].wrong) == 0 with input as job(200)
}

test_not_here_under_a_sheet if {
	not data.practice.cure["compound-thin"].here with input as {"cure": {"method": "sheet"}}
}
