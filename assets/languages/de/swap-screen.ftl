# The screen that swaps an ingredient: what is replaced, the suggestions, the steps, amounts by hand, every recipe.

swap-screen-title = Eine Zutat austauschen
swap-screen-introduction = Wählen Sie eine Zutat und ihren Ersatz. Evensip zeigt den einfachen Austausch und die Mengen, mit denen der Standard wieder getroffen wird. Das Rezept ändert sich erst, wenn Sie ein Ergebnis als neue Version behalten.
# How an answer is looked at: buttons side by side.
swap-screen-side-by-side = Nebeneinander
swap-screen-step-by-step = Schritt für Schritt
swap-screen-by-hand = Von Hand
swap-screen-everywhere = Alle Rezepte mit dieser Zutat
swap-screen-all-drifted = Alle abweichenden Getränke
# In place of a figure.
swap-screen-not-known = nicht bekannt

# Choosing the two ingredients. "Replace" and "With" are headings of two lists.
swap-screen-replace = Ersetzen
swap-screen-replace-as-well = Außerdem ersetzen
swap-screen-replace-ingredient = { $ingredient } ersetzen
swap-screen-with = Durch
swap-screen-with-ingredient = Durch { $ingredient } ersetzen
swap-screen-back = Zurück zu den Vorschlägen
swap-screen-no-lines = Diese Version hat noch keine Zutaten. Fügen Sie zuerst unter „Rezept“ eine hinzu.
swap-screen-choose-first = Wählen Sie zuerst die Zutat, die ersetzt werden soll.
swap-screen-find = Ersatz suchen
swap-screen-find-hint = Name, Marke oder Rolle eingeben
swap-screen-no-match = Keine passende Zutat. Fügen Sie sie zuerst unter „Tresen“ hinzu.
swap-screen-change = Austausch ändern
swap-screen-another = Weitere Zutat austauschen
swap-screen-another-hint = Im selben Getränk eine zweite Zutat ersetzen, zum Beispiel für eine vegane Version
swap-screen-remove-pair = Austausch von { $ingredient } entfernen
# What is worth knowing of an ingredient before it is chosen. { $amount } is a mass such as "100 g".
swap-screen-sugars-per = { $sugars } Zucker je { $amount }
swap-screen-sugars-per-100-ml = { $sugars } Zucker je 100 ml
swap-screen-sugars-not-stated = Zucker nicht angegeben
swap-screen-house-made = hausgemacht

# Conditions: the line that sums them up, and the fields.
swap-screen-conditions-show = Bedingungen anzeigen
swap-screen-conditions-hide = Bedingungen ausblenden
swap-screen-conditions-clear = Alle Bedingungen löschen
# The whole summary. { $lines } and { $conditions } are lists.
swap-screen-summary = veränderbar: { $lines } · Bedingungen: { $conditions }
swap-screen-summary-no-conditions = veränderbar: { $lines } · keine weiteren Bedingungen
swap-screen-summary-no-lines = Bedingungen: { $conditions }
swap-screen-summary-nothing = Keine weiteren Bedingungen
# Parts of the list of conditions.
swap-screen-condition-vegan = vegan
swap-screen-condition-without = ohne { $allergen }
swap-screen-condition-sugar = höchstens { $most } Zucker je 100 ml
swap-screen-condition-energy = höchstens { $most }
swap-screen-condition-cost = höchstens { $most }
swap-screen-condition-fill = Becher höchstens { $most } voll
# { $from } is a number, { $to } a temperature with its unit.
swap-screen-condition-served = serviert mit { $from } bis { $to }
swap-screen-condition-lines = { $count ->
    [one] 1 Zeile festgehalten oder begrenzt
   *[other] { $count } Zeilen festgehalten oder begrenzt
}
# The two check boxes and the fields stand below this heading and go on with it.
swap-screen-must = Vorgaben für das Getränk
swap-screen-must-vegan = vegan, nach Zutaten
swap-screen-must-without = ohne
swap-screen-allergens = Allergene …
# Names of fields, with a unit behind each.
swap-screen-most-sugar = Zucker je 100 ml höchstens
swap-screen-most-energy = Energie höchstens
swap-screen-most-cost = Kosten höchstens
swap-screen-most-fill = Füllgrad höchstens
swap-screen-served-least = Serviertemperatur mindestens
swap-screen-served-most = Serviertemperatur höchstens
# In an empty field: no limit.
swap-screen-any = beliebig
swap-screen-out-of-range = { $found } liegt außerhalb des Bereichs: { $from } bis { $to } eingeben

