# METADATA
# scope: package
# title: Reactive aggregate in a moist place, and nothing is done against the reaction
# custom:
#   stage: order
#   severity: fix
#   engineer: true
#   why: "Some stone and sand dissolve in the alkalis of the cement and turn into a gel that soaks up water and swells. It takes years, it needs moisture, and once it has begun nothing stops it: the concrete cracks like a map."
#   do: "Have the aggregate tested with the cement it will meet; use enough fly ash or slag, shown by test to hold the expansion down, or limit the alkalis in a yard, or take other aggregate."
#   numbers: [alkali loading, mortar-bar expansion, fly ash that stops it, slag that stops it]
package practice.durability["reactive-aggregate"]

reactive if input.mix.reactive == true

reactive if input.mix.expansion > data.limit.durability.expansion.reactive

damp if input.exposure.moist == true

damp if input.exposure.outdoors == true

here if {
	reactive
	damp
}

wrong contains "no measure is taken against the reaction" if {
	reactive
	damp
	input.mix.reaction_measure == "none"
}

wrong contains "there are too many alkalis in a yard for a low alkali loading" if {
	reactive
	damp
	input.mix.reaction_measure == "low alkali"
	input.figure.alkali_loading > data.limit.durability.alkali_loading.mild
}

number["alkali loading"] := {
	"yours": "figure.alkali_loading", "right": data.limit.durability.alkali_loading.strict,
	"low": data.limit.durability.alkali_loading.strict, "high": data.limit.durability.alkali_loading.mild, "unit": "lb/yd3",
}

number["mortar-bar expansion"] := {"yours": "mix.expansion", "right": data.limit.durability.expansion.harmless, "unit": "%"}

number["fly ash that stops it"] := {
	"yours": "figure.fly_ash_share", "right": data.limit.durability.reaction_fly_ash.least,
	"low": data.limit.durability.reaction_fly_ash.least, "high": data.limit.durability.reaction_fly_ash.most, "unit": "%",
}

number["slag that stops it"] := {
	"yours": "figure.slag_share", "right": data.limit.durability.reaction_slag.least,
	"low": data.limit.durability.reaction_slag.least, "high": data.limit.durability.reaction_slag.most, "unit": "%",
}

mend["mix.reaction_measure"] := "pozzolan"
