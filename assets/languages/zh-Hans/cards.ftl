# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = 吧台卡
card-kind-training = 培训单
card-kind-exercise = 替换练习
card-kind-answers = 练习答案
card-kind-menu = 饮品单配料与致敏物质
card-kind-figures = 饮品单数据
card-kind-ladder = 甜度对照表
card-kind-matrix = 甜度、杯型与冰量
card-kind-comparison = 版本比较
card-kind-batch = 采购与备料
card-kind-scores = 盲品答题单
card-kind-pouring = 盲品倒样单

## Why there is no card

card-no-recipe = 配方簿中没有配方 `{ $id }`
card-no-version = 配方“{ $recipe }”没有版本 `{ $version }`
card-count-to-compare = { $count ->
   *[other] 比较需要 2 至 4 个版本，当前为 { $count } 个；请调整选择
}
card-nothing-to-make = 未指定饮品；请输入 1 至 { $most } 的杯数
card-no-exercise = 无法用 { $replace } 和 { $with } 制作练习：饮品中没有前者，或调整用量后仍无法还原味道。请先在“替换”中试做
card-empty-menu = 饮品单为空：没有配方指定杯子，或全部已下架
card-nothing-approved = 饮品单上没有已批准的饮品：请批准正在供应的饮品，或连同未批准的饮品一起打印
card-menu-too-long = { $drinks ->
   *[other] 饮品单上有 { $drinks } 款饮品，而一张卡片最多容纳 { $most } 款；请将不供应的饮品下架，或逐款制作卡片
}
card-count-to-taste = 此品评需要 { $wanted } 款饮品，而不是 { $count } 款：请选择要品评的饮品
card-count-of-tasters = 请输入 1 到 { $most } 之间的品评人数

pdf-font = “{ $text }”所需的字体无法嵌入；请移除或更换字体后重新导出
pdf-writer = 无法写入 PDF：{ $reason }

## Figures

card-figure-not-known = 未知
card-figure-not-known-because = 未知（{ $reason }）
card-figure-unstated = 未标示
# Why a figure is not known in full.
card-figure-not-stated = 未标示：{ $names }
card-figure-at-least = 至少 { $figure }（{ $reason }）
card-figure-least = 至少 { $figure }
weight-not-known = 重量未知
amount-none = 不加
hours = { $hours } 小时

## Versions and approvals

version-original = 原版
revision-approved = { $version }：{ $day } 批准
revision-approved-by = { $version }：{ $day } 由 { $person } 批准
revision-changed = { $version }：{ $day } 批准后有改动
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }：试行中，未批准
    [retired] { $version }：已下架，未批准
   *[draft] { $version }：草稿，未批准
}
revision-marked-only = { $version }：标为已批准，但没有保存批准记录
revision-taken-back = { $state ->
    [trial] { $version }：重新试行，上次批准于 { $day }
    [retired] { $version }：已下架，上次批准于 { $day }
   *[draft] { $version }：重新为草稿，上次批准于 { $day }
}

## Steps

card-stage-mixed = 混合
card-stage-mixed-cup = 在 { $cup } 中混合
card-stage-mixed-shaker = 在 { $shaker } 中混合，倒入杯中
card-stage-mixed-strained = 在 { $shaker } 中混合，滤入杯中
card-stage-in-cup = 杯中
card-stage-on-top = 最上层
card-stage-steeped = 浸泡后取出
card-stage-steeped-for = 浸泡 { $minutes } 分钟后取出
line-at-temperature = 温度 { $temperature }
line-brings = 带入 { $ingredient } { $mass }

## Facts

fact-cup = 杯子
cup-not-named = 未选择
cup-open = { $cup }，不加盖
cup-with-lid = { $cup }，加盖
cup-sealed = { $cup }，封膜
fact-contains = 含有
fact-may-contain = 可能含有
contains-none = 十四类致敏物质均无（按包装标示）
contains-none-listed = 店家所选清单中的致敏物质均无（按包装标示）
fact-allergens-not-stated = 未标示致敏物质的原料
# Of some allergens only.
allergens-not-stated-some = { $ingredients }（{ $allergens }）
allergens-all-stated = 全部已标示
allergen-not-stated = 未标示
fact-vegan = 纯素（按原料）

## Cautions and small print

card-cautions = 注意事项
# Before a caution: "Caution (heat)".
card-caution = 注意（{ $kind }）
card-small-print = ± 为一个标准不确定度。致敏物质与饮食类别按原料包装标示判定；共用的雪克杯、量勺和搅拌机可能造成微量残留。本单仅供参考，不作为合规证明；请遵守当地法规。
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text }（{ $english }）
card-not-confirmed = 致敏物质与注意事项的译文尚未经店家确认，旁附英文原文。
card-confirmed = 致敏物质与注意事项的译文已由 { $person } 确认（{ $day }）。
card-foot-in-full = 页脚全文：{ $foot }

## Columns of tables

