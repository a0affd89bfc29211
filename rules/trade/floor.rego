# Floors and their moisture.
package trade

# It will be covered with something that moisture can lift or stain.
covered if input.floor.covering != "none"

# Dryness is not judged by a test that sees below the surface.
dryness_guessed if input.floor.judged_by in {"sheet", "meter", "look", "age", "nothing"}
