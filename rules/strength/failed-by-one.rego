# METADATA
# scope: package
# title: Concrete is rejected for one test within the allowed shortfall
# custom:
#   stage: after
#   severity: fix
#   engineer: true
#   why: "Tests scatter even when the concrete is the same, and about one in a hundred comes out low by chance. The rules reckon with that: one test may fall short by a set amount as long as the averages hold."
#   do: "Accept it if the averages of three hold. If a test falls further short, look into it first: how the cylinders were made and kept, then cores; nothing comes out for one cylinder."
#   numbers: [shortfall, lowest test against the least single result allowed]
package practice.strength["failed-by-one"]

here if input.strength.rejected == true

wrong contains "the test is not below what a single test may give" if {
	input.strength.rejected == true
	input.figure.single_margin >= 0
}

number["shortfall"] := {"yours": "figure.shortfall", "right": "figure.shortfall_allowed"}

number["lowest test against the least single result allowed"] := {"yours": "figure.lowest_test", "right": "figure.single_test_least"}

mend["strength.rejected"] := false
