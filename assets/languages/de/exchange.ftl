# What is said of what is brought in from elsewhere and passed on.

# What a column of a list means.
field-name = Name
field-brand = Marke
field-supplier = Lieferant
field-article = Artikelnummer
field-form = Form
field-role = Rolle
field-pack-price = Preis einer Packung
field-pack-content = Inhalt einer Packung
field-waste = Verlust, %
field-price-date = Datum des Preises
field-density = Dichte, g/ml
field-energy-kcal = Energie, kcal
field-sodium = Natrium
field-statement = Zutatenverzeichnis
field-note = Notiz

# The sign between the cells of a list.
delimiter-comma = Komma
delimiter-semicolon = Semikolon
delimiter-tab = Tabulator
delimiter-bar = senkrechter Strich

# The sign before decimals, with a number that has it.
decimal-sign-point = Punkt (1.5)
decimal-sign-comma = Komma (1,5)

# How the bytes of a list are read.
encoding-utf-8 = UTF-8
encoding-utf-16 = UTF-16
encoding-single-byte = ein Byte je Buchstabe (als Windows-1252 gelesen; Umlaute und Akzente prüfen)

# What would become of a row.
outcome-new = neu
outcome-changed = geändert
outcome-same = gleich
outcome-skipped = ausgelassen

# What is new or changes in an ingredient: "fat: 30 g → 32 g".
figure-new = { $figure }: { $value }
figure-changed = { $figure }: { $before } → { $after }
figure-price-changed = { $figure }: { $before } → { $after } ({ $percent } % für dieselbe Menge)
figure-sold-again = wieder erhältlich
figure-density = Dichte
figure-price = Preis
figure-none = keine Werte
figure-not-stated = nicht angegeben
# What a supplier's list calls an ingredient. { $named } is "no" where nobody knows whose list it is; { $others } had that name before.
article-remembered = { $held ->
    [0] { $named ->
        [yes] „{ $article }“ von { $supplier } wird künftig erkannt
       *[no] „{ $article }“ wird künftig erkannt
    }
   *[other] { $named ->
        [yes] „{ $article }“ von { $supplier } wird künftig erkannt und steht nicht mehr für { $others }
       *[no] „{ $article }“ wird künftig erkannt und steht nicht mehr für { $others }
    }
}

# Why a row is left out: clauses without a capital and a stop.
row-no-name-column = keine Spalte ist der Name: oben eine wählen
row-no-name = der Name ist leer
row-left-out = ausgelassen, wie gewählt
row-no-price = kein Preis angegeben, der Preis im Buch bleibt
row-no-form = neu, und nichts sagt, welche Form es hat: wählen, was es ist
row-nothing-read = nichts daraus kann übernommen werden
row-same-ingredient = in Zeile { $line } geht es um dieselbe Zutat: wählen, was hier gemeint ist
row-again = dieselbe Marke mit demselben Namen steht in Zeile { $line }
row-several = gemeint sein kann { $ingredients }: eine Spalte für die Marke hinzufügen
row-quote-not-closed = ein Anführungszeichen wird geöffnet, aber nicht geschlossen, von Zeile { $from } bis { $to }: schließen oder entfernen
row-text-after-quote = in Zeile { $line } steht Text nach einem schließenden Anführungszeichen: die Zelle dort beenden oder die Anführungszeichen darin verdoppeln
row-quote-not-opened = in Zeile { $line } wird ein Anführungszeichen geschlossen, aber nicht geöffnet: öffnen oder entfernen
row-in-quotes = zwischen Anführungszeichen steht etwas, das wie eine weitere Zeile aussieht, von Zeile { $from } bis { $to }: das Anführungszeichen am Ende seiner Zelle schließen
row-too-wide = { $headings ->
    [one] { $cells } Zellen stehen unter 1 Überschrift: einen Text oder eine Zahl mit dem Trennzeichen darin in Anführungszeichen setzen
   *[other] { $cells } Zellen stehen unter { $headings } Überschriften: einen Text oder eine Zahl mit dem Trennzeichen darin in Anführungszeichen setzen
}
row-too-narrow = { $cells ->
    [one] 1 Zelle steht unter { $headings } Überschriften: auch bei einer leeren Zelle das Trennzeichen setzen
   *[other] { $cells } Zellen stehen unter { $headings } Überschriften: auch bei einer leeren Zelle das Trennzeichen setzen
}

