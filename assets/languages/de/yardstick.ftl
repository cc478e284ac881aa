# Published guidance that a shop can hold its drinks against: name, who publishes it, what it counts. Titles of publications stay as they are.
yardstick-singapore-name = Einstufung von Getränken, Singapur
yardstick-singapore-publisher = Singapore Food Regulations, Sixteenth Schedule (S 451/2023, in Kraft seit 30. Dezember 2023)
yardstick-singapore-definition = je 100 ml der Flüssigkeit, wie sie serviert wird, ohne Toppings; Gesamtzucker ohne Laktose (die Regelung nimmt auch Galaktose aus; sie ist nicht gesondert bekannt und bleibt mitgezählt); es gilt die schlechtere Einstufung aus Zucker und gesättigten Fettsäuren; jedes Süßungsmittel und jeder mehrwertige Alkohol schließt A aus
yardstick-uk-bands-name = Kennzeichnung auf der Packungsvorderseite für Getränke, Vereinigtes Königreich
yardstick-uk-bands-publisher = UK Department of Health und Food Standards Agency, Guide to creating a front of pack nutrition label, 2013, aktualisiert 2016
# $portion is a volume.
yardstick-uk-bands-definition = Gesamtzucker, Fett, gesättigte Fettsäuren und Salz je 100 ml der Flüssigkeit, wie sie serviert wird, ohne Toppings; bei Portionen über { $portion } gilt der Wert auch dann als hoch, wenn die ganze Portion über der Grenze für eine Portion liegt
yardstick-who-name = freie Zucker am Tag, weltweit
yardstick-who-publisher = Weltgesundheitsorganisation (WHO), Guideline: Sugars intake for adults and children, 2015
yardstick-who-definition = freie Zucker des ganzen Getränks; unter 10 % der Energie eines Tages (starke Empfehlung) und unter 5 % (bedingte Empfehlung) sind 50 g und 25 g bei 2000 kcal; Honig, Sirup und Saft zählen mit, Laktose aus Milch nicht
yardstick-uk-sugars-name = freie Zucker am Tag, Vereinigtes Königreich
yardstick-uk-sugars-publisher = Scientific Advisory Committee on Nutrition, Carbohydrates and Health, 2015 (Wert aus dem Gedächtnis)
yardstick-uk-sugars-definition = freie Zucker des ganzen Getränks; nicht mehr als 5 % der Energie eines Tages: 30 g für Erwachsene, 24 g von 7 bis 10 Jahren, 19 g von 4 bis 6 Jahren; Pürees und gemixte Getränke zählen mit, Laktose aus Milch nicht
# The lines of a yardstick.
yardstick-line-grade = Einstufung
yardstick-line-grade-with-sweetener = Einstufung, mit Süßungsmittel
yardstick-line-sugar-without-lactose = Zucker ohne Laktose
yardstick-line-topping-sugar = Zucker in den Toppings, nicht eingestuft
yardstick-line-fat = Fett
yardstick-line-saturates = gesättigte Fettsäuren
yardstick-line-sugars = Zucker
yardstick-line-salt = Salz
yardstick-line-who = von { $grams } am Tag
yardstick-line-who-conditional = von { $grams } am Tag, bedingte Empfehlung
yardstick-line-uk-adults = von { $grams } am Tag, Erwachsene
yardstick-line-uk-seven-to-ten = von { $grams } am Tag, 7 bis 10 Jahre
yardstick-line-uk-four-to-six = von { $grams } am Tag, 4 bis 6 Jahre
# What a line comes to.
yardstick-band-low = niedrig
yardstick-band-medium = mittel
yardstick-band-high = hoch
yardstick-not-known = nicht bekannt
