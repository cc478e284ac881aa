# What a person can ask for by a button, a menu or a key: its name, and what it does.
command-new-book = Neues Buch
command-new-book-does = Ein leeres Buch anlegen
command-new-recipe = Neues Rezept
command-new-recipe-does = Ein neues Getränk anlegen
command-look-up = Suchen …
command-look-up-does = Rezepte, Zutaten, Notizen und Freigaben in diesem Buch suchen
command-open-book = Öffnen …
command-open-book-does = Ein anderes Buch öffnen
command-save-as = Speichern unter …
command-save-as-does = Das Buch in einer anderen Datei speichern
command-save = Speichern
command-save-does = Das Buch speichern
command-redo = Wiederholen
command-redo-does = Den rückgängig gemachten Schritt wiederholen
command-undo = Rückgängig
command-undo-does = Den letzten Schritt rückgängig machen
command-add-instruction = Anweisung hinzufügen
command-add-instruction-does = Unter der ausgewählten Zeile eine Anweisung hinzufügen
command-add-line = Zutat hinzufügen …
command-add-line-does = Eine Zutat suchen und hinzufügen
command-swap-line = Diese Zutat austauschen …
command-swap-line-does = Diese Zutat ersetzen und den Geschmack angleichen
command-move-up = Nach oben
command-move-up-does = Die Zeile um einen Platz nach oben verschieben
command-move-down = Nach unten
command-move-down-does = Die Zeile um einen Platz nach unten verschieben
command-remove = Entfernen
command-remove-does = Die Zeile aus dem Rezept entfernen
command-line-above = Zeile darüber
command-line-above-does = Zur Zeile darüber gehen
command-line-below = Zeile darunter
command-line-below-does = Zur Zeile darunter gehen
command-back = Zurück
command-back-does = Schließen, was geöffnet ist, oder zum Rezept zurückkehren
command-other-degrees = °C oder °F
command-other-degrees-does = Temperaturen in °F oder °C anzeigen
command-other-volumes = ml oder fl oz
command-other-volumes-does = Volumen in US-Flüssigunzen oder in Millilitern anzeigen
command-show-keys = Tastatur …
command-show-keys-does = Die Tastenkürzel anzeigen
command-go-to-does = Zu diesem Bereich wechseln

# What a command does, with its keys behind it.
command-with-keys = { $what } ({ $keys })

# The screens of the window, each a tab of one word.
command-area-recipe = Rezept
command-area-swap = Austausch
command-area-variations = Varianten
command-area-compare = Vergleich
command-area-lesson = Lektion
command-area-serving = Servieren
command-area-counter = Tresen
command-area-cards = Karten
command-area-findings = Befunde
