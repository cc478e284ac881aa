# How drinks differ in taste, and amounts as the counter says them.

axis-temperature = 온도
axis-sweetness-more = 더 달게
axis-sweetness-less = 덜 달게
axis-tea-strength-more = 차가 더 진하게
axis-tea-strength-less = 차가 더 연하게
axis-creaminess-more = 더 크리미하게
axis-creaminess-less = 덜 크리미하게
axis-acidity-more = 더 시게
axis-acidity-less = 덜 시게
axis-body-more = 바디감 더 있게
axis-body-less = 바디감 덜하게
axis-temperature-more = 더 뜨겁게
axis-temperature-less = 더 차게
axis-volume-more = 양이 더 많게
axis-volume-less = 양이 더 적게
# { $flavour } is what the shop calls it: "more chestnut".
axis-flavour-more = { $flavour } 더 강하게
axis-flavour-less = { $flavour } 더 약하게

# How an axis of taste changes from one drink to the next. { $change } is "sweeter" or "less sweet", { $steps } is a number with a
# decimal and { $count } the same for a plural.
axis-changes = { $count ->
       *[other] { $steps }단계 { $change }
    }
axis-same = 같음
axis-not-known = 알 수 없음

# How the amount of a line changes: "Hob pear syrup 2 → 1½ pumps".
line-changes = { $ingredient } { $from } → { $to }
# In place of an amount, where the line is added or left out.
line-none = 없음

# What fills a cup: "to 400 ml".
amount-fill-to = { $volume }까지
amount-fill-to-rim = 컵 가득

# How often a measure is used. $amount may hold a fraction: "1½ scoops"; $count is 1 up to one use.
amount-uses-scoop = { $amount } { $count ->
   *[other] 스쿱
}
amount-uses-pump = { $amount } { $count ->
   *[other] 펌프
}
amount-uses-spoon = { $amount } { $count ->
   *[other] 스푼
}
amount-uses-jug = { $amount } { $count ->
   *[other] 저그
}
amount-uses-ice-scoop = { $amount } { $count ->
   *[other] 아이스 스쿱
}
amount-uses-button = { $amount } { $count ->
   *[other] 버튼 누름
}
amount-uses-piece = { $amount } { $count ->
   *[other] 개
}
# Other words for a piece that are read when they are typed behind a number, in singular and plural, with a comma between.
amount-words-of-pieces = 조각, 장, 알
amount-uses-other = { $amount } { $count ->
   *[other] 회
}
