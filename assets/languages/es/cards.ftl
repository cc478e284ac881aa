# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = ficha de barra
card-kind-training = hoja de formación
card-kind-exercise = ejercicio de sustitución
card-kind-answers = soluciones del ejercicio
card-kind-menu = ingredientes y alérgenos de la carta
card-kind-figures = cifras de la carta
card-kind-ladder = escala de azúcar
card-kind-matrix = niveles, tamaños y hielo
card-kind-comparison = comparación de versiones
card-kind-batch = compra y tandas
card-kind-scores = hoja de respuestas de una cata a ciegas
card-kind-pouring = hoja de servicio de una cata a ciegas

## Why there is no card

card-no-recipe = no hay ninguna receta `{ $id }` en el libro
card-no-version = la receta «{ $recipe }» no tiene ninguna versión `{ $version }`
card-count-to-compare = { $count ->
    [one] una comparación admite de 2 a 4 versiones, no 1; elegir más
   *[other] una comparación admite de 2 a 4 versiones, no { $count }; ajustar la selección
}
card-nothing-to-make = no se ha pedido ninguna bebida; introducir un número de bebidas de 1 a { $most }
card-no-exercise = no es posible ningún ejercicio con { $replace } y { $with }: el primero no está en la bebida o ningún cambio de cantidades iguala el sabor. Probar antes en «Sustitución»
card-empty-menu = la carta está vacía: ninguna receta tiene vaso o todas están retiradas
card-nothing-approved = nada de la carta está aprobado: apruebe las bebidas que sirve o pida la tarjeta con las bebidas sin aprobar
card-menu-too-long = { $drinks ->
    [one] hay 1 bebida en la carta y en una ficha caben { $most }; retirar lo que no se sirve o hacer una ficha por bebida
   *[other] hay { $drinks } bebidas en la carta y en una ficha caben { $most }; retirar lo que no se sirve o hacer una ficha por bebida
}
card-count-to-taste = esta cata necesita { $wanted } bebidas, no { $count }: elija lo que se cata
card-count-of-tasters = indique un número de catadores de 1 a { $most }

pdf-font = no se puede incrustar una fuente que necesita «{ $text }»; quitar o cambiar la fuente y volver a exportar
pdf-writer = no se pudo escribir el PDF: { $reason }

## Figures

card-figure-not-known = se desconoce
card-figure-not-known-because = se desconoce ({ $reason })
card-figure-unstated = no se indica
# Why a figure is not known in full.
card-figure-not-stated = no se indica: { $names }
card-figure-at-least = al menos { $figure } ({ $reason })
card-figure-least = al menos { $figure }
weight-not-known = se desconoce el peso
amount-none = sin añadir
hours = { $hours } h

## Versions and approvals

version-original = receta original
revision-approved = { $version }: aprobada el { $day }
revision-approved-by = { $version }: aprobada el { $day } por { $person }
revision-changed = { $version }: modificada desde la aprobación del { $day }
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version }: en prueba, sin aprobar
    [retired] { $version }: retirada, sin aprobar
   *[draft] { $version }: borrador, sin aprobar
}
revision-marked-only = { $version }: marcada como aprobada, pero no consta ninguna aprobación
revision-taken-back = { $state ->
    [trial] { $version }: de nuevo en prueba; aprobada por última vez el { $day }
    [retired] { $version }: retirada; aprobada por última vez el { $day }
   *[draft] { $version }: de nuevo en borrador; aprobada por última vez el { $day }
}

## Steps

card-stage-mixed = Mezclar
card-stage-mixed-cup = Mezclar ({ $cup })
card-stage-mixed-shaker = Mezclar ({ $shaker }) y verter en el vaso
card-stage-mixed-strained = Mezclar ({ $shaker }) y colar en el vaso
card-stage-in-cup = En el vaso
card-stage-on-top = Por encima
card-stage-steeped = Infusionar y retirar
card-stage-steeped-for = Infusionar { $minutes } min y retirar
line-at-temperature = a { $temperature }
line-brings = aporta { $mass } de { $ingredient }

## Facts

