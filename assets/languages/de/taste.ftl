# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = Temperatur
axis-sweetness-more = süßer
axis-sweetness-less = weniger süß
axis-tea-strength-more = stärkerer Tee
axis-tea-strength-less = schwächerer Tee
axis-creaminess-more = cremiger
axis-creaminess-less = weniger cremig
axis-acidity-more = säuerlicher
axis-acidity-less = weniger säuerlich
axis-body-more = voller
axis-body-less = dünner
axis-temperature-more = heißer
axis-temperature-less = kühler
axis-volume-more = größer
axis-volume-less = kleiner
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = mehr { $flavour }
axis-flavour-less = weniger { $flavour }

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] um { $steps } Schritte { $change }
    }
axis-same = gleich
axis-not-known = nicht bekannt

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = nichts

# What fills a cup: "to 400 ml".
amount-fill-to = bis { $volume }
amount-fill-to-rim = bis zum Rand

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
    [one] Messlöffel
   *[other] Messlöffel
}
amount-uses-pump = { $amount } { $count ->
    [one] Hub
   *[other] Hübe
}
amount-uses-spoon = { $amount } { $count ->
    [one] Löffel
   *[other] Löffel
}
amount-uses-jug = { $amount } { $count ->
    [one] Kännchen
   *[other] Kännchen
}
amount-uses-ice-scoop = { $amount } { $count ->
    [one] Eisschaufel
   *[other] Eisschaufeln
}
amount-uses-button = { $amount } { $count ->
    [one] Tastendruck
   *[other] Tastendrücke
}
amount-uses-piece = { $amount } { $count ->
    [one] Stück
   *[other] Stück
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = Scheibe, Scheiben, Blatt, Blätter, Perle, Perlen
amount-uses-other = { $amount } { $count ->
    [one] Einheit
   *[other] Einheiten
}