# The table of lines that may change, and between which amounts.
swap-screen-lines-later = Die Zeilen erscheinen hier, sobald die Suche beendet ist.
swap-screen-lines = veränderbare Zeilen
swap-screen-column-ingredient = Zutat
swap-screen-column-may-change = veränderbar
swap-screen-column-now = jetzt
swap-screen-column-least = mindestens
swap-screen-column-most = höchstens
swap-screen-column-unit = Einheit
swap-screen-may-change-hint = Wenn dies ausgeschaltet ist, bleibt die Menge wie beim einfachen Austausch.
swap-screen-may-add = eine Süßung des Ladens darf hinzukommen, die im Getränk noch nicht enthalten ist
swap-screen-may-leave-out = eine Süßung darf ganz wegfallen
# In place of the amount of a line that may be added.
swap-screen-not-in-drink = nicht enthalten
# The name of a field: the smallest or largest amount of an ingredient.
swap-screen-least-of = Mindestmenge: { $ingredient }
swap-screen-most-of = Höchstmenge: { $ingredient }
# { $unit } is "g", "ml" or "spoons".
swap-screen-counted-in = die Einheit dieser Zeile ist: { $unit }

# How far a search is. { $parts } says what its parts are.
swap-screen-searching = Die Suche läuft.
swap-screen-searching-parts = { $parts ->
    [recipes] Die Suche läuft: { $done } von { $all } Rezepten fertig.
    [menu] Es wird gerechnet: { $done } von { $all } Rezepten fertig.
    [levels] Die Suche läuft: { $done } von { $all } Stufen fertig.
    [variations] Die Suche läuft: { $done } von { $all } Varianten fertig.
   *[amounts] Die Suche läuft: { $done } von { $all } Mengenkombinationen fertig.
}
swap-screen-searching-groups = { $count ->
    [one] Die Suche läuft: 1 Gruppe von Mengen geprüft.
   *[other] Die Suche läuft: { $count } Gruppen von Mengen geprüft.
}
swap-screen-stop = Suche beenden
swap-screen-stopped = Die Suche wurde beendet. Starten Sie sie erneut, um Vorschläge zu sehen.
swap-screen-search-again = Erneut suchen

# The drinks that are compared. What the line of the level is, too: "the standard".
swap-screen-standard = Standard
# Das Getränk mit einem Produkt, das sich geändert hat, in den bisherigen Mengen.
swap-screen-as-it-is-made = Wie es jetzt zubereitet wird
swap-screen-plain-swap = Einfacher Austausch
swap-screen-the-standard = der Standard
swap-screen-this-version = diese Version im jetzigen Stand
swap-screen-standard-and-plain = Standard und einfacher Austausch
swap-screen-no-line-changes = keine Zeile ändert sich
swap-screen-same = gleich
# What a screen reader says of a row. { $figure } is "cost: 0.92 €", { $change } "+0.04" or "the same".
swap-screen-figure-and-change = { $figure }, im Vergleich zum Standard: { $change }

# The table of suggestions.
swap-screen-suggestions = Vorschläge
swap-screen-column-suggestion = Vorschlag
swap-screen-column-overall = gesamt, Schritte
swap-screen-column-sugar = Zucker
swap-screen-column-cost = Kosten
swap-screen-lines-change = { $count ->
    [0] keine Zeile ändert sich
    [one] 1 Zeile ändert sich
   *[other] { $count } Zeilen ändern sich
}

