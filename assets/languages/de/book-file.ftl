# Why a book or a list can't be read or saved. Errors begin with a small letter; the place or the path stands last.

## The text of a file. What stands between backticks is text of the file or of its format.

text-ended = der Text endet mitten im Buch: Ein Teil der Datei fehlt, daher eine frühere Fassung öffnen
text-open-string = ein Text in Anführungszeichen endet nicht; am Ende `"` ergänzen
text-open-comment = ein Kommentar endet nicht; am Ende `*/` ergänzen
text-too-deep = Klammern sind zu tief verschachtelt: Das ist kein Buch
# $words lists the fields or words that can stand there.
text-unknown-field = unbekanntes Feld `{ $found }`; möglich: { $words }
text-unknown-field-near = unbekanntes Feld `{ $found }` (war `{ $near }` gemeint?); möglich: { $words }
text-unknown-word = unbekanntes Wort `{ $found }`; möglich: { $words }
text-unknown-word-near = unbekanntes Wort `{ $found }` (war `{ $near }` gemeint?); möglich: { $words }
text-no-words = nichts an dieser Stelle
text-missing-field = vor dieser Stelle fehlt das Feld `{ $field }`; ergänzen
text-field-twice = das Feld `{ $field }` ist ein zweites Mal angegeben; eines von beiden löschen
# $found and $wanted are two of the texts below.
text-wrong-kind = gefunden: { $found }; erwartet: { $wanted }
found-text = `{ $text }`
found-values = { $count ->
        [one] 1 Wert in Klammern
       *[other] { $count } Werte in Klammern
    }
found-no-whole-number = eine negative oder viel zu große Zahl
wanted-list = `[` am Anfang einer Liste
wanted-end-of-list = `,` oder `]` am Ende einer Liste
wanted-group = `(` am Anfang einer Gruppe, wie `(8.0, Label)` für einen Wert
wanted-end-of-group = `)` am Ende einer Gruppe
wanted-colon = `:` nach dem Namen eines Felds
wanted-comma = `,` zwischen zwei Werten
wanted-number = eine Zahl wie `12.5`
wanted-whole-number = eine ganze Zahl wie `3`
wanted-count = eine ganze Zahl ab 0
wanted-text = ein Text in Anführungszeichen
wanted-word = ein Wort
wanted-yes-or-no = `true` oder `false`
wanted-end-of-book = das Ende des Buchs
wanted-figure = ein Wert wie `(8.0, Label)` oder `(8.0, Measured, 0.2)`

## Why a text can't become a book

load-problem-too-long = der Text hat { $megabytes } MB, es lassen sich aber höchstens { $most } MB öffnen; das Buch aufteilen
load-problem-no-format = das ist kein Buch; ein Buch beginnt mit `(format: { $format },`
load-problem-bad-format = das Format ist `{ $found }`; es muss die ganze Zahl { $format } sein
load-problem-newer-format = das Buch hat das Format { $found }, dieses Evensip liest aber nur das Format { $format } und ältere; mit einem neueren Evensip öffnen
load-problem-text = { $fault } (Zeile { $line }, Spalte { $column })
# $first and $second are places in the file.
load-problem-duplicate-id = { $kind ->
        [ingredient] die Zutat
        [measure] die Dosierhilfe
        [vessel] das Gefäß
        [recipe] das Rezept
        [version] die Version
        [tasting] die Verkostung
       *[line] die Zeile
    } `{ $id }` steht zweimal im Buch; eine der beiden Kennungen ändern: { $first }; { $second }
load-problem-bad-id = { $error } ({ $place })
load-problem-too-many = die Liste hat { $count } Einträge; auf mehrere Rezepte mit höchstens { $most } aufteilen ({ $place })
load-problem-not-finite = eine Zahl ist { $found }; eine endliche Zahl wie `12.5` eingeben ({ $place })
load-problem-pack-content = ein Preis gibt den Inhalt seiner Packung weder in `grams` noch in `millilitres` an oder in beiden; eines von beiden angeben ({ $place })

id-error-empty = eine Kennung ist leer; einen kurzen Namen wie `pear-syrup` eingeben
id-error-too-long = die Kennung `{ $found }…` ist { $count } Zeichen lang; höchstens { $most } verwenden
id-error-character = die Kennung `{ $found }` enthält { $character }; nur a–z, 0–9 und Bindestriche verwenden

## Places in a file

# $way is the way to the place from the beginning of the book, such as "recipe `pear-drift`, line `pear`, amount".
file-place = Zeile { $line } der Datei, { $way }
file-place-line = Zeile { $line } der Datei
# The items of lists, by their number or by their id.
file-place-item = { $list ->
        [entries] Zeile { $number }
        [flavours] Aroma { $number }
        [high_potency] Süßstoff { $number }
        [serviceware] Zubehör { $number }
        [ingredients] Zutat { $number }
        [measures] Dosierhilfe { $number }
        [vessels] Gefäß { $number }
        [recipes] Rezept { $number }
        [versions] Version { $number }
        [changes] Änderung { $number }
        [approvals] Freigabe { $number }
        [readings] Messwert { $number }
        [closures] Verschluss { $number }
        [steps] Schritt { $number }
       *[other] { $list } { $number }
    }
