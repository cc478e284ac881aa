# What would tell more of how a cup cools, as a request in small letters.
cooling-read = alle paar Minuten die Temperatur darin mit einem Thermometer messen, bis zur Trinktemperatur
cooling-note-volume = bei jeder Messung notieren, wie viel darin ist
cooling-time-cover = die Abkühlzeit eines Getränks mit Deckel oder Folie und eines ohne messen
cooling-read-later = weiter messen, bis zur Trinktemperatur
cooling-read-another = an einem anderen Tag einen weiteren Becher dieser Art messen
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
    [one] nur { $readings } Messwert ist brauchbar; mindestens { $least } zu verschiedenen Minuten aufnehmen, über der Raumtemperatur von { $room }
   *[other] nur { $readings } Messwerte sind brauchbar; mindestens { $least } zu verschiedenen Minuten aufnehmen, über der Raumtemperatur von { $room }
}
cooling-not-falling = die Messwerte fallen nicht in Richtung der Raumtemperatur von { $room }; ein abkühlendes Getränk messen
cooling-no-capacity = das Fassungsvermögen des Bechers ist nicht größer als null; eingeben, wie viel er fasst
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = etwa { $likely }, spätestens { $latest }
