# METADATA
# scope: package
# title: The moisture test is made in a building that is not at its service conditions
# custom:
#   stage: after
#   severity: fix
#   why: "Warm dry air draws moisture to the top of a slab, cold damp air leaves it below. A test in an unheated building reads something that will not hold once people live in it."
#   do: "Bring the building to the temperature and humidity it will be used at, and keep it so for two days before and through the test."
#   numbers: [hours at service conditions, temperature of the room, humidity of the room]
package practice.moisture["test-conditions"]

tested if input.floor.judged_by in {"probes", "dome"}

here if tested

wrong contains "the building is not closed in" if {
	tested
	input.floor.closed_in == false
}

wrong contains "the room was not at service conditions for long enough" if {
	tested
	input.floor.conditioned_hours < data.limit.moisture.conditioned_hours
}

number["hours at service conditions"] := {"yours": "floor.conditioned_hours", "right": data.limit.moisture.conditioned_hours, "unit": "h"}

number["temperature of the room"] := {"yours": "floor.room_temperature", "low": data.limit.moisture.test_temperature.coldest, "high": data.limit.moisture.test_temperature.warmest, "unit": "F"}

number["humidity of the room"] := {"yours": "floor.room_humidity", "low": data.limit.moisture.test_humidity.driest, "high": data.limit.moisture.test_humidity.dampest, "unit": "%"}

mend["floor.closed_in"] := true

mend["floor.conditioned_hours"] := data.limit.moisture.conditioned_hours if not input.floor.conditioned_hours >= data.limit.moisture.conditioned_hours
