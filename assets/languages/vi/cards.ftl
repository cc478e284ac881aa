# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = thẻ quầy pha chế
card-kind-training = phiếu đào tạo
card-kind-exercise = bài tập thay nguyên liệu
card-kind-answers = đáp án bài tập
card-kind-menu = thành phần và chất gây dị ứng của thực đơn
card-kind-figures = số liệu của thực đơn
card-kind-ladder = bảng mức đường
card-kind-matrix = mức đường, cỡ và đá
card-kind-comparison = so sánh các phiên bản
card-kind-batch = mua hàng và mẻ nấu
card-kind-scores = phiếu trả lời nếm mù
card-kind-pouring = phiếu rót của buổi nếm mù

## Why there is no card

card-no-recipe = không có công thức `{ $id }` trong sổ công thức
card-no-version = công thức “{ $recipe }” không có phiên bản `{ $version }`
card-count-to-compare = { $count ->
   *[other] cần 2 đến 4 phiên bản để so sánh, hiện có { $count }; hãy chọn lại
}
card-nothing-to-make = chưa yêu cầu ly nào; hãy nhập số ly từ 1 đến { $most }
card-no-exercise = không thể tạo bài tập với { $replace } và { $with }: nguyên liệu thứ nhất không có trong đồ uống, hoặc không cách chỉnh lượng nào đưa được về đúng vị. Hãy thử trong “Thay thế” trước
card-empty-menu = thực đơn trống: không công thức nào có ly, hoặc tất cả đã ngừng bán
card-nothing-approved = không có món nào trong thực đơn được duyệt: hãy duyệt các món đang bán, hoặc in kèm các món chưa duyệt
card-menu-too-long = { $drinks ->
   *[other] thực đơn có { $drinks } đồ uống, mà một thẻ chỉ chứa được { $most }; hãy chuyển món không còn phục vụ sang ngừng bán, hoặc tạo thẻ riêng cho từng đồ uống
}
card-count-to-taste = buổi nếm này cần { $wanted } đồ uống, không phải { $count }: hãy chọn món để nếm
card-count-of-tasters = nhập số người nếm từ 1 đến { $most }

pdf-font = không thể nhúng một phông chữ mà “{ $text }” cần; hãy gỡ hoặc thay phông chữ rồi xuất lại
pdf-writer = không ghi được tệp PDF: { $reason }

## Figures

card-figure-not-known = chưa rõ
card-figure-not-known-because = chưa rõ ({ $reason })
card-figure-unstated = không ghi
# Why a figure is not known in full.
card-figure-not-stated = không ghi: { $names }
card-figure-at-least = ít nhất { $figure } ({ $reason })
card-figure-least = ít nhất { $figure }
weight-not-known = chưa rõ khối lượng
amount-none = không thêm
hours = { $hours } giờ

## Versions and approvals

version-original = bản gốc
revision-approved = { $version }: duyệt ngày { $day }
revision-approved-by = { $version }: { $person } duyệt ngày { $day }
revision-changed = { $version }: đã thay đổi sau lần duyệt ngày { $day }
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }: đang thử, chưa duyệt
    [retired] { $version }: ngừng bán, chưa duyệt
   *[draft] { $version }: bản nháp, chưa duyệt
}
revision-marked-only = { $version }: đánh dấu đã duyệt nhưng không lưu lần duyệt nào
revision-taken-back = { $state ->
    [trial] { $version }: thử lại; duyệt lần cuối { $day }
    [retired] { $version }: ngừng bán; duyệt lần cuối { $day }
   *[draft] { $version }: lại là bản nháp; duyệt lần cuối { $day }
}

## Steps

card-stage-mixed = Pha trộn
card-stage-mixed-cup = Pha trong { $cup }
card-stage-mixed-shaker = Pha trong { $shaker }, rót ra ly
card-stage-mixed-strained = Pha trong { $shaker }, lọc ra ly
card-stage-in-cup = Trong ly
card-stage-on-top = Trên mặt
card-stage-steeped = Ngâm rồi vớt ra
card-stage-steeped-for = Ngâm { $minutes } phút rồi vớt ra
line-at-temperature = ở { $temperature }
line-brings = kèm { $mass } { $ingredient }

## Facts

