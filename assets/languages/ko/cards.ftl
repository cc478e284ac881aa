# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = 카운터 카드
card-kind-training = 교육 시트
card-kind-exercise = 재료 대체 연습
card-kind-answers = 연습 정답
card-kind-menu = 메뉴의 원재료와 알레르기 유발물질
card-kind-figures = 메뉴 수치
card-kind-ladder = 당도표
card-kind-matrix = 당도, 크기, 얼음
card-kind-comparison = 버전 비교
card-kind-batch = 구매와 사전 제조
card-kind-scores = 블라인드 시음 답안지
card-kind-pouring = 블라인드 시음 제공표

## Why there is no card

card-no-recipe = 레시피북에 `{ $id }` 레시피가 없습니다
card-no-version = ‘{ $recipe }’ 레시피에 `{ $version }` 버전이 없습니다
card-count-to-compare = { $count ->
   *[other] 비교에는 버전 2~4개가 필요합니다(현재 { $count }개). 다시 선택하십시오
}
card-nothing-to-make = 만들 음료가 없습니다. 1~{ $most } 범위에서 잔 수를 입력하십시오
card-no-exercise = { $replace } → { $with } 대체로는 연습을 만들 수 없습니다. 앞의 재료가 음료에 없거나, 양을 바꾸어도 맛을 맞출 수 없습니다. 먼저 ‘대체’에서 시도해 보십시오
card-empty-menu = 메뉴가 비어 있습니다. 컵이 지정된 레시피가 없거나 모두 판매 종료되었습니다
card-nothing-approved = 메뉴에 승인된 음료가 없습니다. 판매하는 음료를 승인하거나, 미승인 음료를 포함해 출력하세요
card-menu-too-long = { $drinks ->
   *[other] 메뉴에 음료가 { $drinks }종 있지만 카드 한 장에는 { $most }종까지 들어갑니다. 제공하지 않는 음료를 판매 종료하거나 음료별로 카드를 만드십시오
}
card-count-to-taste = 이 시음에는 음료 { $wanted }가지가 필요합니다(현재 { $count }가지). 시음할 음료를 선택하십시오
card-count-of-tasters = 시음자 수를 1에서 { $most } 사이로 입력하십시오

pdf-font = ‘{ $text }’에 필요한 글꼴을 포함할 수 없습니다. 글꼴을 삭제하거나 바꾼 뒤 다시 내보내십시오
pdf-writer = PDF를 저장할 수 없습니다: { $reason }

## Figures

card-figure-not-known = 알 수 없음
card-figure-not-known-because = 알 수 없음({ $reason })
card-figure-unstated = 표시 없음
# Why a figure is not known in full.
card-figure-not-stated = 표시 없음: { $names }
card-figure-at-least = 최소 { $figure }({ $reason })
card-figure-least = 최소 { $figure }
weight-not-known = 무게 알 수 없음
amount-none = 넣지 않음
hours = { $hours }시간

## Versions and approvals

version-original = 원본
revision-approved = { $version }: { $day } 승인
revision-approved-by = { $version }: { $day } 승인({ $person })
revision-changed = { $version }: { $day } 승인 이후 변경됨
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }: 시험 중, 미승인
    [retired] { $version }: 판매 종료, 미승인
   *[draft] { $version }: 초안, 미승인
}
revision-marked-only = { $version }: 승인됨으로 표시되었으나 승인 기록 없음
revision-taken-back = { $state ->
    [trial] { $version }: 다시 시험 중, 마지막 승인 { $day }
    [retired] { $version }: 판매 종료, 마지막 승인 { $day }
   *[draft] { $version }: 다시 초안, 마지막 승인 { $day }
}

## Steps

card-stage-mixed = 섞기
card-stage-mixed-cup = { $cup }에서 섞기
card-stage-mixed-shaker = { $shaker }에서 섞어 컵에 붓기
card-stage-mixed-strained = { $shaker }에서 섞어 컵에 걸러 붓기
card-stage-in-cup = 컵에 담기
card-stage-on-top = 위에 올리기
card-stage-steeped = 우린 뒤 건져 내기
card-stage-steeped-for = { $minutes }분 우린 뒤 건져 내기
line-at-temperature = 온도 { $temperature }
line-brings = { $ingredient } { $mass } 함께 들어감

## Facts

