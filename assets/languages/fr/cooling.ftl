# What would tell more of how a cup cools, as a request in small letters.
cooling-read = relever la température au thermomètre à quelques minutes d’intervalle, jusqu’à la température de consommation
cooling-note-volume = noter à chaque relevé la quantité qui s’y trouve
cooling-time-cover = chronométrer une boisson avec son couvercle ou son film, et une autre sans
cooling-read-later = poursuivre les relevés, jusqu’à la température de consommation
cooling-read-another = faire des relevés avec un autre gobelet de ce type, un autre jour
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
    [one] { $readings } relevé seulement est utilisable ; en faire au moins { $least } à des minutes différentes, au-dessus de la température de la pièce ({ $room })
   *[other] { $readings } relevés seulement sont utilisables ; en faire au moins { $least } à des minutes différentes, au-dessus de la température de la pièce ({ $room })
}
cooling-not-falling = les relevés ne descendent pas vers la température de la pièce ({ $room }) ; faire les relevés sur une boisson qui refroidit
cooling-no-capacity = la contenance du gobelet n’est pas supérieure à zéro ; saisir ce qu’il contient
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = environ { $likely }, { $latest } au plus tard
