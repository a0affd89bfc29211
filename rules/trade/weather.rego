package trade

# It is cold weather where the air will be cold while the concrete is young.
cold_weather if input.figure.coldest_air < data.limit.cold.cold_weather

# It is cool enough that the ground may be too cold for concrete.
cool_weather if input.figure.coldest_air < data.limit.ground.cool_weather

# No cover alone keeps the concrete from freezing until it is strong enough.
no_cover_is_enough if input.range.r_needed.low > data.limit.cold.thickest_cover

# No cover may be enough: what is not known yet decides.
a_cover_may_fall_short if input.range.r_needed.high > data.limit.cold.thickest_cover

# A cover is enough, whatever else comes out.
a_cover_is_enough if input.range.r_needed.high <= data.limit.cold.thickest_cover
