# Everything that is printed on cards and sheets.

## What kinds of cards there are

card-kind-counter = fiche de comptoir
card-kind-training = fiche de formation
card-kind-exercise = exercice de remplacement
card-kind-answers = réponses de l’exercice
card-kind-menu = ingrédients et allergènes de la carte
card-kind-figures = chiffres de la carte
card-kind-ladder = échelle de sucre
card-kind-matrix = niveaux, tailles et glace
card-kind-comparison = comparaison de versions
card-kind-batch = achats et préparations
card-kind-scores = feuille de réponses d’une dégustation à l’aveugle
card-kind-pouring = feuille de service d’une dégustation à l’aveugle

## Why there is no card

card-no-recipe = le livre ne contient pas de recette `{ $id }`
card-no-version = la recette « { $recipe } » n’a pas de version `{ $version }`
card-count-to-compare = { $count ->
    [one] une comparaison porte sur 2 à 4 versions, et non { $count } ; en choisir davantage
   *[other] une comparaison porte sur 2 à 4 versions, et non { $count } ; n’en choisir qu’une partie
}
card-nothing-to-make = aucune boisson n’est demandée ; saisir un nombre de boissons de 1 à { $most }
card-no-exercise = aucun exercice n’est possible avec { $replace } et { $with } : le premier ingrédient n’est pas dans la boisson, ou aucun changement de quantité ne retrouve le goût. Essayer d’abord dans « Remplacement »
card-empty-menu = la carte est vide : aucune recette n’a de gobelet, ou toutes sont retirées
card-nothing-approved = rien de la carte n’est validé : validez les boissons que vous servez, ou demandez la fiche avec les boissons non validées
card-menu-too-long = { $drinks ->
    [one] la carte compte { $drinks } boisson, et une fiche en contient au plus { $most } ; retirer celles qui ne sont pas servies ou créer une fiche par boisson
   *[other] la carte compte { $drinks } boissons, et une fiche en contient au plus { $most } ; retirer celles qui ne sont pas servies ou créer une fiche par boisson
}
card-count-to-taste = cette dégustation demande { $wanted } boissons et non { $count } : choisissez ce qui est dégusté
card-count-of-tasters = indiquez un nombre de dégustateurs de 1 à { $most }

pdf-font = une police nécessaire à « { $text } » ne peut pas être incorporée ; supprimer ou remplacer la police, puis exporter de nouveau
pdf-writer = le fichier PDF n’a pas pu être écrit : { $reason }

## Figures

card-figure-not-known = inconnu
card-figure-not-known-because = inconnu ({ $reason })
card-figure-unstated = non indiqué
# Why a figure is not known in full.
card-figure-not-stated = non indiqué : { $names }
card-figure-at-least = au moins { $figure } ({ $reason })
card-figure-least = au moins { $figure }
weight-not-known = poids inconnu
amount-none = aucun ajout
hours = { $hours } h

## Versions and approvals

version-original = recette d’origine
revision-approved = { $version } : validée le { $day }
revision-approved-by = { $version } : validée le { $day } par { $person }
revision-changed = { $version } : modifiée depuis la validation du { $day }
# The word of the state is chosen by its key.
revision-never-approved = { $state ->
    [trial] { $version } : à l’essai, non validée
    [retired] { $version } : retirée, non validée
   *[draft] { $version } : brouillon, non validée
}
revision-marked-only = { $version } : marquée comme validée, mais aucune validation n’est conservée
revision-taken-back = { $state ->
    [trial] { $version } : de nouveau à l’essai ; validée en dernier le { $day }
    [retired] { $version } : retirée ; validée en dernier le { $day }
   *[draft] { $version } : de nouveau brouillon ; validée en dernier le { $day }
}

## Steps

card-stage-mixed = Mélanger
card-stage-mixed-cup = Mélanger ({ $cup })
card-stage-mixed-shaker = Mélanger ({ $shaker }), verser dans le gobelet
card-stage-mixed-strained = Mélanger ({ $shaker }), filtrer dans le gobelet
card-stage-in-cup = Dans le gobelet
card-stage-on-top = Sur le dessus
card-stage-steeped = Infuser, puis retirer
card-stage-steeped-for = Infuser { $minutes } min, puis retirer
line-at-temperature = à { $temperature }
line-brings = apporte aussi { $ingredient } : { $mass }