column-all-batches = 全部批次用量
column-amount = 用量
column-axis = 风味维度
column-batches = 批数
column-cost = 成本
column-drink = 饮品
column-drinks = 杯数
column-energy = 能量
column-figure = 项目
column-for = 用于
column-house-made = 自制品
column-ingredient = 原料
column-ingredients = 配料（按重量递减）
column-item = 物品
column-keeps = 保存时间
column-left-over = 剩余
column-tea = 茶
column-brewed = 需泡（含损耗）
column-leaf = 干茶叶
column-water = 水
column-level = 甜度
column-measure = 量具
column-margin = 毛利
column-menu-price = 售价
column-needed = 需求量
column-noticeable = 一级可察觉差异
column-nutrition = 营养成分
column-one-batch = 每批（扣除损耗）
column-one-pack = 每包装
column-one-use = 一次用量
column-packs = 包装数
column-off-standard = 与标准的差距（级）
column-part = 组成
column-per-100-ml = 每 100 ml（不含小料）
column-per-drink = 每杯
column-pieces = 数量
column-state = 状态
column-sugar = 糖
column-supplier = 供应商
column-sweetness = 甜味强度
column-this-drink = 本饮品
column-total-sugar = 总糖
column-weight = 重量
column-with = 原料

## Training sheet

training-how = 做法
training-target = 目标
training-lines = 各原料的贡献
training-taste = 味道
training-measures = 量具
training-nutrition = 营养成分
training-shown = 示范并实操一次
training-time-to-cool = 降温至 { $temperature } 所需时间
training-already-below = 已低于此温度
training-already-below-tasted = 已低于此温度；批准时在 { $temperature } 品尝
training-name = 姓名
training-shown-by = 示范人
training-day = 日期
training-measured = 实测出杯温度，{ $unit }
training-lines-caption = 各原料的重量、糖和能量
training-taste-caption = 本饮品的各风味维度
training-measures-caption = 各量具一次的用量
training-nutrition-caption = 本饮品的营养成分
measure-stated = 标示为 { $amount }
measure-not-weighed = 未称重

## Menu

menu-title = 配料与致敏物质
menu-subtitle = 全部饮品
menu-subtitle-approved = 已批准的饮品
menu-with-unapproved = 含未批准的饮品
menu-left-out = 因现状未经批准而未列入本表：{ $drinks }。
menu-marks = “含有”和“可能含有”：原料包装上有此标示。“未标示”：至少一种原料的包装未标示致敏物质。“{ $sign }”：所有包装均已标示致敏物质，且均未列出此项。
menu-lists = 致敏物质清单：{ $lists }
figures-title = 饮品单数据
figures-caption = 每款饮品的成本、售价、糖、能量与致敏物质
figures-at-most = 最多 { $figure }
figures-no-standard = 没有标准
figures-some-silent = 部分包装未标示
figures-none-named = 未提及
figures-marks = 成本：含杯子和盖子，不含销售税。毛利：售价减去销售税和成本；缺少价格或税率时写“最多”。糖与能量：整杯饮品。最后一列是与已批准标准的总体差异，以可察觉差异的级数计。
menu-ingredients = 配料
menu-allergens-caption = 所有饮品的致敏物质
menu-ingredients-caption = 所有饮品的配料

## Shopping and batches

batch-title = 采购与备料
batch-for = { $count ->
   *[other] { $count } 杯份
}
batch-drinks = 饮品
batch-make = 预先制作
batch-brew = 泡茶
batch-tap = 自来水与制冰机
batch-buy = 采购
batch-serve = 杯子与耗材
batch-note = 用量为配方所需加上损耗，不含备用量。包装数与批数一律向上取整。
batch-parts-caption = 全部批次合计所需原料
batch-drinks-caption = 要制作的饮品
batch-make-caption = 店内预先制作的物品
batch-brew-caption = 要泡的茶，按茶叶与水计
batch-tap-caption = 不按包装采购的水与冰
batch-buy-caption = 要采购的物品
batch-serve-caption = 杯子与配套耗材
batch-total = 合计
batch-cost-of-all = 合计（含茶、水与冰）
batch-brew-note = 茶叶与水量按热泡 5 分钟达到该浓度计算；冷泡或久泡则不同。
price-not-stated = 未标示价格
serve-lid = { $cup } 用杯盖
serve-film = { $cup } 用封膜
serve-straw = 吸管
serve-wide-straw = 粗吸管
serve-sleeve = 杯套

## Exercise on a swap

exercise-subtitle = { $version }，练习
exercise-task = 用 { $with } 替换 { $replace }。每一步之后，饮品与标准相比有何不同？每行勾选一格。
exercise-same = “相同”指与标准相差不超过 1 级可察觉差异。
exercise-answers-subtitle = { $version }，培训师用答案
exercise-answer = 答案
exercise-standard = 标准
exercise-plain-swap = 量取次数不变的替换
exercise-less = 较少
exercise-the-same = 相同
exercise-more = 较多
exercise-crosses-caption = 各风味维度的预期变化
exercise-answers-caption = 每一步之后与标准的差异，以可察觉差异的级数计

