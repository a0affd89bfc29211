# METADATA
# scope: package
# title: Curing compound where something must stick
# custom:
#   stage: order
#   severity: stop
#   why: "Glue, coating or topping then sticks to a film of wax or resin instead of to concrete, and the film keeps the slab from drying, too."
#   do: "Cure it under wet burlap or plastic instead, or use only a compound that the maker of the floor accepts in writing, or have it shot-blasted off."
#   numbers: [days under a sheet instead]
package practice.cure["compound-under-finish"]

here if {
	input.cure.method == "compound"
	input.floor.covering != "none"
}

wrong contains "it keeps the covering from bonding" if {
	here
	input.cure.compound_removed == false
}

number["days under a sheet instead"] := {"right": "range.curing_days_needed.high"}

mend["cure.method"] := "sheet"