fact-cup = 컵
cup-not-named = 선택 안 함
cup-open = { $cup }, 뚜껑 없음
cup-with-lid = { $cup }, 뚜껑
cup-sealed = { $cup }, 필름 실링
fact-contains = 함유
fact-may-contain = 혼입 가능
contains-none = 알레르기 유발물질 14종 중 해당 없음(포장 표시 기준)
contains-none-listed = 매장이 택한 알레르기 유발물질 목록 중 해당 없음(포장 표시 기준)
fact-allergens-not-stated = 알레르기 유발물질 표시 없는 재료
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = 모두 표시됨
allergen-not-stated = 표시 없음
fact-vegan = 비건(원재료 기준)

## Cautions and small print

card-cautions = 주의 사항
# Before a caution: "Caution (heat)".
card-caution = 주의({ $kind })
card-small-print = ±는 표준불확도입니다. 알레르기 유발물질과 식단 구분은 원재료의 포장 표시를 따릅니다. 함께 쓰는 셰이커, 계량스푼, 블렌더를 통해 미량이 혼입될 수 있습니다. 이 시트는 참고 자료이며 법규 준수를 증명하지 않습니다. 현지 법규를 따르십시오.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = 알레르기 유발물질과 주의사항의 번역은 아직 매장에서 확인하지 않았습니다. 옆에 영문을 함께 적습니다.
card-confirmed = 알레르기 유발물질과 주의사항의 번역 확인: { $person }, { $day }
card-foot-in-full = 바닥글 전문: { $foot }

## Columns of tables

column-all-batches = 전체 제조분
column-amount = 양
column-axis = 맛 항목
column-batches = 제조 횟수
column-cost = 비용
column-drink = 음료
column-drinks = 잔 수
column-energy = 열량
column-figure = 항목
column-for = 제조 품목
column-house-made = 매장 제조
column-ingredient = 재료
column-ingredients = 원재료(무게가 많은 순)
column-item = 품목
column-keeps = 보관 시간
column-left-over = 남는 양
column-tea = 차
column-brewed = 우릴 양(손실 포함)
column-leaf = 마른 찻잎
column-water = 물
column-level = 당도
column-measure = 계량 도구
column-margin = 마진
column-menu-price = 메뉴 가격
column-needed = 필요량
column-noticeable = 체감 1단계
column-nutrition = 영양성분
column-one-batch = 1회 제조량(손실 제외)
column-one-pack = 포장 단위
column-one-use = 1회 계량
column-packs = 포장 수
column-off-standard = 기준과의 차이(단계)
column-part = 구성
column-per-100-ml = 100 ml당(토핑 제외)
column-per-drink = 1잔당
column-pieces = 수량
column-state = 상태
column-sugar = 당류
column-supplier = 공급업체
column-sweetness = 단맛
column-this-drink = 이 음료
column-total-sugar = 총당류
column-weight = 무게
column-with = 재료

## Training sheet

training-how = 만드는 법
training-target = 목표
training-lines = 재료별 기여
training-taste = 맛
training-measures = 계량 도구
training-nutrition = 영양성분
training-shown = 시범 및 1회 실습
training-time-to-cool = { $temperature }까지 식는 시간
training-already-below = 이미 더 낮음
training-already-below-tasted = 이미 더 낮음, 승인할 때 { $temperature }에서 시음함
training-name = 이름
training-shown-by = 시범자
training-day = 날짜
training-measured = 제공 온도 측정값, { $unit }
training-lines-caption = 재료별 무게, 당류, 열량
training-taste-caption = 맛 항목별 음료 수치
training-measures-caption = 계량 도구별 1회 계량
training-nutrition-caption = 음료의 영양성분
measure-stated = 표시 { $amount }
measure-not-weighed = 무게 미측정

## Menu

