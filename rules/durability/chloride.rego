# METADATA
# scope: package
# title: There is too much chloride in the concrete for the steel in it
# custom:
#   stage: order
#   severity: fix
#   engineer: true
#   why: "Concrete keeps steel from rusting by a thin film on the steel. Chloride eats through that film, and rust takes several times the room of the steel: the concrete cracks over the bars and spalls. What is mixed in does as much harm as salt from outside."
#   do: "Leave calcium chloride out, take an accelerator without chloride, and have all sources added up: cement, aggregates, water and every admixture."
#   numbers: [chloride from all sources, chloride from calcium chloride]
package practice.durability.chloride

here if input.metal.reinforced == true

here if input.metal.prestressed == true

wrong contains "it is above the limit for prestressed concrete" if {
	input.metal.prestressed == true
	input.figure.chloride_by_cementitious > data.limit.durability.chloride.prestressed
}

wrong contains "it is above the limit for reinforced concrete" if {
	input.metal.reinforced == true
	input.figure.chloride_by_cementitious > input.figure.chloride_limit
}

# Up to 2014 the limits are by mass of cement alone, which is stricter where there is fly ash or slag.
by_cement if input.job.concrete_code in {"318-08", "318-11", "318-14"}

wrong contains "by mass of cement it is above the limit for prestressed concrete" if {
	by_cement
	input.metal.prestressed == true
	input.figure.chloride_by_cement > data.limit.durability.chloride.prestressed
}

wrong contains "by mass of cement it is above the limit for reinforced concrete" if {
	by_cement
	input.metal.reinforced == true
	input.figure.chloride_by_cement > input.figure.chloride_limit
}

most := data.limit.durability.chloride.prestressed if input.metal.prestressed == true

most := input.range.chloride_limit.low if not input.metal.prestressed == true

number["chloride from all sources"] := {"yours": "figure.chloride_by_cementitious", "right": most, "unit": "%"}

number["chloride from calcium chloride"] := {"yours": "figure.chloride_added", "right": 0, "unit": "%"}

mend["cold.accelerator"] := "non-chloride"

mend["cold.chloride_dose"] := 0

mend["mix.other_chloride"] := most if not input.mix.chloride

mend["mix.chloride"] := most if input.mix.chloride > most
