# A drink with ice that stands, and how fast ice melts in the shop. A message that ends with "-named" is what a screen reader says of the field.
serving-ice-served = ice left when served
serving-ice-gone = all of it gone after
serving-ice-stands = For a drink that stands untouched and unstirred.
serving-ice-none = No ice is left when it is served.
# The table, and heads of its columns.
serving-ice-table = standing
serving-ice-time = time
serving-ice-melted = melted
serving-ice-tea = tea
# Why a column is empty. $figure is its name, $reason a clause.
serving-gap = The { $figure }: { $reason }.
# $u and $rate are numbers.
serving-ice-melting = How fast ice melts here
serving-ice-rate = melt rate
serving-ice-rate-named = Melt rate of ice
serving-ice-rate-stated = Stated by the shop; ± { $u } g/min.
serving-ice-rate-assumed = Assumed, because the shop states none; ± { $u } g/min.
serving-ice-how-to-measure = To measure your own, fill several cups with the same ice and drink. Every five minutes, drain one, weigh its ice and enter the weight.
serving-ice-grams = g of ice left
serving-ice-weighings = weighings of ice
serving-ice-minutes-named = Minutes of weighing { $number }
serving-ice-grams-named = Grams of weighing { $number }
serving-ice-measured = By these weighings { $rate } g/min.
serving-ice-use = Use { $rate } g/min for the shop
