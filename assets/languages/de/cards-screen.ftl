# The screen of cards: what is printed, its pages, the files, and the review of what is brought in.

cards-screen-title = Karten
# Under the title: the drink and its version.
cards-screen-drink = { $recipe } · { $version }
cards-screen-not-known = nicht bekannt

# What a card shows: headings, hints, and the names that stand before fields or are read for them.
cards-screen-beside = Vergleichen mit
cards-screen-one-version = Dieses Getränk hat nur eine Version. Legen Sie unter „Rezept“ eine weitere an, um zu vergleichen.
cards-screen-choose-swap = Wählen Sie unter „Lektion“ einen Austausch und dort „Übung auf Papier …“, um hierher zurückzukehren.
cards-screen-drinks-of = Anzahl: { $drink }
cards-screen-drinks-remove = { $drink } entfernen
cards-screen-drinks-add = { $drink } hinzufügen
cards-screen-also-unapproved = Auch nicht freigegebene Getränke
cards-screen-drinks-out-of-range = eine Anzahl von 1 bis { $most } eingeben
cards-screen-test = Prüfung
cards-screen-design = { $design ->
    [triangle] Dreieck
    [duo-trio] Duo-Trio
    [duo-trio-known] Duo-Trio, dieses Getränk als Referenz
    [pair] Paarvergleich
   *[ranking] Rangordnung von drei
}
cards-screen-asked = Gefragt
cards-screen-liked = schmeckt besser
cards-screen-tasters = Prüfpersonen
cards-screen-seed = Nummer
cards-screen-whole-numbers = geben Sie ganze Zahlen ein
cards-screen-paper = Papier
cards-screen-day = Datum
cards-screen-day-field = Datum auf der Karte
# In the empty field: no day stands on the card.
cards-screen-no-day = ohne
cards-screen-language = Sprache
cards-screen-language-field = Sprache der Karte
cards-screen-own-language = Buch auf
cards-screen-own-language-field = Sprache, in der das Buch geschrieben ist
cards-screen-no-catalogue = Evensip spricht die Sprache „{ $language }“ dieses Buchs nicht; Karten lassen sich darin nicht drucken.
# $language is called what its speakers call it: "Français".
cards-screen-confirmed = Allergene und Hinweise in { $language }: bestätigt von { $person }, { $day }
cards-screen-confirmed-withdraw = Bestätigung zurückziehen
cards-screen-not-confirmed = Noch hat niemand im Laden die Allergene und Hinweise in { $language } bestätigt: Daneben steht der englische Text.
cards-screen-confirm-by = Wer die Übersetzung bestätigt
cards-screen-confirm-by-hint = Name
cards-screen-confirm = Bestätigen
cards-screen-confirm-does = Sie haben die Allergene und Hinweise auf den Karten gelesen, und sie sagen dasselbe wie der englische Text. Er entfällt dann, und Ihr Name und der Tag stehen auf den Karten.
# Texts of the book that stand on the card as they are written. $language is called what its speakers call it: "Français".
cards-screen-untranslated = { $count ->
    [one] 1 Text hat keinen Wortlaut in { $language } und wird gedruckt, wie er geschrieben steht
   *[other] { $count } Texte haben keinen Wortlaut in { $language } und werden gedruckt, wie sie geschrieben stehen
}
cards-screen-untranslated-go = { $language } für „{ $text }“ eingeben
cards-screen-untranslated-more = { $count ->
    [one] und 1 weiterer
   *[other] und { $count } weitere
}

# Sizes of paper with a name; A4 and A5 have none.
paper-half-letter = US-Letter, halbiert
paper-letter = US-Letter
paper-wall = A4 für die Wand, große Schrift
paper-letter-wall = US-Letter für die Wand, große Schrift

# Characters that would be empty boxes on paper. $text is the text that has one of them.
cards-screen-no-font = Zeichen ohne Schrift
cards-screen-no-font-in = in { $text }
cards-screen-no-font-what = Sie werden als leere Kästchen gedruckt. Installieren Sie eine Schrift mit diesen Zeichen, und öffnen Sie „Karten“ erneut.

# The pages. A screen reader reads what stands on the page below its number.
cards-screen-laying-out = Die Seite wird gesetzt …
cards-screen-laying-out-again = wird neu gesetzt …
cards-screen-page = Seite { $page } von { $count }
cards-screen-page-before = Vorherige Seite
cards-screen-page-after = Nächste Seite

