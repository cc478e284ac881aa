# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = céréales contenant du gluten
allergen-crustaceans = crustacés
allergen-eggs = œufs
allergen-fish = poissons
allergen-peanuts = arachides
allergen-soybeans = soja
allergen-milk = lait
allergen-nuts = fruits à coque
allergen-celery = céleri
allergen-mustard = moutarde
allergen-sesame = sésame
allergen-sulphites = sulfites
allergen-lupin = lupin
allergen-molluscs = mollusques
# Items of the lists of Taiwan and Korea that are not among them, from memory.
allergen-buckwheat = sarrasin
allergen-wheat = blé
allergen-mango = mangue
allergen-peach = pêche
allergen-tomato = tomate
allergen-coconut = noix de coco
allergen-walnuts = noix
allergen-pine-nuts = pignons de pin
allergen-mackerel = maquereau
allergen-crab = crabe
allergen-shrimp = crevettes
allergen-squid = calmar
allergen-shellfish = coquillages (huîtres, ormeaux, moules)
allergen-pork = porc
allergen-chicken = poulet
allergen-beef = bœuf
# Whose list of allergens it is.
allergen-list-european-union = Union européenne
allergen-list-taiwan = Taïwan
allergen-list-china = Chine
allergen-list-hong-kong = Hong Kong
allergen-list-south-korea = Corée du Sud
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = contient : { $allergens }
allergens-may-contain = peut contenir : { $allergens }
allergens-not-stated = non indiqué pour { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $allergens } : non indiqué pour { $ingredients }
allergens-none = aucun emballage ne mentionne d’allergène
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = contient en plus : { $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] d’après les ingrédients, sans { $allergens }
   *[some] d’après les emballages qui indiquent les allergènes, sans { $allergens }
}
allergens-may-be-added = peut contenir : { $allergens }
allergens-may-be-gone = plus aucun emballage avec « peut contenir : { $allergens } »
allergens-no-longer-stated = allergènes non indiqués pour { $ingredients } : lire l’étiquette
# Claims of a drink, by what its ingredients state.
vegan-yes = végan, d’après les ingrédients
vegan-no = non végan
vegan-not-known = végan : inconnu, car un ingrédient ne l’indique pas ou son indication est contredite
verdict-yes = oui
verdict-no = non
verdict-not-known = inconnu
