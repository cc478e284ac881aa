# The counter: what the shop has, and what holds for the shop as a whole. Rows are a quiet word, then fields with words between them;
# a message that ends with "-named" is what a screen reader says of the field.

## Of several items

counter-name = Name
counter-kind-named = Art
counter-note = Notiz
counter-note-named = Notiz
counter-used-in = Verwendet in
counter-duplicate = Duplizieren
counter-delete = Löschen
counter-not-stated = nicht angegeben
# The same in a narrow field, while it is empty.
counter-not-stated-hint = k. A.
counter-no-price = kein Preis
counter-take-out = Entfernen
# $item is a lid, a film, a straw or a sleeve.
counter-price-of = Preis: { $item }

## A cup, shaker or jug

# The row of the kind: "is a | cup".
counter-vessel-kind = Art
counter-vessel-capacity = Volumen, randvoll
counter-vessel-capacity-named = Fassungsvermögen
counter-vessel-price = Stückpreis
counter-vessel-price-named = Preis pro Stück
counter-vessel-inside = Innenmaße
counter-vessel-no-shape = Die Form ist nicht angegeben, daher wird ein einfacher Becher gezeichnet.
counter-vessel-state-shape = Form angeben
counter-vessel-forget-shape = Form verwerfen
counter-vessel-height = Höhe
counter-vessel-height-named = Innenhöhe
counter-vessel-height-unit = mm, vom Boden bis zum Rand
# A row with two fields: "across | 90 | mm at the rim, | 60 | mm at the bottom".
counter-vessel-across = Durchmesser
counter-vessel-top-named = Durchmesser am Rand
counter-vessel-top-unit = mm am Rand,
counter-vessel-bottom-named = Durchmesser am Boden
counter-vessel-bottom-unit = mm am Boden
counter-vessel-heat = Wärmeaufnahme
counter-vessel-mass = Gewicht
counter-vessel-mass-named = Gewicht
counter-vessel-specific-heat = Wärmekapazität
counter-vessel-specific-heat-named = Spezifische Wärmekapazität
counter-vessel-specific-heat-unit = kJ/(kg K): Papier 1,4, Kunststoff 1,7, Glas 0,84, Stahl 0,5
counter-vessel-temperature = anfangs
counter-vessel-temperature-named = Anfangstemperatur
counter-vessel-cooling = Abkühlzeit
counter-vessel-cooling-named = Zeitkonstante der Abkühlung
counter-vessel-cooling-unit = Minuten, bis ein voller, offener Becher 63 % des Weges zur Raumtemperatur abgekühlt ist
counter-vessel-cooling-run = { $count ->
        [one] Statt dieser Zeit wird { $count } Thermometermesswert verwendet.
       *[other] Statt dieser Zeit werden { $count } Thermometermesswerte verwendet.
    }
# What the drawing of it is called.
counter-vessel-drawing = { $capacity }, { $height } hoch
counter-error-length = eine Länge muss größer als 0 mm sein; gefunden: „{ $found }“

# What closes it. Rows: "usually | lid", "leaves | 10 | ml free, costs | 0.04 | EUR", "cools | 0.6 | times as fast as open".
counter-closures = Deckel oder Folie
counter-closures-none = Bleibt offen.
counter-closure-add = Verschluss hinzufügen
counter-closure-open = offen
counter-closure-lid = Deckel
counter-closure-film = Folie
counter-closure-first = meistens
counter-closure-other = oder
counter-closure-named = Verschluss
counter-closure-remove = Verschluss entfernen: { $closure }
counter-closure-leaves = lässt
counter-closure-room-named = Freiraum: { $closure }
counter-closure-costs = frei, kostet
counter-closure-cools = kühlt
counter-closure-factor-named = Abkühlfaktor: { $closure }
counter-closure-cools-unit = mal so schnell ab wie offen

