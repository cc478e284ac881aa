# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = 温度
axis-sweetness-more = 更甜
axis-sweetness-less = 较不甜
axis-tea-strength-more = 茶味更浓
axis-tea-strength-less = 茶味较淡
axis-creaminess-more = 奶油感更重
axis-creaminess-less = 奶油感较轻
axis-acidity-more = 更酸
axis-acidity-less = 较不酸
axis-body-more = 更厚实
axis-body-less = 更单薄
axis-temperature-more = 更热
axis-temperature-less = 更凉
axis-volume-more = 更大杯
axis-volume-less = 更小杯
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = { $flavour }更重
axis-flavour-less = { $flavour }较轻

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] { $change } { $steps } 级
    }
axis-same = 相同
axis-not-known = 未知

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = 无

# What fills a cup: "to 400 ml".
amount-fill-to = 加至 { $volume }
amount-fill-to-rim = 加至杯口

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
   *[other] 勺
}
amount-uses-pump = { $amount } { $count ->
   *[other] 泵
}
amount-uses-spoon = { $amount } { $count ->
   *[other] 匙
}
amount-uses-jug = { $amount } { $count ->
   *[other] 壶
}
amount-uses-ice-scoop = { $amount } { $count ->
   *[other] 冰铲
}
amount-uses-button = { $amount } { $count ->
   *[other] 次按键
}
amount-uses-piece = { $amount } { $count ->
   *[other] 块
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = 片, 颗, 粒
amount-uses-other = { $amount } { $count ->
   *[other] 份
}