fact-cup = vaso
cup-not-named = sin elegir
cup-open = { $cup }, sin tapar
cup-with-lid = { $cup }, con tapa
cup-sealed = { $cup }, sellado con film
fact-contains = contiene
fact-may-contain = puede contener
contains-none = ninguno de los catorce alérgenos, según los envases
contains-none-listed = ninguno de los alérgenos de las listas del local, según los envases
fact-allergens-not-stated = no indican alérgenos
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = todos los indican
allergen-not-stated = no se indica
fact-vegan = vegano, según los ingredientes

## Cautions and small print

card-cautions = Advertencias
# Before a caution: "Caution (heat)".
card-caution = Atención ({ $kind })
card-small-print = ± es una incertidumbre típica. Los alérgenos y las dietas se basan en los ingredientes, según lo indicado en sus envases; las cocteleras, los cacitos medidores y las batidoras de uso común pueden dejar trazas. Esta hoja es informativa y no acredita el cumplimiento de la normativa: aplicar la normativa local.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = La traducción de los alérgenos y las advertencias aún no está confirmada por el local: al lado figura el texto en inglés.
card-confirmed = Alérgenos y advertencias en español: traducción confirmada por { $person }, { $day }.
card-foot-in-full = Pie de página completo: { $foot }

## Columns of tables

column-all-batches = para todas las tandas
column-amount = cantidad
column-axis = atributo
column-batches = tandas
column-cost = coste
column-drink = bebida
column-drinks = n.º de bebidas
column-energy = valor energético
column-figure = dato
column-for = para
column-house-made = elaboración propia
column-ingredient = ingrediente
column-ingredients = ingredientes, en orden decreciente de peso
column-item = artículo
column-keeps = conservación
column-left-over = sobra
column-tea = té
column-brewed = por infusionar, con merma
column-leaf = hoja seca
column-water = agua
column-level = nivel de azúcar
column-measure = dosificador
column-margin = margen
column-menu-price = precio de carta
column-needed = necesario
column-noticeable = un escalón perceptible
column-nutrition = información nutricional
column-one-batch = una tanda, sin la merma
column-one-pack = un envase
column-one-use = una dosis
column-packs = envases
column-off-standard = distancia al estándar, escalones
column-part = componente
column-per-100-ml = por 100 ml, sin toppings
column-per-drink = por bebida
column-pieces = unidades
column-state = estado
column-sugar = azúcares
column-supplier = proveedor
column-sweetness = dulzor
column-this-drink = esta bebida
column-total-sugar = azúcares totales
column-weight = peso
column-with = ingrediente

## Training sheet

training-how = Elaboración
training-target = Objetivo
training-lines = Lo que aporta cada ingrediente
training-taste = Sabor
training-measures = Dosificadores
training-nutrition = Información nutricional
training-shown = Mostrado y preparado una vez
training-time-to-cool = tiempo hasta enfriarse a { $temperature }
training-already-below = ya está por debajo
training-already-below-tasted = ya está por debajo; se cató a { $temperature } al aprobarla
training-name = nombre
training-shown-by = mostrado por
training-day = fecha
training-measured = temperatura de servicio medida, { $unit }
training-lines-caption = peso, azúcares y valor energético de cada ingrediente
training-taste-caption = la bebida en cada atributo del sabor
training-measures-caption = contenido de una dosis de cada dosificador
training-nutrition-caption = información nutricional de la bebida
measure-stated = según indicación: { $amount }
measure-not-weighed = sin pesar

## Menu

