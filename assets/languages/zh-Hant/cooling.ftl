# What would tell more of how a cup cools, as a request in small letters.
cooling-read = 每隔幾分鐘以溫度計測量一次，直到適飲溫度
cooling-note-volume = 測量時記下杯中的量
cooling-time-cover = 分別計時：一杯加蓋或封膜，一杯不加
cooling-read-later = 繼續測量，直到適飲溫度
cooling-read-another = 改天再測量另一個同款杯子
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
   *[other] 只有 { $readings } 筆讀數可用；請在不同分鐘至少測量 { $least } 筆，且高於室溫 { $room }
}
cooling-not-falling = 讀數並未朝室溫 { $room } 下降；請測量正在降溫的飲品
cooling-no-capacity = 杯子的容量未大於零；請輸入杯子的容量
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = 約 { $likely }，最遲 { $latest }
