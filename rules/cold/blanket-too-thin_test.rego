package practice.cold["blanket-too-thin_test"]

under(r) := {
	"protection": {"cover": "blankets", "r_value": r},
	"figure": {"coldest_air": 0, "r_needed": 3},
}

test_wrong_when_thinner if {
	data.practice.cold["blanket-too-thin"].wrong["the cover does not hold it until it stands freezing"] with input as under(1)
}

test_right_when_just_thick_enough if {
	count(data.practice.cold["blanket-too-thin"].wrong) == 0 with input as under(3)
	data.practice.cold["blanket-too-thin"].here with input as under(3)
}

test_not_here_without_cover_or_in_an_enclosure if {
	not data.practice.cold["blanket-too-thin"].here with input as object.union(under(1), {"protection": {"cover": "none"}})
	not data.practice.cold["blanket-too-thin"].here with input as object.union(under(1), {"protection": {"cover": "enclosure"}})
}

test_not_here_in_mild_weather if {
	not data.practice.cold["blanket-too-thin"].here with input as object.union(under(1), {"figure": {"coldest_air": 50}})
}

plastic(low, thickness) := {
	"protection": {"cover": "plastic"},
	"member": {"thickness": thickness},
	"figure": {"coldest_air": low},
}

test_wrong_under_bare_plastic_in_hard_frost if {
	data.practice.cold["blanket-too-thin"].wrong["a bare plastic sheet holds next to no warmth, and a thin section lies under it in hard frost"] with input as plastic(18, 4)
}

test_right_under_plastic_in_light_frost_or_where_it_is_thick if {
	count(data.practice.cold["blanket-too-thin"].wrong) == 0 with input as plastic(25, 4)
	count(data.practice.cold["blanket-too-thin"].wrong) == 0 with input as plastic(18, 12)
}
