# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = Thekenkarte
card-kind-training = Schulungsblatt
card-kind-exercise = Übung zum Austausch
card-kind-answers = Lösungen zur Übung
card-kind-menu = Zutaten und Allergene der Getränkekarte
card-kind-figures = Zahlen der Getränkekarte
card-kind-ladder = Zuckerstufen
card-kind-matrix = Zuckerstufen, Größen und Eis
card-kind-comparison = Versionsvergleich
card-kind-batch = Einkauf und Ansätze
card-kind-scores = Antwortbogen einer Blindverkostung
card-kind-pouring = Ausschankplan einer Blindverkostung

## Why there is no card

card-no-recipe = im Buch gibt es kein Rezept `{ $id }`
card-no-version = das Rezept „{ $recipe }“ hat keine Version `{ $version }`
card-count-to-compare = { $count ->
    [one] ein Vergleich umfasst 2 bis 4 Versionen, nicht 1; weitere auswählen
   *[other] ein Vergleich umfasst 2 bis 4 Versionen, nicht { $count }; Auswahl anpassen
}
card-nothing-to-make = keine Getränke angefordert; eine Anzahl von 1 bis { $most } eingeben
card-no-exercise = mit { $replace } und { $with } ist keine Übung möglich: Die erste Zutat ist nicht im Getränk, oder keine Änderung der Mengen trifft den Geschmack. Zuerst unter „Austausch“ ausprobieren
card-empty-menu = die Getränkekarte ist leer: Kein Rezept hat einen Becher, oder alle sind ausgelistet
card-nothing-approved = nichts auf der Getränkekarte ist freigegeben: Geben Sie die Getränke frei, die Sie servieren, oder drucken Sie die nicht freigegebenen mit
card-menu-too-long = { $drinks ->
    [one] auf der Getränkekarte steht 1 Getränk, auf eine Karte passen { $most }; nicht Angebotenes auslisten oder für jedes Getränk eine eigene Karte erstellen
   *[other] auf der Getränkekarte stehen { $drinks } Getränke, auf eine Karte passen { $most }; nicht Angebotenes auslisten oder für jedes Getränk eine eigene Karte erstellen
}
card-count-to-taste = diese Verkostung braucht { $wanted } Getränke, nicht { $count }: Wählen Sie aus, was verkostet wird
card-count-of-tasters = geben Sie eine Zahl von Prüfpersonen von 1 bis { $most } ein

pdf-font = eine für „{ $text }“ nötige Schrift kann nicht eingebettet werden; Schrift entfernen oder ersetzen und erneut exportieren
pdf-writer = die PDF-Datei konnte nicht geschrieben werden: { $reason }

## Figures

card-figure-not-known = nicht bekannt
card-figure-not-known-because = nicht bekannt ({ $reason })
card-figure-unstated = nicht angegeben
# Why a figure is not known in full.
card-figure-not-stated = nicht angegeben: { $names }
card-figure-at-least = mindestens { $figure } ({ $reason })
card-figure-least = mindestens { $figure }
weight-not-known = Gewicht nicht bekannt
amount-none = ohne
hours = { $hours } h

## Versions and approvals

version-original = Original
revision-approved = { $version }: freigegeben am { $day }
revision-approved-by = { $version }: freigegeben am { $day } von { $person }
revision-changed = { $version }: geändert seit der Freigabe vom { $day }
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }: in Erprobung, nicht freigegeben
    [retired] { $version }: ausgelistet, nicht freigegeben
   *[draft] { $version }: Entwurf, nicht freigegeben
}
revision-marked-only = { $version }: als freigegeben markiert, aber keine Freigabe ist aufbewahrt
revision-taken-back = { $state ->
    [trial] { $version }: wieder in Erprobung; zuletzt freigegeben am { $day }
    [retired] { $version }: ausgelistet; zuletzt freigegeben am { $day }
   *[draft] { $version }: wieder Entwurf; zuletzt freigegeben am { $day }
}

## Steps

card-stage-mixed = Mischen
card-stage-mixed-cup = Mischen ({ $cup })
card-stage-mixed-shaker = Mischen ({ $shaker }), in den Becher gießen
card-stage-mixed-strained = Mischen ({ $shaker }), in den Becher abseihen
card-stage-in-cup = Im Becher
card-stage-on-top = Obenauf
card-stage-steeped = Ziehen lassen und herausnehmen
card-stage-steeped-for = { $minutes } min ziehen lassen und herausnehmen
line-at-temperature = mit { $temperature }
line-brings = bringt { $mass } { $ingredient } mit

## Facts

