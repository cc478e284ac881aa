# Where a line is in the drink.
stage-mixed = mezclado
stage-topping = reposa en el vaso
stage-on-top = por encima
stage-steeped = infusionado
