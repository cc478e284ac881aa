# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = 未選擇杯子，或室溫不低於適飲溫度
no-figure-warmer-only = 加冰的飲品放置時只會變暖
no-figure-cup = 未選擇杯子
no-figure-price = 未標示杯子、封蓋或吸管的價格
no-figure-only-water = 只有水、茶和冰
no-figure-empty = 杯中沒有任何東西

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = 各種糖的克數乘以此溫度下的相對甜度（蔗糖 = 1），以每 100 ml 混合後的飲品計。
formula-serving-temperature = 所有原料、冰、杯子與雪克杯的熱量達到平衡時的溫度。
formula-minutes-to-drinkable = 依杯子的裝杯量，經杯壁與蒸發散失的熱，取自該杯的讀數或已發表的杯子數據。
formula-volume = 水與溶解固形物在 { $celsius } 的體積，包含已融化的冰。
formula-fill = 飲品、配料、泡沫與冰，相對於杯子裝滿至杯口的容量。
formula-dilution = 混合後的飲品中，其他所有原料每 1 克所對應的水、融冰與茶的克數。
formula-brix = 混合後飲品的可溶性固形物，以質量百分比表示。
formula-energy = 碳水化合物、蛋白質、脂肪、膳食纖維與酸，乘以歐盟第 (EU) 1169/2011 號法規附件 XIV 的係數。
formula-cost = 各項原料的克數乘以其包裝價格（含損耗），加上杯子、封蓋與搭配耗材。
formula-free-sugars = 各項原料的糖中計為游離糖的部分：添加的糖，或來自蜂蜜、糖漿與果汁的糖。
formula-total-sugar = 各項原料的克數乘以其含糖量，再加總。
formula-sum = 各項原料的克數乘以其數值，再加總。

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients }（{ $evidence }）

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = 熱量
nutrition-fat = 脂肪
nutrition-saturates = 其中飽和脂肪
nutrition-carbohydrate = 碳水化合物
nutrition-sugars = 其中糖
nutrition-polyols = 其中糖醇
nutrition-fibre = 膳食纖維
nutrition-protein = 蛋白質
nutrition-salt = 鹽

# Where the noticeable step of an axis is from.
step-source-sweetness = 韋伯分數 0.09（可樂中的蔗糖，J. Sensory Studies 2023，doi 10.1111/joss.12803）至 0.17（Schutz & Pilgrim 1957，數值憑記憶）；取 0.10；下限為假設值
step-source-acidity = 檸檬酸的韋伯分數 0.22（Schutz & Pilgrim 1957，數值憑記憶）；下限為假設值
step-source-creaminess = 乳製乳化液乳脂感的韋伯分數 0.20（Zahn, Hoppert, Ullrich & Rohm 2013，Foods 2:521）；下限為假設值
step-source-body = 濃稠度的韋伯分數 0.26（Camacho, Dop, de Graaf & Stieger 2015，J. Food Sci.，doi 10.1111/1750-3841.12922），原為黏度，套用於固形物；下限為假設值
step-source-tea-strength = 假設為 0.20；比咖啡因苦味的韋伯分數 0.30 更細（Schutz & Pilgrim 1957，數值憑記憶）；下限為假設值
step-source-flavour = 假設值：飲品風味尚無已發表的數據
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = 假設為 { $step }：尚無已發表的數據；{ $apart } 可分辨（Engelen et al. 2002，Eur. J. Oral Sci. 110:412）
step-source-volume = 假設為 5%：尚無已發表的數據；下限為假設值

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = 重量
measurand-volume = 體積
measurand-total-sugar = 總糖
measurand-free-sugars = 游離糖
measurand-sucrose = 蔗糖
measurand-glucose = 葡萄糖
measurand-fructose = 果糖
measurand-lactose = 乳糖
measurand-maltose = 麥芽糖
measurand-other-sugars = 其他糖
measurand-sweetness = 甜味強度
measurand-soluble-solids = 可溶性固形物
measurand-density = 密度
measurand-dilution = 稀釋度
measurand-serving-temperature = 出杯溫度
measurand-ice-left = 剩餘冰量
measurand-minutes-to-drinkable = 降至適飲溫度的分鐘數
measurand-energy = 熱量
measurand-fat = 脂肪
measurand-saturates = 飽和脂肪
measurand-carbohydrate = 碳水化合物
measurand-polyols = 糖醇
measurand-fibre = 膳食纖維
measurand-protein = 蛋白質
measurand-salt = 鹽
measurand-caffeine = 咖啡因
measurand-tea-solids = 茶固形物
measurand-acid = 酸
measurand-cost = 成本
measurand-fill = 裝杯量
measurand-tea-strength = 茶味濃度
measurand-creaminess = 乳脂感
measurand-acidity = 酸味
measurand-body = 厚實感
measurand-dry-matter = 乾物質
measurand-sugar = 糖
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = 店內單位/100 ml
