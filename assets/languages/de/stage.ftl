# Where a line is in the drink.
stage-mixed = untergemischt
stage-topping = liegt im Becher
stage-on-top = obenauf
stage-steeped = zieht darin