# Files.
cards-screen-file = In eine Datei schreiben
cards-screen-format = Format
cards-screen-folder = Ordner
cards-screen-folder-field = Ordner für die Dateien
cards-screen-folder-choose = Wählen …
cards-screen-folder-choose-field = Ordner für die Dateien wählen
cards-screen-write = Karte schreiben
cards-screen-write-menu = Ganze Getränkekarte schreiben
cards-screen-write-menu-does = Eine Karte je Getränk und Version der Getränkekarte, jede als eigene Datei
cards-screen-to-print = Zum Drucken eine PDF-Datei schreiben und im PDF-Betrachter öffnen.
cards-screen-written-so-far = { $done } von { $all }
cards-screen-stop = Anhalten
cards-screen-open-to-print = Zum Drucken öffnen
cards-screen-open-to-print-does = Öffnet die Datei im Betrachter des Systems, der sie drucken kann
cards-screen-show-folder = Ordner anzeigen
# What was written. A file gets a number when another file has its name.
cards-screen-written = Geschrieben: { $name }
cards-screen-written-renamed = Geschrieben: { $name }, weil es { $taken } schon gibt
cards-screen-files-written = { $count ->
    [one] 1 Datei geschrieben
   *[other] { $count } Dateien geschrieben
}
cards-screen-files-written-renamed = { $renamed ->
    [one] { $count } Dateien geschrieben, davon 1 mit einer Nummer, weil es eine Datei mit ihrem Namen schon gibt
   *[other] { $count } Dateien geschrieben, davon { $renamed } mit einer Nummer, weil es Dateien mit ihren Namen schon gibt
}

# Bringing something in: where the file is.
cards-screen-bring-in = Importieren
cards-screen-bring-in-what = Eine Preisliste (CSV), ein schema.org-Rezept (JSON) oder das Rezept eines anderen Ladens (RON). Sie prüfen alles, bevor sich etwas ändert.
cards-screen-bring-in-path = Pfad der Datei, die importiert wird
cards-screen-bring-in-path-hint = /home/ich/preise.csv
cards-screen-bring-in-review = Prüfen
cards-screen-bring-in-choose = Durchsuchen …
cards-screen-bring-in-choose-does = Den Dateidialog des Systems verwenden; wenn es keinen gibt, den Pfad eingeben
cards-screen-reading = { $path } wird gelesen …
cards-screen-stop-reading = Lesen abbrechen

# Buttons of every review.
cards-screen-back = Zurück zu den Karten
cards-screen-leave = Nicht übernehmen
cards-screen-add-recipe = Rezept als Entwurf hinzufügen

# A list under review: how its file is read.
cards-screen-list-looking = Die Liste wird durchgesehen …
cards-screen-delimiter = Trennzeichen
cards-screen-heading-line = Überschriften in
cards-screen-heading-line-of = Zeile { $line }: { $cells }
cards-screen-above-skipped = { $count ->
    [one] (1 Zeile darüber wird übersprungen)
   *[other] ({ $count } Zeilen darüber werden übersprungen)
}
cards-screen-decimal-sign = Dezimalzeichen
cards-screen-columns = Bedeutung der Spalten
# What a column means that is not taken.
cards-screen-column-left-out = ausgelassen
cards-screen-column-meaning = Bedeutung von { $heading }
# The columns as a table for a spreadsheet.
cards-screen-columns-table = Spalten
cards-screen-columns-table-column = Spalte
cards-screen-columns-table-meaning = Bedeutung

# What holds for all rows of the list.
cards-screen-list-supplier = Lieferant der Liste
cards-screen-list-supplier-hint = Name
cards-screen-list-supplier-known = Bekannte Lieferanten
cards-screen-list-form = Form neuer Zutaten
cards-screen-list-form-not-stated = nicht angegeben