# What was found, in sentences. { $reason } is a clause or several.
swap-screen-no-suggestion = Kein Vorschlag: { $reason }.
swap-screen-show-more = { $count ->
    [one] 1 weiteren anzeigen
   *[other] { $count } weitere anzeigen
}
swap-screen-within-scatter = Der verbleibende Unterschied liegt innerhalb der Streuung am Tresen: Zwei Becher nach demselben Rezept unterscheiden sich ebenso stark.
swap-screen-within-scatter-known = Soweit bekannt, liegt der verbleibende Unterschied innerhalb der Streuung am Tresen.
swap-screen-beyond-scatter-within-step = Der verbleibende Unterschied ist größer als die Streuung am Tresen, aber bei jedem Merkmal kleiner als ein merklicher Schritt.
swap-screen-beyond-scatter = Der verbleibende Unterschied ist größer als die Streuung am Tresen.
# Two sentences, of which the second says how sure the result is. { $number } is the count as it is shown.
swap-screen-compared-with-approved = Verglichen mit dem freigegebenen Standard.
swap-screen-compared-with-itself = Noch keine Freigabe: Verglichen wird mit dieser Version im jetzigen Stand.
swap-screen-proven = { $count ->
    [one] Nachweislich die beste Lösung: Es gibt nur 1 Mengenkombination.
   *[other] Nachweislich die beste von { $number } Mengenkombinationen.
}
swap-screen-not-proven = { $count ->
    [one] Das bisher beste Ergebnis: Es gibt 1 Mengenkombination; die Suche hat ihre Grenze erreicht, bevor der Nachweis gelang.
   *[other] Das bisher beste Ergebnis unter { $number } Mengenkombinationen; die Suche hat ihre Grenze erreicht, bevor der Nachweis gelang.
}
# Claims of a drink, and how they differ from those of the standard.
swap-screen-dairy-free = milchfrei, nach Zutaten
swap-screen-not-dairy-free = nicht milchfrei
swap-screen-dairy-free-not-known = milchfrei: nicht bekannt
swap-screen-claim-changes = { $now }; beim Standard: { $before }
swap-screen-same-claims = Allergene und Ernährungsweise sind wie beim Standard

# Keeping a drink as a version. The names are those that it gets until a person types another.
swap-screen-keep = Als neue Version behalten
swap-screen-keep-name = Name der neuen Version
swap-screen-keep-plain = Einfachen Austausch behalten
swap-screen-keep-plain-name = Name der Version mit einfachem Austausch
# { $kind } is what the suggestion is best at: "cheapest".
swap-screen-name-with-kind = mit { $ingredient }, { $kind }
swap-screen-name-plain = { $ingredient }, gleiche Maße
swap-screen-name-by-hand = mit { $ingredient }, von Hand

# Step by step. A row is "2. Plain swap, equal measures"; the last is marked as the result.
swap-screen-step-standard = Der Standard
swap-screen-step-plain = Einfacher Austausch, gleiche Maße
swap-screen-step-row = { $number }. { $does }
swap-screen-step-row-result = { $number }. { $does }: das Ergebnis
swap-screen-step-back = Schritt zurück
swap-screen-step-next = Nächster Schritt
swap-screen-step-keys = oder Pfeiltasten links und rechts
swap-screen-no-mark-moves = Keine Markierung bewegt sich um einen ablesbaren Betrag.

# Amounts by hand.
swap-screen-sliders = Jeder Regler bewegt sich in den kleinsten Schritten seiner Dosierhilfe. Der kleine Strich markiert den Vorschlag. Das Rezept ändert sich erst, wenn Sie das Ergebnis behalten.
swap-screen-sliders-back = Zurück zum Vorschlag
swap-screen-slider = Menge: { $ingredient }
swap-screen-with-these = Mit diesen Mengen
swap-screen-with-these-table = mit diesen Mengen
swap-screen-conditions-not-met = Die Bedingungen sind nicht erfüllt: { $reason }.

