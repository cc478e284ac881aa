# What is said of the open book: opening, saving, what is kept against a crash, and files that are written.
# Texts that begin small are clauses, which get their capital where they are shown.

# Names of books that are in no file, of a new shop and of a new version.
new-book = Neues Buch
new-shop = Meine Teebar
sample-harrowmere = Harrowmere (Beispiel)
sample-first-steps = Erste Schritte (Beispiel)
sample-unread-labels = Ungelesene Etiketten (Beispiel)
sample-changed-label = Ein geändertes Etikett (Beispiel)
version-name = Version { $number }

# Opening.
open-stopped = { $path } wurde nicht geöffnet
open-broke-down = das Lesen von { $path } brach unerwartet ab: erneut öffnen

# The windows of the system that ask for a file, and the kinds of files that they offer.
pick-open = Buch öffnen
pick-list = Liste oder Rezept einlesen
pick-save = Buch speichern
pick-folder = Ordner wählen
pick-kind-list = Liste oder Rezept
pick-kind-book = Buch

# Saving.
save-done = gespeichert in { $path }
save-without-earlier = gespeichert in { $path }, aber was dadurch ersetzt wurde, konnte nicht als frühere Fassung behalten werden ({ $error })
save-broke-down = das Speichern brach unerwartet ab
save-left-behind = das zuvor geöffnete Buch wurde nicht in { $path } gespeichert: { $reason }
save-drops-comments = die Datei enthält Kommentare, die beim Speichern entfallen: in Notizen übernehmen, oder zum Entfernen erneut speichern
save-over-earlier-copy = eine frühere Fassung bleibt, wie sie ist: außerhalb des Ordners der früheren Fassungen speichern
save-still-running = das Speichern in { $path } läuft noch: danach erneut speichern
save-takes-long = das Speichern in { $path } dauert länger; Sie können weiterarbeiten, Evensip meldet, wenn es fertig ist

# A save that failed: what is wrong, where the changes are, and what a person can do, in this order.
save-failed = Nicht gespeichert: { $error }
kept-here = Nichts ist verloren: Die Änderungen sind noch da.
kept-soon = Nichts ist verloren: Die Änderungen sind noch da und werden gerade in die Wiederherstellungsdatei geschrieben.
kept-in-recovery = Nichts ist verloren: Die Änderungen sind noch da und stehen in der Wiederherstellungsdatei.
kept-nowhere-else = Nichts ist verloren: Die Änderungen sind noch da. Sie stehen aber sonst nirgends, schließen Sie daher das Fenster nicht: { $reason }
way-out-again-or-elsewhere = Speichern Sie erneut, oder wählen Sie mit „Speichern unter …“ einen anderen Ort.
way-out-elsewhere = Wählen Sie mit „Speichern unter …“ einen anderen Ort.
way-out-permission = Wählen Sie mit „Speichern unter …“ einen anderen Ort, oder bitten Sie die Person, die diesen Computer betreut, um die Berechtigung.
way-out-folder = Stellen Sie den Ordner wieder her und speichern Sie erneut, oder wählen Sie mit „Speichern unter …“ einen anderen Ort.
way-out-room = Schaffen Sie Platz und speichern Sie erneut, oder wählen Sie mit „Speichern unter …“ einen anderen Datenträger.
way-out-shorter = Entfernen Sie etwas aus dem Buch und speichern Sie erneut.
way-out-numbers = Geben Sie an ihrer Stelle Zahlen ein und speichern Sie erneut.

# What is kept against a crash.
recovery-broke-down = die Suche nach nicht gespeicherter Arbeit brach unerwartet ab
recovery-no-folder = nicht gespeicherte Arbeit kann nicht in { $folder } gesichert werden ({ $error }): oft speichern
recovery-failing = Nicht gespeicherte Änderungen können nicht gegen einen Absturz gesichert werden, speichern Sie daher oft: { $reason }
recovery-unsaved-changes = das geöffnete Buch hat nicht gespeicherte Änderungen: diese speichern oder rückgängig machen, dann die nicht gespeicherte Arbeit wiederherstellen
recovery-not-deleted = die nicht gespeicherte Arbeit konnte nicht gelöscht werden ({ $error }): { $path }

# Earlier copies.
earlier-not-listed = die früheren Fassungen können nicht gelesen werden ({ $error })
earlier-not-read = diese frühere Fassung ist noch nicht gelesen: zuerst ansehen
earlier-broke-down = das Lesen brach unerwartet ab
# The name of an earlier copy that is opened by itself.
earlier-name = { $name }, frühere Fassung
earlier-name-of = { $name } vom { $moment } Uhr

# A file that another program changed: the name of the file beside it that gets the person's own book.
# { $number } counts the files that were written in one second.
file-of-mine = { $number ->
    [1] { $name } (eigene Fassung, { $moment })
   *[other] { $name } (eigene Fassung, { $moment }, { $number })
}

# Steps in the history.
step-take-theirs = durch das Buch in der Datei ersetzen
step-merge-theirs = mit dem Buch in der Datei zusammenführen
step-go-back = frühere Fassung wiederherstellen
step-go-back-to = Fassung vom { $moment } Uhr wiederherstellen
step-restore-work = nicht gespeicherte Arbeit vom { $moment } Uhr wiederherstellen

# Cards that are written and shown.
export-broke-down = der Export brach unerwartet ab
export-stopped = abgebrochen; die bereits geschriebenen Karten bleiben erhalten
preview-broke-down = die Vorschau brach unerwartet ab
file-no-viewer = kein Programm kann { $path } anzeigen ({ $error }): im Ordner öffnen

# Lists that are brought in.
list-broke-down = { $path } konnte nicht gelesen werden
list-not-added = die Liste konnte dem Buch nicht hinzugefügt werden
list-book-changed = das Buch hat sich inzwischen geändert: die Liste durchsehen und erneut hinzufügen

# Why nothing is said of how a drink cools: clauses without a capital and a stop.
cooling-iced = es enthält Eis: Bis das Eis geschmolzen ist, bleibt es nahe am Gefrierpunkt
cooling-no-warmer = es wird nicht wärmer als der Raum serviert
cooling-not-known = die Serviertemperatur ist nicht bekannt
cooling-no-cup = kein Becher ist gewählt
serving-no-capacity = das Fassungsvermögen des Bechers ist nicht bekannt: eingeben

## What was kept or taken whole when two books were put together

merge-kept-here = „{ $name }“ wurde hier entfernt, bleibt aber im Buch, weil „{ $by }“ in der Datei es braucht.
merge-kept-in-file = „{ $name }“ wurde in der Datei entfernt, bleibt aber im Buch, weil „{ $by }“ es hier braucht.
merge-whole-here = Mit den Änderungen beider Seiten würde ein Ansatz sich selbst brauchen. Deshalb steht Folgendes jetzt so da, wie es hier war: { $names }.
merge-whole-in-file = Mit den Änderungen beider Seiten würde ein Ansatz sich selbst brauchen. Deshalb steht Folgendes jetzt so da, wie es in der Datei war: { $names }.
