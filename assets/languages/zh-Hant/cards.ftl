# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = 吧台卡
card-kind-training = 訓練單
card-kind-exercise = 替換練習
card-kind-answers = 練習解答
card-kind-menu = 飲品單成分與過敏原
card-kind-figures = 飲品單數據
card-kind-ladder = 甜度對照表
card-kind-matrix = 甜度、杯型與冰量
card-kind-comparison = 版本比較
card-kind-batch = 採購與備料
card-kind-scores = 盲品答題單
card-kind-pouring = 盲品倒樣單

## Why there is no card

card-no-recipe = 配方簿中沒有配方 `{ $id }`
card-no-version = 配方「{ $recipe }」沒有版本 `{ $version }`
card-count-to-compare = { $count ->
   *[other] 比較需有 2 至 4 個版本，目前為 { $count } 個；請調整選擇
}
card-nothing-to-make = 未指定飲品；請輸入 1 至 { $most } 的杯數
card-no-exercise = 無法以 { $replace } 和 { $with } 製作練習：飲品中沒有前者，或調整用量後仍無法還原味道。請先在「替換」中試做
card-empty-menu = 飲品單是空的：沒有任何配方指定杯子，或全部已停售
card-nothing-approved = 飲品單上沒有已核准的飲品：請核准供應中的飲品，或連同未核准的飲品一起列印
card-menu-too-long = { $drinks ->
   *[other] 飲品單上有 { $drinks } 款飲品，而一張卡片最多容納 { $most } 款；請將未供應的飲品停售，或逐款製作卡片
}
card-count-to-taste = 此品評需要 { $wanted } 款飲品，而不是 { $count } 款：請選擇要品評的飲品
card-count-of-tasters = 請輸入 1 到 { $most } 之間的品評人數

pdf-font = 「{ $text }」所需的字型無法嵌入；請移除或更換字型後重新匯出
pdf-writer = 無法寫入 PDF：{ $reason }

## Figures

card-figure-not-known = 未知
card-figure-not-known-because = 未知（{ $reason }）
card-figure-unstated = 未標示
# Why a figure is not known in full.
card-figure-not-stated = 未標示：{ $names }
card-figure-at-least = 至少 { $figure }（{ $reason }）
card-figure-least = 至少 { $figure }
weight-not-known = 重量未知
amount-none = 不加
hours = { $hours } 小時

## Versions and approvals

version-original = 原版
revision-approved = { $version }：{ $day } 核准
revision-approved-by = { $version }：{ $day } 由 { $person } 核准
revision-changed = { $version }：{ $day } 核准後已有變更
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }：試行中，未核准
    [retired] { $version }：已停售，未核准
   *[draft] { $version }：草稿，未核准
}
revision-marked-only = { $version }：標為已核准，但沒有保存核准紀錄
revision-taken-back = { $state ->
    [trial] { $version }：重新試行，上次核准於 { $day }
    [retired] { $version }：已停售，上次核准於 { $day }
   *[draft] { $version }：重新為草稿，上次核准於 { $day }
}

## Steps

card-stage-mixed = 混合
card-stage-mixed-cup = 在 { $cup } 中混合
card-stage-mixed-shaker = 在 { $shaker } 中混合，倒入杯中
card-stage-mixed-strained = 在 { $shaker } 中混合，濾入杯中
card-stage-in-cup = 杯中
card-stage-on-top = 最上層
card-stage-steeped = 浸泡後取出
card-stage-steeped-for = 浸泡 { $minutes } 分鐘後取出
line-at-temperature = 溫度 { $temperature }
line-brings = 帶入 { $ingredient } { $mass }

## Facts

fact-cup = 杯子
cup-not-named = 未選擇
cup-open = { $cup }，不加蓋
cup-with-lid = { $cup }，加蓋
cup-sealed = { $cup }，封膜
fact-contains = 含有
fact-may-contain = 可能含有
contains-none = 十四類過敏原皆無（依包裝標示）
contains-none-listed = 店家所選清單中的過敏原皆無（依包裝標示）
fact-allergens-not-stated = 未標示過敏原的原料
# Of some allergens only.
allergens-not-stated-some = { $ingredients }（{ $allergens }）
allergens-all-stated = 全部已標示
allergen-not-stated = 未標示
fact-vegan = 純素（依原料）

## Cautions and small print

card-cautions = 注意事項
# Before a caution: "Caution (heat)".
card-caution = 注意（{ $kind }）
card-small-print = ± 為一個標準不確定度。過敏原與飲食類別依原料包裝標示判定；共用的雪克杯、量匙與調理機可能造成微量殘留。本單僅供參考，不代表符合法規；請遵守當地法規。
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text }（{ $english }）
card-not-confirmed = 過敏原與注意事項的譯文尚未經店家確認，旁附英文原文。
card-confirmed = 過敏原與注意事項的譯文已由 { $person } 確認（{ $day }）。
card-foot-in-full = 頁尾全文：{ $foot }

## Columns of tables

