package trade_test

test_weather_cold_below_its_limit if {
	data.trade.cold_weather with input as {"figure": {"coldest_air": data.limit.cold.cold_weather - 1}}
	not data.trade.cold_weather with input as {"figure": {"coldest_air": data.limit.cold.cold_weather}}
	not data.trade.cold_weather with input as {"weather": {"air": 0}}
}

test_weather_cool_below_its_limit if {
	data.trade.cool_weather with input as {"figure": {"coldest_air": data.limit.ground.cool_weather - 1}}
	not data.trade.cool_weather with input as {"figure": {"coldest_air": data.limit.ground.cool_weather}}
	not data.trade.cool_weather with input as {}
}

test_weather_cover_that_is_enough if {
	thickest := data.limit.cold.thickest_cover
	data.trade.a_cover_is_enough with input as {"range": {"r_needed": {"low": 0, "high": thickest}}}
	not data.trade.a_cover_is_enough with input as {"range": {"r_needed": {"low": 0, "high": thickest + 0.1}}}
	not data.trade.a_cover_is_enough with input as {}
}

test_weather_no_cover_is_enough if {
	thickest := data.limit.cold.thickest_cover
	data.trade.no_cover_is_enough with input as {"range": {"r_needed": {"low": thickest + 0.1, "high": 100}}}
	not data.trade.no_cover_is_enough with input as {"range": {"r_needed": {"low": thickest, "high": 100}}}
	not data.trade.no_cover_is_enough with input as {}
}