menu-title = Ingredientes y alérgenos
menu-subtitle = toda la carta
menu-subtitle-approved = las bebidas aprobadas
menu-with-unapproved = con bebidas sin aprobar
menu-left-out = No están en esta hoja porque no están aprobadas tal como son: { $drinks }.
menu-marks = «contiene» y «puede contener»: indicado en el envase de un ingrediente. «no se indica»: al menos un envase no indica sus alérgenos. «{ $sign }»: todos los envases indican sus alérgenos y ninguno menciona este.
menu-lists = Listas de alérgenos: { $lists }
figures-title = Cifras de la carta
figures-caption = coste, precio, azúcar, energía y alérgenos de cada bebida
figures-at-most = como máximo { $figure }
figures-no-standard = sin estándar
figures-some-silent = algunos envases no lo indican
figures-none-named = ninguno mencionado
figures-marks = Coste: con vaso y tapa, sin impuesto sobre las ventas. Margen: precio de carta menos impuesto y coste; «como máximo» cuando falta un precio o el impuesto. Azúcar y energía: de toda la bebida. La última columna es la diferencia total con el estándar aprobado, en escalones perceptibles.
menu-ingredients = Ingredientes
menu-allergens-caption = alérgenos de todas las bebidas
menu-ingredients-caption = ingredientes de todas las bebidas

## Shopping and batches

batch-title = Compra y tandas
batch-for = { $count ->
    [one] para 1 bebida
   *[other] para { $count } bebidas
}
batch-drinks = Bebidas
batch-make = Preparar con antelación
batch-brew = Infusionar
batch-tap = Del grifo y de la máquina de hielo
batch-buy = Comprar
batch-serve = Vasos y complementos
batch-note = Las cantidades son las que requieren las recetas más la merma, sin reserva. Los envases y las tandas se redondean al alza.
batch-parts-caption = ingredientes de todas las tandas juntas
batch-drinks-caption = bebidas que preparar
batch-make-caption = elaboraciones propias que preparar con antelación
batch-brew-caption = té que infusionar, en hoja y agua
batch-tap-caption = agua y hielo que no se compran en envases
batch-buy-caption = artículos que comprar
batch-serve-caption = vasos y sus complementos
batch-total = total
batch-cost-of-all = total con té, agua y hielo
batch-brew-note = La hoja y el agua son las de una infusión caliente de 5 minutos que da al té su intensidad; en frío o con más tiempo cambian.
price-not-stated = no se indica el precio
serve-lid = tapa para { $cup }
serve-film = film para { $cup }
serve-straw = pajita
serve-wide-straw = pajita ancha
serve-sleeve = funda para vaso

## Exercise on a swap

exercise-subtitle = { $version }, ejercicio
exercise-task = { $replace } se sustituye por { $with }. Después de cada paso, ¿cómo es la bebida respecto a la referencia? Marcar una casilla en cada fila.
exercise-same = «Igual» significa como máximo un escalón perceptible de diferencia con la referencia.
exercise-answers-subtitle = { $version }, soluciones para quien imparte la formación
exercise-answer = solución
exercise-standard = la referencia
exercise-plain-swap = sustitución a medidas iguales
exercise-less = menos
exercise-the-same = igual
exercise-more = más
exercise-crosses-caption = cambio previsto en cada atributo del sabor
exercise-answers-caption = diferencia con la referencia después de cada paso, en escalones perceptibles

## Cata a ciegas

