# What would tell more of how a cup cools, as a request in small letters.
cooling-read = đo nhiệt độ trong ly bằng nhiệt kế vài phút một lần, đến khi đạt nhiệt độ uống
cooling-note-volume = ghi lại lượng có trong ly mỗi lần đo
cooling-time-cover = bấm giờ một ly có nắp hoặc màng và một ly không có
cooling-read-later = tiếp tục đo, đến khi đạt nhiệt độ uống
cooling-read-another = đo một ly khác cùng loại, vào một ngày khác
# Why thermometer readings of a cup give no curve, as a clause without a full stop. $room is a temperature.
cooling-too-few-readings = { $readings ->
   *[other] chỉ có { $readings } số đo dùng được; hãy đo ít nhất { $least } lần ở các phút khác nhau, khi còn trên nhiệt độ phòng { $room }
}
cooling-not-falling = các số đo không giảm về nhiệt độ phòng { $room }; hãy đo một đồ uống đang nguội dần
cooling-no-capacity = dung tích của ly không lớn hơn 0; hãy nhập dung tích của ly
# A time that somebody drinks by: $likely and $latest are minutes with their unit.
cooling-about-and-latest = khoảng { $likely }, chậm nhất { $latest }