## Facts

fact-cup = gobelet
cup-not-named = non choisi
cup-open = { $cup }, non couvert
cup-with-lid = { $cup }, avec couvercle
cup-sealed = { $cup }, scellé par un film
fact-contains = contient
fact-may-contain = peut contenir
contains-none = aucun des quatorze allergènes, d’après les emballages
contains-none-listed = aucun des allergènes des listes de l’établissement, d’après les emballages
fact-allergens-not-stated = allergènes non indiqués pour
# Of some allergens only.
allergens-not-stated-some = { $ingredients } ({ $allergens })
allergens-all-stated = indiqués pour tous
allergen-not-stated = non indiqué
fact-vegan = végan, d’après les ingrédients

## Cautions and small print

card-cautions = Mises en garde
# Before a caution: "Caution (heat)".
card-caution = Attention ({ $kind })
card-small-print = ± correspond à une incertitude-type. Les allergènes et les régimes alimentaires sont établis d’après les ingrédients, selon les mentions des emballages ; les shakers, cuillères doseuses et mixeurs partagés peuvent laisser des traces. Cette fiche est informative et ne constitue pas une preuve de conformité : respecter la réglementation locale.
# Allergens and cautions in a language that nobody of the shop has confirmed.
card-beside-english = { $text } ({ $english })
card-not-confirmed = La traduction des allergènes et des mises en garde n’a pas encore été confirmée par l’établissement : le texte anglais figure à côté.
card-confirmed = Allergènes et mises en garde en français : traduction confirmée par { $person }, { $day }.
card-foot-in-full = Pied de page complet : { $foot }

## Columns of tables

column-all-batches = pour toutes les préparations
column-amount = quantité
column-axis = critère
column-batches = préparations
column-cost = coût
column-drink = boisson
column-drinks = nombre
column-energy = énergie
column-figure = valeur
column-for = pour
column-house-made = préparation maison
column-ingredient = ingrédient
column-ingredients = ingrédients, par ordre de poids décroissant
column-item = article
column-keeps = conservation
column-left-over = reste
column-tea = thé
column-brewed = à infuser, pertes comprises
column-leaf = feuilles sèches
column-water = eau
column-level = niveau de sucre
column-measure = doseur
column-margin = marge
column-menu-price = prix à la carte
column-needed = besoin
column-noticeable = un cran perceptible
column-nutrition = valeurs nutritionnelles
column-one-batch = une préparation, pertes déduites
column-one-pack = un emballage
column-one-use = une dose
column-packs = emballages
column-off-standard = écart au standard, crans
column-part = composant
column-per-100-ml = pour 100 ml, sans garnitures
column-per-drink = par boisson
column-pieces = unités
column-state = état
column-sugar = sucres
column-supplier = fournisseur
column-sweetness = goût sucré
column-this-drink = cette boisson
column-total-sugar = sucres totaux
column-weight = poids
column-with = ingrédient

## Training sheet

training-how = Préparation
training-target = Objectif
training-lines = Apport de chaque ingrédient
training-taste = Goût
training-measures = Doseurs
training-nutrition = Valeurs nutritionnelles
training-shown = Démonstration suivie d’une réalisation
training-time-to-cool = temps de refroidissement jusqu’à { $temperature }
training-already-below = déjà en dessous
training-already-below-tasted = déjà en dessous ; dégustée à { $temperature } lors de l’approbation
training-name = nom
training-shown-by = démonstration par
training-day = date
training-measured = température de service mesurée, { $unit }
training-lines-caption = poids, sucres et énergie de chaque ingrédient
training-taste-caption = la boisson selon chaque critère de goût
training-measures-caption = contenu d’une dose de chaque doseur
training-nutrition-caption = valeurs nutritionnelles de la boisson
measure-stated = indiqué : { $amount }
measure-not-weighed = non pesé

## Menu