fact-cup = Becher
cup-not-named = nicht gewählt
cup-open = { $cup }, offen
cup-with-lid = { $cup }, mit Deckel
cup-sealed = { $cup }, mit Folie versiegelt
fact-contains = enthält
fact-may-contain = kann enthalten
contains-none = keines der 14 Allergene, laut Packungsangaben
contains-none-listed = keines der Allergene auf den Listen des Ladens, laut Packungsangaben
fact-allergens-not-stated = Allergene nicht angegeben bei
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = bei allen angegeben
allergen-not-stated = nicht angegeben
fact-vegan = vegan, nach Zutaten

## Cautions and small print

card-cautions = Warnhinweise
# Before a caution: "Caution (heat)".
card-caution = Vorsicht ({ $kind })
card-small-print = ± ist eine Standardunsicherheit. Allergene und Ernährungsweisen richten sich nach den Zutaten, wie auf deren Packungen angegeben; gemeinsam benutzte Shaker, Messlöffel und Mixer können Spuren hinterlassen. Dieses Blatt dient der Information und ist kein Nachweis für die Einhaltung der Vorschriften: örtliches Lebensmittelrecht beachten.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = Die Übersetzung der Allergene und Hinweise ist vom Laden noch nicht bestätigt: Daneben steht der englische Text.
card-confirmed = Allergene und Hinweise auf Deutsch: bestätigt von { $person }, { $day }.
card-foot-in-full = Fußzeile, vollständig: { $foot }

## Columns of tables

column-all-batches = für alle Ansätze
column-amount = Menge
column-axis = Merkmal
column-batches = Ansätze
column-cost = Kosten
column-drink = Getränk
column-drinks = Anzahl
column-energy = Energie
column-figure = Wert
column-for = für
column-house-made = Hausgemachtes
column-ingredient = Zutat
column-ingredients = Zutaten, nach Gewicht absteigend
column-item = Artikel
column-keeps = haltbar
column-left-over = bleibt übrig
column-tea = Tee
column-brewed = aufzubrühen, mit Verlust
column-leaf = trockene Teeblätter
column-water = Wasser
column-level = Zuckerstufe
column-measure = Dosierhilfe
column-margin = Marge
column-menu-price = Preis auf der Karte
column-needed = Bedarf
column-noticeable = ein merklicher Schritt
column-nutrition = Nährwerte
column-one-batch = ein Ansatz, abzüglich Verlust
column-one-pack = eine Packung
column-one-use = eine Dosierung
column-packs = Packungen
column-off-standard = Abstand zum Standard, Schritte
column-part = Bestandteil
column-per-100-ml = je 100 ml, ohne Toppings
column-per-drink = je Getränk
column-pieces = Stück
column-state = Stand
column-sugar = Zucker
column-supplier = Lieferant
column-sweetness = Süße
column-this-drink = dieses Getränk
column-total-sugar = Gesamtzucker
column-weight = Gewicht
column-with = Zutat

## Training sheet

training-how = Zubereitung
training-target = Ziel
training-lines = Beitrag der einzelnen Zutaten
training-taste = Geschmack
training-measures = Dosierhilfen
training-nutrition = Nährwerte
training-shown = Gezeigt und einmal selbst zubereitet
training-time-to-cool = Abkühlzeit bis { $temperature }
training-already-below = bereits darunter
training-already-below-tasted = bereits darunter; bei der Freigabe mit { $temperature } verkostet
training-name = Name
training-shown-by = gezeigt von
training-day = Datum
training-measured = gemessene Serviertemperatur, { $unit }
training-lines-caption = Gewicht, Zucker und Energie jeder Zutat
training-taste-caption = das Getränk nach Geschmacksmerkmalen
training-measures-caption = Inhalt einer Dosierung je Dosierhilfe
training-nutrition-caption = Nährwerte des Getränks
measure-stated = laut Angabe { $amount }
measure-not-weighed = nicht gewogen

## Menu

menu-title = Zutaten und Allergene
menu-subtitle = gesamte Getränkekarte
menu-subtitle-approved = freigegebene Getränke
menu-with-unapproved = mit nicht freigegebenen Getränken
menu-left-out = Nicht auf diesem Blatt, weil sie so nicht freigegeben sind: { $drinks }.
menu-marks = „enthält“ und „kann enthalten“: auf der Packung einer Zutat angegeben. „nicht angegeben“: Auf mindestens einer Packung fehlen Angaben zu Allergenen. „{ $sign }“: Jede Packung gibt ihre Allergene an, und keine nennt dieses.
menu-lists = Allergenlisten: { $lists }
figures-title = Zahlen der Getränkekarte
figures-caption = Kosten, Preis, Zucker, Energie und Allergene jedes Getränks
figures-at-most = höchstens { $figure }
figures-no-standard = kein Standard
figures-some-silent = auf manchen Packungen nicht angegeben
figures-none-named = keine genannt
figures-marks = Kosten: mit Becher und Verschluss, ohne Umsatzsteuer. Marge: Preis auf der Karte ohne Umsatzsteuer und Kosten; „höchstens“, wo ein Preis oder die Steuer nicht angegeben ist. Zucker und Energie: des ganzen Getränks. Die letzte Spalte ist der Gesamtunterschied zum freigegebenen Standard, in merklichen Schritten.
menu-ingredients = Zutaten
menu-allergens-caption = Allergene aller Getränke
menu-ingredients-caption = Zutaten aller Getränke

