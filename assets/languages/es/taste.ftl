# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = temperatura
axis-sweetness-more = más dulce
axis-sweetness-less = menos dulce
axis-tea-strength-more = té más fuerte
axis-tea-strength-less = té más suave
axis-creaminess-more = más cremoso
axis-creaminess-less = menos cremoso
axis-acidity-more = más ácido
axis-acidity-less = menos ácido
axis-body-more = más cuerpo
axis-body-less = menos cuerpo
axis-temperature-more = más caliente
axis-temperature-less = más frío
axis-volume-more = más grande
axis-volume-less = más pequeño
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = más { $flavour }
axis-flavour-less = menos { $flavour }

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] { $change } en { $steps } escalones
    }
axis-same = igual
axis-not-known = no se conoce

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = sin

# What fills a cup: "to 400 ml".
amount-fill-to = hasta { $volume }
amount-fill-to-rim = hasta el borde

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
    [one] cacito
   *[other] cacitos
}
amount-uses-pump = { $amount } { $count ->
    [one] bombeo
   *[other] bombeos
}
amount-uses-spoon = { $amount } { $count ->
    [one] cuchara
   *[other] cucharas
}
amount-uses-jug = { $amount } { $count ->
    [one] jarra
   *[other] jarras
}
amount-uses-ice-scoop = { $amount } { $count ->
    [one] pala de hielo
   *[other] palas de hielo
}
amount-uses-button = { $amount } { $count ->
    [one] toque de botón
   *[other] toques de botón
}
amount-uses-piece = { $amount } { $count ->
    [one] pieza
   *[other] piezas
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = rodaja, rodajas, hoja, hojas, perla, perlas
amount-uses-other = { $amount } { $count ->
    [one] unidad
   *[other] unidades
}
