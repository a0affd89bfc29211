# METADATA
# scope: package
# title: The ground is too cold for the concrete
# custom:
#   stage: before
#   severity: fix
#   why: "A cold base takes the heat out of the bottom of the slab. The top sets and is finished while the bottom is still soft and bleeding, and the crust tears, blisters and delaminates."
#   do: "Cover or heat the base the day before until it is as warm as given, and do not order the concrete hotter to make up for it."
#   numbers: [ground temperature, concrete temperature, concrete temperature less ground temperature, bottom of the slab after six hours, delay of set at the bottom]
package practice.ground["colder-than-concrete"]

here if {
	data.trade.cool_weather
	data.trade.on_ground
	not_frozen
}

not_frozen if input.ground.state != "frozen"

not_frozen if input.ground.temperature > data.limit.ground.freezing

wrong contains "it is colder than this section allows" if {
	here
	input.ground.temperature < input.figure.least_ground_temperature
}

number["ground temperature"] := {"yours": "ground.temperature", "right": "figure.least_ground_temperature"}

number["concrete temperature"] := {"yours": "load.temperature"}

number["concrete temperature less ground temperature"] := {"yours": "figure.ground_difference"}

number["bottom of the slab after six hours"] := {"yours": "figure.bottom_temperature"}

number["delay of set at the bottom"] := {"yours": "figure.set_delay"}

mend["ground.temperature"] := input.range.least_ground_temperature.high