menu-title = 원재료와 알레르기 유발물질
menu-subtitle = 전체 메뉴
menu-subtitle-approved = 승인된 음료
menu-with-unapproved = 미승인 음료 포함
menu-left-out = 현재 상태로 승인되지 않아 이 표에 없는 음료: { $drinks }.
menu-marks = ‘함유’와 ‘혼입 가능’: 재료의 포장에 표시되어 있습니다. ‘표시 없음’: 알레르기 유발물질을 표시하지 않은 포장이 하나 이상 있습니다. ‘{ $sign }’: 모든 포장에 알레르기 유발물질이 표시되어 있으며, 이 물질을 적은 포장은 없습니다.
menu-lists = 알레르기 유발물질 목록: { $lists }
figures-title = 메뉴 수치
figures-caption = 음료별 비용, 가격, 당류, 열량, 알레르기 유발물질
figures-at-most = 최대 { $figure }
figures-no-standard = 기준 없음
figures-some-silent = 일부 포장에 표시 없음
figures-none-named = 언급 없음
figures-marks = 비용: 컵과 뚜껑 포함, 판매세 제외. 마진: 메뉴 가격에서 판매세와 비용을 뺀 값이며, 가격이나 세율이 표시되지 않으면 “최대”로 적습니다. 당류와 열량: 음료 전체 기준. 마지막 열은 승인된 기준과의 전체 차이를 체감 단계로 나타냅니다.
menu-ingredients = 원재료
menu-allergens-caption = 모든 음료의 알레르기 유발물질
menu-ingredients-caption = 모든 음료의 원재료

## Shopping and batches

batch-title = 구매와 사전 제조
batch-for = { $count ->
   *[other] { $count }잔분
}
batch-drinks = 음료
batch-make = 미리 만들기
batch-brew = 우리기
batch-tap = 수도와 제빙기
batch-buy = 구매
batch-serve = 컵과 부자재
batch-note = 양은 레시피 필요량에 손실분을 더한 것이며 여유분은 없습니다. 포장 수와 제조 횟수는 올림했습니다.
batch-parts-caption = 전체 제조분에 들어가는 재료
batch-drinks-caption = 만들 음료
batch-make-caption = 매장에서 미리 만들 것
batch-brew-caption = 우릴 차의 찻잎과 물
batch-tap-caption = 포장으로 사지 않는 물과 얼음
batch-buy-caption = 구매할 것
batch-serve-caption = 컵과 함께 쓰는 부자재
batch-total = 합계
batch-cost-of-all = 차, 물, 얼음 포함 합계
batch-brew-note = 찻잎과 물의 양은 해당 농도가 되는 5분 뜨거운 우림 기준입니다. 냉침하거나 더 오래 우리면 달라집니다.
price-not-stated = 가격 표시 없음
serve-lid = { $cup }용 뚜껑
serve-film = { $cup }용 필름
serve-straw = 빨대
serve-wide-straw = 굵은 빨대
serve-sleeve = 컵홀더

## Exercise on a swap

exercise-subtitle = { $version }, 연습
exercise-task = 재료 대체: { $replace } → { $with }. 변경할 때마다 음료가 표준과 비교해 어떻습니까? 행마다 한 칸에 표시하십시오.
exercise-same = ‘같음’은 표준과의 차이가 체감 1단계 이하라는 뜻입니다.
exercise-answers-subtitle = { $version }, 교육자용 정답
exercise-answer = 정답
exercise-standard = 표준
exercise-plain-swap = 계량 횟수를 유지한 대체
exercise-less = 덜함
exercise-the-same = 같음
exercise-more = 더함
exercise-crosses-caption = 맛 항목별 예상 변화
exercise-answers-caption = 변경 후 표준과의 차이(체감 단계)

## 블라인드 시음