## 盲品

blind-scores-title = 盲品
blind-pouring-title = 盲品：倒样单
blind-subtitle = { $design ->
    [triangle] 三点检验，编号 { $seed }
    [duo-trio] 二-三点检验，编号 { $seed }
    [pair] 成对比较检验，编号 { $seed }
   *[ranking] 三杯排序检验，编号 { $seed }
}
blind-how = 从左到右依次品尝。每杯之间用清水漱口。所有人完成之前请勿交谈。不确定时也请作出选择。
blind-taster = 品评员 { $number }
blind-task = { $design ->
    [triangle] 其中两杯相同，一杯不同。请勾选不同的一杯。
   *[duo-trio] 先品尝 R。其余杯中有一杯与 R 相同。请勾选那一杯。
}
blind-task-more = { $design ->
    [pair] 请勾选符合以下描述的一杯：{ $more }。
   *[ranking] 请排序：1 为最符合“{ $more }”的一杯，然后是 2、3。每行勾选一杯。
}
blind-task-liking = { $design ->
    [pair] 请勾选更喜欢的一杯。
   *[ranking] 请排序：1 为最喜欢的一杯，然后是 2、3。每行勾选一杯。
}
blind-my-answer = 我的答案
blind-rank = { $rank ->
    [first] 1，最强
    [second] 2
   *[third] 3，最弱
}
blind-cup = { $number ->
    [first] 第一杯
    [second] 第二杯
   *[third] 第三杯
}
blind-boxes-caption = 品评员 { $number } 的各杯，按品尝顺序
blind-pour-secret = 请勿让品评员看到此单。倒样的人不品尝，也不上杯。
blind-pour-alike = 先在杯上写好编码。使用相同的杯子、相同的量、相同的温度，并在几分钟内完成。热饮应放凉至不会烫嘴。
blind-pour-hide = 如果饮品外观不同，请加以掩盖：深色杯、带孔杯盖或昏暗灯光。
blind-pour-allergies = 品尝之前，先询问每个人是否过敏，并请他们阅读答题单的上部。各饮品的致敏物质见下文。
blind-pour-cut = 将答题单按品评员剪开，以免看到他人的答案。
blind-sample = { $letter }：{ $drink }
blind-cups = 杯数
blind-codes = 杯上编码
blind-references = 另外标有 R 的杯数
blind-orders = 每位品评员面前
blind-orders-caption = 按品评员列出的各杯编码与饮品，按品尝顺序
blind-taster-column = 品评员
blind-reference = R
blind-right = 正确答案
blind-seed = 用编号 { $seed } 可再次得到相同的编码与顺序。
blind-unbalanced = 只有当人数为 { $multiple } 或其倍数时，各顺序出现的次数才相同。

## Sugar ladder

ladder-subtitle = { $version }，甜度对照表
ladder-floor = 不加甜味原料时，其他原料仍带入糖：{ $sugar }。
ladder-not-possible = { $level }：{ $reason }
ladder-see-below = 无法制作，见下方
ladder-caption = 各甜度的用量

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }，甜度、杯型与冰量
# A size with an amount of ice.
matrix-iced = { $cup }，加冰
matrix-ice = { $cup }，{ $level }
matrix-not-possible = 无法制作：{ $reason }

## Comparison

comparison-title = 比较
comparison-lines = 原料与用量
comparison-figures = 数据
comparison-taste = 与 { $first } 相比的味道
comparison-line = { $ingredient } { $amount }（{ $grams }）
comparison-level = 持平
comparison-lines-caption = 各版本的原料与用量
comparison-drinks-caption = 各饮品的原料与用量
comparison-figures-caption = 各版本的数据
comparison-taste-caption = 各版本与第一个版本相比的味道，以可察觉差异的级数计

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = 饮品
serving = 1 杯
serving-of = 1 杯，{ $volume }
step-add = 加入 { $ingredient } { $amount }。
left-state = 状态（{ $revision }）
left-cautions = { $count ->
   *[other] { $count } 条注意事项，须以其他方式随饮品一并告知
}
left-allergens = 致敏物质
left-uncertainty = 出杯温度和所有不确定度
left-measures = 店内量具本身的信息：其名称仅出现在原料文字中
left-roles = 各项原料的作用和温度、杯子、雪克杯和售价
left-composition = 原料的组成和数据依据
left-versions = 其他版本和批准记录
left-caffeine = 咖啡因，以及以 kJ 表示的能量
left-figure = { $figure }，尚未完整得知：{ $known }

## What an ingredient is for in a drink

role-base = 基底
role-flavour = 风味
role-creamer = 奶精
role-sweetener = 甜味
role-tea = 茶
role-water = 水
role-ice = 冰
role-topping = 小料
role-garnish = 装饰
