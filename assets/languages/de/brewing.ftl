# How leaf is brewed.
infusion-hot = heiß
infusion-cold = kalt
infusion-second = zweiter Aufguss
infusion-reference = Vergleichsaufguss (ISO 3103)
# Where the figures of a method are from.
infusion-source-hot = Extraktion zwischen 22 % der Teeblätter in Haushaltsaufgüssen (Letheby, in Cooley’s Cyclopaedia) und 35 % im Gleichgewicht bei 1:10 (Long 1977); zurückgehaltenes Wasser nach gängiger Praxis, ohne Quelle
infusion-source-cold = Extraktion angenommen, niedriger als heiß; zurückgehaltenes Wasser nach gängiger Praxis, ohne Quelle
infusion-source-second = Extraktion angenommen: das meiste von dem, was ein erster Aufguss unter den 35 % im Gleichgewicht (Long 1977) übrig lässt
infusion-source-reference = ISO 3103:2019: 2 g je 100 ml, kochendes Wasser, 6 min bei schwarzem Tee; Extraktion wie bei einem heißen Aufguss
# Why a brew is not possible, as a clause without a full stop.
brew-leaf-takes-all = { $leaf } Teeblätter halten { $retained } Wasser zurück, vorhanden sind aber nur { $water }; mehr Wasser oder weniger Teeblätter verwenden
brew-too-strong = eine Stärke von { $wanted } je 100 g ist mehr, als diese Methode höchstens ergibt ({ $most }); einen schwächeren Tee wählen
brew-not-an-amount = { $what ->
    [water] die Wassermenge beträgt { $found }; eine Menge über 0 eingeben
    [leaf] die Menge der Teeblätter beträgt { $found }; eine Menge über 0 eingeben
    [tea] die Teemenge beträgt { $found }; eine Menge über 0 eingeben
    [strength] die Stärke beträgt { $found }; eine Zahl über 0 eingeben
    [extraction] die Extraktion beträgt { $found }; eine Zahl über 0 eingeben
   *[pot] der Inhalt der Kanne beträgt { $found }; eine Menge über 0 eingeben
}
# A time of day on a later day; $time is "03:55".
time-next-day = { $time } am nächsten Tag
time-days-later = { $days ->
    [one] { $time } ({ $days } Tag später)
   *[other] { $time } ({ $days } Tage später)
}