## Shopping and batches

batch-title = Einkauf und Ansätze
batch-for = { $count ->
    [one] für 1 Getränk
   *[other] für { $count } Getränke
}
batch-drinks = Getränke
batch-make = Vorbereiten
batch-brew = Aufbrühen
batch-tap = Aus Leitung und Eismaschine
batch-buy = Einkaufen
batch-serve = Becher und Zubehör
batch-note = Die Mengen sind der Bedarf der Rezepte zuzüglich Verlust, ohne Reserve. Packungen und Ansätze sind aufgerundet.
batch-parts-caption = Zutaten für alle Ansätze zusammen
batch-drinks-caption = zuzubereitende Getränke
batch-make-caption = hausgemachte Zutaten, vorab herzustellen
batch-brew-caption = aufzubrühender Tee, als Teeblätter und Wasser
batch-tap-caption = Wasser und Eis, die nicht in Packungen gekauft werden
batch-buy-caption = Einkaufsliste
batch-serve-caption = Becher und ihr Zubehör
batch-total = Summe
batch-cost-of-all = Summe mit Tee, Wasser und Eis
batch-brew-note = Teeblätter und Wasser sind für einen heißen Aufguss von 5 Minuten berechnet, der den Tee in seiner Stärke ergibt. Ein kalter oder längerer Aufguss braucht andere Mengen.
price-not-stated = Preis nicht angegeben
serve-lid = Deckel für { $cup }
serve-film = Folie für { $cup }
serve-straw = Trinkhalm
serve-wide-straw = dicker Trinkhalm
serve-sleeve = Manschette

## Exercise on a swap

exercise-subtitle = { $version }, Übung
exercise-task = { $replace } wird durch { $with } ersetzt. Wie unterscheidet sich das Getränk nach jeder Änderung vom Standard? Kreuzen Sie in jeder Zeile ein Kästchen an.
exercise-same = „Gleich“ bedeutet: höchstens ein merklicher Schritt Abstand zum Standard.
exercise-answers-subtitle = { $version }, Lösungen für die Schulungsleitung
exercise-answer = Lösung
exercise-standard = Standard
exercise-plain-swap = Austausch bei gleichen Maßen
exercise-less = weniger
exercise-the-same = gleich
exercise-more = mehr
exercise-crosses-caption = erwartete Veränderung je Geschmacksmerkmal
exercise-answers-caption = Abstand zum Standard nach jeder Änderung, in merklichen Schritten

## Blindverkostung