# What would become of the lines of the list.
cards-screen-changes = Das würde sich ändern
cards-screen-changes-counted = { $new } neu, { $changed } geändert, { $same } gleich, { $skipped } übersprungen
cards-screen-changes-take = { $count } ins Buch übernehmen
cards-screen-changes-taking = Die Liste wird ins Buch übernommen …
cards-screen-line = Zeile { $line }
cards-screen-line-of = { $name }, Zeile { $line }
# $outcome is "new", "changed" or "skipped".
cards-screen-outcome = { $outcome }: { $details }
# Rows that are not ticked: read in part, of no stated form, or with a price that moves by more than a third.
cards-screen-changes-unsure = { $count ->
    [one] 1 Änderung ist nicht angekreuzt, weil sie geprüft werden muss: Kreuzen Sie sie an, wenn sie stimmt.
   *[other] { $count } Änderungen sind nicht angekreuzt, weil sie geprüft werden müssen: Kreuzen Sie sie an, wenn sie stimmen.
}
cards-screen-price-far = Der Preis ändert sich um mehr als ein Drittel: Ist es dieselbe Packung?
cards-screen-sold-again = Als nicht mehr erhältlich markiert: Wird diese Zeile übernommen, entfällt die Markierung.
# What taking the ticked rows does to the cost of the drinks.
cards-screen-effects = Das würden die Getränke kosten
cards-screen-effects-looking = Die Kosten der Getränke werden berechnet …
cards-screen-effects-none = Kein Getränk würde mehr oder weniger kosten.
cards-screen-effects-table = Kosten der Getränke
cards-screen-effects-drink = Getränk
cards-screen-effects-now = jetzt
cards-screen-effects-then = danach
cards-screen-effects-change = Änderung
cards-screen-effects-percent = Änderung
cards-screen-effects-more = { $count ->
    [one] 1 weiteres anzeigen
   *[other] { $count } weitere anzeigen
}
# What something that comes in is: an ingredient of the book, a new one, or nothing.
cards-screen-match-field = Was { $name } ist: { $now }
cards-screen-match-find = Zutat suchen
cards-screen-match-find-hint = tippen, um eine Zutat zu finden
cards-screen-match-none = Nichts passt.
cards-screen-match-new = eine neue Zutat: { $form }
cards-screen-match-left-out = auslassen
cards-screen-match-choose = wählen, was es ist
# The lines as a table for a spreadsheet.
cards-screen-changes-table = mögliche Änderungen
cards-screen-changes-table-line = Zeile
cards-screen-changes-table-ingredient = Zutat
cards-screen-changes-table-taken = ausgewählt
cards-screen-changes-table-outcome = Ergebnis
cards-screen-changes-table-details = Einzelheiten
cards-screen-changes-table-doubts = Zweifel
cards-screen-yes = ja
cards-screen-no = nein

# A schema.org recipe under review.
cards-screen-recipe-looking = Die Zutaten werden gesucht …
cards-screen-to-look-at = Zu prüfen
# A sentence's ingredient, and why: "Leitungswasser (fast derselbe Name)".
cards-screen-match-why = { $ingredient } ({ $why })
# The sentences of a recipe as a table for a spreadsheet.
cards-screen-sentences-table = Sätze
cards-screen-sentences-table-sentence = Satz
cards-screen-sentences-table-becomes = wird zu
cards-screen-left-out = Ausgelassen: { $text }

# A recipe of another shop under review: what stands for each of its ingredients.
cards-screen-other-shop-recipe = Ein Rezept
cards-screen-other-shop-from = von { $shop }
cards-screen-mapping-field = Ersatz für { $ingredient }
cards-screen-mapping-added = unverändert hinzufügen
cards-screen-mappings-table = Zuordnung der Zutaten
cards-screen-mappings-table-theirs = dort
cards-screen-mappings-table-here = hier
cards-screen-mappings-table-why = Grund

# What this shop makes of it, and how far that is from the standard of the other shop, in noticeable steps.
cards-screen-arrival-looking = Das Rezept wird an seinen Standard angeglichen …
cards-screen-arrival = So würde dieser Laden es zubereiten
cards-screen-arrival-line = { $amount } { $ingredient }
cards-screen-arrival-table = Zeilen
cards-screen-arrival-table-amount = Menge
cards-screen-arrival-table-ingredient = Zutat
# $known says which of the two differences are known: both, the one of the recipe as it would be, or the one before.
cards-screen-arrival-difference = { $known ->
    [both] Gesamtunterschied zum Standard des anderen Ladens: { $steps } merkliche Schritte ({ $before } vor der Anpassung der Mengen)
    [after] Gesamtunterschied zum Standard des anderen Ladens: { $steps } merkliche Schritte (vor der Anpassung der Mengen nicht bekannt)
    [before] Gesamtunterschied zum Standard des anderen Ladens: nicht bekannt ({ $before } merkliche Schritte vor der Anpassung der Mengen)
   *[neither] Gesamtunterschied zum Standard des anderen Ladens: nicht bekannt
}
