# METADATA
# scope: package
# title: Fine fibers are taken for steel or for joints
# custom:
#   stage: order
#   severity: fix
#   engineer: true
#   why: "Fine synthetic fibers knit the paste together in its first hours and so hinder early cracks. They are too short and too weak to carry a load or to hold a crack of hardened concrete closed."
#   do: "Keep the structural steel and the joints. Where fibers are to replace steel it takes large synthetic or steel fibers at a dose whose strength after cracking was tested, chosen by an engineer."
package practice.steel["fibres-for-structure"]

here if input.steel.kind == "microfibres"

wrong contains "they are to replace structural steel" if {
	here
	input.steel.fibres_for == "structure"
}

wrong contains "they are to replace joints" if {
	here
	input.steel.fibres_for == "joints"
}

mend["steel.fibres_for"] := "plastic cracks"
