# METADATA
# scope: package
# title: Dry hot ground and forms drink from the concrete
# custom:
#   stage: before
#   severity: fix
#   why: "A dry base and dry boards pull water out of the bottom and the sides while the sun takes it from the top. The concrete stiffens early, and the slab curls and cracks."
#   do: "Sprinkle base, forms and steel until they are damp and cool, and let every puddle soak in before the first truck."
package practice.hot["dry-ground-and-forms"]

here if input.ground.dry_and_hot == true

wrong contains "they are not dampened" if {
	here
	input.ground.dampened == false
}

mend["ground.dampened"] := true
