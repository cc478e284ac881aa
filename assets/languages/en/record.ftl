# The record: what was read beside what had been foretold, and what that says of the doubts (the ± of every figure).

record-title = How often the ± held
record-about = File what you read of a cup. The program keeps it beside what it had said that day, and counts how often it was right.
record-class = { $class ->
    [dose] Doses and weights
    [temperature] Serving temperature
    [composition] What is in it
    [sweetness] Sweetness
   *[flavour] Flavours
}
record-quantity = { $what ->
    [temperature] temperature
    [brix] °Brix
   *[weight] weight
}
record-count = { $count ->
    [one] { $class }: { $inside } of 1 reading inside two ±.
   *[other] { $class }: { $inside } of { $count } readings inside two ±.
}
# $times, $low, $high, $accepted are factors on the doubts.
record-verdict = { $verdict ->
    [too-few] Too few to tell, it takes { $wanted } to make doubts smaller: they stay as they are ({ $low } to { $high } times as large would fit).
    [fits] The doubts fit: { $low } to { $high } times what is assumed; the book has { $accepted }.
    [too-small] The doubts are too small: { $times } times what is assumed ({ $low } to { $high }) fits the readings; the book has { $accepted }. Then { $inside } of { $count } would be inside.
   *[too-large] The doubts are too large: { $times } times what is assumed ({ $low } to { $high }) fits the readings; the book has { $accepted }. Then { $inside } of { $count } would be inside.
}
record-accepted = { $class }: multiplied by { $times } since { $day }, on a record of { $inside } of { $count } inside.
record-accepted-by = { $class }: multiplied by { $times } since { $day }, accepted by { $by } on a record of { $inside } of { $count } inside.
record-of-cup = { $drink }, { $what }
record-reading = { $inside ->
    [yes] { $day }: { $what }: { $read }, foretold { $foretold }
   *[no] { $day }: { $what }: { $read }, foretold { $foretold }: outside
}
record-tasting = { $inside ->
    [yes] { $day }: { $what }: came out as foretold
   *[no] { $day }: { $what }: came out otherwise than foretold
}
record-file = File in the record
record-file-hint = The readings above are kept with this drink, beside what was foretold of them.
record-not-foretold = Nothing is foretold of this drink that these readings could be held to.
record-filed = { $count ->
    [one] 1 reading of this drink is in the record.
   *[other] { $count } readings of this drink are in the record.
}
record-take-out = Take the last one out
record-take = Use these doubts
record-take-hint = Every ± that rests on them is re-scaled, in all drinks. No figure moves, and you can undo it.
record-give-up = Go back to what is assumed
record-none = No reading of a cup, a measure on two days or a tasting can be held to what was foretold yet.
