# METADATA
# scope: package
# title: The heater blows its exhaust over young concrete
# custom:
#   stage: during
#   severity: fix
#   why: "The exhaust of a burner is full of carbon dioxide. In the first day it turns the skin of the concrete soft: the floor dusts for good."
#   do: "Use a heater that is vented outside, an indirect, electric or hydronic one, or keep the exhaust away from the concrete for its first day and a half."
#   cautions: [fumes]
package practice.cold["unvented-heater"]

here if input.protection.heater in {"vented", "unvented"}

wrong contains "its exhaust reaches the young concrete" if {
	here
	input.protection.heater == "unvented"
}

mend["protection.heater"] := "vented"
