# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = chưa chọn ly, hoặc phòng không mát hơn nhiệt độ uống
no-figure-warmer-only = đồ uống có đá để lâu chỉ ấm lên
no-figure-cup = chưa chọn ly
no-figure-price = không ghi giá của ly, của nắp hoặc màng đậy, hay của ống hút
no-figure-only-water = chỉ có nước, trà và đá
no-figure-empty = trong ly không có gì

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = Số gam của từng loại đường nhân với độ ngọt tương đối của nó ở nhiệt độ này (sucrose = 1), trong 100 ml đồ uống đã pha.
formula-serving-temperature = Nhiệt độ mà tại đó nhiệt của mọi dòng, đá, ly và bình lắc cân bằng.
formula-minutes-to-drinkable = Nhiệt mất qua thành ly và do bay hơi, theo số đo của ly hoặc của các ly đã công bố, ứng với độ đầy của ly.
formula-volume = Thể tích của nước và chất rắn hòa tan ở { $celsius }, kể cả đá đã tan.
formula-fill = Đồ uống, topping, bọt và đá so với dung tích của ly tính đến miệng.
formula-dilution = Số gam nước, đá đã tan và trà cho mỗi gam của mọi thứ còn lại trong đồ uống đã pha.
formula-brix = Chất rắn hòa tan của đồ uống đã pha, tính theo phần trăm khối lượng.
formula-energy = Carbohydrat, chất đạm, chất béo, chất xơ và axit nhân với các hệ số của Quy định (EU) số 1169/2011, Phụ lục XIV.
formula-cost = Số gam của từng dòng nhân với giá gói, kể cả hao hụt, cộng với ly, nắp hoặc màng đậy và phụ kiện đi kèm.
formula-free-sugars = Phần đường của từng dòng được tính là đường tự do: đường thêm vào, hoặc đường từ mật ong, si rô và nước ép.
formula-total-sugar = Số gam của từng dòng nhân với lượng đường của nguyên liệu, rồi cộng lại.
formula-sum = Số gam của từng dòng nhân với số liệu của nguyên liệu, rồi cộng lại.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients } ({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = năng lượng
nutrition-fat = chất béo
nutrition-saturates = trong đó chất béo bão hòa
nutrition-carbohydrate = carbohydrat
nutrition-sugars = trong đó đường
nutrition-polyols = trong đó polyol
nutrition-fibre = chất xơ
nutrition-protein = chất đạm
nutrition-salt = muối

# Where the noticeable step of an axis is from.
step-source-sweetness = phân số Weber từ 0,09 (sucrose trong cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) đến 0,17 (Schutz & Pilgrim 1957, giá trị ghi theo trí nhớ); chọn 0,10; mức sàn là giả định
step-source-acidity = phân số Weber của axit citric 0,22 (Schutz & Pilgrim 1957, giá trị ghi theo trí nhớ); mức sàn là giả định
step-source-creaminess = phân số Weber của độ béo trong nhũ tương sữa 0,20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521); mức sàn là giả định
step-source-body = phân số Weber của độ đặc 0,26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), vốn của độ nhớt, áp dụng cho chất rắn; mức sàn là giả định
step-source-tea-strength = giả định 0,20; nhỏ hơn phân số Weber của vị đắng caffeine, 0,30 (Schutz & Pilgrim 1957, giá trị ghi theo trí nhớ); mức sàn là giả định
step-source-flavour = giả định: chưa có số liệu công bố cho hương vị của đồ uống
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = giả định { $step }: chưa có số liệu công bố; phân biệt được { $apart } (Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = giả định 5%: chưa có số liệu công bố; mức sàn là giả định

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = khối lượng
measurand-volume = thể tích
measurand-total-sugar = đường tổng số
measurand-free-sugars = đường tự do
measurand-sucrose = sucrose
measurand-glucose = glucose
measurand-fructose = fructose
measurand-lactose = lactose
measurand-maltose = maltose
measurand-other-sugars = đường khác
measurand-sweetness = độ ngọt
measurand-soluble-solids = chất rắn hòa tan
measurand-density = khối lượng riêng
measurand-dilution = độ pha loãng
measurand-serving-temperature = nhiệt độ phục vụ
measurand-ice-left = đá còn lại
measurand-minutes-to-drinkable = số phút đến nhiệt độ uống
measurand-energy = năng lượng
measurand-fat = chất béo
measurand-saturates = chất béo bão hòa
measurand-carbohydrate = carbohydrat
measurand-polyols = polyol
measurand-fibre = chất xơ
measurand-protein = chất đạm
measurand-salt = muối
measurand-caffeine = caffeine
measurand-tea-solids = chất rắn từ trà
measurand-acid = axit
measurand-cost = chi phí
measurand-fill = độ đầy
measurand-tea-strength = độ đậm của trà
measurand-creaminess = độ béo
measurand-acidity = độ chua
measurand-body = độ sánh
measurand-dry-matter = chất khô
measurand-sugar = đường
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = đơn vị của quán/100 ml
