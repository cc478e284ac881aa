# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = nhiệt độ
axis-sweetness-more = ngọt hơn
axis-sweetness-less = ít ngọt hơn
axis-tea-strength-more = trà đậm hơn
axis-tea-strength-less = trà nhạt hơn
axis-creaminess-more = béo hơn
axis-creaminess-less = ít béo hơn
axis-acidity-more = chua hơn
axis-acidity-less = ít chua hơn
axis-body-more = sánh hơn
axis-body-less = loãng hơn
axis-temperature-more = nóng hơn
axis-temperature-less = nguội hơn
axis-volume-more = nhiều hơn
axis-volume-less = ít hơn
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = nhiều { $flavour } hơn
axis-flavour-less = ít { $flavour } hơn

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] { $change } { $steps } nấc
    }
axis-same = như nhau
axis-not-known = chưa biết

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = không có

# What fills a cup: "to 400 ml".
amount-fill-to = đến { $volume }
amount-fill-to-rim = đến miệng ly

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
   *[other] muỗng đong
}
amount-uses-pump = { $amount } { $count ->
   *[other] lần nhấn bơm
}
amount-uses-spoon = { $amount } { $count ->
   *[other] muỗng
}
amount-uses-jug = { $amount } { $count ->
   *[other] ca
}
amount-uses-ice-scoop = { $amount } { $count ->
   *[other] xẻng đá
}
amount-uses-button = { $amount } { $count ->
   *[other] lần nhấn nút
}
amount-uses-piece = { $amount } { $count ->
   *[other] miếng
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = lát, lá, viên
amount-uses-other = { $amount } { $count ->
   *[other] lần
}
