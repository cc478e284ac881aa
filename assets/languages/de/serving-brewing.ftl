# Planning a brew of tea. A message that ends with "-named" is what a screen reader says of the field.
# Which tea of the book is brewed: a row of names, or a list that is typed into.
serving-teas = Tee
serving-teas-any = beliebiger Tee
serving-teas-choose = { $count ->
    [one] { $count } Tee …
   *[other] Einer von { $count } Tees …
}
serving-teas-hint = Name oder Marke eingeben
serving-teas-find = Tee suchen
serving-teas-none = Kein passender Tee.
# How it is brewed, and which way round it is planned.
serving-brewing-infusion = Aufguss
serving-brewing-plan = Planung
serving-brewing-for-tea = nach benötigtem Tee
serving-brewing-from-leaf = nach vorhandenen Teeblättern
# Rows: words, a field, its unit. The first four are names of figures, too.
serving-brewing-ready = fertiger Tee
serving-brewing-ready-named = Fertiger Tee
serving-brewing-ready-unit = g oder ml
serving-brewing-strength = Stärke
serving-brewing-strength-named = Stärke des Tees
serving-brewing-strength-unit = g Teefeststoffe in 100 g
serving-brewing-water = Wasser
serving-brewing-water-named = Wasser für den Aufguss
serving-brewing-leaf = Teeblätter
serving-brewing-leaf-named = Teeblätter für den Aufguss
serving-brewing-leaf-unit = g, oder ml lose geschüttet
serving-brewing-pot = eine Kanne fasst
serving-brewing-pot-named = Wasser, das eine Kanne fasst
serving-brewing-pot-unit = g oder ml Wasser
serving-brewing-pot-hint = eine
serving-brewing-start = Beginn um
serving-brewing-start-named = Uhrzeit des Aufgießens
serving-brewing-start-hint = hh:mm
serving-brewing-minutes = zieht
serving-brewing-minutes-named = Ziehzeit in Minuten
serving-brewing-holding = aufbewahren
serving-brewing-holding-named = Aufbewahrung des Tees in Stunden
serving-brewing-extraction = aus den Teeblättern gelöst
serving-brewing-extraction-named = Anteil der Teeblätter, der sich löst
serving-brewing-extraction-unit = % davon
serving-brewing-retention = in den Teeblättern bleibt
serving-brewing-retention-named = Zurückgehaltenes Wasser je Gramm Teeblätter
serving-brewing-retention-unit = g Wasser je Gramm Teeblätter
serving-brewing-caffeine = Koffein der Teeblätter
serving-brewing-caffeine-named = Koffein je Gramm Teeblätter
serving-brewing-caffeine-unit = mg je Gramm Teeblätter
# What is still to be entered.
serving-brewing-unread = Ein Feld ist nicht lesbar. Berichtigen Sie es, um das Ergebnis zu sehen.
serving-brewing-no-amounts = Geben Sie die Mengen von Wasser und Teeblättern ein.
serving-brewing-no-tea = Geben Sie ein, wie viel Tee Sie benötigen.
serving-brewing-no-strength = Geben Sie ein, wie stark der Tee sein soll, oder wählen Sie einen Tee aus dem Buch.
# What comes of it: names of figures. $reason is a clause.
serving-brewing-not-possible = Dieser Aufguss ist nicht möglich: { $reason }.
serving-brewing-table = Tee aufbrühen
serving-brewing-pots = Kannen
serving-brewing-water-each = Wasser je Kanne
serving-brewing-leaf-each = Teeblätter je Kanne
serving-brewing-water-all = Wasser für alle Kannen
serving-brewing-leaf-all = Teeblätter für alle Kannen
serving-brewing-retained = bleibt in den Teeblättern
serving-brewing-spent = nasse Teeblätter übrig
serving-brewing-cost = Kosten der Teeblätter
serving-brewing-cost-of-tea = Kosten von 100 g Tee
serving-brewing-caffeine-not-stated = Koffein der Teeblätter: nicht angegeben
serving-brewing-ready-at = fertig um
serving-brewing-use-by = verbrauchen bis
# $ready and $until are times of day, perhaps "03:55 the next day"; $hours and $most are times with their unit.
serving-brewing-no-start = Geben Sie die Uhrzeit des Aufgießens ein, um zu sehen, wann der Tee fertig ist.
serving-brewing-times = Fertig um { $ready }, zu verbrauchen bis { $until } ({ $hours } Aufbewahrung).
serving-brewing-times-beyond = Fertig um { $ready }, zu verbrauchen bis { $until } ({ $hours } Aufbewahrung). Veröffentlichte Empfehlungen sehen für aufgebrühten Tee höchstens { $most } vor.
serving-brewing-no-holding = Fertig um { $ready }. Zu verbrauchen bis: Das Buch gibt keine Aufbewahrungszeit an; veröffentlichte Empfehlungen sehen höchstens { $most } vor.
# $time is how long the water stays on the leaf; $source is a clause.
serving-brewing-method = Wasser mit { $temperature }, { $time } Ziehzeit. Werte: { $source }. Ein Milliliter Tee oder Wasser zählt als 1 g, ein Milliliter Teeblätter als { $grams }.
serving-brewing-method-of-house = Wasser mit { $temperature }, { $time } Ziehzeit. Werte: der Ansatz dieses Tees. Ein Milliliter Tee oder Wasser zählt als 1 g, ein Milliliter Teeblätter als { $grams }.
# Carrying the figures into the book.
serving-brewing-house-made = { $tea } ist hausgemacht: Die Werte stammen aus dem Rezept dafür.
serving-brewing-dry = { $tea } ist trocken: Die Werte eines Aufgusses gehören zu einem fertigen Tee. Wählen Sie diesen Tee oder Teeblätter.
serving-brewing-begin = „{ $tea }“ ins Buch aufnehmen
serving-brewing-begin-does = Fügt einen hausgemachten Tee mit diesem Aufguss als Ansatz hinzu. Stärke, Koffein und Kosten folgen aus Teeblättern und Wasser; die Teeblätter bleiben, wie sie sind.
serving-brewing-batch = Diesen Aufguss als Ansatz von { $tea } verwenden
serving-brewing-batch-does = Ändert Wasser und Teeblätter im Rezept, die Ausbeute und die Ziehzeit und damit jedes Getränk mit diesem Tee.
serving-brewing-is-batch = Das ist der Ansatz von { $tea } im Buch.
serving-brewing-no-density = { $tea } gibt seine Werte je 100 ml an, aber keine Dichte zum Umrechnen.
serving-brewing-use = Diese Werte für { $tea } verwenden
# $evidence is "measured" or "assumed".
serving-brewing-use-does = Ändert jedes Getränk mit diesem Tee: Wasser, Teefeststoffe und, soweit bekannt, Koffein je 100 g, eingetragen als „{ $evidence }“.
