# What blind tests and refractometer readings show.

# What people did in a test.
tasting-result = { $test ->
    [triangle] { $right } of { $people } people chose the odd cup.
    [duo-trio] { $right } of { $people } people chose the cup that is the same as the reference.
    [pair] { $right } of { $people } people chose the cup that was expected to have more.
   *[pair-either-way] { $right } of { $people } people chose the first sample.
} By guessing alone, a result at least as far from chance has a probability of { $chance }.
tasting-needed = { $test ->
    [pair-either-way] With { $people } people, at least { $answers } must choose the same sample; guessing leads to that with a probability of { $chance }.
   *[other] With { $people } people, at least { $answers } right answers show a difference; guessing leads to that with a probability of { $chance }.
}
# { $least } is the smallest panel, 0 where none is large enough.
tasting-cannot-show = { $least ->
    [0] { $people } people can’t show a difference at the { $level } level, whatever they answer, and no larger panel can.
   *[other] { $people } people can’t show a difference at the { $level } level, whatever they answer. It takes at least { $least }.
}
# A difference, as part of a sentence. { $share } is a percentage; d′ is Thurstone’s.
tasting-effect-share = a difference that { $share } of people taste
tasting-effect-d-prime = a difference of d′ { $size }
# { $effect } is one of the two above.
tasting-power = With a probability of { $power }, { $people } people find { $effect }.
tasting-shows = To be found with a probability of { $power }, a difference must be tasted by { $share } of people.
tasting-least-panel = With a probability of { $power }, { $people } people find { $effect }; { $answers } of them must answer right.
tasting-no-panel = Even { $most } people don’t find { $effect } often enough.
# { $people } is the panel, 0 where none is large enough.
tasting-least-for-similar = { $people ->
    [0] No panel is large enough to show, with { $confidence } confidence, that at most { $share } of people taste a difference.
   *[other] Showing with { $confidence } confidence that at most { $share } of people taste a difference takes { $people } people, even if the cups are equal.
}
tasting-pair-shows-more = If you can say beforehand which cup should have more, ask for that: a pair finds { $effect } with a probability of { $pair }, this test with { $power }.
tasting-one-answer-each = Each person counts once. Tasting again doesn’t make one person two.
tasting-hide-colour = Serve the cups alike in colour, fill and temperature, with a lid or in dim light where they look different.
tasting-found = That is a difference: the chance is within the { $level } that you agreed on.
tasting-tasters = An estimated { $share } of people taste it: at least { $least }, at most { $most } (each limit with { $confidence } confidence).
tasting-not-found = No difference was found. That does not mean that the taste is the same: up to { $most } of people may taste one ({ $confidence } confidence).
tasting-similar = At most { $share } of people taste a difference ({ $confidence } confidence): the cups are alike as you agreed beforehand.
tasting-not-similar = The cups are not shown to be alike: up to { $most } of people may taste a difference ({ $confidence } confidence), and you agreed on at most { $share }.
tasting-repeated = { $repeated ->
    [one] One further answer by the same { $people } people is not counted: it adds no person.
   *[other] { $repeated } further answers by the same { $people } people are not counted: they add no person.
}

# Three cups that are put in order. A rank sum is small for the cup with the most. F is Friedman’s statistic, L is Page’s.
tasting-rank-needed = With { $people } people, the rank sums show a difference from F = { $friedman } on; guessing leads to that with a probability of { $chance }.
tasting-rank-order-needed = With { $people } people, the predicted order is shown from L = { $page } on; guessing leads to that with a probability of { $chance }.
# A difference, as part of a sentence.
tasting-rank-effect-share = an order of the cups that { $share } of people taste
tasting-rank-effect-d-prime = a difference of d′ { $size } between the first and the last cup, with the third halfway between
# { $effect } is one of the two above.
tasting-rank-least-panel = With a probability of { $power }, { $people } people find { $effect }.
tasting-rank-shows = To be found with a probability of { $power }, the order of the cups must be tasted by { $share } of people.
tasting-rank-predicted-shows-more = If you can say the order beforehand, do: with a predicted order you find { $effect } with a probability of { $predicted } instead of { $power }.
tasting-rank-sums = Rank sums of { $people } people, the smaller the more: A { $a }, B { $b }, C { $c }.
tasting-rank-friedman = { $counted ->
    [exact] F = { $friedman }. By guessing alone, sums at least as far apart have a probability of { $chance }.
   *[approximate] F = { $friedman }. By guessing alone, sums at least as far apart have a probability of about { $chance }.
}
tasting-rank-page = Predicted order { $order }: L = { $page }. By guessing alone, at least as much has a probability of { $chance }.
tasting-rank-found = The cups differ: the chance is within the { $level } that you agreed on.
tasting-rank-order-found = The predicted order { $order } is shown: the chance is within the { $level } that you agreed on. That does not show which neighbours differ.
tasting-rank-not-found = No difference was found at the { $level } level. That does not mean that the cups taste the same.
tasting-rank-least-difference = Two cups differ when their rank sums are at least { $difference } apart ({ $level } level).
tasting-rank-apart = { $more } has more than { $less }: their rank sums are { $difference } apart.
tasting-rank-not-apart = Of { $a } and { $b } nothing is shown: their rank sums are { $difference } apart.

# Stopping early.
tasting-rule = Stop as soon as the table says so, and only then. With up to { $most } people, equal cups are called different with a probability of { $alarms }, and the difference is found with a probability of { $power }. On average { $equal } people taste equal cups, { $different } different ones.
tasting-no-rule = No rule for stopping early is offered for this test.
tasting-too-many = there are three-digit codes for at most { $most } people
tasting-unbalanced = { $people } is not a multiple of { $multiple }: some orders are served once more than others.

# A refractometer.
brix-corrected = { $solids } at { $scale }: the reading { $reading }, corrected by { $correction } for { $temperature }.
brix-compensated = { $solids }, as the instrument corrects for the temperature itself.
brix-product = The product holds { $solids } g of soluble solids in 100 g.
# { $part } is what is compared: the label, or the drink as it was computed.
brix-agrees = { $part ->
    [label] That agrees with the { $expected } of the label.
   *[drink] That agrees with the computed { $expected }.
}
brix-above = { $part ->
    [label] That is more than the { $expected } of the label, by more than both uncertainties explain.
   *[drink] That is more than the computed { $expected }, by more than both uncertainties explain: less water or ice, or more of a sweetener, than in the recipe.
}
brix-below = { $part ->
    [label] That is less than the { $expected } of the label, by more than both uncertainties explain.
   *[drink] That is less than the computed { $expected }, by more than both uncertainties explain: more water or ice, or less of a sweetener, than in the recipe.
}
brix-not-computed = The °Brix of this drink is not known: enter what is missing on the labels.
brix-misled-dairy = Milk solids and fat mislead a refractometer: compare only like with like.
brix-misled-fibre = Pulp, fibre and starch mislead a refractometer: strain the sample, and compare only like with like.
brix-too-weak = { $solids } is hardly more than its uncertainty. A refractometer can’t measure plain tea.
brix-more-than-all = That is more than the product itself weighs: check the weights and the reading.
brix-temperature-outside = a reading can be corrected for temperatures from { $least } to { $most }
brix-reading-outside = the scale goes from { $least } to { $most }