menu-title = Ingrédients et allergènes
menu-subtitle = toute la carte
menu-subtitle-approved = les boissons validées
menu-with-unapproved = avec des boissons non validées
menu-left-out = Ne figurent pas sur cette fiche, car elles ne sont pas validées telles quelles : { $drinks }.
menu-marks = « contient » et « peut contenir » : indiqué sur l’emballage d’un ingrédient. « non indiqué » : au moins un emballage n’indique pas ses allergènes. « { $sign } » : chaque emballage indique ses allergènes, et aucun ne mentionne celui-ci.
menu-lists = Listes d’allergènes : { $lists }
figures-title = Chiffres de la carte
figures-caption = coût, prix, sucre, énergie et allergènes de chaque boisson
figures-at-most = au plus { $figure }
figures-no-standard = pas de standard
figures-some-silent = non indiqué par certains emballages
figures-none-named = aucun mentionné
figures-marks = Coût : avec gobelet et fermeture, hors taxe. Marge : prix à la carte moins taxe et coût ; « au plus » quand un prix ou la taxe n’est pas indiqué. Sucre et énergie : de toute la boisson. La dernière colonne est l’écart global au standard approuvé, en crans perceptibles.
menu-ingredients = Ingrédients
menu-allergens-caption = allergènes de toutes les boissons
menu-ingredients-caption = ingrédients de toutes les boissons

## Shopping and batches

batch-title = Achats et préparations
batch-for = { $count ->
    [one] pour { $count } boisson
   *[other] pour { $count } boissons
}
batch-drinks = Boissons
batch-make = À préparer à l’avance
batch-brew = À infuser
batch-tap = Du robinet et de la machine à glaçons
batch-buy = À acheter
batch-serve = Gobelets et accessoires
batch-note = Les quantités correspondent aux besoins des recettes, pertes comprises, sans réserve. Les nombres d’emballages et de préparations sont arrondis à l’unité supérieure.
batch-parts-caption = ingrédients de toutes les préparations réunies
batch-drinks-caption = boissons à préparer
batch-make-caption = préparations maison à faire à l’avance
batch-brew-caption = thé à infuser, en feuilles et en eau
batch-tap-caption = eau et glaçons qui ne s’achètent pas en emballages
batch-buy-caption = articles à acheter
batch-serve-caption = gobelets et leurs accessoires
batch-total = total
batch-cost-of-all = total avec thé, eau et glaçons
batch-brew-note = Les feuilles et l’eau sont celles d’une infusion à chaud de 5 minutes qui donne au thé sa force ; elles diffèrent pour une infusion à froid ou plus longue.
price-not-stated = prix non indiqué
serve-lid = couvercle pour { $cup }
serve-film = film pour { $cup }
serve-straw = paille
serve-wide-straw = paille large
serve-sleeve = manchon de gobelet

## Exercise on a swap

exercise-subtitle = { $version }, exercice
exercise-task = { $replace } est remplacé par { $with }. Après chaque étape, comment la boisson se compare-t-elle à la référence ? Cocher une case par ligne.
exercise-same = « Identique » signifie au plus un cran perceptible d’écart avec la référence.
exercise-answers-subtitle = { $version }, réponses pour le formateur
exercise-answer = réponse
exercise-standard = la référence
exercise-plain-swap = remplacement à mesures égales
exercise-less = moins
exercise-the-same = identique
exercise-more = plus
exercise-crosses-caption = changement attendu pour chaque critère de goût
exercise-answers-caption = écart avec la référence après chaque étape, en crans perceptibles

## Dégustation à l’aveugle

