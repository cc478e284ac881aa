# The frame round every screen: the strip on top with its menus, the list of recipes, messages.

# The strip on top. Names without a visible word are read by a screen reader and stand under the pointer.
strip-language = Sprache
strip-find = Im Buch suchen
strip-keyboard = Tastatur
strip-show-dark = Dunkle Darstellung
strip-show-contrast = Dunkle Darstellung mit hohem Kontrast
strip-show-contrast-by-day = Helle Darstellung mit hohem Kontrast
strip-show-light = Helle Darstellung
strip-hide-list = Rezeptliste ausblenden
strip-show-list = Rezeptliste einblenden
strip-book = Buch
strip-book-does = { $book } – öffnen, speichern, Beispiele
strip-samples = Beispiele
strip-recent = Zuletzt geöffnet
strip-units = Einheiten
strip-temperatures-in = Temperaturen in { $unit }
strip-volumes-in = Volumen in { $unit }
strip-unsaved = nicht gespeichert
strip-more = Mehr
strip-more-screens = Weitere Bereiche
strip-findings = Befunde { $count }

# $step names what was done: “Changed the amount of …”.
strip-undo = Rückgängig: { $step } ({ $keys })
strip-redo = Wiederholen: { $step } ({ $keys })
strip-nothing-to-undo = Nichts rückgängig zu machen
strip-nothing-to-redo = Nichts zu wiederholen

# The title of the window.
shell-window-title = Evensip – { $book }
shell-window-title-unsaved = Evensip – { $book } (nicht gespeichert)

# The list of recipes. Rows are read by a screen reader with the state of the recipe or version.
shell-find-drink = Getränk suchen
shell-find-drink-hint = Getränk suchen
shell-no-recipe-matches = Kein Rezept passt zu „{ $typed }“
# Above drinks that are found by an ingredient.
shell-found-within = Mit „{ $typed }“ zubereitet
shell-house-made = Hausgemacht
shell-original = Original
shell-recipe-row = { $recipe }, { $state }
shell-original-row = { $recipe }, Original
shell-version-row = Version { $version }, { $state }
shell-more = Mehr
shell-new-version = Neue Version
shell-new-version-does = Ein Entwurf auf Grundlage der ausgewählten Version
shell-new-version-on-this = Neue Version auf dieser Grundlage
shell-delete-version = Diese Version löschen
shell-duplicate = Rezept duplizieren
shell-delete-recipe = Rezept löschen
shell-delete-recipe-does = Löscht es mit allen seinen Versionen. Sie können dies rückgängig machen.

# The name that a recipe gets in the book before a person names it, and the name of a copy.
shell-new-recipe-name = Neues Rezept
shell-copy-of = { $recipe } (Kopie)

# A book without recipes.
shell-no-recipes = Dieses Buch enthält noch keine Rezepte
shell-no-recipes-what = Legen Sie Ihr erstes Rezept an, oder öffnen Sie ein Beispielbuch, um sich umzusehen.

# The column with the drawing of the level.
shell-the-standard = der Standard
shell-compared-with = Verglichen mit { $version }, freigegeben am { $date } von { $by }
shell-compared-with-original = Verglichen mit dem Originalrezept, freigegeben am { $date } von { $by }
shell-standard-of-first-figures = Freigegeben, bevor die Werte der Zutaten aufbewahrt wurden: Es gelten die ersten, die dieses Buch aufbewahrt hat.
shell-no-standard = Noch kein Standard
shell-no-standard-empty = Dieses Getränk hat noch keine Zutaten. Schreiben Sie das Rezept, verkosten Sie es und geben Sie es frei: Dann wird es zum Standard für jede Version.
shell-no-standard-why = Noch keine Version ist freigegeben. Geben Sie diese frei, um sie zum Standard für die anderen zu machen.
shell-no-standard-marked = Diese Version ist als freigegeben markiert, aber keine Freigabe mit Tag und Person ist aufbewahrt, sodass es keinen Standard gibt. Verkosten Sie sie und geben Sie sie frei, damit sie der Standard für die anderen wird.
shell-no-standard-other-marked = Eine Version ist als freigegeben markiert, aber keine Freigabe mit Tag und Person ist aufbewahrt, sodass es keinen Standard gibt. Geben Sie sie frei oder diese hier.
shell-approve-version = Diese Version freigeben …

