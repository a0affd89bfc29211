package practice.cold["placed-too-cold_test"]

batch(placed) := {"load": {"temperature": placed}, "figure": {"coldest_air": 25, "least_placing_temperature": 55}}

test_wrong_when_colder if {
	data.practice.cold["placed-too-cold"].wrong["it is colder than its section may be"] with input as batch(48)
}

test_right_at_the_least if {
	count(data.practice.cold["placed-too-cold"].wrong) == 0 with input as batch(55)
	data.practice.cold["placed-too-cold"].here with input as batch(55)
}

test_not_here_in_mild_weather if {
	not data.practice.cold["placed-too-cold"].here with input as object.union(batch(48), {"figure": {"coldest_air": 45}})
}
