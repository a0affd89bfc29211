# The largest water-cement ratio that the exposure allows, for the numbers of a finding: the strictest class that is
# known to apply, by name, with its least value where the edition is not known.
package trade

governing_ratio := "figure.ratio_c2" if governed_by_c2

governing_ratio := "figure.ratio_salted_flatwork" if governed_by_salt

governing_ratio := "figure.ratio_f2" if governed_by_f2

governing_ratio := "figure.ratio_watertight" if governed_by_water

governing_ratio := "figure.ratio_wet_flatwork" if governed_by_frost

governing_ratio := "figure.ratio_f1" if governed_by_f1

governing_strength := "figure.strength_c2" if governed_by_c2

governing_strength := data.limit.durability.salting_strength if governed_by_salt

governing_strength := "figure.strength_f2" if governed_by_f2

governing_strength := "figure.strength_watertight" if governed_by_water

governing_strength := "figure.strength_f1" if governed_by_f1

governing_least := input.range.ratio_c2.low if governed_by_c2

governing_least := input.range.ratio_salted_flatwork.low if governed_by_salt

governing_least := input.range.ratio_f2.low if governed_by_f2

governing_least := input.range.ratio_watertight.low if governed_by_water

governing_least := input.range.ratio_wet_flatwork.low if governed_by_frost

governing_least := input.range.ratio_f1.low if governed_by_f1

governing_water := input.range.water_c2.low if governed_by_c2

governing_water := input.range.water_salted_flatwork.low if governed_by_salt

governing_water := input.range.water_f2.low if governed_by_f2

governing_water := input.range.water_watertight.low if governed_by_water

governing_water := input.range.water_wet_flatwork.low if governed_by_frost

governing_water := input.range.water_f1.low if governed_by_f1

governed_by_c2 if {
	under_code
	salt_outside_steel
}

governed_by_salt if {
	salted
	not governed_by_c2
}

governed_by_f2 if {
	under_code
	freezes_often_wet
	not salted
	not governed_by_c2
}

governed_by_water if {
	under_code
	input.member.watertight == true
	not salted
	not freezes_often_wet
	not governed_by_c2
}

governed_by_frost if {
	freezes_often_wet
	not salted
	not under_code
}

governed_by_f1 if {
	under_code
	freezes_sometimes_wet
	not salted
	not freezes_often_wet
	not input.member.watertight == true
	not governed_by_c2
}
