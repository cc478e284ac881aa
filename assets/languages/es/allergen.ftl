# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = cereales que contengan gluten
allergen-crustaceans = crustáceos
allergen-eggs = huevos
allergen-fish = pescado
allergen-peanuts = cacahuetes
allergen-soybeans = soja
allergen-milk = leche
allergen-nuts = frutos de cáscara
allergen-celery = apio
allergen-mustard = mostaza
allergen-sesame = sésamo
allergen-sulphites = sulfitos
allergen-lupin = altramuces
allergen-molluscs = moluscos
# Items of the lists of Taiwan and Korea that are not among them, from memory.
allergen-buckwheat = trigo sarraceno
allergen-wheat = trigo
allergen-mango = mango
allergen-peach = melocotón
allergen-tomato = tomate
allergen-coconut = coco
allergen-walnuts = nueces
allergen-pine-nuts = piñones
allergen-mackerel = caballa
allergen-crab = cangrejo
allergen-shrimp = gambas
allergen-squid = calamar
allergen-shellfish = moluscos de concha (ostras, abulón, mejillones)
allergen-pork = cerdo
allergen-chicken = pollo
allergen-beef = carne de vacuno
# Whose list of allergens it is.
allergen-list-european-union = Unión Europea
allergen-list-taiwan = Taiwán
allergen-list-china = China
allergen-list-hong-kong = Hong Kong
allergen-list-south-korea = Corea del Sur
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = contiene { $allergens }
allergens-may-contain = puede contener { $allergens }
allergens-not-stated = no se indica para { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $allergens }: no se indica para { $ingredients }
allergens-none = ningún envase menciona alérgenos
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = contiene además { $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] sin { $allergens } según los ingredientes
   *[some] sin { $allergens } según los envases que indican alérgenos
}
allergens-may-be-added = puede contener { $allergens }
allergens-may-be-gone = ya no hay ningún envase con «puede contener { $allergens }»
allergens-no-longer-stated = no se indican los alérgenos de { $ingredients }: leer la etiqueta
# Claims of a drink, by what its ingredients state.
vegan-yes = vegano, según los ingredientes
vegan-no = no vegano
vegan-not-known = vegano: se desconoce, porque un ingrediente no lo indica o lo que indica se contradice
verdict-yes = sí
verdict-no = no
verdict-not-known = se desconoce
