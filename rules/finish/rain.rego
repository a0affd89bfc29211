# METADATA
# scope: package
# title: Rain will meet an unfinished slab
# custom:
#   stage: before
#   severity: stop
#   costs: [tear_out_cost]
#   why: "Rain on concrete that has not set washes the paste out of the top, and whatever water is then worked in weakens what is left. Once it has set, rain does it no harm and even cures it."
#   do: "Have plastic and something to hold it down on site before the first truck, or move the day. If rain has fallen, let it run off or push it off, and never float it in."
#   numbers: [hours to final set against the hour of rain]
package practice.finish.rain

here if data.trade.flatwork

wrong contains "rain comes before it has set, and there is no cover" if {
	here
	input.finish.rain_cover == false
	input.figure.rain_before_set > 0
}

wrong contains "rain water is to be worked into the surface" if {
	here
	input.finish.rain_worked_in == true
}

number["hours to final set against the hour of rain"] := {"yours": "weather.rain_in", "right": "figure.final_set_hours"}

mend["finish.rain_cover"] := true

mend["finish.rain_worked_in"] := false
