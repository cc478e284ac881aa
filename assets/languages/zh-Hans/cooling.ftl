# What would tell more of how a cup cools, as a request in small letters.
cooling-read = 每隔几分钟用温度计测量一次，直到适饮温度
cooling-note-volume = 测量时记下杯中的量
cooling-time-cover = 分别计时：一杯加盖或封膜，一杯不加
cooling-read-later = 继续测量，直到适饮温度
cooling-read-another = 改天再测量另一个同款杯子
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
   *[other] 只有 { $readings } 个读数可用；请在不同分钟至少测量 { $least } 次，且高于室温 { $room }
}
cooling-not-falling = 读数并未向室温 { $room } 下降；请测量正在降温的饮品
cooling-no-capacity = 杯子的容量未大于零；请输入杯子的容量
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = 约 { $likely }，最迟 { $latest }
