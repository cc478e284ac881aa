# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = 컵을 선택하지 않았거나 실온이 마시기 좋은 온도보다 낮지 않음
no-figure-warmer-only = 얼음이 든 음료는 두면 따뜻해지기만 합니다
no-figure-cup = 컵을 선택하지 않음
no-figure-price = 컵, 뚜껑·필름 또는 빨대의 가격 표시 없음
no-figure-only-water = 물, 차, 얼음만 들어 있음
no-figure-empty = 컵에 아무것도 없음

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = 각 당의 g 수에 이 온도에서의 상대 감미도(자당 = 1)를 곱한 값, 섞은 음료 100 ml당.
formula-serving-temperature = 모든 재료 항목, 얼음, 컵, 셰이커의 열이 평형을 이루는 온도.
formula-minutes-to-drinkable = 컵 벽과 증발로 잃는 열, 컵의 측정값이나 발표된 컵의 값을 바탕으로 담긴 정도에 맞춘 값.
formula-volume = { $celsius }에서 물과 녹은 고형분의 부피, 녹은 얼음 포함.
formula-fill = 컵 입구까지의 용량에 대한 음료, 토핑, 거품, 얼음의 비율.
formula-dilution = 섞은 음료에서 나머지 모든 것 1 g에 대한 물, 녹은 얼음, 차의 g 수.
formula-brix = 섞은 음료의 가용성 고형분, 질량 백분율.
formula-energy = 탄수화물, 단백질, 지방, 식이섬유, 산에 유럽연합 규정 (EU) 1169/2011, 부속서 XIV의 계수를 곱한 값.
formula-cost = 재료 항목별 g 수에 포장 가격을 곱한 값(손실 포함)에 컵, 뚜껑·필름, 함께 쓰는 부자재를 더한 값.
formula-free-sugars = 재료 항목별 당류 중 유리당으로 보는 부분: 첨가한 당 또는 꿀, 시럽, 주스의 당.
formula-total-sugar = 재료 항목별 g 수에 재료의 당류를 곱해 더한 값.
formula-sum = 재료 항목별 g 수에 재료의 수치를 곱해 더한 값.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients }({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = 열량
nutrition-fat = 지방
nutrition-saturates = 그중 포화지방
nutrition-carbohydrate = 탄수화물
nutrition-sugars = 그중 당류
nutrition-polyols = 그중 당알코올
nutrition-fibre = 식이섬유
nutrition-protein = 단백질
nutrition-salt = 소금

# Where the noticeable step of an axis is from.
step-source-sweetness = 베버 분율 0.09(콜라 속 자당, J. Sensory Studies 2023, doi 10.1111/joss.12803)에서 0.17(Schutz & Pilgrim 1957, 기억에 의한 값)까지, 0.10 선택, 하한은 가정
step-source-acidity = 구연산의 베버 분율 0.22(Schutz & Pilgrim 1957, 기억에 의한 값), 하한은 가정
step-source-creaminess = 유제품 유화액 크리미함의 베버 분율 0.20(Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521), 하한은 가정
step-source-body = 걸쭉함의 베버 분율 0.26(Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), 점도의 값을 고형분에 적용, 하한은 가정
step-source-tea-strength = 0.20으로 가정, 카페인 쓴맛의 베버 분율 0.30보다 세밀함(Schutz & Pilgrim 1957, 기억에 의한 값), 하한은 가정
step-source-flavour = 가정: 음료의 향미에 대해 발표된 수치 없음
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = { $step } 가정: 발표된 수치 없음, { $apart }의 차이는 구별됨(Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = 5% 가정: 발표된 수치 없음, 하한은 가정

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = 무게
measurand-volume = 부피
measurand-total-sugar = 총당류
measurand-free-sugars = 유리당
measurand-sucrose = 자당
measurand-glucose = 포도당
measurand-fructose = 과당
measurand-lactose = 유당
measurand-maltose = 맥아당
measurand-other-sugars = 기타 당류
measurand-sweetness = 단맛
measurand-soluble-solids = 가용성 고형분
measurand-density = 밀도
measurand-dilution = 희석도
measurand-serving-temperature = 제공 온도
measurand-ice-left = 남은 얼음
measurand-minutes-to-drinkable = 마시기 좋은 온도까지 분
measurand-energy = 열량
measurand-fat = 지방
measurand-saturates = 포화지방
measurand-carbohydrate = 탄수화물
measurand-polyols = 당알코올
measurand-fibre = 식이섬유
measurand-protein = 단백질
measurand-salt = 소금
measurand-caffeine = 카페인
measurand-tea-solids = 차 고형분
measurand-acid = 산
measurand-cost = 비용
measurand-fill = 채움 정도
measurand-tea-strength = 차의 진하기
measurand-creaminess = 크리미함
measurand-acidity = 신맛
measurand-body = 바디감
measurand-dry-matter = 건조물
measurand-sugar = 당류
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = 매장 단위/100 ml