# What goes with it. A row: "a | straw | for | 0.03 | EUR".
counter-ware = Trinkhalme und Manschetten
counter-ware-first = mit
counter-ware-named = Zubehör
counter-ware-price = für
counter-ware-straw = Trinkhalm
counter-ware-wide-straw = dicker Trinkhalm
counter-ware-sleeve = Manschette
counter-ware-remove = Entfernen: { $item }
counter-ware-add = Trinkhalm oder Manschette hinzufügen

## A measure

counter-measure-duplicate = Ohne Messwerte duplizieren
counter-measure-kind = Art
counter-measure-filled = Füllung
counter-measure-filled-named = Füllung
counter-measure-level = gestrichen
counter-measure-heaped = gehäuft
# The smallest part of a use that can be measured: "smallest step | ½ | scoops".
counter-measure-step = kleinster Schritt
counter-measure-step-named = Kleinster Schritt in Anwendungen
counter-measure-pours = Ausgabe mit
counter-measure-pours-named = Ausgabetemperatur
counter-measure-pours-hint = eigene
counter-measure-size = angegebene Größe
counter-measure-size-named = Angegebene Größe
counter-measure-size-unit-named = Einheit der angegebenen Größe

# The table of readings: what was weighed, how many uses together, their mass and the day.
counter-readings = Messwerte
counter-readings-table = Messwerte
counter-reading-of = gewogen
counter-reading-amount = Messwert
counter-reading-mass = Masse
counter-reading-volume = Volumen
counter-reading-day = Tag
counter-reading-add = Messwerte hinzufügen
counter-reading-add-hint = 8,9 9,1 8,8 g, Eingabetaste
counter-next-reading-of-named = Was die nächsten Messwerte wiegen
counter-next-reading-uses-named = Anzahl der Portionen je Messwert
# In the field of the mass while it is empty: put it on the scale.
counter-reading-weigh = wiegen
counter-reading-of-named = Messwert { $number }: gewogen wurde
counter-reading-uses-named = Messwert { $number }: Anzahl
counter-reading-amount-named = Messwert { $number }: Menge
counter-reading-day-named = Messwert { $number }: Tag
counter-reading-remove = Messwert { $number } entfernen
counter-water = Wasser
counter-error-uses = „{ $found }“ ist keine Anzahl: eine ganze Zahl ab 1 eingeben
counter-error-reading = „{ $found }“ ist kein Messwert; geben Sie mehr als 0 g oder 0 ml ein
counter-error-one-reading = „{ $found }“ sind mehrere Messwerte; geben Sie einen ein

# What the readings say. $measured is a use ("1 scoop"), $total and $more are uses with their number ("30 scoops").
counter-results = Ergebnis
# $uses is what several uses are called: "scoops".
counter-results-none = Noch keine Messwerte. Wiegen Sie dreimal je zehn { $uses } zusammen, und tragen Sie die Gewichte ein.
counter-results-assumed = Bis dahin rechnet Evensip mit der angegebenen Größe, ± { $percent } %.
counter-result-no-mass = { $ingredient }: gewogen, aber noch ohne Gewicht
# "1 scoop = 12.4", and behind it the unit, the uncertainty and what was weighed.
counter-result = { $measured } = { $mass }
counter-result-of = ({ $ingredient })
counter-result-drift = Abweichung im Lauf der Zeit: { $before } am { $first }, { $now } am { $last }, { $percent } %, mehr als die Messwerte streuen. Legen Sie bei Abnutzung oder nach einer Neueinstellung eine neue Dosierhilfe dafür an: { $measure }.
# One use as the subject of a sentence that begins small; the kind is chosen by its key.
counter-one-use = { $kind ->
        [scoop] ein Messlöffel
        [pump] ein Hub
        [spoon] ein Löffel
        [jug] ein Kännchen
        [ice-scoop] eine Eisschaufel
        [piece] ein Stück
       *[button] ein Tastendruck
    }
counter-result-scatter = { $count ->
        [one] { $measured } streut um { $scatter } g ({ $percent } %); { $count } Messwert mit insgesamt { $total }
       *[other] { $measured } streut um { $scatter } g ({ $percent } %); { $count } Messwerte mit insgesamt { $total }
    }
