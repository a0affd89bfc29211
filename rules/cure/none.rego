# METADATA
# scope: package
# title: Nothing keeps the concrete moist
# custom:
#   stage: before
#   severity: fix
#   why: "Concrete hardens by taking up water, not by drying. Left open to the air it stops within days, and the skin, which has to wear and shed water, stops first: it dusts, crazes and scales."
#   do: "Cover it as soon as it will not mar: plastic or wet burlap held down at the edges, or a full coat of curing compound, for the days given."
#   numbers: [days of curing needed, share of strength without curing, share of strength after those days]
package practice.cure.none

here if input.cure.method != ""

wrong contains "no curing is planned" if {
	here
	input.cure.method == "none"
}

number["days of curing needed"] := {"yours": "cure.days", "right": "range.curing_days_needed.high"}

number["share of strength without curing"] := {"yours": "figure.strength_share_without_curing"}

number["share of strength after those days"] := {"right": "figure.strength_share_at_days_needed"}

mend["cure.method"] := "sheet"

mend["cure.days"] := input.range.curing_days_needed.high
