# Where a line is in the drink.
stage-mixed = mélangé
stage-topping = posé dans le gobelet
stage-on-top = sur le dessus
stage-steeped = infusé
