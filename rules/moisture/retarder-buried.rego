# METADATA
# scope: package
# title: The vapor retarder is buried under sand or fill
# custom:
#   stage: before
#   severity: fix
#   why: "Sand on the sheet soaks up rain, curing water and what leaves the concrete, and holds it between the sheet and the slab like a saucer. It feeds the covering from below for years, and no drying from above gets at it."
#   do: "Cast the slab directly on the sheet when it will be covered, and meet curling with the mix, the curing, the joints and the steel."
package practice.moisture["retarder-buried"]

here if {
	data.trade.covered
	input.floor.retarder in {"direct", "buried"}
}

wrong contains "sand or fill on the sheet holds water below the covering" if {
	data.trade.covered
	input.floor.retarder == "buried"
}

mend["floor.retarder"] := "direct"
