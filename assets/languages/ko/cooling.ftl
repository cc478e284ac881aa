# What would tell more of how a cup cools, as a request in small letters.
cooling-read = 마시기 좋은 온도가 될 때까지 몇 분마다 온도계로 측정
cooling-note-volume = 측정할 때 담긴 양 기록
cooling-time-cover = 뚜껑이나 필름이 있는 음료와 없는 음료의 식는 시간을 각각 측정
cooling-read-later = 마시기 좋은 온도가 될 때까지 계속 측정
cooling-read-another = 다른 날 같은 종류의 다른 컵 측정
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
   *[other] 쓸 수 있는 측정값이 { $readings }개뿐입니다. 실온 { $room }보다 높을 때 서로 다른 시각에 { $least }개 이상 측정하십시오
}
cooling-not-falling = 측정값이 실온 { $room } 쪽으로 내려가지 않습니다. 식어 가는 음료를 측정하십시오
cooling-no-capacity = 컵 용량이 0보다 크지 않습니다. 컵에 담기는 양을 입력하십시오
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = 약 { $likely }, 늦어도 { $latest }
