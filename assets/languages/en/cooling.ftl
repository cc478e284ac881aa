# What would tell more of how a cup cools, as a request in small letters.
cooling-read = read a thermometer in it every few minutes, down to drinking temperature
cooling-note-volume = note how much is in it when you read it
cooling-time-cover = time a drink with its lid or film on, and one without
cooling-read-later = keep reading, down to drinking temperature
cooling-read-another = read another cup of this kind, on another day
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
    [one] only { $readings } reading is usable; take at least { $least } at different minutes, above the { $room } of the room
   *[other] only { $readings } readings are usable; take at least { $least } at different minutes, above the { $room } of the room
}
cooling-not-falling = the readings do not fall towards the { $room } of the room; read a drink that cools
cooling-no-capacity = the capacity of the cup is not above zero; enter what it holds
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = about { $likely }, at the latest { $latest }
