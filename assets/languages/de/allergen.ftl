# The fourteen allergens of Regulation (EU) 1169/2011, Annex II, in a list or alone.
allergen-gluten = glutenhaltiges Getreide
allergen-crustaceans = Krebstiere
allergen-eggs = Eier
allergen-fish = Fische
allergen-peanuts = Erdnüsse
allergen-soybeans = Sojabohnen
allergen-milk = Milch
allergen-nuts = Schalenfrüchte
allergen-celery = Sellerie
allergen-mustard = Senf
allergen-sesame = Sesam
allergen-sulphites = Sulfite
allergen-lupin = Lupinen
allergen-molluscs = Weichtiere
# Items of the lists of Taiwan and Korea that are not among them, from memory.
allergen-buckwheat = Buchweizen
allergen-wheat = Weizen
allergen-mango = Mango
allergen-peach = Pfirsich
allergen-tomato = Tomate
allergen-coconut = Kokosnuss
allergen-walnuts = Walnüsse
allergen-pine-nuts = Pinienkerne
allergen-mackerel = Makrele
allergen-crab = Krabben
allergen-shrimp = Garnelen
allergen-squid = Tintenfisch
allergen-shellfish = Schaltiere (Austern, Abalone, Muscheln)
allergen-pork = Schweinefleisch
allergen-chicken = Hühnerfleisch
allergen-beef = Rindfleisch
# Whose list of allergens it is.
allergen-list-european-union = Europäische Union
allergen-list-taiwan = Taiwan
allergen-list-china = China
allergen-list-hong-kong = Hongkong
allergen-list-south-korea = Südkorea
# What the packs of a drink say, as clauses that stand beside each other. $allergens is a list, $ingredients a list of names.
allergens-contains = enthält { $allergens }
allergens-may-contain = kann { $allergens } enthalten
allergens-not-stated = nicht angegeben bei { $ingredients }
# Of allergens that are not among the fourteen.
allergens-silent-on = { $allergens } nicht angegeben bei { $ingredients }
allergens-none = keine Packung nennt ein Allergen
# How the allergens of a drink differ from those of the one that it is compared with, as clauses.
allergens-added = enthält zusätzlich { $allergens }
# $packs is "all" where every pack states its allergens.
allergens-gone = { $packs ->
    [all] nach Zutaten ohne { $allergens }
   *[some] ohne { $allergens } nach den Packungen, die Allergene angeben
}
allergens-may-be-added = kann { $allergens } enthalten
allergens-may-be-gone = keine Packung mehr mit „kann { $allergens } enthalten“
allergens-no-longer-stated = Allergene nicht angegeben bei { $ingredients }: Etikett lesen
# Claims of a drink, by what its ingredients state.
vegan-yes = vegan, nach Zutaten
vegan-no = nicht vegan
vegan-not-known = vegan: nicht bekannt, weil bei einer Zutat die Angabe fehlt oder ihr widersprochen wird
verdict-yes = ja
verdict-no = nein
verdict-not-known = nicht bekannt