# A cell that is left out: its heading, what stands in it, and a clause that begins with "cell-".
doubt-cell = { $heading } „{ $cell }“: { $why }
doubt-ambiguous = { $heading } „{ $cell }“: { $thousands } oder { $decimals }; das Dezimalzeichen der Liste wählen
doubt-form-by-name = keine Form angegeben: der Name sagt { $form }
cell-not-a-number = keine Zahl
# { $sign } is "point" or "comma".
cell-not-a-number-with = keine Zahl mit dem Dezimalzeichen { $sign }
cell-out-of-range = außerhalb des Bereichs: 0 bis { $most } eingeben
cell-per-100-ml = dieser Wert gilt je 100 ml: unter „Tresen“ eingeben, zusammen mit der Dichte der Zutat
cell-bound = eine Grenze ist kein Wert: eingeben, was der Hersteller angibt
cell-more-than-all = das sind mehr als 100 g je 100 g
cell-mg-or-g = mg oder g: die Einheit in der Überschrift ergänzen
cell-unit-of-mass = unbekannte Einheit: g oder mg verwenden
cell-unit-of-energy = unbekannte Einheit: kJ oder kcal verwenden
cell-unit-of-share = unbekannte Einheit: % verwenden
cell-unit-of-pack = nicht vollständig verstanden: den Inhalt als 1 kg, 750 ml, 12 x 1 kg oder 6 x 750 ml eingeben
cell-no-pack-unit = keine Einheit: g, kg, oz, lb, ml, l oder fl oz ergänzen
cell-with-packing = das ist das Gewicht mit Verpackung: den Inhalt eingeben
cell-letter-beside-number = neben der Zahl steht ein Buchstabe: Ist es eine Ziffer?
cell-no-pack-content = zu einem Preis gehört der Inhalt der Packung: in der Liste ergänzen
cell-pack-of-book = kein Inhalt angegeben: Die Packung im Buch wird verwendet
cell-price-per-amount = das ist ein Preis nach Gewicht oder Volumen: den Preis einer Packung eingeben
cell-with-sales-tax = dieser Preis enthält die Umsatzsteuer: ohne sie eingeben
cell-another-currency = das ist nicht die Währung des Buchs: umrechnen
cell-not-a-day = kein Datum: in der Form 2026-05-04 eingeben
cell-not-a-form = keine Form: { $words } eingeben
cell-not-a-role = keine Rolle: { $words } eingeben

# Why a file can't be brought in.
table-empty = die Datei ist leer: eine Datei mit einer Zeile für die Überschriften und einer Zeile je Zutat wählen
table-no-rows = die Datei hat Überschriften, aber keine Zeilen darunter
table-not-text = die Datei ist kein Text (Byte { $at } ist null): die Tabelle in der Tabellenkalkulation als CSV speichern und diese Datei wählen
table-cut = die Datei ist abgeschnitten oder beschädigt (ein halber Buchstabe bei Byte { $at } in UTF-16): die Tabelle als CSV in UTF-8 speichern und diese Datei wählen
table-too-long = die Datei hat mehr als { $most } Zeilen: aufteilen
table-unreadable = Zeile { $line } kann nicht gelesen werden: die Tabelle erneut als CSV speichern
table-headings = die Überschriften können nicht gelesen werden: { $why }
file-not-utf-8 = Zeile { $line } ist kein UTF-8-Text: die Datei als UTF-8 speichern und erneut einlesen
file-not-json = die Datei ist kein gültiges JSON: ab Zeile { $line }, Zeichen { $column } ist sie nicht lesbar
file-without-recipe = die Datei enthält kein Rezept nach schema.org: nötig ist ein Wert mit "@type": "Recipe"

# Steps in the history.
step-bring-in = { $name } einlesen
step-bring-in-ingredients = { $count ->
    [one] 1 Zutat einlesen
   *[other] { $count } Zutaten einlesen
}

# A recipe that is brought in without a name.
recipe-without-name = Rezept ohne Namen
# What has to be looked at in a sentence of a recipe that is brought in: clauses without a capital and a stop.
question-unclear-amount = die Menge ist nicht eindeutig ({ $why }), daher als Anweisung hinzugefügt
question-no-amount = ohne Mengenangabe, daher als Anweisung hinzugefügt
question-second-fill = eine andere Zutat füllt den Becher bereits auf, daher als Anweisung hinzugefügt
question-too-much = die Menge ist größer, als ein Becher fasst, daher als Anweisung hinzugefügt
question-new-ingredient = { $told ->
    [yes] neu, als { $form } hinzugefügt: die Werte sind nicht bekannt, bis das Etikett unter „Tresen“ eingegeben ist
   *[no] neu, und nichts verrät die Form: wählen, was es ist, sonst als { $form } hinzugefügt
}
question-alike = der Name ist nicht ganz derselbe: ist diese Zutat gemeint?
question-range = { $from } bis { $to }: die Mitte wird verwendet, und der Satz bleibt als Notiz der Zeile
question-household = { $legal ->
    [yes] im Laden gibt es keine solche Dosierhilfe: „{ $measure }“ mit { $size } ml wird hinzugefügt (21 CFR 101.9(b)(5)(viii)), mit der Unsicherheit einer nie gewogenen Dosierhilfe
   *[no] im Laden gibt es keine solche Dosierhilfe: „{ $measure }“ mit { $size } ml wird hinzugefügt (übliche Praxis, ohne Quelle), mit der Unsicherheit einer nie gewogenen Dosierhilfe
}
question-not-weighed = diese Dosierhilfe hat noch niemand gewogen: Ihr Gewicht ist erst bekannt, wenn sie unter „Tresen“ gewogen ist
question-not-in-file = in der Datei fehlen Becher, Shaker, Temperaturen und die Plätze im Getränk: diese festlegen
amount-two-counts = „{ $first } { $second }“ kann { $first }{ $second } oder { $first } mal { $second } bedeuten
amount-too-long = der Satz ist zu lang für eine Zutat

