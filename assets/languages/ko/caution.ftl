# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = 제공 온도 { $celsius }, { $limit } 초과: 바로 마시기에는 너무 뜨겁고 쏟으면 화상을 입습니다. 식히거나 찬물을 넣고 현지 법규를 따르십시오
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = 제공 온도 { $celsius }, { $limit } 초과: 바로 마시기에는 너무 뜨겁고 쏟으면 화상을 입습니다(피부가 2도 이상의 깊은 화상을 입는 시간: 성인 { $adult }, 어린아이 { $child ->
    [sooner] 더 짧음
   *[other] { $child }
}). 식히거나 찬물을 넣고 현지 법규를 따르십시오
caution-hot-through-wide-straw = 굵은 빨대로 { $celsius }, { $limit } 초과: 음료가 뜨거운 채로 목에 닿습니다. 빨대를 빼거나 더 식혀서 제공하고 현지 법규를 따르십시오
caution-scalds = 제공 온도 { $celsius }: 쏟으면 화상을 입습니다. 컵을 닫고 현지 법규를 따르십시오
caution-scalds-burns = 제공 온도 { $celsius }: 쏟으면 화상을 입습니다(피부가 2도 이상의 깊은 화상을 입는 시간: 성인 { $adult }, 어린아이 { $child ->
    [sooner] 더 짧음
   *[other] { $child }
}). 컵을 닫고 현지 법규를 따르십시오
scald-time-at-most = 최대 { $time }
scald-time-less-than = { $time } 미만

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. 원재료만을 기준으로 합니다. 함께 쓰는 셰이커, 계량스푼, 블렌더를 통해 미량이 혼입될 수 있습니다. 현지 법규를 따르십시오
# $named are clauses of caution-named.
caution-statements-contradict = 원재료 목록이 입력한 내용과 다릅니다: { $named }. 고객에게 알리기 전에 포장을 확인하십시오
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }: “{ $words }”
caution-claims-contradicted = 레시피북의 내용이 서로 모순됩니다: { $claims }. 고객에게 알리기 전에 포장을 확인하십시오
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient }: { $claim ->
    [vegan] 비건으로
    [dairy-free] 유제품 없음으로
   *[allergens] 알레르기 유발물질 전체 표시로
} 입력되었으나 알레르기 유발물질에 ‘{ $allergen }’ 항목이 있음
claim-against-honey = { $ingredient }: { $claim ->
    [vegan] 비건으로
    [dairy-free] 유제품 없음으로
   *[allergens] 알레르기 유발물질 전체 표시로
} 입력되었으나 당류가 꿀의 당류임
claim-against-milk-sugars = { $ingredient }: { $claim ->
    [vegan] 비건으로
    [dairy-free] 유제품 없음으로
   *[allergens] 알레르기 유발물질 전체 표시로
} 입력되었으나 당류가 우유의 당류임
claim-against-not-dairy-free = { $ingredient }: { $claim ->
    [vegan] 비건으로
    [dairy-free] 유제품 없음으로
   *[allergens] 알레르기 유발물질 전체 표시로
} 입력되었으나 유제품 있음으로도 입력됨
claim-against-part = { $claim ->
    [vegan] { $ingredient }: 비건으로 입력되었으나 구성 재료 ‘{ $part }’ 항목은 비건이 아님
    [dairy-free] { $ingredient }: 유제품 없음으로 입력되었으나 구성 재료 ‘{ $part }’ 항목은 그렇지 않음
   *[allergens] { $ingredient }: 알레르기 유발물질 전체 표시로 입력되었으나 구성 재료 ‘{ $part }’ 항목은 그렇지 않음
}
claim-against-every-part = { $claim ->
    [vegan] { $ingredient }: 비건 아님으로 입력되었으나 구성 재료가 모두 비건임
    [dairy-free] { $ingredient }: 유제품 있음으로 입력되었으나 구성 재료에 모두 유제품이 없음
   *[allergens] { $ingredient }: 알레르기 유발물질 일부 표시로 입력되었으나 구성 재료는 모두 전체 표시임
}
claim-against-allergen-of-part = { $ingredient }: 구성 재료 ‘{ $part }’에 있는 ‘{ $allergen }’ 항목이 알레르기 유발물질에서 빠져 있음

