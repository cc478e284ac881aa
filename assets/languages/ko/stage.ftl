# Where a line is in the drink.
stage-mixed = 섞음
stage-topping = 컵에 담음
stage-on-top = 위에 올림
stage-steeped = 우림