blind-scores-title = Blindverkostung
blind-pouring-title = Blindverkostung: Ausschankplan
# { $seed } ist die Zahl, aus der Codes und Reihenfolgen gezogen werden. Sie steht auf beiden Blättern einer Verkostung.
blind-subtitle = { $design ->
    [triangle] Dreiecksprüfung, Nr. { $seed }
    [duo-trio] Duo-Trio-Prüfung, Nr. { $seed }
    [pair] Paarvergleich, Nr. { $seed }
   *[ranking] Rangordnung von drei Bechern, Nr. { $seed }
}
blind-how = Probieren Sie die Becher von links nach rechts. Spülen Sie dazwischen mit Wasser nach. Sprechen Sie nicht, bis alle fertig sind. Wenn Sie unsicher sind, entscheiden Sie sich trotzdem.
blind-taster = Prüfperson { $number }
blind-task = { $design ->
    [triangle] Zwei dieser Becher sind gleich, einer ist anders. Kreuzen Sie den anderen an.
   *[duo-trio] Probieren Sie zuerst R. Einer der anderen Becher ist gleich wie R. Kreuzen Sie diesen an.
}
# { $more } ist „süßer“, „cremiger“.
blind-task-more = { $design ->
    [pair] Welcher Becher ist { $more }? Kreuzen Sie ihn an.
   *[ranking] Ordnen Sie die Becher: 1 ist { $more } als die anderen, dann 2, dann 3. Kreuzen Sie in jeder Zeile einen Becher an.
}
blind-task-liking = { $design ->
    [pair] Kreuzen Sie den Becher an, der Ihnen besser schmeckt.
   *[ranking] Ordnen Sie die Becher: 1 schmeckt Ihnen am besten, dann 2, dann 3. Kreuzen Sie in jeder Zeile einen Becher an.
}
blind-my-answer = meine Antwort
blind-rank = { $rank ->
    [first] 1, am meisten
    [second] 2
   *[third] 3, am wenigsten
}
blind-cup = { $number ->
    [first] erster Becher
    [second] zweiter Becher
   *[third] dritter Becher
}
blind-boxes-caption = die Becher von Prüfperson { $number }, in der Reihenfolge des Probierens
blind-pour-secret = Dieses Blatt sehen die Prüfpersonen nicht. Wer ausschenkt, probiert nicht und serviert nicht.
blind-pour-alike = Beschriften Sie zuerst die Becher mit den Codes. Gleiche Becher, gleiche Menge, gleiche Temperatur, alles innerhalb weniger Minuten. Lassen Sie heiße Getränke abkühlen, bis sich niemand den Mund verbrennt.
blind-pour-hide = Sehen die Getränke verschieden aus, verbergen Sie es: dunkle Becher, Deckel mit Loch oder gedämpftes Licht.
blind-pour-allergies = Fragen Sie alle nach Allergien, bevor jemand probiert, und lassen Sie den oberen Teil des Antwortbogens lesen. Die Allergene jedes Getränks stehen unten.
blind-pour-cut = Schneiden Sie den Antwortbogen zwischen den Prüfpersonen durch, damit niemand die Antworten anderer sieht.
blind-sample = { $letter }: { $drink }
blind-cups = Becher
blind-codes = Codes darauf
blind-references = weitere Becher mit R
blind-orders = Vor jeder Prüfperson
blind-orders-caption = Code und Getränk jedes Bechers nach Prüfperson, in der Reihenfolge des Probierens
blind-taster-column = Prüfperson
blind-reference = R
blind-right = richtige Antwort
blind-seed = Die Zahl { $seed } ergibt wieder dieselben Codes und Reihenfolgen.
blind-unbalanced = Jede Reihenfolge kommt nur mit { $multiple } Prüfpersonen oder einem Vielfachen davon gleich oft vor.

## Sugar ladder

ladder-subtitle = { $version }, Zuckerstufen
ladder-floor = Auch ohne Süßung enthält das Getränk Zucker aus den übrigen Zutaten: { $sugar }.
ladder-not-possible = { $level }: { $reason }
ladder-see-below = nicht möglich, siehe unten
ladder-caption = Mengen je Zuckerstufe

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, Zuckerstufen, Größen und Eis
# A size with an amount of ice.
matrix-iced = { $cup }, eisgekühlt
matrix-ice = { $cup }, { $level }
matrix-not-possible = Nicht möglich: { $reason }

## Comparison

comparison-title = Vergleich
comparison-lines = Zutaten und Mengen
comparison-figures = Werte
comparison-taste = Geschmack im Vergleich zu { $first }
comparison-line = { $amount } { $ingredient } ({ $grams })
comparison-level = gleichauf
comparison-lines-caption = Zutaten und Mengen jeder Version
comparison-drinks-caption = Zutaten und Mengen jedes Getränks
comparison-figures-caption = Werte jeder Version
comparison-taste-caption = Geschmack jeder Version im Vergleich zur ersten, in merklichen Schritten

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = Getränk
serving = 1 Getränk
serving-of = 1 Getränk, { $volume }
step-add = { $amount } { $ingredient } zugeben.
left-state = Stand ({ $revision })
left-cautions = { $count ->
    [one] 1 Warnhinweis, der auf anderem Weg mit dem Getränk weiterzugeben ist
   *[other] { $count } Warnhinweise, die auf anderem Weg mit dem Getränk weiterzugeben sind
}
left-allergens = Allergene
left-uncertainty = Serviertemperatur und alle Unsicherheiten
left-measures = Dosierhilfen des Ladens als eigene Angaben: Ihre Namen stehen im Text der Zutat
left-roles = Rolle und Temperatur der Zeilen, Becher, Shaker und Preis auf der Getränkekarte
left-composition = Zusammensetzung der Zutaten und Herkunft der Angaben
left-versions = die übrigen Versionen und der Verlauf der Freigaben
left-caffeine = Koffein und Energie in kJ
left-figure = { $figure }, nicht vollständig bekannt: { $known }

## What an ingredient is for in a drink

role-base = Basis
role-flavour = Geschmack
role-creamer = Weißer
role-sweetener = Süßung
role-tea = Tee
role-water = Wasser
role-ice = Eis
role-topping = Topping
role-garnish = Dekoration
