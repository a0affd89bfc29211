# METADATA
# scope: package
# title: No proper vapor retarder lies below the slab
# custom:
#   stage: before
#   severity: fix
#   why: "The ground below a slab is damp everywhere, however deep the water lies, and its vapor rises through the concrete for as long as the building stands. Under a covering it collects, lifts glue and feeds mold."
#   do: "Lay a sheet made for it below the slab: lapped, taped, sealed around pipes and turned up at the edges."
#   numbers: [permeance of the sheet, thickness of the sheet]
package practice.moisture["no-retarder"]

here if needed

needed if {
	input.member.kind == "slab on ground"
	data.trade.covered
}

needed if {
	input.member.kind == "slab on ground"
	input.floor.conditioned_room == true
}

wrong contains "there is no sheet below the slab" if {
	needed
	input.floor.retarder == "none"
}

wrong contains "the sheet lets too much vapor through" if {
	needed
	input.floor.sheet_permeance > data.limit.moisture.most_permeance
}

wrong contains "the sheet is too thin to survive the work" if {
	needed
	input.floor.sheet_thickness < data.limit.moisture.least_sheet
}

number["permeance of the sheet"] := {"yours": "floor.sheet_permeance", "right": data.limit.moisture.most_permeance, "unit": "perm"}

number["thickness of the sheet"] := {"yours": "floor.sheet_thickness", "right": data.limit.moisture.least_sheet, "unit": "mil"}

mend["floor.retarder"] := "direct"

mend["floor.sheet_permeance"] := data.limit.moisture.most_permeance if not input.floor.sheet_permeance <= data.limit.moisture.most_permeance

mend["floor.sheet_thickness"] := data.limit.moisture.least_sheet if not input.floor.sheet_thickness >= data.limit.moisture.least_sheet
