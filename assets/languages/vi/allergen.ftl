# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = ngũ cốc chứa gluten
allergen-crustaceans = động vật giáp xác
allergen-eggs = trứng
allergen-fish = cá
allergen-peanuts = đậu phộng
allergen-soybeans = đậu nành
allergen-milk = sữa
allergen-nuts = các loại hạt (quả hạch)
allergen-celery = cần tây
allergen-mustard = mù tạt
allergen-sesame = hạt mè (vừng)
allergen-sulphites = sulfit
allergen-lupin = đậu lupin
allergen-molluscs = động vật thân mềm
# Items of the lists of Taiwan and Korea that are not among them, from memory.
allergen-buckwheat = kiều mạch
allergen-wheat = lúa mì
allergen-mango = xoài
allergen-peach = đào
allergen-tomato = cà chua
allergen-coconut = dừa
allergen-walnuts = quả óc chó
allergen-pine-nuts = hạt thông
allergen-mackerel = cá thu
allergen-crab = cua
allergen-shrimp = tôm
allergen-squid = mực
allergen-shellfish = nhuyễn thể có vỏ (hàu, bào ngư, vẹm)
allergen-pork = thịt heo
allergen-chicken = thịt gà
allergen-beef = thịt bò
# Whose list of allergens it is.
allergen-list-european-union = Liên minh châu Âu
allergen-list-taiwan = Đài Loan
allergen-list-china = Trung Quốc
allergen-list-hong-kong = Hồng Kông
allergen-list-south-korea = Hàn Quốc
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = có chứa { $allergens }
allergens-may-contain = có thể chứa { $allergens }
allergens-not-stated = không ghi chất gây dị ứng đối với { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = không ghi { $allergens } đối với { $ingredients }
allergens-none = không bao bì nào nêu chất gây dị ứng
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = có chứa thêm { $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] không có { $allergens }, theo nguyên liệu
   *[some] không có { $allergens }, theo những bao bì có ghi chất gây dị ứng
}
allergens-may-be-added = có thể chứa { $allergens }
allergens-may-be-gone = không còn bao bì nào ghi “có thể chứa { $allergens }”
allergens-no-longer-stated = không ghi chất gây dị ứng đối với { $ingredients }: hãy đọc nhãn
# Claims of a drink, by what its ingredients state.
vegan-yes = thuần chay, theo nguyên liệu
vegan-no = không thuần chay
vegan-not-known = thuần chay: chưa rõ, vì có nguyên liệu không ghi hoặc thông tin bị mâu thuẫn
verdict-yes = có
verdict-no = không
verdict-not-known = chưa rõ
