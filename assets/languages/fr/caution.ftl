# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = { $celsius } au service, au-dessus de { $limit } : trop chaud pour être bu aussitôt, et un renversement provoque des brûlures ; laisser refroidir ou ajouter de l’eau froide, et respecter la réglementation locale
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = { $celsius } au service, au-dessus de { $limit } : trop chaud pour être bu aussitôt, et un renversement provoque des brûlures (la peau d’un adulte est brûlée au deuxième degré ou plus profondément en { $adult }, celle d’un jeune enfant { $child ->
    [sooner] encore plus vite
   *[other] en { $child }
}) ; laisser refroidir ou ajouter de l’eau froide, et respecter la réglementation locale
caution-hot-through-wide-straw = { $celsius } à travers une paille large, au-dessus de { $limit } : la boisson arrive chaude dans la gorge ; supprimer la paille ou servir moins chaud, et respecter la réglementation locale
caution-scalds = { $celsius } au service : un renversement provoque des brûlures ; fermer le gobelet et respecter la réglementation locale
caution-scalds-burns = { $celsius } au service : un renversement provoque des brûlures (la peau d’un adulte est brûlée au deuxième degré ou plus profondément en { $adult }, celle d’un jeune enfant { $child ->
    [sooner] encore plus vite
   *[other] en { $child }
}) ; fermer le gobelet et respecter la réglementation locale
scald-time-at-most = au plus { $time }
scald-time-less-than = moins de { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. D’après les ingrédients seulement : les shakers, cuillères doseuses et mixeurs partagés peuvent laisser des traces ; respecter la réglementation locale
# $named are clauses of caution-named.
caution-statements-contradict = la liste des ingrédients contredit ce qui est saisi : { $named } ; lire l’emballage avant de renseigner un client
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient } : « { $words } »
caution-claims-contradicted = le livre se contredit : { $claims } ; lire les emballages avant de renseigner un client
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = pour { $ingredient }, le livre indique { $claim ->
    [vegan] « végan »
    [dairy-free] « sans produits laitiers »
   *[allergens] « allergènes complets »
}, mais les allergènes comprennent « { $allergen } »
claim-against-honey = pour { $ingredient }, le livre indique { $claim ->
    [vegan] « végan »
    [dairy-free] « sans produits laitiers »
   *[allergens] « allergènes complets »
}, mais les sucres sont ceux du miel
claim-against-milk-sugars = pour { $ingredient }, le livre indique { $claim ->
    [vegan] « végan »
    [dairy-free] « sans produits laitiers »
   *[allergens] « allergènes complets »
}, mais les sucres sont ceux du lait
claim-against-not-dairy-free = pour { $ingredient }, le livre indique à la fois { $claim ->
    [vegan] « végan »
    [dairy-free] « sans produits laitiers »
   *[allergens] « allergènes complets »
} et « avec produits laitiers »
claim-against-part = pour { $ingredient }, le livre indique { $claim ->
    [vegan] « végan »
    [dairy-free] « sans produits laitiers »
   *[allergens] « allergènes complets »
}, mais pas pour son composant { $part }
claim-against-every-part = { $claim ->
    [vegan] pour { $ingredient }, le livre indique « non végan », mais « végan » pour tous ses composants
    [dairy-free] pour { $ingredient }, le livre indique « avec produits laitiers », mais « sans produits laitiers » pour tous ses composants
   *[allergens] pour { $ingredient }, le livre indique « allergènes incomplets », mais « allergènes complets » pour tous ses composants
}
claim-against-allergen-of-part = les allergènes indiqués pour { $ingredient } omettent « { $allergen } », présent dans son composant { $part }

