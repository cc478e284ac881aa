# What keeps a shop's work safe: unsaved work that was found, files that another program changed or that would be replaced,
# earlier copies of the book, and the approvals of a recipe.

# A moment in the time of this place: "4 May 2026, 10:22".
safekeeping-moment = { $day }. { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
} { $year }, { $time }
# The same with a short month and with seconds.
safekeeping-exact-moment = { $day }. { $month ->
    [1] Jan.
    [2] Feb.
    [3] März
    [4] Apr.
    [5] Mai
    [6] Juni
    [7] Juli
    [8] Aug.
    [9] Sept.
    [10] Okt.
    [11] Nov.
   *[12] Dez.
} { $year }, { $time }
# The size of a file.
safekeeping-bytes = { $count ->
    [one] 1 Byte
   *[other] { $count } Byte
}
safekeeping-kilobytes = { $size } kB
safekeeping-megabytes = { $size } MB

# Entries of the menu of the book.
safekeeping-earlier-menu = Frühere Fassungen …
safekeeping-found-menu = Wiedergefundene Arbeit …

safekeeping-later = Später
safekeeping-close = Schließen
safekeeping-cancel = Abbrechen

## Approvals of a recipe

safekeeping-approvals = Freigaben
# An entry of the list. $date is as the shop wrote it, $version the name of a version.
safekeeping-approval = { $date } – { $version }, von { $by }
safekeeping-approval-tasted = { $date } – { $version }, von { $by }, verkostet bei { $temperature }
# A heading over what changed since the approval of a date.
safekeeping-since = seit { $date }
safekeeping-since-nothing = seit { $date }: nichts geändert
safekeeping-make-draft = Entwurf daraus anlegen
safekeeping-make-draft-hint = Legt einen Entwurf mit diesen Zeilen an. Freigaben bleiben, wie sie sind.
safekeeping-make-draft-of = Zur Freigabe vom { $date } zurückkehren
# Two menus with a word before each: "What changed from" and "to". The second is read by screen readers alone.
safekeeping-changed-from = Änderungen: vorher
safekeeping-to = nachher
safekeeping-changed-to = Änderungen: nachher
safekeeping-version-in-hand = geöffnete Version
safekeeping-numbered-approval = { $number }: { $date }, { $version }
safekeeping-nothing-changed = nichts geändert

## A file that another program changed

# The strip below the top of the window. $difference is a list: "2 recipes changed (Pear Drift, Snowgate)".
safekeeping-strip-changed = Ein anderes Programm hat „{ $name }“ geändert: { $difference }
# $count counts what was changed in the window as well.
safekeeping-strip-changed-both = Ein anderes Programm hat „{ $name }“ geändert: { $difference }; davon haben Sie { $count } ebenfalls geändert
safekeeping-strip-unreadable = Ein anderes Programm hat „{ $name }“ überschrieben: Die Datei ist kein Buch mehr
safekeeping-strip-gone = „{ $name }“ wurde gelöscht, umbenannt oder verschoben. Das Buch ist noch geöffnet, aber nicht gespeichert: Speichern Sie es wieder, hier oder anderswo
safekeeping-decide = Entscheiden …
safekeeping-later-changed-hint = Nichts wird überschrieben. Evensip fragt vor dem Speichern noch einmal.
safekeeping-decide-changed-hint = Unterschiede ansehen und neu laden, zusammenführen oder eine Kopie behalten
safekeeping-later-gone-hint = Das Buch gilt als nicht gespeichert, bis es wieder in einer Datei steht; beim Speichern wird die Datei neu geschrieben
safekeeping-decide-gone-hint = Dort wieder oder unter einem anderen Namen speichern

# The titles of the sheet.
safekeeping-title-changed = „{ $name }“ wurde von einem anderen Programm geändert
safekeeping-title-unreadable = „{ $name }“ ist kein Buch mehr
safekeeping-title-gone = „{ $name }“ ist nicht mehr in seinem Ordner
safekeeping-nothing-saved = Es wurde nichts gespeichert, und Ihre Änderungen sind noch da.
safekeeping-gone = Die Datei wurde gelöscht, umbenannt oder verschoben. Das ganze Buch ist mit allen Änderungen noch geöffnet, aber nicht gespeichert. Wenn die Datei nur umbenannt wurde, öffnen Sie sie unter dem neuen Namen oder legen Sie sie zurück: Evensip bemerkt es.
safekeeping-changed-both = Hier und in der Datei geändert
safekeeping-changed-in-file = In der Datei geändert
safekeeping-changed-here = Hier geändert und nicht gespeichert
# What both sides have changed of an item: its kind ("ingredient") and a list of fields ("price"); the second is read by screen
# readers.
safekeeping-fields = { $kind }: { $fields }
safekeeping-fields-of = { $name }, { $fields }
# A choice for each part that both sides have changed; the longer ones are read by screen readers.
safekeeping-here = Hier
safekeeping-here-of = Hier: { $name }
safekeeping-in-file = In der Datei
safekeeping-in-file-of = In der Datei: { $name }
# What each side did. $change is "added", "changed" or "removed".
safekeeping-did-here = hier: { $change }
safekeeping-did-in-file = in der Datei: { $change }
safekeeping-merge = Zusammenführen
safekeeping-use-file = Datei verwenden
safekeeping-use-file-hint = Das Buch aus der Datei ersetzt das Buch auf dem Bildschirm
safekeeping-reload = Neu laden
safekeeping-merge-undo = „Zusammenführen“ und „Datei verwenden“ sind je ein Schritt und lassen sich rückgängig machen.
safekeeping-reload-undo = „Neu laden“ ist ein Schritt und lässt sich rückgängig machen.
safekeeping-keep-copy = Eigene Fassung als Kopie behalten
safekeeping-keep-copy-hint = Den Stand auf dem Bildschirm unter anderem Namen neben der Datei speichern und dort weiterarbeiten
safekeeping-save-over = Datei überschreiben
safekeeping-save-over-hint = Die jetzige Datei bleibt als frühere Fassung erhalten
safekeeping-save-again = Dort wieder speichern
safekeeping-save-as = Speichern unter …

