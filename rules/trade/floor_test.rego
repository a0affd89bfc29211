package trade_test

test_floor_covered if {
	data.trade.covered with input as {"floor": {"covering": "tile"}}
	not data.trade.covered with input as {"floor": {"covering": "none"}}
	not data.trade.covered with input as {"floor": {}}
}

test_floor_dryness_guessed if {
	data.trade.dryness_guessed with input as {"floor": {"judged_by": "sheet"}}
	data.trade.dryness_guessed with input as {"floor": {"judged_by": "nothing"}}
	not data.trade.dryness_guessed with input as {"floor": {"judged_by": "probes"}}
	not data.trade.dryness_guessed with input as {"floor": {"judged_by": "dome"}}
	not data.trade.dryness_guessed with input as {"floor": {}}
}
