# Where a line is in the drink.
stage-mixed = 混入
stage-topping = 放在杯中
stage-on-top = 最上层
stage-steeped = 浸泡