fact-cup = ly
cup-not-named = chưa chọn
cup-open = { $cup }, không đậy
cup-with-lid = { $cup }, có nắp
cup-sealed = { $cup }, dán màng
fact-contains = có chứa
fact-may-contain = có thể chứa
contains-none = không có chất nào trong 14 chất gây dị ứng, theo bao bì
contains-none-listed = không có chất nào trong các danh mục chất gây dị ứng của cửa hàng, theo bao bì
fact-allergens-not-stated = nguyên liệu không ghi chất gây dị ứng
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = tất cả đều ghi
allergen-not-stated = không ghi
fact-vegan = thuần chay, theo nguyên liệu

## Cautions and small print

card-cautions = Lưu ý
# Before a caution: "Caution (heat)".
card-caution = Lưu ý ({ $kind })
card-small-print = ± là một độ không đảm bảo chuẩn. Chất gây dị ứng và chế độ ăn được xác định theo nguyên liệu, như ghi trên bao bì; bình lắc, muỗng đong và máy xay dùng chung có thể để lại dấu vết. Phiếu này chỉ để tham khảo, không phải bằng chứng tuân thủ: hãy theo quy định tại địa phương.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = Bản dịch các chất gây dị ứng và lưu ý chưa được cửa hàng xác nhận: nguyên văn tiếng Anh được ghi bên cạnh.
card-confirmed = Bản dịch các chất gây dị ứng và lưu ý đã được { $person } xác nhận, { $day }.
card-foot-in-full = Chân trang, đầy đủ: { $foot }

## Columns of tables

column-all-batches = cho tất cả các mẻ
column-amount = lượng
column-axis = tiêu chí
column-batches = số mẻ
column-cost = chi phí
column-drink = đồ uống
column-drinks = số ly
column-energy = năng lượng
column-figure = chỉ số
column-for = dùng cho
column-house-made = tự làm tại quán
column-ingredient = nguyên liệu
column-ingredients = thành phần, theo khối lượng giảm dần
column-item = vật dụng
column-keeps = bảo quản được
column-left-over = còn dư
column-tea = trà
column-brewed = cần ủ, gồm hao hụt
column-leaf = lá trà khô
column-water = nước
column-level = mức đường
column-measure = dụng cụ đong
column-margin = lãi gộp
column-menu-price = giá trên thực đơn
column-needed = lượng cần
column-noticeable = một nấc cảm nhận được
column-nutrition = thành phần dinh dưỡng
column-one-batch = một mẻ, đã trừ hao hụt
column-one-pack = một gói
column-one-use = một lần đong
column-packs = số gói
column-off-standard = lệch so với chuẩn, nấc
column-part = phần
column-per-100-ml = trong 100 ml, không kể topping
column-per-drink = mỗi ly
column-pieces = số lượng
column-state = trạng thái
column-sugar = đường
column-supplier = nhà cung cấp
column-sweetness = độ ngọt
column-this-drink = đồ uống này
column-total-sugar = đường tổng số
column-weight = khối lượng
column-with = nguyên liệu

## Training sheet

training-how = Cách pha
training-target = Mục tiêu
training-lines = Phần đóng góp của từng nguyên liệu
training-taste = Vị
training-measures = Dụng cụ đong
training-nutrition = Thành phần dinh dưỡng
training-shown = Đã được hướng dẫn và tự pha một lần
training-time-to-cool = thời gian nguội đến { $temperature }
training-already-below = đã thấp hơn
training-already-below-tasted = đã thấp hơn; được nếm ở { $temperature } khi phê duyệt
training-name = họ tên
training-shown-by = người hướng dẫn
training-day = ngày
training-measured = nhiệt độ đo được khi phục vụ, { $unit }
training-lines-caption = khối lượng, đường và năng lượng của từng nguyên liệu
training-taste-caption = đồ uống theo từng tiêu chí vị
training-measures-caption = lượng trong một lần đong của từng dụng cụ
training-nutrition-caption = thành phần dinh dưỡng của đồ uống
measure-stated = ghi là { $amount }
measure-not-weighed = chưa cân

## Menu