column-all-batches = 全部批次用量
column-amount = 用量
column-axis = 風味面向
column-batches = 批數
column-cost = 成本
column-drink = 飲品
column-drinks = 杯數
column-energy = 熱量
column-figure = 項目
column-for = 用於
column-house-made = 自製品
column-ingredient = 原料
column-ingredients = 成分（依重量由高至低）
column-item = 品項
column-keeps = 保存時間
column-left-over = 剩餘
column-tea = 茶
column-brewed = 需泡（含損耗）
column-leaf = 乾茶葉
column-water = 水
column-level = 甜度
column-measure = 量具
column-margin = 毛利
column-menu-price = 售價
column-needed = 需求量
column-noticeable = 一級可察覺差異
column-nutrition = 營養成分
column-one-batch = 每批（扣除損耗）
column-one-pack = 每包裝
column-one-use = 一次用量
column-packs = 包裝數
column-off-standard = 與標準的差距（級）
column-part = 組成
column-per-100-ml = 每 100 ml（不含配料）
column-per-drink = 每杯
column-pieces = 數量
column-state = 狀態
column-sugar = 糖
column-supplier = 供應商
column-sweetness = 甜味強度
column-this-drink = 本飲品
column-total-sugar = 總糖
column-weight = 重量
column-with = 原料

## Training sheet

training-how = 做法
training-target = 目標
training-lines = 各原料的貢獻
training-taste = 味道
training-measures = 量具
training-nutrition = 營養成分
training-shown = 示範並實作一次
training-time-to-cool = 降溫至 { $temperature } 所需時間
training-already-below = 已低於此溫度
training-already-below-tasted = 已低於此溫度；核准時在 { $temperature } 品嚐
training-name = 姓名
training-shown-by = 示範人
training-day = 日期
training-measured = 實測出杯溫度，{ $unit }
training-lines-caption = 各原料的重量、糖與熱量
training-taste-caption = 本飲品的各項風味面向
training-measures-caption = 各量具一次的用量
training-nutrition-caption = 本飲品的營養成分
measure-stated = 標示為 { $amount }
measure-not-weighed = 未秤重

## Menu

menu-title = 成分與過敏原
menu-subtitle = 全部飲品
menu-subtitle-approved = 已核准的飲品
menu-with-unapproved = 含未核准的飲品
menu-left-out = 因現狀未經核准而未列入本表：{ $drinks }。
menu-marks = 「含有」與「可能含有」：原料包裝上有此標示。「未標示」：至少一項原料的包裝未標示過敏原。「{ $sign }」：所有包裝均已標示過敏原，且均未列出此項。
menu-lists = 過敏原清單：{ $lists }
figures-title = 飲品單數據
figures-caption = 每款飲品的成本、售價、糖、熱量與過敏原
figures-at-most = 最多 { $figure }
figures-no-standard = 沒有標準
figures-some-silent = 部分包裝未標示
figures-none-named = 未提及
figures-marks = 成本：含杯子和蓋子，不含銷售稅。毛利：售價減去銷售稅和成本；缺少價格或稅率時寫「最多」。糖與熱量：整杯飲品。最後一欄是與已核准標準的整體差異，以可察覺差異的級數計。
menu-ingredients = 成分
menu-allergens-caption = 所有飲品的過敏原
menu-ingredients-caption = 所有飲品的成分

## Shopping and batches

batch-title = 採購與備料
batch-for = { $count ->
   *[other] { $count } 杯份
}
batch-drinks = 飲品
batch-make = 預先製作
batch-brew = 泡茶
batch-tap = 自來水與製冰機
batch-buy = 採購
batch-serve = 杯子與耗材
batch-note = 用量為配方所需加上損耗，不含備用量。包裝數與批數一律無條件進位。
batch-parts-caption = 全部批次合計所需原料
batch-drinks-caption = 要製作的飲品
batch-make-caption = 店內預先製作的品項
batch-brew-caption = 要泡的茶，以茶葉與水計
batch-tap-caption = 不以包裝採購的水與冰
batch-buy-caption = 要採購的品項
batch-serve-caption = 杯子與搭配耗材
batch-total = 合計
batch-cost-of-all = 合計（含茶、水與冰）
batch-brew-note = 茶葉與水量依熱泡 5 分鐘達到該濃度計算；冷泡或久泡則不同。
price-not-stated = 未標示價格
serve-lid = { $cup } 用杯蓋
serve-film = { $cup } 用封膜
serve-straw = 吸管
serve-wide-straw = 粗吸管
serve-sleeve = 杯套

## Exercise on a swap

exercise-subtitle = { $version }，練習
exercise-task = 以 { $with } 替換 { $replace }。每一步之後，飲品與標準相比有何不同？每列勾選一格。
exercise-same = 「相同」指與標準相差不超過 1 級可察覺差異。
exercise-answers-subtitle = { $version }，講師用解答
exercise-answer = 解答
exercise-standard = 標準
exercise-plain-swap = 量取次數不變的替換
exercise-less = 較少
exercise-the-same = 相同
exercise-more = 較多
exercise-crosses-caption = 各風味面向的預期變化
exercise-answers-caption = 每一步之後與標準的差異，以可察覺差異的級數計