## How two books differ, item by item

safekeeping-nothing-differs = keine Unterschiede
safekeeping-more = { $count ->
    [one] und 1 weiterer Eintrag
   *[other] und { $count } weitere Einträge
}
safekeeping-hide-details = Einzelheiten ausblenden
safekeeping-show-details = Einzelheiten der Änderung einblenden
# What happened to an item. $kind is "recipe", "ingredient" and the like.
safekeeping-item = { $kind }, { $change }
safekeeping-added = hinzugefügt
safekeeping-changed = geändert
safekeeping-removed = entfernt
safekeeping-kind-settings = Einstellungen
safekeeping-kind-tasting = Verkostung
safekeeping-nothing-said = keine Einzelheiten
# Where the name of an item would stand.
safekeeping-settings = Einstellungen des Ladens
safekeeping-without-name = ohne Namen

## Earlier copies

safekeeping-earlier = Frühere Fassungen des Buchs
safekeeping-earlier-looking = Frühere Fassungen werden gesucht …
safekeeping-earlier-what = Evensip behält bei jedem Speichern die vorige Fassung: die letzten zehn und die letzte jedes Tages.
safekeeping-earlier-none = Noch keine früheren Fassungen. Evensip behält eine, sobald sich die Datei beim Speichern ändert.
safekeeping-earlier-no-file = Dieses Buch ist noch nicht gespeichert. Danach behält Evensip bei jedem Speichern die vorige Fassung.
safekeeping-earlier-choose = Wählen Sie eine Fassung, um zu sehen, wie sie sich vom Buch auf dem Bildschirm unterscheidet.
safekeeping-earlier-reading = Die Fassung wird gelesen …
# What a copy holds: four counts, each with its noun.
safekeeping-earlier-holds = { $recipes ->
    [one] 1 Rezept
   *[other] { $recipes } Rezepte
}, { $ingredients ->
    [one] 1 Zutat
   *[other] { $ingredients } Zutaten
}, { $measures ->
    [one] 1 Dosierhilfe
   *[other] { $measures } Dosierhilfen
}, { $vessels ->
    [one] 1 Gefäß
   *[other] { $vessels } Gefäße
}
safekeeping-earlier-since = Seitdem auf dem Bildschirm
safekeeping-earlier-restore = Diese Fassung wiederherstellen
safekeeping-earlier-restore-hint = Dieses Buch auf den Bildschirm holen; ein Schritt, der sich rückgängig machen lässt
safekeeping-earlier-open = Als Kopie öffnen
safekeeping-earlier-open-hint = Für sich öffnen; beim Speichern wird nach einem neuen Namen gefragt

## Unsaved work that was found

safekeeping-found = Nicht gespeicherte Arbeit gefunden
safekeeping-found-what = Evensip wurde unerwartet beendet. Ihre Arbeit an „{ $name }“ wurde am { $moment } Uhr gesichert.
safekeeping-found-no-file = Sie war noch in keiner Datei gespeichert.
safekeeping-found-unreadable = Diese Datei lässt sich gerade nicht lesen; das ganze Buch ist in der gesicherten Arbeit enthalten.
safekeeping-found-file-changed = Die Datei hat sich geändert, nachdem Sie diese Arbeit begonnen haben. Evensip führt beide Feld für Feld zusammen, bevor etwas gespeichert wird.
safekeeping-found-difference = Was darin und nicht in der Datei steht
safekeeping-found-unsaved = Speichern Sie zuerst die Änderungen im geöffneten Buch, oder machen Sie sie rückgängig. Stellen Sie dann diese Arbeit wieder her.
safekeeping-found-restore = Diese Arbeit wiederherstellen
safekeeping-found-ask-again = Nächstes Mal wieder fragen
safekeeping-found-ask-again-hint = Die Arbeit bleibt erhalten; Sie finden sie im Menü des Buchs und beim nächsten Start
safekeeping-found-delete = Löschen …
safekeeping-found-delete-hint = Fragt noch einmal, bevor die Arbeit gelöscht wird
safekeeping-found-delete-whole = Diese Arbeit vom { $moment } Uhr endgültig löschen? Sie ist in keiner Datei gespeichert, das ganze Buch geht also verloren.
safekeeping-found-delete-part = Diese Arbeit vom { $moment } Uhr endgültig löschen? Die Datei bleibt, wie sie ist.
safekeeping-found-keep = Behalten
safekeeping-found-delete-now = Endgültig löschen
safekeeping-found-delete-now-hint = Die Arbeit lässt sich danach nicht wiederherstellen

## A file that would be replaced

safekeeping-replace = Eine Datei mit diesem Namen gibt es schon
# $size is "41 kB", $moment when the file was changed.
safekeeping-replace-changed = { $size }, zuletzt geändert am { $moment } Uhr
safekeeping-replace-question = Durch dieses Buch ersetzen? Evensip behält die jetzige Datei als frühere Fassung.
safekeeping-replace-another = Anderer Name …
safekeeping-replace-now = Ersetzen
safekeeping-replace-now-hint = Dieses Buch über die Datei speichern

# Ein Entwurf, der zu einer Freigabe zurückkehrt.
version-as-approved = wie am { $day } freigegeben