file-place-item-called = { $list ->
        [entries] Zeile `{ $id }`
        [flavours] Aroma `{ $id }`
        [high_potency] Süßstoff `{ $id }`
        [serviceware] Zubehör `{ $id }`
        [ingredients] Zutat `{ $id }`
        [measures] Dosierhilfe `{ $id }`
        [vessels] Gefäß `{ $id }`
        [recipes] Rezept `{ $id }`
        [versions] Version `{ $id }`
        [changes] Änderung `{ $id }`
        [approvals] Freigabe `{ $id }`
        [readings] Messwert `{ $id }`
        [closures] Verschluss `{ $id }`
        [steps] Schritt `{ $id }`
       *[other] { $list } `{ $id }`
    }

## Why a file can't be opened

# $path is the file; $reason is what the system says.
load-error-missing = diese Datei gibt es nicht; Namen und Ordner prüfen: { $path }
load-error-directory = das ist ein Ordner; eine Buchdatei wählen: { $path }
load-error-not-a-file = das ist keine gewöhnliche Datei; eine Buchdatei wählen: { $path }
load-error-no-permission = für diese Datei fehlt die Leseberechtigung; den Eigentümer fragen: { $path }
load-error-read = die Datei konnte nicht gelesen werden ({ $reason }); noch einmal versuchen oder eine andere Datei wählen: { $path }
load-error-not-utf8 = Zeile { $line } ist kein UTF-8-Text; die Datei als UTF-8 speichern und erneut öffnen: { $path }
load-error-problem = { $problem }: { $path }
# The problems follow, each on a line of its own, and then the path.
load-error-problems = das Buch hat { $count } Fehler:
load-error-more = und { $count } weitere
load-error-file = Datei: { $path }

## Why a list can't be read

read-error-not-a-file = das ist keine Datei; eine CSV-, JSON- oder RON-Datei wählen: { $path }
read-error-too-long = die Datei ist größer als { $most } MB; aufteilen: { $path }
read-error-read = die Datei kann nicht gelesen werden ({ $reason }); eine andere Datei wählen: { $path }

## Why a book can't be saved

save-error-directory = das ist ein Ordner; den Namen einer Datei eingeben: { $path }
save-error-not-a-file = das ist keine gewöhnliche Datei, und das Ersetzen nähme sie dem Programm weg, das sie verwendet; eine andere Datei wählen: { $path }
save-error-no-folder = den Ordner gibt es nicht; einen anderen Ordner wählen: { $path }
save-error-no-permission = die Datei ist schreibgeschützt; das Buch unter einem anderen Namen speichern: { $path }
save-error-no-permission-in-folder = in diesem Ordner fehlt die Berechtigung, Dateien anzulegen; einen anderen Ordner wählen: { $path }
save-error-read-only-disk = dieser Datenträger ist schreibgeschützt; einen anderen wählen: { $path }
save-error-not-finite = { $count ->
        [one] eine Zahl des Buchs ist zu groß zum Speichern; eine kleinere Zahl eingeben: { $path }
       *[other] { $count } Zahlen des Buchs sind zu groß zum Speichern; kleinere Zahlen eingeben: { $path }
    }
save-error-too-long = der Text des Buchs hat { $megabytes } MB, es lassen sich aber höchstens { $most } MB wieder öffnen; etwas aus dem Buch löschen: { $path }
save-error-changed-on-disk = ein anderes Programm hat die Datei seit dem Öffnen geändert; vor dem Speichern beide vergleichen: { $path }
save-error-disk-full = der Datenträger ist voll; Platz für das Buch und seine frühere Fassung schaffen: { $path }
save-error-write = das Buch konnte nicht geschrieben werden ({ $reason }); erneut speichern oder einen anderen Ort wählen: { $path }

## Unsaved work that can't be read. $path is where it is kept.

set-aside = nicht gespeicherte Arbeit kann nicht gelesen werden ({ $reason }); sie bleibt erhalten unter { $path }
work-no-whole-change = die Datei enthält keine vollständige Änderung
work-ends-early = die Datei endet nach ihrer ersten Zeile
work-no-owner = die erste Zeile sagt nicht, wessen Arbeit es ist
work-first-line-damaged = die erste Zeile ist beschädigt
work-part-missing = ein Teil der Datei fehlt oder wurde geändert
work-time-damaged = die Zeitangabe ist beschädigt
work-change-damaged = eine Änderung in der Mitte ist beschädigt, und die folgenden Änderungen sind ausgelassen
