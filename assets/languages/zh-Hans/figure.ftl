# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = 未选择杯子，或室温不低于适饮温度
no-figure-warmer-only = 加冰的饮品放置时只会变暖
no-figure-cup = 未选择杯子
no-figure-price = 未标示杯子、封盖或吸管的价格
no-figure-only-water = 只有水、茶和冰
no-figure-empty = 杯中没有任何东西

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = 各种糖的克数乘以此温度下的相对甜度（蔗糖 = 1），以每 100 ml 混合后的饮品计。
formula-serving-temperature = 所有原料、冰、杯子和雪克杯的热量达到平衡时的温度。
formula-minutes-to-drinkable = 根据杯子的装杯量，经杯壁和蒸发散失的热，取自该杯的读数或已发表的杯子数据。
formula-volume = 水和溶解固形物在 { $celsius } 的体积，包含已融化的冰。
formula-fill = 饮品、小料、泡沫和冰，相对于杯子装满至杯口的容量。
formula-dilution = 混合后的饮品中，其他所有原料每 1 克所对应的水、融冰和茶的克数。
formula-brix = 混合后饮品的可溶性固形物，以质量百分比表示。
formula-energy = 碳水化合物、蛋白质、脂肪、膳食纤维和酸，乘以欧盟第 (EU) 1169/2011 号条例附件 XIV 的系数。
formula-cost = 各项原料的克数乘以其包装价格（含损耗），加上杯子、封盖和配套耗材。
formula-free-sugars = 各项原料的糖中计为游离糖的部分：添加的糖，或来自蜂蜜、糖浆和果汁的糖。
formula-total-sugar = 各项原料的克数乘以其含糖量，再加总。
formula-sum = 各项原料的克数乘以其数值，再加总。

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients }（{ $evidence }）

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = 能量
nutrition-fat = 脂肪
nutrition-saturates = 其中饱和脂肪
nutrition-carbohydrate = 碳水化合物
nutrition-sugars = 其中糖
nutrition-polyols = 其中糖醇
nutrition-fibre = 膳食纤维
nutrition-protein = 蛋白质
nutrition-salt = 盐

# Where the noticeable step of an axis is from.
step-source-sweetness = 韦伯分数 0.09（可乐中的蔗糖，J. Sensory Studies 2023，doi 10.1111/joss.12803）至 0.17（Schutz & Pilgrim 1957，数值凭记忆）；取 0.10；下限为假设值
step-source-acidity = 柠檬酸的韦伯分数 0.22（Schutz & Pilgrim 1957，数值凭记忆）；下限为假设值
step-source-creaminess = 乳制乳化液奶油感的韦伯分数 0.20（Zahn, Hoppert, Ullrich & Rohm 2013，Foods 2:521）；下限为假设值
step-source-body = 浓稠度的韦伯分数 0.26（Camacho, Dop, de Graaf & Stieger 2015，J. Food Sci.，doi 10.1111/1750-3841.12922），原为黏度，套用于固形物；下限为假设值
step-source-tea-strength = 假设为 0.20；比咖啡因苦味的韦伯分数 0.30 更细（Schutz & Pilgrim 1957，数值凭记忆）；下限为假设值
step-source-flavour = 假设值：饮品风味尚无已发表的数据
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = 假设为 { $step }：尚无已发表的数据；{ $apart } 可分辨（Engelen et al. 2002，Eur. J. Oral Sci. 110:412）
step-source-volume = 假设为 5%：尚无已发表的数据；下限为假设值

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = 重量
measurand-volume = 体积
measurand-total-sugar = 总糖
measurand-free-sugars = 游离糖
measurand-sucrose = 蔗糖
measurand-glucose = 葡萄糖
measurand-fructose = 果糖
measurand-lactose = 乳糖
measurand-maltose = 麦芽糖
measurand-other-sugars = 其他糖
measurand-sweetness = 甜味强度
measurand-soluble-solids = 可溶性固形物
measurand-density = 密度
measurand-dilution = 稀释度
measurand-serving-temperature = 出杯温度
measurand-ice-left = 剩余冰量
measurand-minutes-to-drinkable = 降至适饮温度的分钟数
measurand-energy = 能量
measurand-fat = 脂肪
measurand-saturates = 饱和脂肪
measurand-carbohydrate = 碳水化合物
measurand-polyols = 糖醇
measurand-fibre = 膳食纤维
measurand-protein = 蛋白质
measurand-salt = 盐
measurand-caffeine = 咖啡因
measurand-tea-solids = 茶固形物
measurand-acid = 酸
measurand-cost = 成本
measurand-fill = 装杯量
measurand-tea-strength = 茶味浓度
measurand-creaminess = 奶油感
measurand-acidity = 酸味
measurand-body = 厚实感
measurand-dry-matter = 干物质
measurand-sugar = 糖
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = 店内单位/100 ml
