# What would tell more of how a cup cools, as a request in small letters.
cooling-read = medir la temperatura con un termómetro cada pocos minutos, hasta la temperatura de consumo
cooling-note-volume = anotar la cantidad que contiene en cada medición
cooling-time-cover = cronometrar una bebida con su tapa o film y otra sin ellos
cooling-read-later = seguir midiendo, hasta la temperatura de consumo
cooling-read-another = medir otro vaso de este tipo, otro día
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
    [one] solo { $readings } medición es utilizable; tomar al menos { $least } en minutos distintos, por encima de los { $room } de la sala
   *[other] solo { $readings } mediciones son utilizables; tomar al menos { $least } en minutos distintos, por encima de los { $room } de la sala
}
cooling-not-falling = las mediciones no descienden hacia los { $room } de la sala; medir una bebida que se enfríe
cooling-no-capacity = la capacidad del vaso no es mayor que cero; introducir lo que cabe en él
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = aproximadamente { $likely }, { $latest } a más tardar
