package figure

// fields lists the figures field by field. A new field adds its line here; a new figure of a field adds nothing.
func fields() [][]Figure {
	return [][]Figure{
		mixFigures(),
		costFigures(),
		evaporationFigures(),
		dryingFigures(),
		settingFigures(),
		deliveryFigures(),
		curingFigures(),
		finishingFigures(),
	}
}