blind-scores-title = Cata a ciegas
blind-pouring-title = Cata a ciegas: hoja de servicio
blind-subtitle = { $design ->
    [triangle] prueba triangular, n.º { $seed }
    [duo-trio] prueba dúo-trío, n.º { $seed }
    [pair] comparación por pares, n.º { $seed }
   *[ranking] ordenación de tres vasos, n.º { $seed }
}
blind-how = Probar los vasos de izquierda a derecha. Enjuagarse con agua entre uno y otro. No hablar hasta que todos hayan terminado. En caso de duda, elegir de todos modos.
blind-taster = Catador { $number }
blind-task = { $design ->
    [triangle] Dos de estos vasos son iguales y uno es diferente. Marcar el diferente.
   *[duo-trio] Probar primero R. Uno de los otros vasos es igual que R. Marcar ese vaso.
}
blind-task-more = { $design ->
    [pair] Marcar el vaso que corresponde: { $more }.
   *[ranking] Ordenar los vasos: 1 es el que destaca ({ $more }), después 2, después 3. Marcar un vaso en cada fila.
}
blind-task-liking = { $design ->
    [pair] Marcar el vaso que más gusta.
   *[ranking] Ordenar los vasos: 1 es el que más gusta, después 2, después 3. Marcar un vaso en cada fila.
}
blind-my-answer = mi respuesta
blind-rank = { $rank ->
    [first] 1, el que más
    [second] 2
   *[third] 3, el que menos
}
blind-cup = { $number ->
    [first] primer vaso
    [second] segundo vaso
   *[third] tercer vaso
}
blind-boxes-caption = los vasos del catador { $number }, en el orden de cata
blind-pour-secret = Mantener esta hoja fuera de la vista de los catadores. Quien prepara los vasos no cata ni sirve.
blind-pour-alike = Escribir primero los códigos en los vasos. Mismo tipo de vaso, misma cantidad, misma temperatura, todo en pocos minutos. Dejar enfriar las bebidas calientes hasta que nadie pueda quemarse la boca.
blind-pour-hide = Si las bebidas se ven diferentes, ocultarlo: vasos oscuros, tapas con agujero o luz tenue.
blind-pour-allergies = Antes de que nadie pruebe, preguntar a todos por sus alergias y hacer leer la parte superior de la hoja de respuestas. Los alérgenos de cada bebida figuran abajo.
blind-pour-cut = Cortar la hoja de respuestas entre los catadores, para que nadie vea las respuestas de otros.
blind-sample = { $letter }: { $drink }
blind-cups = vasos
blind-codes = códigos en ellos
blind-references = otros vasos marcados con R
blind-orders = Ante cada catador
blind-orders-caption = código y bebida de cada vaso, por catador, en el orden de cata
blind-taster-column = catador
blind-reference = R
blind-right = respuesta correcta
blind-seed = El número { $seed } vuelve a dar los mismos códigos y órdenes.
blind-unbalanced = Cada orden se sirve el mismo número de veces solo con { $multiple } catadores o un múltiplo.

## Sugar ladder

ladder-subtitle = { $version }, escala de azúcar
ladder-floor = Sin endulzar, la bebida aún contiene los azúcares de sus otros ingredientes: { $sugar }.
ladder-not-possible = { $level }: { $reason }
ladder-see-below = no es posible, véase abajo
ladder-caption = cantidades en cada nivel de azúcar

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, niveles, tamaños y hielo
# A size with an amount of ice.
matrix-iced = { $cup }, con hielo
matrix-ice = { $cup }, { $level }
matrix-not-possible = No es posible: { $reason }

## Comparison

comparison-title = Comparación
comparison-lines = Ingredientes y cantidades
comparison-figures = Datos
comparison-taste = Sabor en comparación con { $first }
comparison-line = { $amount } de { $ingredient } ({ $grams })
comparison-level = a la par
comparison-lines-caption = ingredientes y cantidades de cada versión
comparison-drinks-caption = ingredientes y cantidades de cada bebida
comparison-figures-caption = datos de cada versión
comparison-taste-caption = sabor de cada versión en comparación con la primera, en escalones perceptibles

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = bebida
serving = 1 bebida
serving-of = 1 bebida, { $volume }
step-add = Añadir { $amount } de { $ingredient }.
left-state = el estado ({ $revision })
left-cautions = { $count ->
    [one] 1 advertencia, que debe transmitirse con la bebida por otro medio
   *[other] { $count } advertencias, que deben transmitirse con la bebida por otro medio
}
left-allergens = los alérgenos
left-uncertainty = la temperatura de servicio y todas las incertidumbres
left-measures = los dosificadores del local como tales: sus nombres figuran en el texto del ingrediente
left-roles = la función y la temperatura de las líneas, el vaso, la coctelera y el precio en carta
left-composition = la composición de los ingredientes y la procedencia de los datos
left-versions = las demás versiones y el historial de aprobaciones
left-caffeine = la cafeína y el valor energético en kJ
left-figure = { $figure }, que no se conoce por completo: { $known }

## What an ingredient is for in a drink

role-base = base
role-flavour = sabor
role-creamer = cremador
role-sweetener = endulzante
role-tea = té
role-water = agua
role-ice = hielo
role-topping = topping
role-garnish = decoración
