# Where a line is in the drink.
stage-mixed = pha trộn
stage-topping = nằm trong ly
stage-on-top = trên mặt
stage-steeped = ngâm