counter-result-weigh-more = für die halbe Unsicherheit noch { $more } wiegen
counter-result-no-scatter = ein einzelner Messwert mit { $total } zeigt keine Streuung: noch { $more } wiegen, je zehn zusammen
counter-result-volume = fasst { $volume }
counter-result-density = mit den Messwerten für Wasser: Schüttdichte darin { $density } g/ml

## Fields of every sheet

counter-the-name = der Name
counter-error-no-name = der Name fehlt
counter-error-no-name-kept = der Name fehlt; der bisherige bleibt
counter-error-date = „{ $found }“ ist kein Datum: zum Beispiel 2026-05-04 eingeben
# What a screen reader says of the fields beside a figure.
counter-evidence-named = { $figure }, Beleg
counter-uncertainty-named = { $figure }, Unsicherheit

## The shop as a whole

counter-shop-name-named = Name des Ladens
counter-shop-name-hint = Name des Ladens
counter-shop-currency = Währung
counter-shop-currency-named = Währung
# A row: "sales tax | 19 | % within the menu price".
counter-shop-tax = Umsatzsteuer
counter-shop-tax-named = Umsatzsteuer in Prozent
counter-shop-tax-unit = %, im Preis auf der Getränkekarte enthalten
counter-shop-note-named = Notiz zum Buch
counter-shop-temperatures = Temperaturen
counter-shop-room = Raum
counter-shop-room-named = Raumtemperatur
counter-shop-refrigerator = Kühlschrank
counter-shop-refrigerator-named = Temperatur des Kühlschranks
counter-shop-ice-temperature = Eis
counter-shop-ice-temperature-named = Temperatur des Eises
counter-shop-hot = heiß verkostet
counter-shop-hot-named = Verkostungstemperatur heißer Getränke
counter-shop-iced = kalt verkostet
counter-shop-iced-named = Verkostungstemperatur eisgekühlter Getränke
# A row with two fields: "hot, served | 55 | to | 75".
counter-shop-hot-window = heiß serviert
counter-shop-hot-from-named = Niedrigste Serviertemperatur heißer Getränke
counter-shop-hot-to-named = Höchste Serviertemperatur heißer Getränke
counter-shop-iced-window = kalt serviert
counter-shop-iced-from-named = Niedrigste Serviertemperatur eisgekühlter Getränke
counter-shop-iced-to-named = Höchste Serviertemperatur eisgekühlter Getränke
counter-shop-window-to = bis
counter-shop-allergen-lists = Allergenlisten
counter-shop-allergen-lists-what = Wonach die Packungen befragt werden und was den Gästen genannt wird. Zu dem, was nicht auf der Liste der Europäischen Union steht, sagt eine Packung nichts, solange Sie nicht nachgefragt haben: Bis dahin gilt es als nicht angegeben.
counter-shop-ice = Eis
# How much a millilitre of ice in a heap weighs.
counter-shop-ice-density = Schüttdichte
counter-shop-ice-density-named = Schüttdichte des Eises
counter-shop-ice-density-unit = g/ml; eine gestrichene Schaufel Eis wiegen und das Volumen der Schaufel mit Wasser messen
counter-shop-ice-melts = schmilzt
counter-shop-ice-melts-named = Eis, das in einer Minute schmilzt
counter-shop-ice-melts-unit = g pro Minute in einem stehenden Getränk
counter-shop-ice-left = bleibt im Becher
counter-shop-ice-left-named = Eis, das im Becher bleibt, in Prozent
counter-shop-ice-left-unit = % des Bechers, lose geschüttet, wenn ein eisgekühltes Getränk ausgegeben wird
# In a field that is empty: a usual figure is taken.
counter-shop-assumed = üblich
# Rows: "the scale shows | 0.1 | g steps", "temperatures are | 1 | K off at most", "marks are | 5 | % off at most".
counter-shop-instruments = Messgenauigkeit
counter-shop-scale = Waage
counter-shop-scale-named = Teilung der Waage in Gramm
counter-shop-scale-unit = g Teilung
counter-shop-thermometer = Thermometer
counter-shop-thermometer-named = Größte Abweichung einer Temperatur
counter-shop-thermometer-unit = K Abweichung, höchstens
counter-shop-marks = Markierungen
counter-shop-marks-named = Größte Abweichung einer Markierung in Prozent
counter-shop-marks-unit = % Abweichung, höchstens

