# Why a figure can't be given, or only a part of it, when no ingredient is to blame.
no-figure-cup-or-warm-room = aucun gobelet n’est choisi, ou la pièce n’est pas plus fraîche que la température de consommation
no-figure-warmer-only = une boisson glacée ne fait que se réchauffer
no-figure-cup = aucun gobelet n’est choisi
no-figure-price = le prix du gobelet, de sa fermeture ou de sa paille n’est pas indiqué
no-figure-only-water = il n’y a que de l’eau, du thé et de la glace
no-figure-empty = le gobelet est vide

# How figures are worked out, each a sentence or a noun with a full stop.
# $celsius is the temperature at which volumes are told.
formula-sweetness = Les grammes de chaque sucre multipliés par son pouvoir sucrant relatif à cette température (saccharose = 1), pour 100 ml de boisson mélangée.
formula-serving-temperature = La température à laquelle s’équilibre la chaleur de toutes les lignes, de la glace, du gobelet et du shaker.
formula-minutes-to-drinkable = La chaleur perdue par la paroi et par évaporation, d’après les relevés du gobelet ou des gobelets publiés, selon le remplissage.
formula-volume = Les volumes de l’eau et des matières dissoutes à { $celsius }, avec la glace fondue.
formula-fill = Boisson, garnitures, mousse et glace, comparées à ce que le gobelet contient à ras bord.
formula-dilution = Les grammes d’eau, de glace fondue et de thé pour chaque gramme de tout le reste dans la boisson mélangée.
formula-brix = Les matières solubles de la boisson mélangée, en pourcentage de sa masse.
formula-energy = Glucides, protéines, matières grasses, fibres et acides multipliés par les coefficients du règlement (UE) n° 1169/2011, annexe XIV.
formula-cost = Les grammes de chaque ligne multipliés par le prix de son emballage, pertes comprises, plus le gobelet, sa fermeture et les accessoires.
formula-free-sugars = La part des sucres de chaque ligne qui compte comme libre : ajoutés, ou issus de miel, de sirop et de jus.
formula-total-sugar = Les grammes de chaque ligne multipliés par la teneur en sucres de son ingrédient, additionnés.
formula-sum = Les grammes de chaque ligne multipliés par la valeur de son ingrédient, additionnés.

# Ingredients whose figures have the same evidence: "Velloom oat drink (label)".
evidence-of = { $ingredients } ({ $evidence })

# The rows of the nutrition declaration, in the words of Regulation (EU) 1169/2011, Annex XV.
nutrition-energy = énergie
nutrition-fat = matières grasses
nutrition-saturates = dont acides gras saturés
nutrition-carbohydrate = glucides
nutrition-sugars = dont sucres
nutrition-polyols = dont polyols
nutrition-fibre = fibres alimentaires
nutrition-protein = protéines
nutrition-salt = sel

# Where the noticeable step of an axis is from.
step-source-sweetness = fraction de Weber de 0,09 (saccharose dans du cola, J. Sensory Studies 2023, doi 10.1111/joss.12803) à 0,17 (Schutz & Pilgrim 1957, valeur citée de mémoire) ; 0,10 retenu ; plancher supposé
step-source-acidity = fraction de Weber de l’acide citrique : 0,22 (Schutz & Pilgrim 1957, valeur citée de mémoire) ; plancher supposé
step-source-creaminess = fraction de Weber de l’onctuosité dans des émulsions laitières : 0,20 (Zahn, Hoppert, Ullrich & Rohm 2013, Foods 2:521) ; plancher supposé
step-source-body = fraction de Weber de l’épaisseur : 0,26 (Camacho, Dop, de Graaf & Stieger 2015, J. Food Sci., doi 10.1111/1750-3841.12922), établie pour la viscosité, appliquée aux matières sèches ; plancher supposé
step-source-tea-strength = 0,20 supposé ; plus fin que la fraction de Weber de l’amertume de la caféine, 0,30 (Schutz & Pilgrim 1957, valeur citée de mémoire) ; plancher supposé
step-source-flavour = supposé : aucune valeur publiée pour les arômes de boissons
# $step is a difference of temperatures; $apart is a list of temperatures that people tell apart.
step-source-temperature = { $step } supposé : aucune valeur publiée ; { $apart } sont distingués (Engelen et al. 2002, Eur. J. Oral Sci. 110:412)
step-source-volume = 5 % supposé : aucune valeur publiée ; plancher supposé

# What a figure is of, by its key. A figure per 100 ml has the name of that of the whole drink.
measurand-mass = masse
measurand-volume = volume
measurand-total-sugar = sucres totaux
measurand-free-sugars = sucres libres
measurand-sucrose = saccharose
measurand-glucose = glucose
measurand-fructose = fructose
measurand-lactose = lactose
measurand-maltose = maltose
measurand-other-sugars = autres sucres
measurand-sweetness = goût sucré
measurand-soluble-solids = matières solubles
measurand-density = masse volumique
measurand-dilution = dilution
measurand-serving-temperature = température de service
measurand-ice-left = glace restante
measurand-minutes-to-drinkable = minutes jusqu’à la température de consommation
measurand-energy = énergie
measurand-fat = matières grasses
measurand-saturates = acides gras saturés
measurand-carbohydrate = glucides
measurand-polyols = polyols
measurand-fibre = fibres alimentaires
measurand-protein = protéines
measurand-salt = sel
measurand-caffeine = caféine
measurand-tea-solids = extrait sec de thé
measurand-acid = acides
measurand-cost = coût
measurand-fill = remplissage
measurand-tea-strength = intensité du thé
measurand-creaminess = onctuosité
measurand-acidity = acidité
measurand-body = corps
measurand-dry-matter = matière sèche
measurand-sugar = sucres
# The unit of a flavour, behind a figure: the shop sets what one is.
unit-house-units = unités maison/100 ml
