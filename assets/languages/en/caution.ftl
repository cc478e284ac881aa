# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = { $celsius } when served, above { $limit }: too hot to drink at once, and a spill scalds; let it cool or add cold water, and follow your local code
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = { $celsius } when served, above { $limit }: too hot to drink at once, and a spill scalds (adult skin burns to the second degree or deeper in { $adult }, that of small children { $child ->
    [sooner] even sooner
   *[other] in { $child }
}); let it cool or add cold water, and follow your local code
caution-hot-through-wide-straw = { $celsius } through a wide straw, above { $limit }: the drink reaches the throat hot; leave out the straw or serve it cooler, and follow your local code
caution-scalds = { $celsius } when served: a spill scalds; close the cup, and follow your local code
caution-scalds-burns = { $celsius } when served: a spill scalds (adult skin burns to the second degree or deeper in { $adult }, that of small children { $child ->
    [sooner] even sooner
   *[other] in { $child }
}); close the cup, and follow your local code
scald-time-at-most = at most { $time }
scald-time-less-than = less than { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. By ingredients only: shared shakers, scoops and blenders can leave traces; follow your local code
# $named are clauses of caution-named.
caution-statements-contradict = the ingredient list contradicts what is entered: { $named }; read the pack before you tell a guest
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }: “{ $words }”
caution-claims-contradicted = the book contradicts itself: { $claims }; read the packs before you tell a guest
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } is entered as { $claim ->
    [vegan] vegan
    [dairy-free] dairy-free
   *[allergens] complete in its allergens
}, but its allergens include { $allergen }
claim-against-honey = { $ingredient } is entered as { $claim ->
    [vegan] vegan
    [dairy-free] dairy-free
   *[allergens] complete in its allergens
}, but its sugars are those of honey
claim-against-milk-sugars = { $ingredient } is entered as { $claim ->
    [vegan] vegan
    [dairy-free] dairy-free
   *[allergens] complete in its allergens
}, but its sugars are those of milk
claim-against-not-dairy-free = { $ingredient } is entered as { $claim ->
    [vegan] vegan
    [dairy-free] dairy-free
   *[allergens] complete in its allergens
} and as not dairy-free
claim-against-part = { $ingredient } is entered as { $claim ->
    [vegan] vegan
    [dairy-free] dairy-free
   *[allergens] complete in its allergens
}, but { $part } in it is not
claim-against-every-part = { $ingredient } is entered as { $claim ->
    [vegan] not vegan
    [dairy-free] not dairy-free
   *[allergens] not complete in its allergens
}, but everything in it is
claim-against-allergen-of-part = the allergens of { $ingredient } leave out { $allergen }, which is in { $part }

caution-choking = { $ingredients }: young children can inhale small chewy pieces through a straw (BfR 2012, up to 4 years); warn guests, and follow your local code

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }; follow your local code
kept-warm = { $ingredient } at { $celsius }: if it is kept at that temperature, hot holding needs at least { $uk } (UK) or { $us } (US)
kept-cold = { $ingredient } at { $celsius }: if it is kept at that temperature, cold holding needs at most { $uk } (UK) or { $us } (US)

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. By the shop's own rules; follow your local code
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }; follow your local code
use-within-of-brewing = { $ingredient }: use within { $time } of brewing
use-long-after-brewing = { $ingredient }: use within { $time } of brewing by the shop's rule, longer than the { $limit } of the Tea Council of the USA after the CDC memo of 1996
use-not-stated-after-brewing = { $ingredient }: the shop states no holding rule; the Tea Council of the USA says { $limit } after brewing at most
use-within-of-making = { $ingredient }: use within { $time } of making
use-not-stated-after-making = { $ingredient }: house-made, and its shelf life is not stated
use-within-of-opening = { $ingredient }: use within { $time } of opening
use-not-stated-after-opening = { $ingredient }: how long it keeps once opened is not stated

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = { $acid } of acid per 100 ml may curdle the milk or soy: add it last and cold, and serve at once
caution-may-curdle = milk or soy may curdle, because the acid in { $ingredients } is not stated: add the milk or soy last and cold, and serve at once

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = { $caffeine } of caffeine: { $lines }
caffeine-above-single-dose = above the single dose of { $limit } for adults (EFSA 2015); less for pregnant women and children
caffeine-may-disturb-sleep = { $limit } may disturb sleep (EFSA 2015)
caffeine-high-content = { $caffeine }, above { $limit }: unless its name says tea or coffee, the drink may have to bear “High caffeine content” (Regulation (EU) 1169/2011, Annex III)
caution-caffeine-not-known = caffeine not known: { $ingredients }; read the labels before you tell a guest
caution-caffeine-not-known-at-all = caffeine not known; read the labels before you tell a guest

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = according to the ingredient lists, you may have to mention: { $mentions }; read the packs, and follow your local code
mention-phenylalanine = contains a source of phenylalanine ({ $named })
mention-children-colour = colours that may have an adverse effect on activity and attention in children ({ $named })
mention-polyol = polyols, which may have laxative effects in large amounts ({ $named })
mention-quinine = quinine ({ $named })
mention-caffeine = added caffeine ({ $named })
mention-sweetener = with sweetener(s) ({ $named })
mention-allergen = { $allergen } ({ $named })
mention-animal = an animal product ({ $named })
mention-perhaps-animal = a possible animal product ({ $named })

caution-undissolved = { $sucrose } of sucrose per { $whole } of sucrose and water, but at most { $most } dissolves at { $celsius } (Bubnik & Kadlec 1995): some stays as grains; use less sugar or more water
caution-runs-over = { $fill } of { $cup }, but only { $most } fits below its rim and closure: it runs over; use less or a larger cup
caution-not-known = not known: { $gaps }; read the labels before you tell a guest
gap-vegan = whether it is vegan

# What a caution is about; it stands before the sentence.
caution-kind-heat = heat
caution-kind-allergen = allergen
caution-kind-choking = choking
caution-kind-curdling = curdling
caution-kind-caffeine = caffeine
caution-kind-additive = additive
caution-kind-holding = holding
caution-kind-undissolved = undissolved
caution-kind-fill = fill
caution-kind-unknown = unknown