# What a sentence of a recipe becomes.
becomes-instruction = eine Anweisung
becomes-left-out = ausgelassen, wie gewählt
becomes-line = { $amount } { $ingredient }
becomes-line-measured = { $count } × { $measure }: { $ingredient }
# Why an ingredient of the book is chosen for one that a recipe names.
alike-same-name = derselbe Name
alike-nearly = fast derselbe Name
alike-chosen = von Ihnen gewählt
# Measures of kitchens.
household-teaspoon = Teelöffel
household-tablespoon = Esslöffel
household-cup = Cup
household-tasse = Tasse
household-pinch = Prise
household-knife-tip = Messerspitze
household-dash = Spritzer
household-splash = Schuss
# Name and note of a measure that a recipe brings along.
measure-household = { $how ->
    [heaped] { $measure }, gehäuft ({ $size } ml)
    [dry] { $measure }, trocken ({ $size } ml)
   *[level] { $measure } ({ $size } ml)
}
measure-household-legal = Größe nach 21 CFR 101.9(b)(5)(viii), hier noch nicht gewogen.
measure-household-practice = Größe nach üblicher Praxis, ohne Quelle; hier noch nicht gewogen.
measure-piece = Stück
measure-piece-note = Aus einem Rezept, hier noch nicht gewogen.

# Why an ingredient of the book is chosen for one of another shop, or none is.
mapping-not-described = die Datei beschreibt sie nicht
mapping-same-name = derselbe Name
# { $role } is a role such as "sweetener".
mapping-same-role = ebenfalls { $role }, mit demselben Aroma
mapping-nothing-alike = keine Zutat hier ist ihr ähnlich, daher wird sie hinzugefügt
mapping-chosen = von Ihnen gewählt

# Why a recipe can't leave or enter a shop.
exchange-no-recipe = im Buch gibt es kein Rezept `{ $id }`
exchange-not-approved = „{ $recipe }“ ist nicht freigegeben: zuerst freigeben, damit es einen Standard hat
exchange-no-weight = das Gewicht von { $ingredient } ist nicht bekannt: die Dosierhilfe damit wiegen, denn ein anderer Laden hat nicht dieselben Dosierhilfen
exchange-beyond-measure = das Gewicht oder die Temperatur von { $ingredient } liegt außerhalb des Bereichs: die Menge berichtigen, oder die Messwerte und die Dichte, mit denen gewogen wird
exchange-not-in-grams = „{ $recipe }“ hat Zeilen, die nicht in Gramm angegeben sind: { $lines }. Bitten Sie den anderen Laden um die Datei, die „Rezept für einen anderen Laden“ schreibt: Darin steht jede Zeile in Gramm
exchange-not-one-recipe = { $count ->
    [0] die Datei enthält kein Rezept mit einem Becher: eine Datei wählen, die „Rezept für einen anderen Laden“ geschrieben hat
   *[other] die Datei enthält { $count } Rezepte mit einem Becher: eine Datei wählen, die „Rezept für einen anderen Laden“ geschrieben hat; sie enthält ein einziges Rezept
}
exchange-no-ingredient = im Buch gibt es keine Zutat `{ $id }`
# A line of another shop, in a list: "milk, to the rim (line `milk`): it depends on the other shop's cup".
line-without-grams = { $ingredient }, { $amount } (Zeile `{ $line }`): { $why }
no-grams-fills = hängt vom Becher des anderen Ladens ab
no-grams-no-measure = die Dosierhilfe steht nicht in der Datei
no-grams-not-weighed = der andere Laden hat die Dosierhilfe nicht damit gewogen
no-grams-no-density = die Datei gibt die Dichte nicht an
no-grams-no-ingredient = die Datei beschreibt die Zutat nicht
no-grams-no-amount = das ist keine Menge
no-grams-same-id = eine andere Zeile hat dieselbe Kennung

# Sentences of the note that a recipe of another shop gets. { $named } is "no" where that shop has no name.
arrival-from = { $named ->
    [yes] Von { $shop }, dort freigegeben am { $day }.
   *[no] Von einem anderen Laden, dort freigegeben am { $day }.
}
# { $reason } is a clause that begins with "variation-" or "swap-".
arrival-left-as-it-is = Die Mengen wurden nicht geändert: { $reason }.
# The note of a book that passes a recipe on.
recipe-passed-on = { $named ->
    [yes] Ein Rezept von { $shop } für einen anderen Laden.
   *[no] Ein Rezept für einen anderen Laden.
}
