# Published guidance that a shop can hold its drinks against: name, who publishes it, what it counts.
yardstick-singapore-name = beverage grade, Singapore
yardstick-singapore-publisher = Singapore Food Regulations, Sixteenth Schedule (S 451/2023, in force 30 December 2023)
yardstick-singapore-definition = per 100 ml of the liquid as it is served, without toppings; total sugars less lactose (the scheme also leaves out galactose, which is not known separately and stays in); the poorer of sugar and saturates; any sweetener or polyol rules out A
yardstick-uk-bands-name = front-of-pack bands for drinks, United Kingdom
yardstick-uk-bands-publisher = UK Department of Health and Food Standards Agency, Guide to creating a front of pack nutrition label, 2013, updated 2016
# $portion is a volume.
yardstick-uk-bands-definition = total sugars, fat, saturates and salt per 100 ml of the liquid as it is served, without toppings; a portion above { $portion } is also high when the whole portion is above the line for a portion
yardstick-who-name = free sugars of a day, world
yardstick-who-publisher = World Health Organization, Guideline: Sugars intake for adults and children, 2015
yardstick-who-definition = free sugars of the whole drink; below 10 % of a day's energy (strong recommendation) and below 5 % (conditional) are 50 g and 25 g at 2000 kcal; honey, syrups and juices count, lactose of milk does not
yardstick-uk-sugars-name = free sugars of a day, United Kingdom
yardstick-uk-sugars-publisher = Scientific Advisory Committee on Nutrition, Carbohydrates and Health, 2015 (value from memory)
yardstick-uk-sugars-definition = free sugars of the whole drink; not above 5 % of a day's energy: 30 g for adults, 24 g from 7 to 10 years, 19 g from 4 to 6; purées and blended drinks count, lactose of milk does not
# The lines of a yardstick.
yardstick-line-grade = grade
yardstick-line-grade-with-sweetener = grade, with a sweetener
yardstick-line-sugar-without-lactose = sugar without lactose
yardstick-line-topping-sugar = sugar in the toppings, not graded
yardstick-line-fat = fat
yardstick-line-saturates = saturates
yardstick-line-sugars = sugars
yardstick-line-salt = salt
yardstick-line-who = of { $grams } per day
yardstick-line-who-conditional = of { $grams } per day, conditional
yardstick-line-uk-adults = of { $grams } per day, adults
yardstick-line-uk-seven-to-ten = of { $grams } per day, 7 to 10 years
yardstick-line-uk-four-to-six = of { $grams } per day, 4 to 6 years
# What a line comes to.
yardstick-band-low = low
yardstick-band-medium = medium
yardstick-band-high = high
yardstick-not-known = not known
