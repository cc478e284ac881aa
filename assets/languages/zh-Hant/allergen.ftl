# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = 含麩質之穀物
allergen-crustaceans = 甲殼類
allergen-eggs = 蛋
allergen-fish = 魚類
allergen-peanuts = 花生
allergen-soybeans = 大豆
allergen-milk = 奶類
allergen-nuts = 堅果類
allergen-celery = 芹菜
allergen-mustard = 芥末
allergen-sesame = 芝麻
allergen-sulphites = 亞硫酸鹽類
allergen-lupin = 羽扇豆
allergen-molluscs = 軟體動物
# Items of the lists of Taiwan and Korea that are not among them. Mango as the Taiwanese regulation has it; the others from memory.
allergen-buckwheat = 蕎麥
allergen-wheat = 小麥
allergen-mango = 芒果
allergen-peach = 桃
allergen-tomato = 番茄
allergen-coconut = 椰子
allergen-walnuts = 核桃
allergen-pine-nuts = 松子
allergen-mackerel = 鯖魚
allergen-crab = 蟹
allergen-shrimp = 蝦
allergen-squid = 魷魚
allergen-shellfish = 貝類（牡蠣、鮑魚、貽貝）
allergen-pork = 豬肉
allergen-chicken = 雞肉
allergen-beef = 牛肉
# Whose list of allergens it is.
allergen-list-european-union = 歐盟
allergen-list-taiwan = 臺灣
allergen-list-china = 中國大陸
allergen-list-hong-kong = 香港
allergen-list-south-korea = 韓國
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = 含有：{ $allergens }
allergens-may-contain = 可能含有：{ $allergens }
allergens-not-stated = 未標示過敏原：{ $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $ingredients } 未標示：{ $allergens }
allergens-none = 沒有包裝標示任何過敏原
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = 另含有：{ $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] 依原料，不含：{ $allergens }
   *[some] 依已標示過敏原的包裝，不含：{ $allergens }
}
allergens-may-be-added = 可能含有：{ $allergens }
allergens-may-be-gone = 不再有標示「可能含有：{ $allergens }」的包裝
allergens-no-longer-stated = { $ingredients } 未標示過敏原：請查看標籤
# Claims of a drink, by what its ingredients state.
vegan-yes = 純素（依原料）
vegan-no = 非純素
vegan-not-known = 是否純素未知，因為有原料未說明，或其說明互相矛盾
verdict-yes = 是
verdict-no = 否
verdict-not-known = 未知
