# Where a line is in the drink.
stage-mixed = mixed in
stage-topping = sits in the cup
stage-on-top = on top
stage-steeped = steeped
