# METADATA
# scope: package
# title: The start falls into the worst hours
# custom:
#   stage: before
#   severity: mind
#   why: "What dries the surface is concrete temperature, dry air, wind and sun together, and they come together in the afternoon. A few hours earlier or later the same slab loses half as much water."
#   do: "Start at the hour given, so that placing and finishing fall into the calmer, cooler, damper part of the day."
#   numbers: [best start, worst evaporation, concrete temperature at the worst hour]
package practice.hot["bad-hour"]

here if {
	data.trade.flatwork
	input.weather.better_start == true
	input.figure.warmest_air > data.limit.hot.warm_air
}

wrong contains "another hour of the forecast dries it far less" if {
	here
	input.figure.start_evaporation > data.limit.hot.worth_moving
	input.figure.start_gain > data.limit.hot.least_gain
}

number["best start"] := {"yours": "weather.start_hour", "right": "figure.best_start"}

number["worst evaporation"] := {"yours": "figure.start_evaporation", "right": "figure.best_start_evaporation"}

number["concrete temperature at the worst hour"] := {"yours": "figure.start_concrete", "right": "figure.best_start_concrete"}

mend["weather.start_hour"] := input.figure.best_start
