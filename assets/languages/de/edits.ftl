# What an edit does, for the undo menu; and why an edit is refused. Neither ends with a full stop.

## Labels: "Undo change the amount of Tambrel chestnut powder". An infinitive stands last.

# $field is one of the texts of changed-…: "the amount".
edit-change-of-line = { $field } von { $ingredient } ändern
edit-change = { $field } ändern
edit-add-line = { $ingredient } hinzufügen
edit-add-instruction = Anweisung hinzufügen
edit-remove-line = { $ingredient } entfernen
edit-remove-instruction = Anweisung entfernen
edit-move-line = { $ingredient } verschieben
edit-move-instruction = Anweisung verschieben
edit-rename-recipe = Rezept in „{ $name }“ umbenennen
edit-file-reading = Messwert von { $recipe } eintragen
edit-remove-reading = Messwert von { $recipe } aus der Bilanz nehmen
edit-note-recipe = Notiz zu { $recipe } ändern
edit-translate = Übersetzung von „{ $text }“ ändern ({ $language })
edit-set-state = Stand auf „{ $state }“ setzen
edit-add-version = Version „{ $version }“ hinzufügen
edit-add-versions = { $count } Versionen hinzufügen
edit-add-items = { $count } Einträge hinzufügen
edit-rename-version = Version in „{ $name }“ umbenennen
edit-remove-version = Version „{ $version }“ entfernen
edit-approve = { $recipe } freigeben
# Something of the book that is changed or added: a recipe, an ingredient, a measure, a vessel.
edit-put = { $name } ändern
# $fields is a list of the texts of item-field-…: "price and supplier".
edit-put-fields = { $name } ändern: { $fields }
edit-add = { $name } hinzufügen
edit-remove-recipe = { $name } löschen
edit-remove-ingredient = Zutat „{ $name }“ entfernen
edit-remove-measure = Dosierhilfe „{ $name }“ entfernen
edit-remove-vessel = Gefäß „{ $name }“ entfernen
# $name ist einer der Texte named-tasting….
edit-remove-tasting = { $name } löschen
named-settings = die Einstellungen des Ladens
named-tasting = die Verkostung vom { $date }
named-tasting-for = die Verkostung vom { $date } ({ $reason })
# Die Werte waren falsch; was damit freigegeben wurde, hatte von Anfang an die neuen.
edit-put-right = die Änderung von { $name } als Korrektur behandeln
edit-take-tasted = das Ergebnis der Verkostungen für { $name } übernehmen
edit-drop-tasted = das Ergebnis der Verkostungen für { $name } zurücknehmen
edit-date-change = angeben, seit wann { $name } anders ist
edit-settings = Einstellungen des Ladens ändern
edit-settings-fields = Einstellungen des Ladens ändern: { $fields }

## Refusals

# $kind is ingredient, measure, vessel, recipe, version or line.
edit-error-gone = { $kind ->
        [ingredient] die Zutat
        [measure] die Dosierhilfe
        [vessel] das Gefäß
        [recipe] das Rezept
        [version] die Version
        [tasting] die Verkostung
       *[line] die Zeile
    } `{ $id }` gibt es nicht mehr
edit-error-taken = es gibt schon { $kind ->
        [ingredient] eine Zutat
        [measure] eine Dosierhilfe
        [vessel] ein Gefäß
        [recipe] ein Rezept
        [version] eine Version
        [tasting] eine Verkostung
       *[line] eine Zeile
    } `{ $id }`; eine andere Kennung wählen
edit-error-no-name = { $kind ->
        [ingredient] eine Zutat
        [measure] eine Dosierhilfe
        [vessel] ein Gefäß
        [recipe] ein Rezept
        [version] eine Version
        [tasting] eine Verkostung
       *[line] eine Zeile
    } braucht einen Namen, daher bleibt der alte
edit-error-gives-approved-cup = „{ $version }“ baut hierauf auf, ist freigegeben und hat keinen Becher; den Becher stattdessen in einer neuen Version wählen
edit-error-built-on = { $count ->
        [one] „{ $version }“ kann nicht entfernt werden: { $others } baut darauf auf; zuerst diese Version entfernen
       *[other] „{ $version }“ kann nicht entfernt werden: { $others } bauen darauf auf; zuerst diese Versionen entfernen
    }
edit-error-nothing-kept = zu { $name } sind keine früheren Werte aufbewahrt
# $first is a finding with its place.
edit-error-faulty = { $count ->
        [one] { $first } (und 1 weiterer Befund)
       *[other] { $first } (und { $count } weitere Befunde)
    }

## Limits of a book

limit-lines = das Rezept `{ $recipe }` hätte { $count } Zeilen und Anweisungen; auf mehrere Rezepte mit höchstens { $most } aufteilen
limit-changes = die Version `{ $version }` des Rezepts `{ $recipe }` hätte { $count } Änderungen; auf mehrere Versionen mit höchstens { $most } aufteilen
limit-approved = die Freigabe { $number } des Rezepts `{ $recipe }` hätte { $count } Zeilen und Anweisungen; auf mehrere Rezepte mit höchstens { $most } aufteilen
limit-cups = die Verkostung `{ $tasting }` hätte { $count } Becher; auf mehrere Verkostungen mit höchstens { $most } aufteilen
limit-tasted-lines = Becher { $number } der Verkostung `{ $tasting }` hätte { $count } Zeilen; ein Becher hat höchstens { $most }
limit-text = das Buch hätte { $megabytes } MB, es lassen sich aber höchstens { $most } MB öffnen; ein zweites Buch anlegen oder etwas aus diesem löschen
limit-not-finite = { $count ->
        [one] eine Zahl des Buchs wäre zu groß zum Speichern; eine kleinere Zahl eingeben
       *[other] { $count } Zahlen des Buchs wären zu groß zum Speichern; kleinere Zahlen eingeben
    }
