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
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = 含有：{ $allergens }
allergens-may-contain = 可能含有：{ $allergens }
allergens-not-stated = 未标示致敏物质：{ $ingredients }
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
