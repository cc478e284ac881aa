# What is drawn of a drink: the level, the cup, the list of figures and how a figure is worked out.

# A choice as a screen reader says it: what is chosen, and what it is now.
choice-named = { $name }: { $word }

widget-not-known = nicht bekannt
widget-not-stated = nicht angegeben

# The level in words, for a screen reader. $standard is "the standard"; each of $axes is "sweetness: sweeter by 2.1 steps".
widget-level = Geschmacksbild (Linie: { $standard }). { $axes }. { $overall }
# Behind the level of a drink that has just changed. $level is the sentence above.
widget-level-moved = { $level }. Verschoben: { $moved }
widget-level-nothing-moves = { $level }. Keine Marke verschiebt sich
# In the legend: what the band is.
widget-level-band = ein merklicher Schritt beiderseits

# The sentence under the level. $far is a number of noticeable steps.
widget-level-nothing-compared = noch lässt sich kein Merkmal mit dem Standard vergleichen
widget-level-even = bei jedem Merkmal gleich
widget-level-within = jedes Merkmal liegt innerhalb eines Schritts (insgesamt { $far })
widget-level-within-as-known = jedes bekannte Merkmal liegt innerhalb eines Schritts (insgesamt { $far })
widget-level-off = nicht gleich: insgesamt { $far } Schritte, { $axes }
# The last of a list of axes.
widget-level-more-axes = { $count } weitere
widget-level-some-not-known = { $verdict }; nicht bekannt: { $axes }

# A mark of the level. $change is "sweeter" or "less sweet"; $steps is a number.
widget-mark-level = gleich
widget-mark-steps = um { $steps } Schritte { $change }
# At most one step: "sweeter by 0.4 of a step".
widget-mark-part = um { $steps } Schritt { $change }
widget-mark-steps-not-counted = um { $steps } Schritte { $change }, was nicht zählt
widget-mark-part-not-counted = um { $steps } Schritt { $change }, was nicht zählt
# Under a mark, where there is little room.
widget-mark-short = { $steps } { $change }
widget-mark-of-axis = { $axis }: { $difference }
widget-mark-moved = { $axis }: { $from } → { $to }
# What the tooltip of a mark says.
widget-mark-figures = Standard { $standard }, dieses Getränk { $drink }
widget-mark-step = ein merklicher Schritt ist { $step }
widget-mark-doubt = Unsicherheit: ± { $u } Schritte; Streuung am Tresen: { $scatter } Schritte
widget-mark-step-source = Schritt, sofern der Laden keinen eigenen festgelegt hat: { $source }

# Names of the axes under the level: at most seven letters or so.
widget-axis-sweetness = Süße
widget-axis-tea-strength = Tee
widget-axis-creaminess = Creme
widget-axis-acidity = Säure
widget-axis-body = Körper
widget-axis-temperature = Wärme
widget-axis-volume = Volumen

# The cup in words, for a screen reader. Each of $layers is "whole milk 180 ml".
widget-cup = { $cup }. Von unten: { $layers }.
widget-cup-ice = Davon sind { $volume } Eis.
widget-cup-none = kein Becher
widget-cup-of-volume = { $cup }, { $volume }
widget-cup-full = zu { $percent } % gefüllt
widget-cup-served = beim Servieren
# $fill is "92 % full".
widget-cup-served-full = beim Servieren, { $fill }
# Remarks under the cup.
widget-cup-overfull = { $volume } passen nicht hinein
widget-cup-head-room = reicht in den Freiraum von { $volume } hinein
widget-cup-not-chosen = kein Becher gewählt: als einfacher Becher gezeichnet
widget-cup-no-shape = Form nicht angegeben, als einfacher Becher gezeichnet
widget-cup-not-known = Volumen nicht bekannt: { $ingredients }
# Two lines under the cup, one below the other.
widget-cup-as-poured = Schichten wie eingefüllt, jede mit ihrer Temperatur:
widget-cup-sum-differs = zusammen nicht ganz das Volumen des Getränks
# What the strength of the colours in the cup stands for.
widget-cup-colours-sugar = je kräftiger die Farbe, desto mehr Zucker
widget-cup-colours-sweetness = je kräftiger die Farbe, desto mehr Süße
widget-cup-colours-heat = je kräftiger die Farbe, desto mehr Wärme wird zugeführt oder entzogen
widget-cup-colours-cost = je kräftiger die Farbe, desto höher die Kosten
widget-cup-colours-energy = je kräftiger die Farbe, desto mehr Energie
widget-cup-colours-tea = je kräftiger die Farbe, desto mehr Tee
widget-cup-colours-uncertainty = je kräftiger die Farbe, desto unsicherer der Zucker
# A layer that can be clicked: it leads to its line. $layer is "whole milk 180 ml".
widget-cup-go-to = zur Zeile: { $layer }

# The list of figures: its groups, and the heads of its columns.
widget-figures = Werte
widget-figures-taste = Geschmack
widget-figures-on-top = Mit dem, was obenauf schwimmt
widget-figures-cup = Im Becher
widget-figures-nutrition = Nährwerte
widget-figures-cost = Kosten
widget-figures-figure = Wert
widget-figures-unit = Einheit
widget-figures-value = Zahl
widget-figures-doubt = ±
widget-figures-in-100-ml = je 100 ml
widget-figures-remark = Bemerkung
# What a click on a figure shows, behind "Click:".
widget-figures-how = wie dieser Wert berechnet wird
widget-sweetness-at = Süße bei { $celsius }
widget-minutes-until = Minuten bis { $celsius }
# In place of the minutes, where the drink is handed over below its drinking temperature.
widget-served-below = wird kühler serviert
widget-served-below-tasted = wird kühler serviert; bei der Freigabe mit { $celsius } verkostet
widget-first-sip = erster Schluck: { $figure }
widget-stirred = umgerührt: { $figure }
widget-allergens = Allergene: { $allergens }
widget-claims-source = Nach den Angaben auf den Packungen. Gemeinsam benutzte Messlöffel, Shaker und Mixer können Spuren hinterlassen.

# How a figure is worked out.
widget-why = Rechenweg: { $figure }
# $figure is "total sugar: 20.3 g, ± 1.7".
widget-why-title = Rechenweg – { $figure }
# Which table is copied: the lines with what each brings of the figure.
widget-why-lines = Zeilen, { $figure }
widget-why-evidence = Belege für { $nutrient }: { $evidence }.
widget-why-ingredient = Zutat
widget-why-cup-and-shaker = Becher und Shaker
widget-why-cup-and-more = Becher und Zubehör
widget-why-assumed = Angenommen, weil es auf keiner Packung steht
widget-why-doubt = Was den Wert unsicher macht
# Behind a cause of uncertainty: what would narrow it.
widget-why-narrow = – { $narrow }
