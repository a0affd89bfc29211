# METADATA
# scope: package
# title: Curing water that is too cold, or that will freeze
# custom:
#   stage: after
#   severity: fix
#   why: "Cold water on warm concrete shrinks the skin faster than the body, and it cracks. Water left on young concrete overnight in frost freezes in its pores and lifts the surface off."
#   do: "Let the water stand in the sun or mix it warm until it is within the difference given. Where frost is due, stop the water a day ahead and go over to plastic under blankets."
#   numbers: [largest temperature difference, coldest curing water, overnight low]
#   cautions: [ice]
package practice.cure["cold-water"]

here if input.cure.method in {"wet", "sprinkled"}

wrong contains "the water is much colder than the concrete" if {
	here
	input.figure.curing_water_difference > data.limit.cure.most_water_difference
}

wrong contains "the water will freeze overnight" if {
	here
	input.weather.low < data.limit.cure.freezing
	input.protection.cover in {"none", "plastic"}
}

number["largest temperature difference"] := {"yours": "figure.curing_water_difference", "right": data.limit.cure.most_water_difference}

number["coldest curing water"] := {"yours": "cure.water_temperature", "right": "figure.coldest_curing_water"}

number["overnight low"] := {"yours": "weather.low", "right": data.limit.cure.freezing}

mend["cure.water_temperature"] := input.figure.coldest_curing_water if input.figure.curing_water_difference > data.limit.cure.most_water_difference

mend["cure.method"] := "sheet" if input.weather.low < data.limit.cure.freezing
