# A version or the original in the title of a question: “Hob & Ember, vegan”.
dialog-version = { $recipe }, { $version }
dialog-original = { $recipe }, Original

# Buttons of several dialogs.
dialog-cancel = Abbrechen
dialog-browse = Durchsuchen …
dialog-browse-does = Den Dateidialog des Systems verwenden, sofern es einen gibt
dialog-save = Speichern

# Opening a book.
dialog-open-title = Buch öffnen
dialog-open-path = Pfad des Buchs
dialog-path-hint = /home/ich/buecher/winter.ron
dialog-open = Öffnen
dialog-recent = Zuletzt geöffnet
dialog-samples = Beispiele

# Saving a book under another name.
dialog-save-title = Buch speichern unter
dialog-save-path = Pfad der Datei
dialog-save-kind = Eine Textdatei; ihr Name endet auf .ron
dialog-save-here = Hier speichern

# Approving a version. Hints stand in empty fields.
dialog-approve-title = „{ $drink }“ freigeben
dialog-approve-keeps = Evensip behält diese Zeilen als Standard. Spätere Änderungen kommen in eine neue Version.
dialog-approved-by = Freigegeben von
dialog-approved-by-hint = wer verkostet hat
dialog-reason = Grund
dialog-reason-hint = was dafür spricht
dialog-tasted-at = Verkostet bei, { $unit }
dialog-tasted-at-hint = leer lassen, wenn nicht gemessen
dialog-approve = Freigeben

# What is asked before another book is opened, an empty one begun or the window closed: while the book is being saved, when its file is gone, and when it has changes that no file holds.
dialog-saving-title = „{ $book }“ wird noch gespeichert
dialog-saving-quit = Evensip schließt das Fenster, sobald das Buch gespeichert ist.
dialog-saving-new = Evensip legt ein leeres Buch an, sobald dieses gespeichert ist.
dialog-saving-open = Evensip öffnet das andere Buch, sobald dieses gespeichert ist.
dialog-gone-title = „{ $book }“ ist nicht mehr in seinem Ordner
dialog-gone-quit = Die Datei wurde gelöscht, umbenannt oder verschoben; das Buch ist daher nicht gespeichert. Erneut speichern, bevor Sie das Fenster schließen?
dialog-gone-new = Die Datei wurde gelöscht, umbenannt oder verschoben; das Buch ist daher nicht gespeichert. Erneut speichern, bevor Sie ein leeres Buch anlegen?
dialog-gone-open = Die Datei wurde gelöscht, umbenannt oder verschoben; das Buch ist daher nicht gespeichert. Erneut speichern, bevor Sie ein anderes Buch öffnen?
dialog-unsaved-title = „{ $book }“ enthält nicht gespeicherte Änderungen
dialog-unsaved-quit = Speichern, bevor Sie das Fenster schließen?
dialog-unsaved-new = Speichern, bevor Sie ein leeres Buch anlegen?
dialog-unsaved-open = Speichern, bevor Sie ein anderes Buch öffnen?
dialog-do-not-wait = Nicht warten
dialog-do-not-wait-does = Was gerade gespeichert wird, kommt womöglich nicht in der Datei an
dialog-discard = Verwerfen
dialog-discard-book-does = Das ganze Buch geht verloren
dialog-discard-changes-does = Die Änderungen gehen verloren

# Finding anything in the book.
look-up-title = Im Buch suchen
look-up-hint = ein Name, eine Marke, eine Anweisung, eine Notiz …
look-up-what-to-do = Geben Sie Teile eines Namens, einer Marke, eines Aromas, einer Anweisung, einer Notiz oder eines Freigabegrunds ein, in beliebiger Reihenfolge. Wählen Sie mit den Pfeiltasten aus, und drücken Sie die Eingabetaste.
look-up-nothing = In diesem Buch passt nichts zu „{ $typed }“. Versuchen Sie es mit weniger Wörtern oder einem Wortteil.
look-up-best = { $all } Treffer; dies sind die besten { $best }. Grenzen Sie die Suche mit einem weiteren Wort ein.
look-up-found = { $count ->
    [one] 1 Treffer
   *[other] { $count } Treffer
}

# What was found: its kind, its name and where it stands. $piece is a piece of a person's own text.
look-up-hit = { $kind }: { $name }
look-up-hit-at = { $kind }: { $name }, { $place }
look-up-piece = „{ $piece }“
look-up-place-and-piece = { $place } – „{ $piece }“
look-up-no-reason = ohne Angabe eines Grundes

# Where a thing stands that was found. $drink is a recipe, or a recipe with a version behind a comma.
look-up-drink = { $recipe }, { $version }
look-up-version-of = von { $recipe }, { $state }
look-up-note-on = zu { $name }
look-up-note-on-book = zum Buch
look-up-line-note = zu { $ingredient } in { $drink }
look-up-in = in { $name }
look-up-approval-of = von { $drink }, { $date }, durch { $by }
look-up-tasting-of = von { $drink }, { $date }
look-up-ingredient = { $role }, { $form }
look-up-ingredient-of = { $brand }, { $role }, { $form }
# The word that the note on the book is found by.
look-up-book = Buch

# What stands on the keys of a keyboard; joined by a plus sign: “Ctrl+Shift+S”.
keys-command = Cmd
keys-control = Strg
keys-alt = Alt
keys-shift = Umsch
keys-escape = Esc
keys-enter = Eingabe
keys-insert = Einfg
keys-delete = Entf
keys-up = Pfeil nach oben
keys-down = Pfeil nach unten
keys-either = { $first } oder { $second }

# The sheet of the keys: which keys, and what they do.
keys-title = Tastenkürzel
keys-close = Schließen
keys-of-book = Das Buch
keys-of-drink = Das Getränk
keys-of-areas = Die Bereiche
keys-of-window = Das Fenster
keys-enter-or-type = Eingabe oder tippen
keys-enter-or-type-does = Die Menge der ausgewählten Zeile ändern
keys-tab = Tab
keys-tab-does = Zum nächsten Feld gehen
keys-zoom = Strg+Plus, Minus oder 0
keys-zoom-does = Größer, kleiner, wie zuvor

# The same as a table for a spreadsheet.
keys-table = Tastenkürzel
keys-column = Tasten
keys-column-does = Funktion
