# How a drink cools, and the thermometer readings of its cup. A message that ends with "-named" is what a screen reader says of the field.
serving-cooling-served = beim Servieren
serving-cooling-table = Abkühlen
# $reason is a clause.
serving-cooling-no-curve = Keine Abkühlkurve: { $reason }.
serving-readings-no-curve = Die Messwerte ergeben noch keine Kurve: { $reason }.
# Heads of columns and an axis.
serving-head-minutes = Minuten
serving-head-temperature = Temperatur
# Where the drink is in the serving window of the shop. $by is a difference of temperatures, $from a number, $to a temperature.
serving-cooling-within = { $kind ->
    [hot] Innerhalb des Servierfensters von { $from } bis { $to } für heiße Getränke.
   *[iced] Innerhalb des Servierfensters von { $from } bis { $to } für eisgekühlte Getränke.
}
serving-cooling-above = { $kind ->
    [hot] { $by } über dem Servierfenster von { $from } bis { $to } für heiße Getränke.
   *[iced] { $by } über dem Servierfenster von { $from } bis { $to } für eisgekühlte Getränke.
}
serving-cooling-below = { $kind ->
    [hot] { $by } unter dem Servierfenster von { $from } bis { $to } für heiße Getränke.
   *[iced] { $by } unter dem Servierfenster von { $from } bis { $to } für eisgekühlte Getränke.
}
# Names of figures: minutes until a line of temperature is passed. $at is a temperature.
serving-cooling-to-drinking = bis zur Trinktemperatur
serving-cooling-to-drinking-at = bis zur Trinktemperatur, { $at }
serving-cooling-to-very-hot = unter { $at }, nicht mehr sehr heiß
serving-cooling-to-lukewarm = bis lauwarm, { $at }
# Beside such a figure.
serving-cooling-room-no-cooler = der Raum ist nicht kühler
serving-cooling-already = schon beim Servieren so kühl
# The lines in the picture.
serving-cooling-line-very-hot = sehr heiß, { $at }
serving-cooling-line-drinking = Trinktemperatur, { $at }
serving-cooling-line-lukewarm = lauwarm, { $at }
serving-cooling-legend = Linie: dieses Getränk ab dem Servieren; Band: wo es in 95 von 100 Fällen liegt.
serving-cooling-legend-readings = Linie: dieses Getränk ab dem Servieren; Band: wo es in 95 von 100 Fällen liegt. Punkte: die aufgenommenen Messwerte des offenen Bechers; gestrichelt: die Kurve durch sie.
# The picture for a screen reader. $lines are several of the next message, with commas between.
serving-cooling-picture = { $readings ->
    [one] Abkühlkurve in { $unit }: { $lines }; { $readings } Messwert
   *[other] Abkühlkurve in { $unit }: { $lines }; { $readings } Messwerte
}
serving-cooling-picture-line = { $line } in { $minutes }
# What the curve is based on. $miss is a difference of temperatures.
serving-cooling-basis-readings = { $count ->
    [one] Beruht auf { $count } Thermometermesswert dieses Bechers, gewichtet gegen veröffentlichte Becher. Die Kurve verfehlt ihn um { $miss }.
   *[other] Beruht auf { $count } Thermometermesswerten dieses Bechers, gewichtet gegen veröffentlichte Becher. Die Kurve verfehlt einen Messwert um höchstens { $miss }.
}
serving-cooling-basis-constant = Beruht auf der angegebenen Abkühlzeit des Bechers, gewichtet gegen veröffentlichte Becher.
serving-cooling-basis-published = Beruht allein auf veröffentlichten Bechern: Zum Abkühlen dieses Bechers ist nichts angegeben.
# $fill is "90 %", $minutes "34 ± 4".
serving-cooling-speed = { $closure ->
    [lid] Zu { $fill } gefüllt und mit Deckel kühlt ein Getränk darin von { $from } in { $minutes } min um 63 % des Weges zur Raumtemperatur von { $room } ab.
    [film] Zu { $fill } gefüllt und mit Folie kühlt ein Getränk darin von { $from } in { $minutes } min um 63 % des Weges zur Raumtemperatur von { $room } ab.
   *[open] Zu { $fill } gefüllt kühlt ein Getränk darin von { $from } in { $minutes } min um 63 % des Weges zur Raumtemperatur von { $room } ab.
}
# $request is a request in small letters: "keep reading, down to drinking temperature".
serving-cooling-narrow = So wird es genauer: { $request }.
# The readings. Rows: "in a room of | 22 | °C" and "with | 300 | ml in it".
serving-readings = Thermometermesswerte
serving-readings-table = Thermometermesswerte
serving-readings-no-cup = Wählen Sie im Rezept einen Becher; Messwerte gehören zu einem Becher.
serving-readings-how = Füllen Sie dieses Gefäß ({ $cup }) mit heißem Wasser, lassen Sie es offen und messen Sie alle paar Minuten. Drei Messwerte ergeben eine Kurve; weitere machen sie sicherer. Mit notiertem Volumen gelten sie für jedes Getränk in diesem Gefäß, unabhängig vom Füllgrad.
serving-readings-room = Raumtemperatur
serving-readings-room-named = Raumtemperatur bei den Messwerten
serving-readings-volume = mit
serving-readings-volume-named = Volumen bei den Messwerten
serving-readings-volume-hint = fehlt
serving-readings-volume-unit = { $unit } darin
serving-readings-minutes-named = Messwert { $number }: Minuten
serving-readings-celsius-named = Messwert { $number }: Temperatur
serving-readings-remove = Messwert { $number } entfernen