blind-scores-title = 블라인드 시음
blind-pouring-title = 블라인드 시음: 제공표
blind-subtitle = { $design ->
    [triangle] 삼점 검사, 번호 { $seed }
    [duo-trio] 일-이점 검사, 번호 { $seed }
    [pair] 이점 비교 검사, 번호 { $seed }
   *[ranking] 세 컵의 순위 검사, 번호 { $seed }
}
blind-how = 왼쪽 컵부터 차례로 맛보십시오. 사이에 물로 입을 헹구십시오. 모두 끝날 때까지 말하지 마십시오. 확실하지 않아도 하나를 고르십시오.
blind-taster = 시음자 { $number }
blind-task = { $design ->
    [triangle] 두 컵은 같고 한 컵은 다릅니다. 다른 컵에 표시하십시오.
   *[duo-trio] 먼저 R을 맛보십시오. 나머지 중 한 컵이 R과 같습니다. 그 컵에 표시하십시오.
}
blind-task-more = { $design ->
    [pair] 다음에 해당하는 컵에 표시하십시오: { $more }.
   *[ranking] 컵의 순서를 매기십시오. 1은 가장 그러한 컵({ $more }), 다음이 2, 그다음이 3입니다. 행마다 한 컵에 표시하십시오.
}
blind-task-liking = { $design ->
    [pair] 더 마음에 드는 컵에 표시하십시오.
   *[ranking] 컵의 순서를 매기십시오. 1은 가장 마음에 드는 컵, 다음이 2, 그다음이 3입니다. 행마다 한 컵에 표시하십시오.
}
blind-my-answer = 나의 답
blind-rank = { $rank ->
    [first] 1, 가장 많이
    [second] 2
   *[third] 3, 가장 적게
}
blind-cup = { $number ->
    [first] 첫째 컵
    [second] 둘째 컵
   *[third] 셋째 컵
}
blind-boxes-caption = 시음자 { $number }의 컵(시음 순서)
blind-pour-secret = 이 표를 시음자에게 보이지 마십시오. 따르는 사람은 시음도 제공도 하지 않습니다.
blind-pour-alike = 먼저 컵에 코드를 적으십시오. 같은 컵, 같은 양, 같은 온도로 몇 분 안에 제공하십시오. 뜨거운 음료는 입을 데지 않을 만큼 식히십시오.
blind-pour-hide = 음료의 모양이 다르면 가리십시오: 어두운 컵, 구멍 뚫린 뚜껑 또는 어두운 조명.
blind-pour-allergies = 시음 전에 모두에게 알레르기가 있는지 묻고 답안지 윗부분을 읽게 하십시오. 각 음료의 알레르기 유발물질은 아래에 있습니다.
blind-pour-cut = 다른 사람의 답이 보이지 않도록 답안지를 시음자별로 자르십시오.
blind-sample = { $letter }: { $drink }
blind-cups = 컵 수
blind-codes = 컵의 코드
blind-references = R로 표시한 추가 컵
blind-orders = 시음자별 컵
blind-orders-caption = 시음자별 각 컵의 코드와 음료(시음 순서)
blind-taster-column = 시음자
blind-reference = R
blind-right = 정답
blind-seed = 번호 { $seed }을(를) 쓰면 같은 코드와 순서가 다시 나옵니다.
blind-unbalanced = 시음자가 { $multiple }명 또는 그 배수일 때만 모든 순서가 같은 횟수로 나옵니다.

## Sugar ladder

ladder-subtitle = { $version }, 당도표
ladder-floor = 단맛 재료를 넣지 않아도 다른 재료에서 오는 당류가 남습니다: { $sugar }.
ladder-not-possible = { $level }: { $reason }
ladder-see-below = 불가능, 아래 참조
ladder-caption = 당도별 양

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, 당도, 크기, 얼음
# A size with an amount of ice.
matrix-iced = { $cup }, 아이스
matrix-ice = { $cup }, { $level }
matrix-not-possible = 불가능: { $reason }

## Comparison

comparison-title = 비교
comparison-lines = 재료와 양
comparison-figures = 수치
comparison-taste = 맛 비교(기준: { $first })
comparison-line = { $ingredient } { $amount }({ $grams })
comparison-level = 차이 없음
comparison-lines-caption = 버전별 재료와 양
comparison-drinks-caption = 음료별 재료와 양
comparison-figures-caption = 버전별 수치
comparison-taste-caption = 첫 번째 버전과 비교한 버전별 맛(체감 단계)

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = 음료
serving = 1잔
serving-of = 1잔, { $volume }
step-add = { $ingredient } { $amount } 넣기.
left-state = 상태({ $revision })
left-cautions = { $count ->
   *[other] 주의 사항 { $count }건(다른 방법으로 음료와 함께 전달해야 함)
}
left-allergens = 알레르기 유발물질
left-uncertainty = 제공 온도와 모든 불확도
left-measures = 매장 계량 도구 정보(이름은 재료 문구에 포함됨)
left-roles = 각 재료 항목의 역할과 온도, 컵, 셰이커, 판매가
left-composition = 재료의 성분과 수치 근거
left-versions = 다른 버전과 승인 이력
left-caffeine = 카페인과 kJ 단위 열량
left-figure = { $figure }(일부만 알려짐): { $known }

## What an ingredient is for in a drink

role-base = 베이스
role-flavour = 맛
role-creamer = 크리머
role-sweetener = 감미
role-tea = 차
role-water = 물
role-ice = 얼음
role-topping = 토핑
role-garnish = 장식
