# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = 含有麸质的谷物
allergen-crustaceans = 甲壳纲类动物
allergen-eggs = 蛋类
allergen-fish = 鱼类
allergen-peanuts = 花生
allergen-soybeans = 大豆
allergen-milk = 乳
allergen-nuts = 坚果
allergen-celery = 芹菜
allergen-mustard = 芥末
allergen-sesame = 芝麻
allergen-sulphites = 亚硫酸盐
allergen-lupin = 羽扇豆
allergen-molluscs = 软体动物
# Items of the lists of Taiwan and Korea that are not among them, from memory.
allergen-buckwheat = 荞麦
allergen-wheat = 小麦
allergen-mango = 芒果
allergen-peach = 桃
allergen-tomato = 番茄
allergen-coconut = 椰子
allergen-walnuts = 核桃
allergen-pine-nuts = 松子
allergen-mackerel = 鲭鱼
allergen-crab = 蟹
allergen-shrimp = 虾
allergen-squid = 鱿鱼
allergen-shellfish = 贝类（牡蛎、鲍鱼、贻贝）
allergen-pork = 猪肉
allergen-chicken = 鸡肉
allergen-beef = 牛肉
# Whose list of allergens it is.
allergen-list-european-union = 欧盟
allergen-list-taiwan = 台湾
allergen-list-china = 中国大陆
allergen-list-hong-kong = 香港
allergen-list-south-korea = 韩国
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = 含有：{ $allergens }
allergens-may-contain = 可能含有：{ $allergens }
allergens-not-stated = 未标示致敏物质：{ $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $ingredients } 未标示：{ $allergens }
allergens-none = 没有包装标示任何致敏物质
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = 另含有：{ $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] 按原料，不含：{ $allergens }
   *[some] 按已标示致敏物质的包装，不含：{ $allergens }
}
allergens-may-be-added = 可能含有：{ $allergens }
allergens-may-be-gone = 不再有标示“可能含有：{ $allergens }”的包装
allergens-no-longer-stated = { $ingredients } 未标示致敏物质：请查看标签
# Claims of a drink, by what its ingredients state.
vegan-yes = 纯素（按原料）
vegan-no = 非纯素
vegan-not-known = 是否纯素未知，因为有原料未说明，或其说明互相矛盾
verdict-yes = 是
verdict-no = 否
verdict-not-known = 未知