caution-choking = { $ingredients } : les jeunes enfants peuvent inhaler par une paille de petits morceaux élastiques à mâcher (BfR 2012, jusqu’à 4 ans) ; avertir les clients et respecter la réglementation locale

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept } ; respecter la réglementation locale
kept-warm = { $ingredient } à { $celsius } : en cas de conservation à cette température, le maintien au chaud exige au moins { $uk } (Royaume-Uni) ou { $us } (États-Unis)
kept-cold = { $ingredient } à { $celsius } : en cas de conservation à cette température, le maintien au froid exige au plus { $uk } (Royaume-Uni) ou { $us } (États-Unis)

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. Selon les règles de la boutique ; respecter la réglementation locale
# The shop has no rule for any of them.
caution-no-use-rules = { $rules } ; respecter la réglementation locale
use-within-of-brewing = { $ingredient } : à utiliser dans un délai de { $time } après l’infusion
use-long-after-brewing = { $ingredient } : à utiliser dans un délai de { $time } après l’infusion selon la règle de la boutique, plus longtemps que les { $limit } du Tea Council of the USA d’après la note des CDC de 1996
use-not-stated-after-brewing = { $ingredient } : la boutique n’indique aucune règle de conservation ; le Tea Council of the USA donne { $limit } au plus après l’infusion
use-within-of-making = { $ingredient } : à utiliser dans un délai de { $time } après la préparation
use-not-stated-after-making = { $ingredient } : fait maison, durée de conservation non indiquée
use-within-of-opening = { $ingredient } : à utiliser dans un délai de { $time } après l’ouverture
use-not-stated-after-opening = { $ingredient } : durée de conservation après ouverture non indiquée

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = { $acid } d’acide pour 100 ml peuvent faire cailler le lait ou le soja : ajouter le lait ou le soja froid et en dernier, et servir aussitôt
caution-may-curdle = le lait ou le soja peut cailler, car l’acidité n’est pas indiquée pour { $ingredients } : ajouter le lait ou le soja froid et en dernier, et servir aussitôt

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = { $caffeine } de caféine : { $lines }
caffeine-above-single-dose = au-dessus de la dose unique de { $limit } pour les adultes (EFSA 2015) ; moins pour les femmes enceintes et les enfants
caffeine-may-disturb-sleep = { $limit } peuvent perturber le sommeil (EFSA 2015)
caffeine-high-content = { $caffeine }, au-dessus de { $limit } : sauf si sa dénomination comporte « thé » ou « café », la boisson peut devoir porter la mention « Teneur élevée en caféine » (règlement (UE) n° 1169/2011, annexe III)
caution-caffeine-not-known = caféine inconnue : { $ingredients } ; lire les étiquettes avant de renseigner un client
caution-caffeine-not-known-at-all = caféine inconnue ; lire les étiquettes avant de renseigner un client

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = d’après les listes des ingrédients, mentions peut-être obligatoires : { $mentions } ; lire les emballages et respecter la réglementation locale
mention-phenylalanine = contient une source de phénylalanine ({ $named })
mention-children-colour = colorants pouvant avoir des effets indésirables sur l’activité et l’attention chez les enfants ({ $named })
mention-polyol = polyols, dont une consommation excessive peut avoir des effets laxatifs ({ $named })
mention-quinine = quinine ({ $named })
mention-caffeine = caféine ajoutée ({ $named })
mention-sweetener = avec édulcorant(s) ({ $named })
mention-allergen = { $allergen } ({ $named })
mention-animal = un produit d’origine animale ({ $named })
mention-perhaps-animal = un produit peut-être d’origine animale ({ $named })

caution-undissolved = { $sucrose } de saccharose pour { $whole } de saccharose et d’eau, alors qu’il s’en dissout au plus { $most } à { $celsius } (Bubnik & Kadlec 1995) : une partie reste en grains ; mettre moins de sucre ou plus d’eau
caution-runs-over = remplissage de { $fill } ({ $cup }), alors que { $most } seulement tiennent sous le bord et la fermeture : la boisson déborde ; en mettre moins ou prendre un gobelet plus grand
caution-not-known = inconnu : { $gaps } ; lire les étiquettes avant de renseigner un client
gap-vegan = caractère végan

# What a caution is about; it stands before the sentence.
caution-kind-heat = chaleur
caution-kind-allergen = allergène
caution-kind-choking = étouffement
caution-kind-curdling = caillage
caution-kind-caffeine = caféine
caution-kind-additive = additif
caution-kind-holding = conservation
caution-kind-undissolved = non dissous
caution-kind-fill = remplissage
caution-kind-unknown = inconnu
