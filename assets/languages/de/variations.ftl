# The screen with the variations of a drink: its sugar ladder, other cups, hot or iced, less ice.

# Below the name of the drink: "original · compared with the standard of 2026-05-04".
variations-compared-with-standard = { $version } · verglichen mit dem Standard vom { $day }
variations-compared-with-itself = { $version } · noch keine Freigabe: verglichen mit dieser Version selbst
# In place of a figure.
variations-not-known = nicht bekannt

# Keeping a drink as a version. { $name } is a sugar level or a variation.
variations-keep = Behalten
variations-keep-as-version = { $name } als neue Version behalten
variations-nothing-changes = nichts ändert sich
variations-no-amount-changes = keine Menge ändert sich
# { $reason } is a clause without a capital and a stop.
variations-not-possible = Nicht möglich: { $reason }.
variations-not-possible-cell = nicht möglich: { $reason }

# The sugar ladder.
variations-ladder = Zuckerstufen
variations-no-levels = Keine Zuckerstufen: { $reason }.
variations-sugar-not-known = Der Zuckergehalt ist nicht bekannt: Auf einem Etikett fehlt die Angabe.
variations-all-from-sweetener = Der gesamte Zucker stammt aus der Süßung und lässt sich ganz weglassen.
# { $carriers } is a list such as "Tambrel chestnut powder 10.2 g".
variations-floor = { $floor } von { $sugar } Zucker lassen sich nicht weglassen, weil andere Zutaten sie mitbringen: { $carriers }. Eine Zuckerstufe ändert nur, was die Süßung beiträgt.
# What the two colours of a bar are.
variations-legend-floor = nicht weglassbar
variations-legend-sweetener = aus der Süßung
# Beside a bar, and what it says to a screen reader and under the pointer.
variations-bar = { $sugar } Zucker
variations-bar-words = { $sugar } Zucker, davon { $floor } nicht weglassbar
variations-bar-not-known = Zucker nicht bekannt
# What the line of the level of a row is.
variations-level-target = das Ziel dieser Stufe
# { $sweetness } is a number or "not known", { $target } a number, { $compared } how the taste differs.
variations-level-words = Süße { $sweetness }, Ziel { $target } g/100 ml; { $compared }
# The name of a new version with a sugar level.
variations-level-version = { $level } Zucker
# Words, with a comma between, by which the name of a level says already that it is one of sugar. Shops name levels in
# English, too: keep the English words in every language.
variations-level-says-sugar = zucker, süß, sugar, sweet

# Other cups, hot or iced, less ice.
variations-sizes = Größen und Eis
variations-in-another-cup = In einem anderen Becher
variations-with-less-ice = Mit weniger Eis
variations-iced-instead = Eisgekühlt statt heiß
variations-hot-instead = Heiß statt eisgekühlt
# What the line of the level of a row is.
variations-size-target = der Standard in dieser Größe
# Names of variations. { $volume } is what the cup holds to its rim.
variations-cup = { $cup }, { $volume }
variations-iced-cup = eisgekühlt, { $cup }
variations-hot-cup = heiß, { $cup }
# The levels of ice of a shop that names none.
variations-less-ice = weniger Eis
variations-little-ice = wenig Eis
variations-no-ice = ohne Eis
variations-ice-level = { $level }, { $percent } des Eises
# Names of new versions.
variations-iced = eisgekühlt
variations-hot = heiß

# Every level in every size with every amount of ice.
variations-matrix = Stufen, Größen und Eis in einer Tabelle
variations-matrix-show = Tabelle der Stufen, Größen und Eismengen einblenden
variations-matrix-hide = Tabelle der Stufen, Größen und Eismengen ausblenden
variations-matrix-what = Zucker des Getränks auf jeder Stufe. Wählen Sie aus, was Sie behalten wollen. Stufen, die sich mit ganzen Maßen nicht erreichen lassen, sind nicht vorausgewählt.
variations-matrix-keep = { $count ->
    [0] Gewähltes behalten
    [one] 1 Version behalten
   *[other] { $count } Versionen behalten
}
variations-matrix-print = Tabelle drucken
variations-matrix-table = Stufen, Größen und Eis
# { $variation } is a size with an amount of ice.
variations-matrix-choose = { $variation }, { $level } wählen: { $sugar }
variations-matrix-version = { $variation }, { $level }
# Behind a figure that whole measures do not give.
variations-matrix-by-other-means = { $sugar } *
# { $means } is a clause such as “mit einem halben Maß Tambrel Birnensirup”.
variations-keep-by-means = { $name } { $means } als neue Version behalten
variations-offer = { $means }: { $amounts }

# The names of the levels.
variations-names = Namen der Zucker- und Eisstufen
variations-names-show = Namen der Stufen anzeigen
variations-names-hide = Namen der Stufen ausblenden
# { $kind } is "sugar" or "ice" in all that follows; { $number } counts from 1.
variations-names-of = { $kind ->
    [sugar] Zuckerstufen
   *[ice] Eisstufen
}
variations-level-name = { $kind ->
    [sugar] Name der Zuckerstufe { $number }
   *[ice] Name der Eisstufe { $number }
}
variations-level-percent = { $kind ->
    [sugar] Prozentsatz der Zuckerstufe { $number }
   *[ice] Prozentsatz der Eisstufe { $number }
}
variations-level-remove = { $kind ->
    [sugar] Zuckerstufe { $number } entfernen
   *[ice] Eisstufe { $number } entfernen
}
variations-level-add = { $kind ->
    [sugar] Zuckerstufe hinzufügen
   *[ice] Eisstufe hinzufügen
}
# The name of a new level, until a person types another.
variations-new-level = Stufe { $number }
variations-level-without-name = eine Stufe braucht einen Namen
variations-percent-out-of-range = „{ $found }“ liegt außerhalb des Bereichs: 0 bis { $most } eingeben

# Tables that are copied: what they are, and their columns.
variations-ladder-table = Zuckerstufen
variations-sizes-table = Größen und Eis
variations-column-level = Stufe
variations-column-sugar = Zucker, g
variations-column-floor = davon nicht weglassbar, g
variations-column-sweetness = Süße, g/100 ml
variations-column-target = Ziel, g/100 ml
variations-column-amounts = Mengen
variations-column-taste-target = Geschmack im Vergleich zum Ziel
variations-column-variation = Variante
variations-column-taste-standard = Geschmack im Vergleich zum Standard
variations-column-remark = Bemerkung
