# A drink with ice that stands, and how fast ice melts in the shop. A message that ends with "-named" is what a screen reader says of the field.
serving-ice-served = verbliebenes Eis beim Servieren
serving-ice-gone = vollständig geschmolzen nach
serving-ice-stands = Für ein Getränk, das unberührt steht und nicht umgerührt wird.
serving-ice-none = Beim Servieren ist kein Eis mehr darin.
# The table, and heads of its columns.
serving-ice-table = Stehen
serving-ice-time = Zeit
serving-ice-melted = geschmolzen
serving-ice-tea = Tee
# Why a column is empty. $figure is its name, $reason a clause.
serving-gap = { $figure }: { $reason }.
# $u and $rate are numbers.
serving-ice-melting = Wie schnell Eis hier schmilzt
serving-ice-rate = Schmelzrate
serving-ice-rate-named = Schmelzrate von Eis
serving-ice-rate-stated = Vom Laden angegeben; ± { $u } g/min.
serving-ice-rate-assumed = Angenommen, weil der Laden keine angibt; ± { $u } g/min.
serving-ice-how-to-measure = Um die eigene Rate zu messen, füllen Sie mehrere Becher mit dem gleichen Eis und Getränk. Gießen Sie alle fünf Minuten einen davon ab, wiegen Sie das Eis und tragen Sie das Gewicht ein.
serving-ice-grams = g Eis übrig
serving-ice-weighings = Wägungen von Eis
serving-ice-minutes-named = Wägung { $number }: Minuten
serving-ice-grams-named = Wägung { $number }: Gramm
serving-ice-measured = Nach diesen Wägungen { $rate } g/min.
serving-ice-use = { $rate } g/min für den Laden verwenden