caution-choking = { $ingredients }: 어린아이는 작고 쫄깃한 조각을 빨대로 빨아들이다가 기도로 흡인할 수 있습니다(BfR 2012, 4세까지). 고객에게 주의를 알리고 현지 법규를 따르십시오

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }. 현지 법규를 따르십시오
kept-warm = { $ingredient } { $celsius }: 이 온도로 보관한다면, 온장 보관에는 최소 { $uk }(영국) 또는 { $us }(미국) 필요
kept-cold = { $ingredient } { $celsius }: 이 온도로 보관한다면, 냉장 보관에는 최대 { $uk }(영국) 또는 { $us }(미국) 필요

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. 매장 자체 규칙입니다. 현지 법규를 따르십시오
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }. 현지 법규를 따르십시오
use-within-of-brewing = { $ingredient }: 우린 뒤 { $time } 이내 사용
use-long-after-brewing = { $ingredient }: 매장 규칙은 우린 뒤 { $time } 이내 사용이며, 미국 CDC의 1996년 공문에 따른 Tea Council of the USA 기준 { $limit }보다 긺
use-not-stated-after-brewing = { $ingredient }: 매장의 보관 규칙 표시 없음(Tea Council of the USA 기준은 우린 뒤 최대 { $limit })
use-within-of-making = { $ingredient }: 만든 뒤 { $time } 이내 사용
use-not-stated-after-making = { $ingredient }: 매장 제조, 보관 시간 표시 없음
use-within-of-opening = { $ingredient }: 개봉 후 { $time } 이내 사용
use-not-stated-after-opening = { $ingredient }: 개봉 후 보관 시간 표시 없음

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = 산이 100 ml당 { $acid } 들어 있어 우유나 두유가 응고될 수 있습니다. 우유나 두유는 차갑게 마지막에 넣고 바로 제공하십시오
caution-may-curdle = 산 함량 표시가 없어({ $ingredients }) 우유나 두유가 응고될 수 있습니다. 우유나 두유는 차갑게 마지막에 넣고 바로 제공하십시오

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = 카페인 { $caffeine }: { $lines }
caffeine-above-single-dose = 성인 1회 섭취량 { $limit } 초과(EFSA 2015), 임산부와 어린이는 더 적음
caffeine-may-disturb-sleep = { $limit } 섭취 시 수면을 방해할 수 있음(EFSA 2015)
caffeine-high-content = { $caffeine }, { $limit } 초과: 이름에 ‘차’나 ‘커피’가 없으면 음료에 ‘고카페인 함유’를 표시해야 할 수 있음(유럽연합 규정 (EU) 1169/2011, 부속서 III)
caution-caffeine-not-known = 카페인 알 수 없음: { $ingredients }. 고객에게 알리기 전에 라벨을 확인하십시오
caution-caffeine-not-known-at-all = 카페인 알 수 없음. 고객에게 알리기 전에 라벨을 확인하십시오

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = 원재료 목록에 따라 표시해야 할 수 있음: { $mentions }. 포장을 확인하고 현지 법규를 따르십시오
mention-phenylalanine = 페닐알라닌 공급원 함유({ $named })
mention-children-colour = 어린이의 활동과 주의력에 나쁜 영향을 줄 수 있는 색소({ $named })
mention-polyol = 당알코올, 과량 섭취 시 설사를 일으킬 수 있음({ $named })
mention-quinine = 퀴닌({ $named })
mention-caffeine = 첨가된 카페인({ $named })
mention-sweetener = 감미료 함유({ $named })
mention-allergen = { $allergen }({ $named })
mention-animal = 동물성 원료({ $named })
mention-perhaps-animal = 동물성일 수 있는 원료({ $named })

caution-undissolved = 자당과 물 { $whole }당 자당 { $sucrose }, 그러나 { $celsius }에서는 최대 { $most }만 녹습니다(Bubnik & Kadlec 1995). 일부가 알갱이로 남으니 설탕을 줄이거나 물을 늘리십시오
caution-runs-over = { $cup }의 { $fill }, 그러나 컵 입구와 뚜껑 아래에는 { $most }만 들어가므로 넘칩니다. 양을 줄이거나 더 큰 컵을 쓰십시오
caution-not-known = 알 수 없음: { $gaps }. 고객에게 알리기 전에 라벨을 확인하십시오
gap-vegan = 비건 여부

# What a caution is about; it stands before the sentence.
caution-kind-heat = 뜨거움
caution-kind-allergen = 알레르기
caution-kind-choking = 질식
caution-kind-curdling = 응고
caution-kind-caffeine = 카페인
caution-kind-additive = 첨가물
caution-kind-holding = 보관
caution-kind-undissolved = 미용해
caution-kind-fill = 채움
caution-kind-unknown = 알 수 없음