# Cautions at the foot.
shell-cautions-empty-drink = Hier stehen Hinweise, sobald etwas im Getränk ist
shell-cautions-none = Keine Hinweise zu diesem Getränk, soweit die Etiketten es angeben
shell-cautions-below = { $count } weitere unten
shell-cautions-folded = { $count ->
    [one] 1 weiterer Hinweis: { $kinds }
   *[other] { $count } weitere Hinweise: { $kinds }
}
shell-cautions-fold = Weniger Hinweise zeigen

## Getränke, die abweichen

shell-drifted = Freigegebene Getränke, die nicht mehr schmecken wie freigegeben
shell-drifted-about = Seit der Freigabe hat sich etwas darin geändert. Ihr Standard ist weiterhin das, was verkostet wurde.
# $off ist ein Satz, wie weit das Getränk vom Standard entfernt ist; $causes eine Liste von Zutaten, Dosierhilfen, Gefäßen oder Einstellungen.
shell-drifted-why = { $off }. Seither geändert: { $causes }
shell-drifted-bring-back = { $name } zurückholen
shell-drifted-bring-all-back = Alle zurückholen

# What is wrong with the book.
shell-findings = Befunde
shell-findings-none = In diesem Buch gibt es keine Befunde.
shell-findings-errors = Fehler: Werte, die davon abhängen, sind nicht bekannt
shell-findings-warnings = Warnungen
shell-findings-table = Befunde
shell-column-severity = Schwere
shell-column-place = Ort
shell-column-finding = Befund
shell-go-to = „{ $name }“ anzeigen
shell-go-to-settings = Einstellungen des Ladens anzeigen

# The last message.
shell-dismiss-message = Meldung ausblenden
shell-dismiss = Ausblenden
shell-take-back = Das rückgängig machen

# A field whose text can't be read. $reason is a clause without a full stop.
shell-not-changed = nicht geändert: { $reason }

# A table that goes to a spreadsheet by the clipboard. $table says which.
shell-copy-table = Tabelle kopieren
shell-copy-table-of = Tabelle kopieren: { $table }
shell-copy-table-does = Für eine Tabellenkalkulation: Tabulatoren zwischen den Zellen, Einheiten in den Überschriften
shell-copied-table = Kopiert: Fügen Sie die Tabelle in eine Tabellenkalkulation ein.
shell-not-known = nicht bekannt

# While a book takes long to open.
shell-opening = { $file } wird geöffnet
shell-reading = Wird gelesen und geprüft …
shell-reading-for = { $seconds ->
    [one] Wird gelesen und geprüft: bisher 1 Sekunde.
   *[other] Wird gelesen und geprüft: bisher { $seconds } Sekunden.
}
shell-stop-opening = Öffnen abbrechen
shell-stop-opening-keys = Sie können auch die Esc-Taste drücken; { $book } bleibt dann geöffnet.

# A text that is not wholly what it seems. $what names it: “the name”; $characters are their numbers: “U+202E, U+0007”.
shell-unseen-hidden = { $what } enthält unsichtbare Zeichen: { $characters }
shell-unseen-no-font = { $what } enthält Zeichen, die keine Schrift hier anzeigen kann: { $characters }
shell-unseen-directions = { $what } mischt Text von rechts nach links mit Text von links nach rechts: Das Fenster zeigt die Teile nacheinander, Karten drucken sie in Leserichtung
shell-unseen-more = { $count } weitere

# Why there is no window, said on the command line.
shell-no-window = hier kann kein Fenster geöffnet werden: { $reason }
shell-no-window-reason = das System nennt keinen Grund
