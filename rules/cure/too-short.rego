# METADATA
# scope: package
# title: Curing stops too soon
# custom:
#   stage: after
#   severity: fix
#   why: "Hard enough to walk on is a beginning. The top of a slab dries within hours of uncovering and then gains next to nothing, and slow cements and cool weather need longer to get as far."
#   do: "Keep it covered or wet for the days given, or put on a full coat of curing compound on the day the cover comes off."
#   numbers: [days of curing needed, strength reached at the end of the days planned]
package practice.cure["too-short"]

here if {
	input.cure.days > 0
	input.cure.method != "compound"
}

wrong contains "the cement needs more days at this temperature" if {
	here
	input.cure.days < input.figure.curing_days_needed
}

number["days of curing needed"] := {"yours": "cure.days", "right": "range.curing_days_needed.high"}

number["strength reached at the end of the days planned"] := {"yours": "figure.strength_share_at_days", "right": "figure.strength_share_at_days_needed"}

mend["cure.days"] := input.range.curing_days_needed.high
