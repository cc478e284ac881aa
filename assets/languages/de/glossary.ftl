# The terms of the program, each explained in a sentence or two wherever it heads or names something.
term-standard = Der Standard ist die letzte Freigabe dieser Version oder der nächsten, auf der sie aufbaut, mit den Werten, mit denen sie verkostet wurde.
term-plain-swap = Der einfache Austausch ersetzt eine Zutat durch gleich viele Einheiten der Dosierhilfe (zwischen Pulver und Flüssigkeit durch gleich viel Fett oder Trockenmasse) und ändert keine andere Zeile.
term-noticeable-step = Ein merklicher Schritt ist ein Unterschied, den man beim Verkosten gerade noch bemerkt: ein Prozentsatz vom Wert des Standards, aber nie weniger als die Untergrenze.
term-level = Das Geschmacksbild vergleicht ein Getränk mit seinem Standard. Die Linie ist der Standard, das Band ein merklicher Schritt nach oben und unten, jede Marke ein Geschmacksmerkmal mit seiner Unsicherheit.
term-whisker = Die dünne Linie durch eine Marke zeigt ihre Unsicherheit: je eine Standardunsicherheit nach oben und nach unten. Kreuzt sie den Rand des Bands, entscheidet das Probieren.
term-distance = Der Gesamtunterschied fasst alle Merkmale in einer Zahl merklicher Schritte zusammen. Er kann über 1 liegen, auch wenn jedes einzelne Merkmal innerhalb eines Schritts bleibt.
term-step-floor = Die Untergrenze ist das Mindestmaß eines merklichen Schritts, auch wenn der Standard kaum etwas davon enthält.
term-sugar-floor = Die Zuckeruntergrenze ist das, was Pulver, Milch und Früchte mitbringen. Auch ohne Süßungsmittel kommt das Getränk nicht darunter.
term-scatter = Die Streuung am Tresen besagt, wie stark sich zwei Becher desselben Rezepts unterscheiden, weil kein Messlöffel und kein Hub genau dem anderen gleicht.
term-uncertainty = ± ist eine Standardunsicherheit: Der wahre Wert liegt in etwa zwei von drei Fällen innerhalb davon und fast immer innerhalb des Doppelten.
term-evidence = Der Beleg sagt, woher ein Wert stammt; davon hängt ab, wie weit ihm vertraut wird. Wer zwei oder mehr Messungen hintereinander eingibt, etwa 1,31 1,32 1,30, hat einen gemessenen Wert.
term-sweetness = Süße wird als Saccharose-Äquivalent (SE) angegeben: die Gramm gewöhnlichen Zuckers in 100 ml, die bei dieser Temperatur gleich süß schmecken.
term-tea-strength = Teestärke sind die gelösten Feststoffe des Tees in 100 ml des Getränks.
term-flavour = Ein Aroma wird in hauseigenen Einheiten gemessen. Im Buch steht, wie viele Einheiten ein Gramm einer Zutat hat.
term-creaminess = Cremigkeit ist das Fett in 100 ml des Getränks.
term-acidity = Säuerlichkeit ist die Fruchtsäure in 100 ml des Getränks, als Citronensäure gerechnet.
term-body = Körper ist, wie voll sich das Getränk im Mund anfühlt: die gelösten und sehr feinen Feststoffe in 100 ml, ohne Zucker.
term-free-sugars = Freie Zucker sind zugesetzte Zucker und die aus Honig, Sirup und Saft. Der Zucker der Milch zählt nicht dazu.
term-soluble-solids = Lösliche Feststoffe sind das, was in 100 g des Getränks gelöst ist, wie ein Refraktometer es anzeigt (°Brix).
term-dilution = Die Verdünnung ist die Menge an Wasser, geschmolzenem Eis und Tee je Gramm alles Übrigen.
term-drinking-temperature = Bei der Trinktemperatur wird der Geschmack verglichen: Von der Wärme hängt ab, wie süß ein Zucker schmeckt.
term-serving-window = Das Servierfenster ist der Temperaturbereich, in dem der Laden Getränke dieser Art serviert.
term-fill = Der Füllgrad gibt an, wie viel Prozent des Becherinhalts bis zum Rand das Getränk mit Toppings und Eis einnimmt.
term-head-room = Der Freiraum ist das, was ein Deckel oder eine Folie unter dem Rand frei braucht.

# The explanation of a term, and below it what a click does; $click is a clause.
term-and-click = { $sentence }
    Klick: { $click }
