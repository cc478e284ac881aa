# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = cereals containing gluten
allergen-crustaceans = crustaceans
allergen-eggs = eggs
allergen-fish = fish
allergen-peanuts = peanuts
allergen-soybeans = soybeans
allergen-milk = milk
allergen-nuts = nuts
allergen-celery = celery
allergen-mustard = mustard
allergen-sesame = sesame
allergen-sulphites = sulphites
allergen-lupin = lupin
allergen-molluscs = molluscs
# Items of the lists of Taiwan and Korea that are not among them.
allergen-buckwheat = buckwheat
allergen-wheat = wheat
allergen-mango = mango
allergen-peach = peach
allergen-tomato = tomato
allergen-coconut = coconut
allergen-walnuts = walnuts
allergen-pine-nuts = pine nuts
allergen-mackerel = mackerel
allergen-crab = crab
allergen-shrimp = shrimp
allergen-squid = squid
allergen-shellfish = shellfish (oyster, abalone, mussel)
allergen-pork = pork
allergen-chicken = chicken
allergen-beef = beef
# Whose list of allergens it is.
allergen-list-european-union = European Union
allergen-list-taiwan = Taiwan
allergen-list-china = China
allergen-list-hong-kong = Hong Kong
allergen-list-south-korea = South Korea
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = contains { $allergens }
allergens-may-contain = may contain { $allergens }
allergens-not-stated = not stated for { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $allergens } not stated for { $ingredients }
allergens-none = no pack names an allergen
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = also contains { $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] no { $allergens } by ingredients
   *[some] no { $allergens } by the packs that state allergens
}
allergens-may-be-added = may contain { $allergens }
allergens-may-be-gone = no longer any pack with “may contain { $allergens }”
allergens-no-longer-stated = allergens not stated for { $ingredients }: read the label
# Claims of a drink, by what its ingredients state.
vegan-yes = vegan by ingredients
vegan-no = not vegan
vegan-not-known = vegan: not known, because an ingredient does not state it or is contradicted
verdict-yes = yes
verdict-no = no
verdict-not-known = not known
