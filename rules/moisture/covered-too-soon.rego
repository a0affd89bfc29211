# METADATA
# scope: package
# title: The floor is covered before it is dry
# custom:
#   stage: after
#   severity: stop
#   costs: [tear_out_cost]
#   why: "Concrete holds far more water than it needs and gives it off slowly, from the bottom up. A covering laid too soon locks it in; the water gathers below it, softens the glue and comes up as bubbles, stains and smell months later."
#   do: "Close the building in, keep the room warm and dry, and cover the floor when a test below the surface meets what the maker of the covering allows; the date is a forecast, the test decides."
#   numbers: [days of drying, age when it is covered, humidity in the slab, humidity above the limit, vapor emission, vapor emission above the limit]
package practice.moisture["covered-too-soon"]

here if data.trade.covered

here if {
	input.floor.judged_by == "probes"
	input.floor.humidity_limit > 0
}

here if {
	input.floor.judged_by == "dome"
	input.floor.emission_limit > 0
}

wrong contains "the humidity in the slab is above what the covering allows" if {
	input.floor.judged_by == "probes"
	input.floor.humidity_reading > input.floor.humidity_limit
}

wrong contains "the vapor emission is above what the covering allows" if {
	input.floor.judged_by == "dome"
	input.floor.emission_reading > input.floor.emission_limit
}

wrong contains "no published slab like it has dried so soon" if {
	data.trade.covered
	input.range.drying_time.high < input.range.days_to_dry.low
}

wrong contains "it has hardly had the time to dry, and no test shows otherwise" if {
	data.trade.covered
	data.trade.dryness_guessed
	input.figure.drying_time < input.figure.days_to_dry
}

number["days of drying"] := {"yours": "figure.drying_time", "right": "figure.days_to_dry"}

number["age when it is covered"] := {"yours": "floor.days_to_covering"}

number["humidity in the slab"] := {"yours": "floor.humidity_reading", "right": "floor.humidity_limit"}

number["humidity above the limit"] := {"yours": "figure.humidity_over", "right": 0, "unit": "%"}

number["vapor emission above the limit"] := {"yours": "figure.emission_over", "right": 0, "unit": "lb/1000ft2/d"}

number["vapor emission"] := {"yours": "floor.emission_reading", "right": "floor.emission_limit"}

mend["floor.drying_days"] := input.range.days_to_dry.high

mend["floor.days_to_covering"] := input.range.days_to_dry.high if not input.floor.days_to_covering >= input.range.days_to_dry.high

mend["floor.humidity_reading"] := input.floor.humidity_limit if input.floor.humidity_reading > input.floor.humidity_limit

mend["floor.emission_reading"] := input.floor.emission_limit if input.floor.emission_reading > input.floor.emission_limit