# The table of noticeable steps: what of a drink is tasted, how large a part of it and at least how much makes a difference.
counter-steps = Merkliche Schritte
counter-steps-table = merkliche Schritte
counter-steps-about = Wie groß ein Unterschied sein muss, bis ein Gast ihn bemerkt: ein Prozentsatz des Werts im Standard, aber nie weniger als die Untergrenze. Wenn Sie die Verkostenden geprüft haben, geben Sie eigene Werte ein.
counter-step-axis = Merkmal
counter-step-part = Anteil
counter-step-part-percent = Anteil, %
counter-step-floor = Untergrenze
counter-step-unit = Einheit
counter-step-weight = Gewichtung
counter-step-whose = Herkunft
counter-step-own = eigener Wert des Ladens
counter-step-reset = Zurücksetzen
counter-step-part-named = Anteil in Prozent: { $axis }
counter-step-floor-named = Untergrenze: { $axis }
counter-step-weight-named = Gewichtung: { $axis }

## The lists

# The kinds of things to look at; $kind is a key.
counter-kinds = { $kind ->
        [ingredient] Zutaten
        [measure] Dosierhilfen
        [vessel] Gefäße
       *[shop] Laden
    }
counter-look-at = { $kind ->
        [ingredient] Zutaten anzeigen
        [measure] Dosierhilfen anzeigen
        [vessel] Gefäße anzeigen
       *[shop] Laden anzeigen
    }
counter-count = { $kind ->
        [ingredient] { $count ->
            [one] { $count } Zutat
           *[other] { $count } Zutaten
        }
        [measure] { $count ->
            [one] { $count } Dosierhilfe
           *[other] { $count } Dosierhilfen
        }
       *[vessel] { $count ->
            [one] { $count } Gefäß
           *[other] { $count } Gefäße
        }
    }
# What the copied table is of.
counter-table-of = { $kind ->
        [ingredient] Zutaten
        [measure] Dosierhilfen
       *[vessel] Gefäße
    }
counter-find-named = { $kind ->
        [ingredient] Zutaten suchen
        [measure] Dosierhilfen suchen
       *[vessel] Gefäße suchen
    }
# In the field that finds, while it is empty.
counter-find-ingredient = Name, Marke oder Rolle
counter-find-other = Name oder Art
counter-new = { $kind ->
        [ingredient] Neue Zutat
        [measure] Neue Dosierhilfe
       *[vessel] Neues Gefäß
    }
counter-none-yet = { $kind ->
        [ingredient] In diesem Buch gibt es noch keine Zutaten. Mit dem Pluszeichen fügen Sie eine Zutat hinzu.
        [measure] In diesem Buch gibt es noch keine Dosierhilfen. Mit dem Pluszeichen fügen Sie eine Dosierhilfe hinzu.
       *[vessel] In diesem Buch gibt es noch keine Gefäße. Mit dem Pluszeichen fügen Sie ein Gefäß hinzu.
    }
counter-none-match = { $kind ->
        [ingredient] Keine passenden Zutaten.
        [measure] Keine passenden Dosierhilfen.
       *[vessel] Keine passenden Gefäße.
    }
counter-add-named = „{ $name }“ hinzufügen
counter-published = Aus einer veröffentlichten Tabelle …
counter-published-unreadable = Die Tabellen können nicht gelesen werden.
counter-sort-by = Sortieren nach: { $column }
counter-close = Schließen
counter-close-hint = Zurück zur ganzen Liste (Esc)
counter-shop-about = Einstellungen für alle Getränke des Ladens: Temperaturen, Preise und merkliche Schritte.