# Every recipe that uses the ingredient.
# Das Getränk weicht ab: nichts wird ausgetauscht, Mengen gleichen aus, was sich geändert hat.
swap-screen-brings-back = Zurück zum Standard: { $ingredient }, wie es jetzt ist
swap-screen-review-none = Kein Rezept verwendet { $ingredient }.
swap-screen-none-drifted = Kein freigegebenes Getränk weicht von seinem Standard ab.
swap-screen-review-drifted = Alle freigegebenen Getränke, die von ihrem Standard abweichen, jeweils mit dem, was sie zum eigenen Standard zurückholt. Bedingungen für einzelne Zeilen gelten hier nicht. Jede ausgewählte Zeile wird zu einer neuen Version. Freigegebene Versionen bleiben, wie sie sind, und Sie können alles auf einmal rückgängig machen.
swap-screen-review = Alle Rezepte und Versionen mit { $ingredient }, jeweils mit den wenigsten Änderungen, mit denen der eigene Standard getroffen wird. Bedingungen für einzelne Zeilen gelten hier nicht. Jede ausgewählte Zeile wird zu einer neuen Version. Freigegebene Versionen bleiben, wie sie sind, und Sie können alles auf einmal rückgängig machen.
swap-screen-review-table = alle Rezepte mit dieser Zutat
swap-screen-review-add = { $count ->
    [one] 1 neue Version hinzufügen
   *[other] { $count } neue Versionen hinzufügen
}
swap-screen-review-added = { $count ->
    [one] 1 neue Version hinzugefügt. Sie können dies rückgängig machen.
   *[other] { $count } neue Versionen hinzugefügt. Sie können dies rückgängig machen.
}
swap-screen-review-level = Alle innerhalb eines Schritts auswählen
swap-screen-review-already = schon vorhanden
swap-screen-review-already-as = schon vorhanden: { $drink }
swap-screen-review-cost = Kosten { $more }
swap-screen-review-cost-not-stated = Änderung der Kosten nicht angegeben
swap-screen-review-cost-sum = { $count ->
        [one] Kosten { $more }
       *[other] Kosten von je einem von { $count } Getränken { $more }
    }
swap-screen-review-cost-part = { $count ->
        [one] Kosten eines Getränks { $more }, für { $missing } weitere nicht angegeben
       *[other] Kosten von je einem von { $count } Getränken { $more }, für { $missing } weitere nicht angegeben
    }
swap-screen-review-whole = mit { $ingredient }: { $level } von { $count } bei jedem Merkmal innerhalb eines merklichen Schritts
swap-screen-review-with = mit { $ingredient }:
swap-screen-review-beside = Mit weiterer Zutat vergleichen
swap-screen-review-beside-named = Mit { $ingredient } vergleichen
swap-screen-review-instead = Stattdessen gegen { $ingredient } austauschen
swap-screen-review-alone = Nicht mehr vergleichen
swap-screen-review-all = Alle auswählen
swap-screen-review-none-selected = Keine auswählen
# "Hazelthwaite, iced": a recipe and a version of it.
drink-and-version = { $recipe }, { $version }

# Tables that are copied: their columns and what stands in them.
swap-screen-yes = ja
swap-screen-no = nein
swap-screen-steps-table = Schritte
swap-screen-table-drink = Getränk
swap-screen-table-standard = Standard
swap-screen-table-plain-swap = einfacher Austausch
swap-screen-table-overall = Gesamtunterschied, Schritte
swap-screen-table-cost = Änderung der Kosten
swap-screen-table-changes = Änderungen
swap-screen-table-step = Schritt
swap-screen-table-does = Änderung
swap-screen-table-moves = Verschiebungen
swap-screen-table-amount = Menge
swap-screen-table-figure = Größe
swap-screen-table-value = Wert
swap-screen-table-compared = im Vergleich zum Standard
swap-screen-table-state = Stand
swap-screen-table-selected = ausgewählt
swap-screen-table-result = Ergebnis
swap-screen-table-no-suggestion = kein Vorschlag: { $reason }
