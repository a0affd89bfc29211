# METADATA
# scope: package
# title: An average hides a test that fails
# custom:
#   stage: after
#   severity: fix
#   engineer: true
#   why: "An average lets strong loads make up for weak ones, but each load stands in its own place. That is why two things are asked of a series of tests: every average of three in a row reaches the specified strength, and no single test lies far below it."
#   do: "Judge the series by both. Where one fails, find the load and look into it, take cores if it matters, and raise the average of what is still to come."
#   numbers: [lowest average of three, margin of the lowest average of three, lowest test against the least single result allowed, margin of the lowest test, shortfall of the lowest test, average of all tests]
package practice.strength["average-hides-low"]

here if input.strength.judged_by == "average"

wrong contains "an average of three tests in a row is below the specified strength" if {
	input.strength.judged_by == "average"
	input.figure.running_margin < 0
}

wrong contains "a single test is further below the specified strength than is allowed" if {
	input.strength.judged_by == "average"
	input.figure.single_margin < 0
}

number["lowest average of three"] := {"yours": "figure.lowest_running_average", "right": "order.strength"}

number["margin of the lowest average of three"] := {"yours": "figure.running_margin", "right": 0, "unit": "psi"}

number["lowest test against the least single result allowed"] := {"yours": "figure.lowest_test", "right": "figure.single_test_least"}

number["margin of the lowest test"] := {"yours": "figure.single_margin", "right": 0, "unit": "psi"}

number["shortfall of the lowest test"] := {"yours": "figure.shortfall", "right": "figure.shortfall_allowed"}

number["average of all tests"] := {"yours": "figure.average_of_tests"}

mend["strength.judged_by"] := "criteria"