# Headings of columns, which are narrow.
counter-column-name = Name
counter-column-brand = Marke
counter-column-remark = Bemerkung
counter-column-form = Form
counter-column-role = Rolle
counter-column-sugars = Zucker je 100 g
counter-column-price-per-kg = Preis pro kg
# How many recipes use it.
counter-column-used = genutzt
counter-column-last-reading = gewogen am
counter-column-kind = Art
# The stated size of a measure.
counter-column-called = Größe
counter-column-one-use = Einzelmenge
counter-column-readings = Messwerte
counter-column-capacity = Volumen
counter-column-mass = Gewicht
counter-column-price = Preis
counter-not-weighed = nicht gewogen
counter-dash = –

## Adding, copying and deleting

# Names that a new item has until it gets its own.
counter-new-ingredient = Neue Zutat
counter-new-measure = Neue Dosierhilfe
counter-new-cup = Neuer Becher
counter-name-of-copy = { $name } (Kopie)
counter-used-nowhere = Noch nirgends.
counter-use-version = { $recipe }, { $version }
counter-use-approval = eine Freigabe von { $recipe }
counter-use-readings = Messwerte von { $measure }
# The last of a list of uses.
counter-uses-more = { $count } weitere
counter-uses-last = { $before } und { $last }
# $kind is the key of what can't be deleted; the sentence begins with a capital letter wherever it is shown.
counter-refusal = { $kind ->
        [ingredient] { $name } kann nicht gelöscht werden; verwendet in: { $uses }.
       *[other] { $name } kann nicht gelöscht werden; verwendet in: { $uses }.
    }

## Womit freigegebene Getränke verkostet wurden

counter-earlier = Mit früheren Werten verkostet
counter-earlier-about = Freigegebene Getränke behalten die Werte, mit denen sie verkostet wurden. Die letzte Änderung steht zuerst.
# $changes ist eine Liste: „Zucker: 62 g statt 48 g“.
counter-earlier-since = Seit { $day }: { $changes }
counter-earlier-now = Jetzt: { $changes }
counter-earlier-day = anders seit
counter-earlier-day-named = Tag, seit dem es anders ist
counter-earlier-lot = ab Charge
counter-earlier-lot-named = Erste Charge, die anders war
counter-earlier-wrong = Die früheren Werte waren falsch
counter-earlier-wrong-hint = Das Produkt war schon immer so: Standards, die damit verkostet wurden, erhalten die Werte, die jetzt hier stehen.
counter-earlier-drifted = Getränke, die abweichen

# What to measure first: what narrows the figures of the drinks most.
measure-first = Zuerst messen
measure-first-looking = Die Getränke werden verglichen …
measure-first-no-drinks = Noch hat kein Getränk einen Becher. Sobald eines einen hat, steht hier, was seine Werte am meisten eingrenzt.
measure-first-nothing = Nichts, was sich messen lässt, grenzt die Werte der Getränke weiter ein.
measure-first-about = { $drinks ->
    [approved] { $count ->
        [one] Was die Werte des freigegebenen Getränks am meisten eingrenzt.
       *[other] Was die Werte der { $count } freigegebenen Getränke am meisten eingrenzt.
    }
   *[all] { $count ->
        [one] Was die Werte des Getränks am meisten eingrenzt.
       *[other] Was die Werte der { $count } Getränke am meisten eingrenzt. Noch ist keines freigegeben.
    }
}
# $narrow is what to do, a sentence without a stop; $does what that is good for.
measure-first-row = { $narrow }: { $does }.
measure-first-narrows = { $count ->
    [one] { $percent } % weniger Unsicherheit, in 1 Getränk
   *[other] { $percent } % weniger Unsicherheit, in { $count } Getränken
}
measure-first-needed = { $count ->
    [one] ohne diese Angabe sind die Werte von 1 Getränk unvollständig.
   *[other] ohne diese Angabe sind die Werte von { $count } Getränken unvollständig.
}
measure-first-unweighed = wie viel { $ingredient } eine Dosierung mit { $measure } enthält, ist nicht bekannt
measure-first-no-density = was ein Milliliter { $ingredient } wiegt, ist nicht bekannt
