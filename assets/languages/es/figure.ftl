# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = no se ha elegido vaso, o la sala no está más fría que la temperatura de consumo
no-figure-warmer-only = una bebida con hielo solo se calienta mientras reposa
no-figure-cup = no se ha elegido vaso
no-figure-price = no se indica el precio del vaso, de su cierre o de su pajita
no-figure-only-water = solo contiene agua, té y hielo
no-figure-empty = no hay nada en el vaso

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = Los gramos de cada azúcar por su poder edulcorante relativo a esta temperatura (sacarosa = 1), por 100 ml de bebida mezclada.
formula-serving-temperature = La temperatura a la que se equilibra el calor de todas las líneas, el hielo, el vaso y la coctelera.
formula-minutes-to-drinkable = El calor perdido por la pared y por evaporación, según las mediciones del vaso o de vasos publicados, para el llenado que tiene.
formula-volume = Los volúmenes del agua y de los sólidos disueltos a { $celsius }, con el hielo que se ha fundido.
formula-fill = Bebida, toppings, espuma y hielo en comparación con lo que cabe en el vaso hasta el borde.
formula-dilution = Gramos de agua, hielo fundido y té por cada gramo de todo lo demás en la bebida mezclada.
formula-brix = Sólidos solubles de la bebida mezclada, en porcentaje de su masa.
formula-energy = Hidratos de carbono, proteínas, grasas, fibra alimentaria y ácido por los factores del Reglamento (UE) n.º 1169/2011, anexo XIV.
formula-cost = Los gramos de cada línea por el precio de su envase, con la merma, más el vaso, su cierre y los complementos.
formula-free-sugars = La parte de los azúcares de cada línea que cuenta como libre: añadidos, o procedentes de miel, sirope y zumo.
formula-total-sugar = Los gramos de cada línea por los azúcares de su ingrediente, sumados.
formula-sum = Los gramos de cada línea por el dato de su ingrediente, sumados.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients } ({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = valor energético
nutrition-fat = grasas
nutrition-saturates = de las cuales saturadas
nutrition-carbohydrate = hidratos de carbono
nutrition-sugars = de los cuales azúcares
nutrition-polyols = de los cuales polialcoholes
nutrition-fibre = fibra alimentaria
nutrition-protein = proteínas
nutrition-salt = sal

# Where the noticeable step of an axis is from.
step-source-sweetness = fracción de Weber de 0,09 (sacarosa en cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) a 0,17 (Schutz & Pilgrim 1957, valor citado de memoria); se elige 0,10; mínimo supuesto
step-source-acidity = fracción de Weber del ácido cítrico: 0,22 (Schutz & Pilgrim 1957, valor citado de memoria); mínimo supuesto
step-source-creaminess = fracción de Weber de la cremosidad en emulsiones lácteas: 0,20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521); mínimo supuesto
step-source-body = fracción de Weber del espesor: 0,26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), de la viscosidad, aplicada a los sólidos; mínimo supuesto
step-source-tea-strength = 0,20 supuesto; más fino que la fracción de Weber del amargor de la cafeína, 0,30 (Schutz & Pilgrim 1957, valor citado de memoria); mínimo supuesto
step-source-flavour = supuesto: no hay ningún dato publicado para los sabores de bebidas
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = { $step } supuesto: no hay ningún dato publicado; se distinguen { $apart } (Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = 5 % supuesto: no hay ningún dato publicado; mínimo supuesto

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = masa
measurand-volume = volumen
measurand-total-sugar = azúcares totales
measurand-free-sugars = azúcares libres
measurand-sucrose = sacarosa
measurand-glucose = glucosa
measurand-fructose = fructosa
measurand-lactose = lactosa
measurand-maltose = maltosa
measurand-other-sugars = otros azúcares
measurand-sweetness = dulzor
measurand-soluble-solids = sólidos solubles
measurand-density = densidad
measurand-dilution = dilución
measurand-serving-temperature = temperatura de servicio
measurand-ice-left = hielo restante
measurand-minutes-to-drinkable = minutos hasta la temperatura de consumo
measurand-energy = valor energético
measurand-fat = grasas
measurand-saturates = ácidos grasos saturados
measurand-carbohydrate = hidratos de carbono
measurand-polyols = polialcoholes
measurand-fibre = fibra alimentaria
measurand-protein = proteínas
measurand-salt = sal
measurand-caffeine = cafeína
measurand-tea-solids = sólidos del té
measurand-acid = ácido
measurand-cost = coste
measurand-fill = llenado
measurand-tea-strength = intensidad del té
measurand-creaminess = cremosidad
measurand-acidity = acidez
measurand-body = cuerpo
measurand-dry-matter = materia seca
measurand-sugar = azúcares
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = unidades de la casa/100 ml
