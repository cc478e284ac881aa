# Causes of uncertainty: what is uncertain, as a noun in small letters. Names stand in the nominative or behind "von".
# $evidence is where the figure comes from.
cause-composition = { $evidence ->
    [label] { $nutrient } in { $ingredient }, laut Etikett
    [specification] { $nutrient } in { $ingredient }, laut Spezifikation
    [measured] { $nutrient } in { $ingredient }, hier gemessen
    [published] { $nutrient } in { $ingredient }, laut einer veröffentlichten Tabelle
    [assumed] { $nutrient } in { $ingredient }, angenommen
   *[derived] { $nutrient } in { $ingredient }, aus den übrigen Werten berechnet
}
cause-sugar-split = welche Zuckerarten { $ingredient } enthält
cause-undeclared = das Wasser und die Feststoffe, die auf der Packung von { $ingredient } fehlen
cause-flavour = die Stärke des Aromas „{ $flavour }“ in { $ingredient }
cause-nameless-flavour = die Stärke eines Aromas in { $ingredient }
cause-high-potency = der Süßstoff in { $ingredient }
cause-density = die Dichte von { $ingredient }
cause-bulk-density = die Schüttdichte von { $ingredient }
cause-calibration = was eine Dosierung fasst ({ $measure })
cause-calibration-with = wie viel { $ingredient } eine Dosierung fasst ({ $measure })
cause-unknown-measure = eine Dosierhilfe, die nicht im Buch steht
cause-extraction = wie viel von { $ingredient } sich löst
cause-retention = wie viel Wasser { $ingredient } zurückhält
cause-free-sugars = wie viel vom Zucker in { $ingredient } zugesetzt ist
cause-measure-temperature = die Ausgabetemperatur ({ $measure })
cause-line-temperature = die Temperatur von { $ingredient } beim Zugeben
cause-batch = das Wiegen und Abmessen eines Ansatzes von { $ingredient }
cause-polyol-sweetness = die Süße von { $polyol }: Veröffentlichte Werte weichen voneinander ab
cause-unknown-polyol-sweetness = die Süße eines mehrwertigen Alkohols unbekannter Art: Veröffentlichte Werte weichen voneinander ab
cause-tasted-sweetness = wie süß { $ingredient } verkostet wurde
cause-polyol-energy = welchen mehrwertigen Alkohol { $ingredient } enthält
cause-potency = die Süße des Süßstoffs: Veröffentlichte Werte weichen voneinander ab
cause-sweetener-mixture = der Geschmack mehrerer Süßstoffe zusammen
cause-freezing-point = die Temperatur, bei der das Getränk gefriert
cause-melting = wie viel Eis beim Servieren geschmolzen ist
cause-heat-model = der Wärmeverlust beim Mischen und Eingießen
cause-density-model = das Volumen, das die Bestandteile des Getränks zusammen ergeben
cause-yield = die Ausbeute eines Ansatzes von { $ingredient }
cause-room-temperature = die Raumtemperatur
cause-temperature = die Temperatur von { $ingredient } bei der Verwendung
cause-vessel-heat = die Wärme, die das Gefäß aufnimmt ({ $vessel })
cause-cooling = wie schnell ein Getränk im Gefäß abkühlt ({ $vessel })
# $sugar is one of glucose, fructose, lactose, maltose and other.
cause-relative-sweetness = { $sugar ->
    [glucose] die Süße von Glukose bei { $celsius }: Veröffentlichte Werte weichen voneinander ab
    [fructose] die Süße von Fruktose bei { $celsius }: Veröffentlichte Werte weichen voneinander ab
    [lactose] die Süße von Laktose bei { $celsius }: Veröffentlichte Werte weichen voneinander ab
    [maltose] die Süße von Maltose bei { $celsius }: Veröffentlichte Werte weichen voneinander ab
   *[other] die Süße anderer Zucker bei { $celsius }: Veröffentlichte Werte weichen voneinander ab
}
cause-use-scatter = die Streuung am Tresen beim Abmessen von { $ingredient }
cause-reading = das Ablesen der Waage oder der Markierung beim Abmessen von { $ingredient }
# What stands in the place of an ingredient where a line is not in the drink any more. It always stands behind "von".
cause-some-line = einer Zeile

# What a person can do to know it better, as a request in small letters.
narrow-specification = die Spezifikation anfordern
narrow-which-sugars = beim Hersteller nachfragen, welche Zuckerarten es sind
narrow-measure-again = noch einmal messen
narrow-read-label = das Etikett der Packung lesen
narrow-label-or-maker = das Etikett lesen oder beim Hersteller nachfragen
narrow-taste-with-standard = neben dem Standard verkosten
narrow-weigh-volume = ein abgemessenes Volumen davon wiegen
narrow-weigh-drink-volume = ein abgemessenes Volumen des Getränks wiegen
narrow-weigh-level-measures = gestrichene Dosierungen davon wiegen
narrow-soluble-solids = die löslichen Feststoffe des Aufgusses messen
narrow-weigh-brew = den abgegossenen Tee wiegen
narrow-ingredient-list = das Zutatenverzeichnis lesen
narrow-thermometer-pouring = die Temperatur beim Ausgeben mit einem Thermometer messen
narrow-thermometer-adding = die Temperatur beim Eingießen mit einem Thermometer messen
narrow-weigh-into-batch = wiegen, was in einen Ansatz hineinkommt
narrow-thermometer-iced = die Temperatur im eisgekühlten Getränk mit einem Thermometer messen
narrow-thermometer-served = die Temperatur im Getränk beim Servieren mit einem Thermometer messen
narrow-weigh-batches = die nächsten drei Ansätze wiegen
narrow-thermometer-room = die Raumtemperatur mit einem Thermometer messen
narrow-weigh-vessel = das leere Gefäß wiegen und eingeben, woraus es besteht
# $uses is the word for several uses of the measure: "presses".
narrow-never-weighed = noch keine Messwerte: dreimal je zehn { $uses } zusammen wiegen
narrow-weighed-once = einmal gewogen: noch zweimal je zehn { $uses } zusammen wiegen
narrow-weigh-more = noch dreimal je zehn { $uses } zusammen wiegen
narrow-press-to-stop = bis zum Anschlag drücken oder diese Zeile wiegen
narrow-strike-level = glatt abstreichen oder diese Zeile wiegen
narrow-weigh-line = diese Zeile wiegen