menu-title = Thành phần và chất gây dị ứng
menu-subtitle = toàn bộ thực đơn
menu-subtitle-approved = các món đã duyệt
menu-with-unapproved = có cả món chưa duyệt
menu-left-out = Không có trong tờ này vì chưa được duyệt ở dạng hiện tại: { $drinks }.
menu-marks = “có chứa” và “có thể chứa”: ghi trên bao bì của một nguyên liệu. “không ghi”: ít nhất một bao bì không ghi chất gây dị ứng. “{ $sign }”: mọi bao bì đều ghi chất gây dị ứng, và không bao bì nào nêu chất này.
menu-lists = Danh mục chất gây dị ứng: { $lists }
figures-title = Số liệu của thực đơn
figures-caption = chi phí, giá, đường, năng lượng và chất gây dị ứng của từng món
figures-at-most = nhiều nhất { $figure }
figures-no-standard = chưa có chuẩn
figures-some-silent = một số bao bì không ghi
figures-none-named = không nêu chất nào
figures-marks = Chi phí: gồm cốc và nắp, chưa có thuế bán hàng. Lãi gộp: giá trên thực đơn trừ thuế và chi phí; “nhiều nhất” khi thiếu một giá hoặc thuế suất. Đường và năng lượng: của cả món. Cột cuối là chênh lệch chung so với chuẩn đã duyệt, tính bằng nấc cảm nhận được.
menu-ingredients = Thành phần
menu-allergens-caption = chất gây dị ứng của mọi đồ uống
menu-ingredients-caption = thành phần của mọi đồ uống

## Shopping and batches

batch-title = Mua hàng và mẻ nấu
batch-for = { $count ->
   *[other] cho { $count } ly
}
batch-drinks = Đồ uống
batch-make = Làm trước
batch-brew = Ủ trà
batch-tap = Từ vòi nước và máy làm đá
batch-buy = Cần mua
batch-serve = Ly và phụ kiện
batch-note = Lượng ghi ở đây là lượng công thức cần cộng hao hụt, không có dự phòng. Số gói và số mẻ được làm tròn lên.
batch-parts-caption = nguyên liệu cho tất cả các mẻ
batch-drinks-caption = đồ uống cần pha
batch-make-caption = những thứ quán tự làm trước
batch-brew-caption = trà cần ủ, tính theo lá và nước
batch-tap-caption = nước và đá không mua theo gói
batch-buy-caption = những thứ cần mua
batch-serve-caption = ly và phụ kiện đi kèm
batch-total = tổng cộng
batch-cost-of-all = tổng gồm trà, nước và đá
batch-brew-note = Lượng lá và nước tính cho cách ủ nóng 5 phút đạt đúng độ đậm của trà; ủ lạnh hoặc lâu hơn thì khác.
price-not-stated = không ghi giá
serve-lid = nắp cho { $cup }
serve-film = màng cho { $cup }
serve-straw = ống hút
serve-wide-straw = ống hút to
serve-sleeve = vỏ bọc ly

## Exercise on a swap

exercise-subtitle = { $version }, bài tập
exercise-task = Thay { $replace } bằng { $with }. Sau mỗi bước, đồ uống khác bản chuẩn thế nào? Đánh dấu một ô trong mỗi hàng.
exercise-same = “Như nhau” nghĩa là chênh lệch so với bản chuẩn không quá một nấc cảm nhận được.
exercise-answers-subtitle = { $version }, đáp án cho người đào tạo
exercise-answer = đáp án
exercise-standard = bản chuẩn
exercise-plain-swap = thay với số lần đong như cũ
exercise-less = ít hơn
exercise-the-same = như nhau
exercise-more = nhiều hơn
exercise-crosses-caption = thay đổi dự kiến theo từng tiêu chí vị
exercise-answers-caption = chênh lệch so với bản chuẩn sau mỗi bước, tính bằng nấc cảm nhận được

## Nếm mù