blind-scores-title = Dégustation à l’aveugle
blind-pouring-title = Dégustation à l’aveugle : feuille de service
blind-subtitle = { $design ->
    [triangle] essai triangulaire, n° { $seed }
    [duo-trio] essai duo-trio, n° { $seed }
    [pair] comparaison par paires, n° { $seed }
   *[ranking] classement de trois gobelets, n° { $seed }
}
blind-how = Goûter les gobelets de gauche à droite. Se rincer la bouche à l’eau entre deux. Ne pas parler avant que tous aient terminé. En cas de doute, choisir quand même.
blind-taster = Dégustateur { $number }
blind-task = { $design ->
    [triangle] Deux de ces gobelets sont identiques et un est différent. Cocher celui qui est différent.
   *[duo-trio] Goûter d’abord R. Un des autres gobelets est identique à R. Cocher celui-là.
}
blind-task-more = { $design ->
    [pair] Cocher le gobelet qui correspond : { $more }.
   *[ranking] Classer les gobelets : 1 est celui qui se distingue ({ $more }), puis 2, puis 3. Cocher un gobelet par ligne.
}
blind-task-liking = { $design ->
    [pair] Cocher le gobelet préféré.
   *[ranking] Classer les gobelets : 1 est le préféré, puis 2, puis 3. Cocher un gobelet par ligne.
}
blind-my-answer = ma réponse
blind-rank = { $rank ->
    [first] 1, le plus
    [second] 2
   *[third] 3, le moins
}
blind-cup = { $number ->
    [first] premier gobelet
    [second] deuxième gobelet
   *[third] troisième gobelet
}
blind-boxes-caption = les gobelets du dégustateur { $number }, dans l’ordre de dégustation
blind-pour-secret = Garder cette feuille hors de la vue des dégustateurs. Qui remplit les gobelets ne goûte pas et ne sert pas.
blind-pour-alike = Écrire d’abord les codes sur les gobelets. Même gobelet, même quantité, même température, le tout en quelques minutes. Laisser refroidir les boissons chaudes jusqu’à ce que personne ne puisse se brûler la bouche.
blind-pour-hide = Si les boissons ont un aspect différent, le cacher : gobelets foncés, couvercles percés ou lumière tamisée.
blind-pour-allergies = Avant toute dégustation, demander à chacun ses allergies et faire lire le haut de la feuille de réponses. Les allergènes de chaque boisson figurent ci-dessous.
blind-pour-cut = Couper la feuille de réponses entre les dégustateurs, afin que personne ne voie les réponses des autres.
blind-sample = { $letter } : { $drink }
blind-cups = gobelets
blind-codes = codes inscrits
blind-references = autres gobelets marqués R
blind-orders = Devant chaque dégustateur
blind-orders-caption = code et boisson de chaque gobelet, par dégustateur, dans l’ordre de dégustation
blind-taster-column = dégustateur
blind-reference = R
blind-right = bonne réponse
blind-seed = Le numéro { $seed } redonne les mêmes codes et les mêmes ordres.
blind-unbalanced = Chaque ordre n’est servi aussi souvent que les autres qu’avec { $multiple } dégustateurs ou un multiple.

## Sugar ladder

ladder-subtitle = { $version }, échelle de sucre
ladder-floor = Sans ingrédient sucrant, la boisson contient encore les sucres de ses autres ingrédients : { $sugar }.
ladder-not-possible = { $level } : { $reason }
ladder-see-below = impossible, voir ci-dessous
ladder-caption = quantités à chaque niveau de sucre

## Levels of sugar, sizes and ice

matrix-subtitle = { $version }, niveaux, tailles et glace
# A size with an amount of ice.
matrix-iced = { $cup }, glacé
matrix-ice = { $cup }, { $level }
matrix-not-possible = Impossible : { $reason }

## Comparison

comparison-title = Comparaison
comparison-lines = Ingrédients et quantités
comparison-figures = Valeurs
comparison-taste = Goût par rapport à : { $first }
comparison-line = { $ingredient }, { $amount } ({ $grams })
comparison-level = à égalité
comparison-lines-caption = ingrédients et quantités de chaque version
comparison-drinks-caption = ingrédients et quantités de chaque boisson
comparison-figures-caption = valeurs de chaque version
comparison-taste-caption = goût de chaque version par rapport à la première, en crans perceptibles

## A recipe for other programs, and what it leaves out

# The kind of dish that the recipe is for, to other programs.
recipe-category = boisson
serving = 1 boisson
serving-of = 1 boisson, { $volume }
step-add = Ajouter { $ingredient } : { $amount }.
left-state = l’état ({ $revision })
left-cautions = { $count ->
    [one] { $count } mise en garde, à transmettre avec la boisson par un autre moyen
   *[other] { $count } mises en garde, à transmettre avec la boisson par un autre moyen
}
left-allergens = les allergènes
left-uncertainty = la température de service et toutes les incertitudes
left-measures = les doseurs de la boutique en tant que tels : leurs noms figurent dans le texte de l’ingrédient
left-roles = le rôle et la température des lignes, le gobelet, le shaker et le prix à la carte
left-composition = la composition des ingrédients et l’origine des données
left-versions = les autres versions et l’historique des validations
left-caffeine = la caféine et l’énergie en kJ
left-figure = { $figure }, valeur connue en partie seulement : { $known }

## What an ingredient is for in a drink

role-base = base
role-flavour = arôme
role-creamer = crème
role-sweetener = sucrant
role-tea = thé
role-water = eau
role-ice = glace
role-topping = garniture
role-garnish = décor
