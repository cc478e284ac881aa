# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = 글루텐 함유 곡물
allergen-crustaceans = 갑각류
allergen-eggs = 알류
allergen-fish = 생선
allergen-peanuts = 땅콩
allergen-soybeans = 대두
allergen-milk = 우유
allergen-nuts = 견과류
allergen-celery = 셀러리
allergen-mustard = 겨자
allergen-sesame = 참깨
allergen-sulphites = 아황산류
allergen-lupin = 루핀
allergen-molluscs = 연체동물(조개류)
# Items of the lists of Taiwan and Korea that are not among them. Those of the Korean list as public pages tell it; mango and coconut from memory.
allergen-buckwheat = 메밀
allergen-wheat = 밀
allergen-mango = 망고
allergen-peach = 복숭아
allergen-tomato = 토마토
allergen-coconut = 코코넛
allergen-walnuts = 호두
allergen-pine-nuts = 잣
allergen-mackerel = 고등어
allergen-crab = 게
allergen-shrimp = 새우
allergen-squid = 오징어
allergen-shellfish = 조개류(굴, 전복, 홍합)
allergen-pork = 돼지고기
allergen-chicken = 닭고기
allergen-beef = 쇠고기
# Whose list of allergens it is.
allergen-list-european-union = 유럽연합
allergen-list-taiwan = 대만
allergen-list-china = 중국
allergen-list-hong-kong = 홍콩
allergen-list-south-korea = 대한민국
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = { $allergens } 함유
allergens-may-contain = { $allergens } 혼입 가능
allergens-not-stated = 알레르기 유발물질 표시 없음: { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $allergens } 표시 없음: { $ingredients }
allergens-none = 알레르기 유발물질을 적은 포장 없음
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = { $allergens } 추가 함유
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] { $allergens } 없음(원재료 기준)
   *[some] { $allergens } 없음(알레르기 유발물질을 표시한 포장 기준)
}
allergens-may-be-added = { $allergens } 혼입 가능
allergens-may-be-gone = ‘{ $allergens } 혼입 가능’을 표시한 포장이 더는 없음
allergens-no-longer-stated = 알레르기 유발물질 표시 없음: { $ingredients }(라벨 확인 필요)
# Claims of a drink, by what its ingredients state.
vegan-yes = 비건(원재료 기준)
vegan-no = 비건 아님
vegan-not-known = 비건 여부 알 수 없음(표시하지 않은 재료가 있거나 표시 내용이 모순됨)
verdict-yes = 예
verdict-no = 아니요
verdict-not-known = 알 수 없음
