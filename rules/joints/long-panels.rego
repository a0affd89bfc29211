# METADATA
# scope: package
# title: The panels are too long for their width, or an inside corner has no joint
# custom:
#   stage: before
#   severity: fix
#   why: "A long narrow panel cracks across its middle, as if it wanted to be two square ones. An inside corner tears the slab like a notch in cloth, and a crack starts there nearly always."
#   do: "Keep panels close to square, never longer than one and a half times their width. End a joint at every inside corner; where that cannot be, lay two or three bars across the corner in the upper third."
#   numbers: [aspect ratio]
package practice.joints["long-panels"]

here if data.trade.slab_on_ground

wrong contains "a panel is too long for its width" if {
	here
	input.figure.panel_aspect > data.limit.joints.most_aspect
}

wrong contains "an inside corner has no joint" if {
	here
	input.joints.reentrant == "unjointed"
}

number["aspect ratio"] := {"yours": "figure.panel_aspect", "right": data.limit.joints.most_aspect}

mend["joints.panel_length"] := input.figure.longest_panel if input.figure.panel_aspect > data.limit.joints.most_aspect

mend["joints.panel_width"] := input.figure.panel_short_side if input.figure.panel_aspect > data.limit.joints.most_aspect

mend["joints.spacing"] := input.figure.longest_strip_panel if {
	input.figure.panel_aspect > data.limit.joints.most_aspect
	input.joints.spacing > input.figure.longest_strip_panel
}

mend["joints.reentrant"] := "jointed" if input.joints.reentrant == "unjointed"
