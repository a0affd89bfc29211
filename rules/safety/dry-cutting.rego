# METADATA
# scope: package
# title: Hardened concrete is cut or ground dry
# custom:
#   stage: after
#   severity: fix
#   why: "The dust of cut concrete is partly silica, too fine to see or to cough up. It scars the lungs for good, and a dry hand-held saw puts many times the allowed amount into the air within minutes."
#   do: "Cut with water on the blade or with a shroud and a vacuum, stay out of the cloud, and wear a respirator where the table of the rule asks for one. An early-entry saw that runs dry counts as a dry saw unless its dust has been measured."
#   numbers: [silica in the air, level to watch from]
#   cautions: [dust]
package practice.safety["dry-cutting"]

here if input.safety.cutting in {"wet", "shroud", "dry"}

wrong contains "neither water nor a shroud with a vacuum keeps the dust down" if input.safety.cutting == "dry"

number["silica in the air"] := {"right": data.limit.safety.silica.limit, "unit": "ug/m3"}

number["level to watch from"] := {"right": data.limit.safety.silica.action, "unit": "ug/m3"}

mend["safety.cutting"] := "wet"
