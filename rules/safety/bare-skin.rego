# METADATA
# scope: package
# title: Wet concrete is handled without gloves, boots and eye protection
# custom:
#   stage: during
#   severity: fix
#   why: "Wet concrete is as caustic as lye. It eats into skin for hours before it hurts, worst under wet knees and in filled boots, and a splash can cost an eye."
#   do: "Wear waterproof gloves, rubber boots and eye protection, kneel on boards, keep clean water at hand, and change soaked clothes at once."
#   cautions: [skin]
package practice.safety["bare-skin"]

here if input.safety.skin_protected in {true, false}

wrong contains "somebody touches it with bare skin or without eye protection" if input.safety.skin_protected == false

mend["safety.skin_protected"] := true