## 盲品

blind-scores-title = 盲品
blind-pouring-title = 盲品：倒樣單
blind-subtitle = { $design ->
    [triangle] 三角測試，編號 { $seed }
    [duo-trio] 二三點測試，編號 { $seed }
    [pair] 成對比較測試，編號 { $seed }
   *[ranking] 三杯排序測試，編號 { $seed }
}
blind-how = 由左至右依序品嚐。每杯之間以清水漱口。所有人完成之前請勿交談。不確定時也請作出選擇。
blind-taster = 品評員 { $number }
blind-task = { $design ->
    [triangle] 其中兩杯相同，一杯不同。請勾選不同的一杯。
   *[duo-trio] 先品嚐 R。其餘杯中有一杯與 R 相同。請勾選那一杯。
}
blind-task-more = { $design ->
    [pair] 請勾選符合以下描述的一杯：{ $more }。
   *[ranking] 請排序：1 為最符合「{ $more }」的一杯，然後是 2、3。每列勾選一杯。
}
blind-task-liking = { $design ->
    [pair] 請勾選較喜歡的一杯。
   *[ranking] 請排序：1 為最喜歡的一杯，然後是 2、3。每列勾選一杯。
}
blind-my-answer = 我的答案
blind-rank = { $rank ->
    [first] 1，最強
    [second] 2
   *[third] 3，最弱
}
blind-cup = { $number ->
    [first] 第一杯
    [second] 第二杯
   *[third] 第三杯
}
blind-boxes-caption = 品評員 { $number } 的各杯，依品嚐順序
blind-pour-secret = 請勿讓品評員看到此單。倒樣的人不品嚐，也不上杯。
blind-pour-alike = 先在杯上寫好編碼。使用相同的杯子、相同的份量、相同的溫度，並在幾分鐘內完成。熱飲應放涼至不會燙嘴。
blind-pour-hide = 如果飲品外觀不同，請加以掩蓋：深色杯、帶孔杯蓋或昏暗燈光。
blind-pour-allergies = 品嚐之前，先詢問每個人是否過敏，並請他們閱讀答題單的上部。各飲品的過敏原見下文。
blind-pour-cut = 將答題單依品評員剪開，以免看到他人的答案。
blind-sample = { $letter }：{ $drink }
blind-cups = 杯數
blind-codes = 杯上編碼
blind-references = 另外標有 R 的杯數
blind-orders = 每位品評員面前
blind-orders-caption = 依品評員列出的各杯編碼與飲品，依品嚐順序
blind-taster-column = 品評員
blind-reference = R
blind-right = 正確答案
blind-seed = 以編號 { $seed } 可再次得到相同的編碼與順序。
blind-unbalanced = 只有當人數為 { $multiple } 或其倍數時，各順序出現的次數才相同。

## Sugar ladder

ladder-subtitle = { $version }，甜度對照表
ladder-floor = 不加甜味原料時，其他原料仍帶入糖：{ $sugar }。
ladder-not-possible = { $level }：{ $reason }
ladder-see-below = 無法製作，見下方
ladder-caption = 各甜度的用量

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }，甜度、杯型與冰量
# A size with an amount of ice.
matrix-iced = { $cup }，加冰
matrix-ice = { $cup }，{ $level }
matrix-not-possible = 無法製作：{ $reason }

## Comparison

comparison-title = 比較
comparison-lines = 原料與用量
comparison-figures = 數據
comparison-taste = 與 { $first } 相比的味道
comparison-line = { $ingredient } { $amount }（{ $grams }）
comparison-level = 持平
comparison-lines-caption = 各版本的原料與用量
comparison-drinks-caption = 各飲品的原料與用量
comparison-figures-caption = 各版本的數據
comparison-taste-caption = 各版本與第一個版本相比的味道，以可察覺差異的級數計

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = 飲品
serving = 1 杯
serving-of = 1 杯，{ $volume }
step-add = 加入 { $ingredient } { $amount }。
left-state = 狀態（{ $revision }）
left-cautions = { $count ->
   *[other] { $count } 則注意事項，須以其他方式隨飲品一併告知
}
left-allergens = 過敏原
left-uncertainty = 出杯溫度與所有不確定度
left-measures = 店內量具本身的資料：其名稱僅出現在原料文字中
left-roles = 各項原料的作用與溫度、杯子、雪克杯與售價
left-composition = 原料的組成與數據依據
left-versions = 其他版本與核准紀錄
left-caffeine = 咖啡因，以及以 kJ 表示的熱量
left-figure = { $figure }，尚未完整得知：{ $known }

## What an ingredient is for in a drink

role-base = 基底
role-flavour = 風味
role-creamer = 奶精
role-sweetener = 甜味
role-tea = 茶
role-water = 水
role-ice = 冰
role-topping = 配料
role-garnish = 裝飾