blind-scores-title = Nếm mù
blind-pouring-title = Nếm mù: phiếu rót
blind-subtitle = { $design ->
    [triangle] phép thử tam giác, số { $seed }
    [duo-trio] phép thử hai-ba, số { $seed }
    [pair] so sánh cặp đôi, số { $seed }
   *[ranking] xếp hạng ba cốc, số { $seed }
}
blind-how = Nếm các cốc từ trái sang phải. Súc miệng bằng nước giữa các cốc. Không nói chuyện cho đến khi mọi người xong. Nếu không chắc, vẫn hãy chọn.
blind-taster = Người nếm { $number }
blind-task = { $design ->
    [triangle] Hai cốc giống nhau và một cốc khác. Đánh dấu cốc khác.
   *[duo-trio] Nếm R trước. Một trong các cốc còn lại giống R. Đánh dấu cốc đó.
}
blind-task-more = { $design ->
    [pair] Đánh dấu cốc { $more }.
   *[ranking] Xếp thứ tự các cốc: 1 là cốc { $more } so với các cốc khác, rồi 2, rồi 3. Đánh dấu một cốc trong mỗi hàng.
}
blind-task-liking = { $design ->
    [pair] Đánh dấu cốc bạn thích hơn.
   *[ranking] Xếp thứ tự các cốc: 1 là cốc bạn thích nhất, rồi 2, rồi 3. Đánh dấu một cốc trong mỗi hàng.
}
blind-my-answer = câu trả lời của tôi
blind-rank = { $rank ->
    [first] 1, nhiều nhất
    [second] 2
   *[third] 3, ít nhất
}
blind-cup = { $number ->
    [first] cốc thứ nhất
    [second] cốc thứ hai
   *[third] cốc thứ ba
}
blind-boxes-caption = các cốc của người nếm { $number }, theo thứ tự nếm
blind-pour-secret = Không để người nếm thấy phiếu này. Người rót không nếm và không phục vụ.
blind-pour-alike = Ghi mã lên cốc trước. Cùng loại cốc, cùng lượng, cùng nhiệt độ, tất cả trong vài phút. Để đồ uống nóng nguội bớt cho đến khi không ai bị bỏng miệng.
blind-pour-hide = Nếu các đồ uống trông khác nhau, hãy che đi: cốc tối màu, nắp có lỗ hoặc ánh sáng yếu.
blind-pour-allergies = Trước khi nếm, hỏi mọi người về dị ứng và cho họ đọc phần đầu của phiếu trả lời. Chất gây dị ứng của từng đồ uống ghi bên dưới.
blind-pour-cut = Cắt phiếu trả lời theo từng người nếm để không ai thấy câu trả lời của người khác.
blind-sample = { $letter }: { $drink }
blind-cups = số cốc
blind-codes = mã trên cốc
blind-references = cốc khác ghi R
blind-orders = Trước mỗi người nếm
blind-orders-caption = mã và đồ uống của từng cốc theo người nếm, theo thứ tự nếm
blind-taster-column = người nếm
blind-reference = R
blind-right = đáp án đúng
blind-seed = Số { $seed } cho lại đúng các mã và thứ tự này.
blind-unbalanced = Mỗi thứ tự chỉ xuất hiện đều nhau khi có { $multiple } người nếm hoặc bội số của số đó.

## Sugar ladder

ladder-subtitle = { $version }, bảng mức đường
ladder-floor = Khi không thêm nguyên liệu tạo ngọt, đồ uống vẫn có đường từ các nguyên liệu khác: { $sugar }.
ladder-not-possible = { $level }: { $reason }
ladder-see-below = không thể, xem bên dưới
ladder-caption = lượng ở từng mức đường

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, mức đường, cỡ và đá
# A size with an amount of ice.
matrix-iced = { $cup }, có đá
matrix-ice = { $cup }, { $level }
matrix-not-possible = Không thể: { $reason }

## Comparison

comparison-title = So sánh
comparison-lines = Nguyên liệu và lượng
comparison-figures = Số liệu
comparison-taste = Vị so với { $first }
comparison-line = { $amount } { $ingredient } ({ $grams })
comparison-level = ngang nhau
comparison-lines-caption = nguyên liệu và lượng của từng phiên bản
comparison-drinks-caption = nguyên liệu và lượng của từng đồ uống
comparison-figures-caption = số liệu của từng phiên bản
comparison-taste-caption = vị của từng phiên bản so với phiên bản đầu, tính bằng nấc cảm nhận được

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = đồ uống
serving = 1 ly
serving-of = 1 ly, { $volume }
step-add = Thêm { $amount } { $ingredient }.
left-state = trạng thái ({ $revision })
left-cautions = { $count ->
   *[other] { $count } lưu ý, phải truyền đạt kèm đồ uống bằng cách khác
}
left-allergens = chất gây dị ứng
left-uncertainty = nhiệt độ phục vụ và mọi độ không đảm bảo
left-measures = dụng cụ đong của quán dưới dạng dữ liệu riêng: tên của chúng nằm trong phần chữ của nguyên liệu
left-roles = vai trò và nhiệt độ của từng dòng, ly, bình lắc và giá bán
left-composition = thành phần của nguyên liệu và căn cứ số liệu
left-versions = các phiên bản khác và lịch sử duyệt
left-caffeine = caffeine và năng lượng tính bằng kJ
left-figure = { $figure }, chưa rõ đầy đủ: { $known }

## What an ingredient is for in a drink

role-base = nền
role-flavour = hương vị
role-creamer = bột béo
role-sweetener = chất ngọt
role-tea = trà
role-water = nước
role-ice = đá
role-topping = topping
role-garnish = trang trí
