# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = 出杯时 { $celsius }，高于 { $limit }：太烫，不宜立即饮用，泼洒会烫伤；请放凉或加冷水，并遵守当地法规
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = 出杯时 { $celsius }，高于 { $limit }：太烫，不宜立即饮用，泼洒会烫伤（成人皮肤在{ $adult }内即达二度或更深的烫伤，幼儿{ $child ->
    [sooner] 更快
   *[other] 在{ $child }内
}）；请放凉或加冷水，并遵守当地法规
caution-hot-through-wide-straw = 用粗吸管饮用 { $celsius } 的饮品，高于 { $limit }：饮品到达喉咙时仍烫；请不配吸管或降温后出杯，并遵守当地法规
caution-scalds = 出杯时 { $celsius }：泼洒会烫伤；请封好或盖好杯子，并遵守当地法规
caution-scalds-burns = 出杯时 { $celsius }：泼洒会烫伤（成人皮肤在{ $adult }内即达二度或更深的烫伤，幼儿{ $child ->
    [sooner] 更快
   *[other] 在{ $child }内
}）；请封好或盖好杯子，并遵守当地法规
scald-time-at-most = 最多 { $time }
scald-time-less-than = 不到 { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }。仅按原料判定：共用的雪克杯、量勺和搅拌机可能造成微量残留；请遵守当地法规
# $named are clauses of caution-named.
caution-statements-contradict = 配料表与登记内容矛盾：{ $named }；告知顾客前请先查看包装
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }：“{ $words }”
caution-claims-contradicted = 配方簿内容自相矛盾：{ $claims }；告知顾客前请先查看包装
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } 登记为{ $claim ->
    [vegan] 纯素
    [dairy-free] 不含乳制品
   *[allergens] 致敏物质标示完整
}，但其致敏物质包括{ $allergen }
claim-against-honey = { $ingredient } 登记为{ $claim ->
    [vegan] 纯素
    [dairy-free] 不含乳制品
   *[allergens] 致敏物质标示完整
}，但所含的糖为蜂蜜的糖
claim-against-milk-sugars = { $ingredient } 登记为{ $claim ->
    [vegan] 纯素
    [dairy-free] 不含乳制品
   *[allergens] 致敏物质标示完整
}，但所含的糖为乳的糖
claim-against-not-dairy-free = { $ingredient } 登记为{ $claim ->
    [vegan] 纯素
    [dairy-free] 不含乳制品
   *[allergens] 致敏物质标示完整
}，同时又登记为含乳制品
claim-against-part = { $claim ->
    [vegan] { $ingredient } 登记为纯素，但其中的 { $part } 并非纯素
    [dairy-free] { $ingredient } 登记为不含乳制品，但其中的 { $part } 并非不含乳制品
   *[allergens] { $ingredient } 登记为致敏物质标示完整，但其中的 { $part } 并不完整
}
claim-against-every-part = { $claim ->
    [vegan] { $ingredient } 登记为非纯素，但其中所有原料均为纯素
    [dairy-free] { $ingredient } 登记为含乳制品，但其中所有原料均不含乳制品
   *[allergens] { $ingredient } 登记为致敏物质标示不完整，但其中所有原料的致敏物质标示均完整
}
claim-against-allergen-of-part = { $ingredient } 的致敏物质漏列{ $allergen }，而其中的 { $part } 含有此项

caution-choking = { $ingredients }：幼儿可能通过吸管将有嚼劲的小块吸入呼吸道（BfR 2012，4 岁及以下）；请提醒顾客，并遵守当地法规

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }；请遵守当地法规
kept-warm = { $ingredient } 为 { $celsius }：若以此温度存放，热藏须至少 { $uk }（英国）或 { $us }（美国）
kept-cold = { $ingredient } 为 { $celsius }：若以此温度存放，冷藏须不超过 { $uk }（英国）或 { $us }（美国）

# $rules are clauses that begin with use-.
caution-use-within = { $rules }。按店内自定规则；请遵守当地法规
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }；请遵守当地法规
use-within-of-brewing = { $ingredient }：冲泡后 { $time } 内用完
use-long-after-brewing = { $ingredient }：按店内规则，冲泡后 { $time } 内用完，长于 Tea Council of the USA 依据美国 CDC 1996 年备忘录所定的 { $limit }
use-not-stated-after-brewing = { $ingredient }：店内未定保存规则；Tea Council of the USA 指出冲泡后最多 { $limit }
use-within-of-making = { $ingredient }：制作后 { $time } 内用完
use-not-stated-after-making = { $ingredient }：自制品，未标示保存期限
use-within-of-opening = { $ingredient }：开封后 { $time } 内用完
use-not-stated-after-opening = { $ingredient }：未标示开封后的保存期限

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = 每 100 ml 含酸 { $acid }，可能使奶或豆浆凝结：请最后才加入冷的奶或豆浆，并立即出杯
caution-may-curdle = 奶或豆浆可能凝结，因为 { $ingredients } 未标示酸含量：请最后才加入冷的奶或豆浆，并立即出杯

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = 咖啡因 { $caffeine }：{ $lines }
caffeine-above-single-dose = 高于成人单次摄入量 { $limit }（EFSA 2015）；孕妇和儿童的限量更低
caffeine-may-disturb-sleep = { $limit } 可能影响睡眠（EFSA 2015）
caffeine-high-content = { $caffeine }，高于 { $limit }：除非名称含“茶”或“咖啡”，否则饮品可能须标示“高咖啡因含量”（欧盟第 (EU) 1169/2011 号条例，附件 III）
caution-caffeine-not-known = 咖啡因未知：{ $ingredients }；告知顾客前请先查看标签
caution-caffeine-not-known-at-all = 咖啡因未知；告知顾客前请先查看标签

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = 按配料表，可能须标示：{ $mentions }；请查看包装，并遵守当地法规
mention-phenylalanine = 含苯丙氨酸来源（{ $named }）
mention-children-colour = 可能对儿童的活动和注意力有不良影响的色素（{ $named }）
mention-polyol = 糖醇，过量食用可能引起腹泻（{ $named }）
mention-quinine = 奎宁（{ $named }）
mention-caffeine = 添加的咖啡因（{ $named }）
mention-sweetener = 含甜味剂（{ $named }）
mention-allergen = { $allergen }（{ $named }）
mention-animal = 动物性原料（{ $named }）
mention-perhaps-animal = 可能为动物性的原料（{ $named }）

caution-undissolved = 每 { $whole } 蔗糖和水中有蔗糖 { $sucrose }，但在 { $celsius } 最多溶解 { $most }（Bubnik & Kadlec 1995）：部分会残留为糖粒；请减少糖或增加水
caution-runs-over = 装杯量为 { $cup } 的 { $fill }，但杯口和封盖以下仅能容纳 { $most }：会溢出；请减量或改用较大的杯子
caution-not-known = 未知：{ $gaps }；告知顾客前请先查看标签
gap-vegan = 是否纯素

# What a caution is about; it stands before the sentence.
caution-kind-heat = 高温
caution-kind-allergen = 致敏物质
caution-kind-choking = 噎呛
caution-kind-curdling = 结块
caution-kind-caffeine = 咖啡因
caution-kind-additive = 添加剂
caution-kind-holding = 存放
caution-kind-undissolved = 未溶解
caution-kind-fill = 装杯量
caution-kind-unknown = 未知
