package trade

# It is cold weather where the air will be cold while the concrete is young.
cold_weather if input.figure.coldest_air < data.limit.cold.cold_weather

# It is cool enough that the ground may be too cold for concrete.
cool_weather if input.figure.coldest_air < data.limit.ground.cool_weather
