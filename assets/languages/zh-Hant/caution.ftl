# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = 出杯時 { $celsius }，高於 { $limit }：太燙，不宜立即飲用，潑灑會燙傷；請放涼或加冷水，並遵守當地法規
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = 出杯時 { $celsius }，高於 { $limit }：太燙，不宜立即飲用，潑灑會燙傷（成人皮膚在{ $adult }內即達二度或更深的燙傷，幼兒{ $child ->
    [sooner] 更快
   *[other] 在{ $child }內
}）；請放涼或加冷水，並遵守當地法規
caution-hot-through-wide-straw = 以粗吸管飲用 { $celsius } 的飲品，高於 { $limit }：飲品到達喉嚨時仍燙；請不附吸管或降溫後出杯，並遵守當地法規
caution-scalds = 出杯時 { $celsius }：潑灑會燙傷；請封好或蓋好杯子，並遵守當地法規
caution-scalds-burns = 出杯時 { $celsius }：潑灑會燙傷（成人皮膚在{ $adult }內即達二度或更深的燙傷，幼兒{ $child ->
    [sooner] 更快
   *[other] 在{ $child }內
}）；請封好或蓋好杯子，並遵守當地法規
scald-time-at-most = 最多 { $time }
scald-time-less-than = 不到 { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }。僅依原料判定：共用的雪克杯、量匙與調理機可能造成微量殘留；請遵守當地法規
# $named are clauses of caution-named.
caution-statements-contradict = 成分表與登錄內容矛盾：{ $named }；告知客人前請先查看包裝
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }：「{ $words }」
caution-claims-contradicted = 配方簿內容自相矛盾：{ $claims }；告知客人前請先查看包裝
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } 登錄為{ $claim ->
    [vegan] 純素
    [dairy-free] 不含乳製品
   *[allergens] 過敏原標示完整
}，但其過敏原包括{ $allergen }
claim-against-honey = { $ingredient } 登錄為{ $claim ->
    [vegan] 純素
    [dairy-free] 不含乳製品
   *[allergens] 過敏原標示完整
}，但所含的糖為蜂蜜的糖
claim-against-milk-sugars = { $ingredient } 登錄為{ $claim ->
    [vegan] 純素
    [dairy-free] 不含乳製品
   *[allergens] 過敏原標示完整
}，但所含的糖為乳的糖
claim-against-not-dairy-free = { $ingredient } 登錄為{ $claim ->
    [vegan] 純素
    [dairy-free] 不含乳製品
   *[allergens] 過敏原標示完整
}，同時又登錄為含乳製品
claim-against-part = { $claim ->
    [vegan] { $ingredient } 登錄為純素，但其中的 { $part } 並非純素
    [dairy-free] { $ingredient } 登錄為不含乳製品，但其中的 { $part } 並非不含乳製品
   *[allergens] { $ingredient } 登錄為過敏原標示完整，但其中的 { $part } 並不完整
}
claim-against-every-part = { $claim ->
    [vegan] { $ingredient } 登錄為非純素，但其中所有原料皆為純素
    [dairy-free] { $ingredient } 登錄為含乳製品，但其中所有原料皆不含乳製品
   *[allergens] { $ingredient } 登錄為過敏原標示不完整，但其中所有原料的過敏原標示皆完整
}
claim-against-allergen-of-part = { $ingredient } 的過敏原漏列{ $allergen }，而其中的 { $part } 含有此項

caution-choking = { $ingredients }：幼兒可能透過吸管將有嚼勁的小塊吸入呼吸道（BfR 2012，4 歲及以下）；請提醒客人，並遵守當地法規

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }；請遵守當地法規
kept-warm = { $ingredient } 為 { $celsius }：若以此溫度存放，熱藏須至少 { $uk }（英國）或 { $us }（美國）
kept-cold = { $ingredient } 為 { $celsius }：若以此溫度存放，冷藏須不超過 { $uk }（英國）或 { $us }（美國）

# $rules are clauses that begin with use-.
caution-use-within = { $rules }。依店內自訂規則；請遵守當地法規
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }；請遵守當地法規
use-within-of-brewing = { $ingredient }：沖泡後 { $time } 內用完
use-long-after-brewing = { $ingredient }：依店內規則，沖泡後 { $time } 內用完，長於 Tea Council of the USA 依美國 CDC 1996 年備忘錄所訂的 { $limit }
use-not-stated-after-brewing = { $ingredient }：店內未訂保存規則；Tea Council of the USA 指出沖泡後最多 { $limit }
use-within-of-making = { $ingredient }：製作後 { $time } 內用完
use-not-stated-after-making = { $ingredient }：自製品，未標示保存期限
use-within-of-opening = { $ingredient }：開封後 { $time } 內用完
use-not-stated-after-opening = { $ingredient }：未標示開封後的保存期限

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = 每 100 ml 含酸 { $acid }，可能使奶或豆漿凝結：請最後才加入冷的奶或豆漿，並立即出杯
caution-may-curdle = 奶或豆漿可能凝結，因為 { $ingredients } 未標示酸含量：請最後才加入冷的奶或豆漿，並立即出杯

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = 咖啡因 { $caffeine }：{ $lines }
caffeine-above-single-dose = 高於成人單次攝取量 { $limit }（EFSA 2015）；孕婦與兒童的限量更低
caffeine-may-disturb-sleep = { $limit } 可能影響睡眠（EFSA 2015）
caffeine-high-content = { $caffeine }，高於 { $limit }：除非品名含「茶」或「咖啡」，否則飲品可能須標示「高咖啡因含量」（歐盟第 (EU) 1169/2011 號法規，附件 III）
caution-caffeine-not-known = 咖啡因未知：{ $ingredients }；告知客人前請先查看標籤
caution-caffeine-not-known-at-all = 咖啡因未知；告知客人前請先查看標籤

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = 依成分表，可能須標示：{ $mentions }；請查看包裝，並遵守當地法規
mention-phenylalanine = 含苯丙胺酸來源（{ $named }）
mention-children-colour = 可能對兒童的活動力與注意力有不良影響的色素（{ $named }）
mention-polyol = 糖醇，食用過量可能引起腹瀉（{ $named }）
mention-quinine = 奎寧（{ $named }）
mention-caffeine = 添加的咖啡因（{ $named }）
mention-sweetener = 含甜味劑（{ $named }）
mention-allergen = { $allergen }（{ $named }）
mention-animal = 動物性原料（{ $named }）
mention-perhaps-animal = 可能為動物性的原料（{ $named }）

caution-undissolved = 每 { $whole } 蔗糖與水中有蔗糖 { $sucrose }，但在 { $celsius } 最多溶解 { $most }（Bubnik & Kadlec 1995）：部分會殘留為糖粒；請減少糖或增加水
caution-runs-over = 裝杯量為 { $cup } 的 { $fill }，但杯口與封蓋以下僅能容納 { $most }：會溢出；請減量或改用較大的杯子
caution-not-known = 未知：{ $gaps }；告知客人前請先查看標籤
gap-vegan = 是否純素

# What a caution is about; it stands before the sentence.
caution-kind-heat = 高溫
caution-kind-allergen = 過敏原
caution-kind-choking = 噎嗆
caution-kind-curdling = 結塊
caution-kind-caffeine = 咖啡因
caution-kind-additive = 添加物
caution-kind-holding = 存放
caution-kind-undissolved = 未溶解
caution-kind-fill = 裝杯量
caution-kind-unknown = 未知
