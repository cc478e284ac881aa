# What the commands say. They are spoken in English: this file has no other language.

# The end of the help.
command-exit-codes = Exit codes: 0 on success, 1 when a book has errors or could not be read or written, 2 on wrong usage.

# Why a value of an option is not taken.
command-enter-amount = enter a number of 0 or more, such as 7.5
command-enter-day = enter a day such as 2026-05-04
command-enter-percent = enter a percentage above 0 and up to 100
command-enter-limit = `{ $text }` can't be read; use LINE=LEAST..MOST, such as `milk=40..60`
command-enter-temperature = `{ $text }` can't be read; use FROM..TO in °C, such as `50..60`
command-enter-pair = `{ $text }` can't be read; use OLD=NEW, two ids of ingredients
command-enter-risk = enter a percentage above 0 and below 50
command-enter-certainty = enter a percentage above 0 and below 100
command-enter-answer = `{ $text }` can't be read; use PERSON=right or PERSON=wrong, such as `Ada=right`
command-enter-order = `{ $text }` can't be read; use PERSON=CUPS with the cup with the most first, such as `Ada=BAC`
command-enter-cups = enter the three cups A, B and C, the one with the most first, such as BAC
command-ranking-needs-answers = a ranking takes the order of each person; give each with `--answer PERSON=CUPS`, such as `--answer Ada=BAC`
command-ranking-not-similar = a ranking doesn't show that cups are alike; leave out --similar, or use a triangle or a duo–trio
command-only-ranking-predicted = only a ranking has a predicted order; leave out --predicted
command-enter-product = enter more than 0 g of product
command-more-right-than-people = there can't be { $right } right answers from { $people } people; count each person once
command-enter-level = `{ $text }` can't be read; use NAME=PERCENT from 0 to 200, such as `half=50`
command-enter-count = `{ $text }` can't be read; use RECIPE=COUNT or RECIPE/VERSION=COUNT
command-enter-mapping = `{ $text }` can't be read; use THEIRS=OURS
command-enter-delimiter = `{ $text }` is no delimiter; use one of { $words }
command-enter-allergen = there is no allergen `{ $text }`; use one of { $words }

# Ids that nothing has. { $advice } is one of the clauses below.
command-no-recipe = there is no recipe `{ $id }`; { $advice }
command-no-version = there is no version `{ $id }`; { $advice }
command-no-measure = there is no measure `{ $id }`; { $advice }
command-no-ingredient = there is no ingredient `{ $id }`; { $advice }
command-no-line = there is no line `{ $id }`; { $advice }
command-no-row = there is no row in line { $id } of the file; { $advice }
command-not-in-drink = the book has it, but this drink does not: there is no ingredient in it called `{ $id }`; { $advice }
command-no-command = there is neither a command nor a book `{ $word }`; { $advice }
command-no-such-version = there is no such version
command-no-book = there is no book `{ $path }`; for the commands see `evensip --help`
command-did-you-mean = did you mean { $near }?
command-either = { $first } or { $second }
command-known-commands = the commands are { $names }
command-known-none = there is none at all
command-known = there is { $ids }
command-known-and-more = there is { $ids } and { $count } more
command-only-comes-along = `{ $id }` only comes along with another ingredient of this drink; swap that one, or change what comes along with it
command-is-instruction = `{ $id }` is an instruction of this drink; use the id of a line with an ingredient

# What ends a command, or what it tells on standard error.
command-output-gone = can't write to standard output: { $error }
command-error-in = error in { $finding }
command-needs-display = the window needs a display; without one use `evensip check`, `evensip balance` or `evensip swap` (see `evensip --help`)

# Files that a card is not written over.
command-out-is-the-book = this would replace the book itself; name another file with --out: { $path }
command-out-is-a-book = there is a book of this name; name another file with --out, or add --overwrite to replace it: { $path }
command-out-is-no-such-card = there is a file of this name that is no such card; name another with --out, or add --overwrite to replace it: { $path }

# Control charts.
command-control-none = no measure has readings of two days or more

# Cards.
command-card-only-json = this kind is only written as JSON, as .json, and not as { $ending }; leave out --format and end the name of the file so
command-card-only-book = this kind is only written as a book, as .ron, and not as { $ending }; leave out --format and end the name of the file so
command-card-needs-recipe = this kind of card is about a drink; name it with `--recipe ID`
command-card-needs-swap = an exercise is about a swap; name it with `--replace ID --with ID`
command-card-needs-tasting = these are sheets of a blind tasting; say which with `--test TEST --people COUNT --seed NUMBER` and name its drinks with `--recipe ID --beside DRINK`
command-card-needs-format = the format can't be told from the file name; end it in .pdf, .html, .md, .csv or .json, or give --format
# $item is the item of the book that the text belongs to; $language is called what its speakers call it.
command-card-untranslated = “{ $text }” of { $item } has no words in { $language } and is printed as it is written
command-card-not-confirmed = nobody of the shop has confirmed the allergens and cautions in { $language }: the English stands beside them
command-card-no-font = no font has { $letters }, in “{ $text }”; install a font for its script, or it is printed as an empty box
command-cards-need-format = with --all, give the format with --format; --out is a folder
command-cards-of-kinds = with --all, the kind is counter, training or ladder
command-cards-renamed = { $name }, because there is a { $taken } already
command-cards-written = { $count ->
    [one] { $count } card in { $folder }
   *[other] { $count } cards in { $folder }
}
command-card-left-behind = a schema.org Recipe has no place for

# A check: its summary, and the history of a recipe.
command-statement-place = ingredient `{ $id }`, statement
command-count-ingredients = { $count ->
    [one] { $count } ingredient
   *[other] { $count } ingredients
}
command-count-measures = { $count ->
    [one] { $count } measure
   *[other] { $count } measures
}
command-count-vessels = { $count ->
    [one] { $count } vessel
   *[other] { $count } vessels
}
command-count-recipes = { $count ->
    [one] { $count } recipe
   *[other] { $count } recipes
}
command-count-errors = { $count ->
    [one] { $count } error
   *[other] { $count } errors
}
command-count-warnings = { $count ->
    [one] { $count } warning
   *[other] { $count } warnings
}
command-check-summary = { $ingredients }, { $measures }, { $vessels }, { $recipes }: { $errors }, { $warnings }
# $drink is the name of an approved drink, $causes a list of ingredients, measures, vessels or settings.
command-check-drifted = drifted: { $drink }: { $steps } steps from what was approved; changed since then: { $causes }
command-check-drifted-unknown = drifted: { $drink }: how far from what was approved is not known; changed since then: { $causes }
command-history = history of { $name } ({ $id })
command-history-empty = nothing has been approved yet
command-history-same = as { $follows }
command-history-since = since { $follows }: { $difference }
# "2. 2026-06-01, version `iced` (iced), by Ada, tasted at 5.0 °C".
command-history-day = { $number }. { $day }
command-history-version = { $named ->
    [no] { $before }, version `{ $id }`
   *[yes] { $before }, version `{ $id }` ({ $name })
}
command-history-by = { $before }, by { $by }
command-history-tasted-at = { $before }, tasted at { $celsius } °C
command-history-reason = { $before }: { $reason }

# A balance.
command-original = original
command-not-known = not known
command-not-known-why = not known: { $why }
command-not-stated-by = not stated by { $ingredients }
command-at-least = at least { $figure }
command-figure-not-stated = { $figure } — not stated: { $ingredients }
command-figure-why = { $figure } — { $why }
command-at-temperature = { $figure } at { $celsius } °C
command-doubt = what makes it uncertain
command-doubt-to-narrow = { $cause } — { $to_narrow }
command-first-sip = first sip
command-stirred = stirred
command-in-100-ml = per 100 ml: { $tastes }
command-vegan = vegan
command-by-ingredients = { $verdict }, by ingredients
command-caution = caution ({ $kind }): { $caution }

# How far a drink is from another: "against the standard: 2.40 noticeable steps overall (sweeter by 2.1)".
command-against-standard = against the standard
command-plain-swap = plain swap, equal measures
command-then = then
command-nothing-compared = { $lead }: nothing can be compared
command-differs-by = { $change } by { $steps }
command-level = level on every axis
command-level-as-known = level on every axis that is known
command-not-compared = { $differences }; not compared: { $axes }
command-distance = { $lead }: { $steps } noticeable steps overall ({ $differences })

# A swap.
command-swap-title = { $standard ->
    [approved] { $recipe }: { $with } for { $replace }, against the approved standard
   *[version] { $recipe }: { $with } for { $replace }, against the version as it stands
}
command-nothing-moves = nothing moves
command-scatter = { $scatter ->
    [within] { $explanation } The difference left is within the counter's own scatter.
    [beyond] { $explanation } The difference left is beyond the counter's own scatter.
   *[partly-known] { $explanation } The difference left is within the counter's own scatter as far as it is known.
}
command-search = { $proven ->
    [yes] proven best; { $candidates } candidates, { $evaluated } evaluated, { $groups } groups ruled out by a bound
   *[no] a limit stopped the proof; { $candidates } candidates, { $evaluated } evaluated, { $groups } groups ruled out by a bound
}

# Cups of a drink.
command-no-drink = there is nothing in the cup: enter amounts and what they weigh
command-cups-axis = { $within } of 100 within a step, { $less } below, { $more } above

# A drink that stands.
command-no-course = nobody knows how this drink cools or warms: it needs amounts, and a hot one a cup with its capacity
command-sip = { $temperature }, sweetness { $sweetness }, tea { $tea }, { $distance } steps away

# A ladder.
command-ladder-title = { $recipe }: the floor without any sweetener is { $sugar } g of sugar and { $sweetness } g/100 ml of sweetness
command-as-it-is = as it is
command-rung = { $aim } g/100 ml aimed at, { $reached } reached: { $moves }

# What is brought in.
command-book-has-comments = the book holds text comments, which a save can't keep; move them into notes, or add --drop-comments; nothing has been written: { $path }
command-book-changed-meanwhile = another program changed the book in the meantime; nothing has been written, run the command again: { $path }
command-nothing-written = nothing has been written; add --accept to write it
command-nothing-changes = nothing would change
command-written = written to { $path }
command-written-without-copy = written to { $path }; what it replaced could not be kept as an earlier copy ({ $error })
command-table = { $rows ->
    [one] { $rows } row, { $delimiter } between cells, decimal { $sign }, { $encoding }
   *[other] { $rows } rows, { $delimiter } between cells, decimal { $sign }, { $encoding }
}
command-sign-not-told = sign not told by the numbers
command-column-left-out = left out
command-unsure-left-out = { $count ->
    [one] line { $lines } is left out, because it was read in part, its price changes by more than a third or it is marked as no longer sold: look at it, then give --tick with its line
   *[other] lines { $lines } are left out, because they were read in part, their prices change by more than a third or they are marked as no longer sold: look at them, then give --tick with the line of each
}
command-sentence = { $text } → { $becomes }
command-price-far = the price changes by more than a third: is it the same pack?
command-sold-again = it is marked as no longer sold: taking this line takes the mark away
command-cost-effect = { $drink }: { $before } → { $after } { $currency }
command-enter-row = enter LINE=INGREDIENT instead of “{ $text }”, as 7=black-tea; with nothing behind the sign the line is left out
command-enter-form = enter one of { $words } instead of “{ $text }”
command-review-line = line { $line }, { $name }: { $outcome }
command-review-line-details = line { $line }, { $name }: { $outcome }: { $details }
command-review-counts = { $new } new, { $changed } changed, { $same } the same, { $skipped } skipped
command-left-out = left out: { $text }
command-added-as-it-is = added as it is
command-mapping = { $name } ({ $id }) → { $to }: { $why }
command-arrival = re-expressed: { $plain } noticeable steps overall; brought back: { $brought }. { $arrival }

# Serving orders of a blind test, and the table of a rule that stops early.
command-serve-pouring = To pour (seed { $seed }): person, then code and sample of each cup from left to right
command-serve-reference = reference { $sample }, {""}
command-serve-tasting = To taste: person, then the codes from left to right
command-stop-heading = People: no difference with at most so many right, a difference with at least so many right
command-stop-row = { $people }: { $none }, { $shown }

## Tastings

command-no-tastings = the book keeps no tastings yet
command-tasting = { $tasting }, `{ $id }`: { $outcome }; { $counts }
command-tasting-people = tasted by { $people }
command-tasting-cup = cup { $number }: { $cup }
command-tasting-said = { $person }, cup { $number }: { $text }
command-tasting-said-of = { $person }, cup { $number }, { $axis }: { $text }
command-tasting-in-future = { $day } is after today, { $today }; enter the day of the tasting
command-tasting-needs = this outcome needs { $argument }
command-enter-cup = “{ $text }” is no part of a cup; enter INGREDIENT=AMOUNT, such as pear-syrup=2 presses
command-enter-note = “{ $text }” is no note; enter PERSON/CUP=TEXT or PERSON/CUP/AXIS=TEXT, such as AB/2/sweetness=a little flat
command-no-axis = there is no axis or flavour “{ $id }”; { $advice }
command-no-tasting = the book has no tasting `{ $id }`; { $advice }
command-no-reading = the recipe has no reading `{ $id }`; { $advice }
command-nothing-to-rescale = the record calls for no other doubts of this kind: { $class }
command-nothing-tasted = no tasting says anything of { $ingredient } ({ $what }) that could be taken over or given up

# Suppliers.
command-supply-not-used = no drink on the menu (approved or on trial) uses one of these ingredients
command-supply-too-many = these offers make { $count } combinations: offer less for each ingredient
command-supply-nothing-offered = nothing of the kind of `{ $id }` is sold: name what is offered, as { $id }=OTHER,OTHER
command-enter-sold = `{ $text }` can't be read; use DRINK=CUPS, such as `hob-and-ember=120`, cups a week
command-supply-line = line { $line }: { $reason }
command-supply-twice = this drink stands in the file twice
command-supply-title = { $basis ->
    [stated] { $drinks } drinks, { $combinations } combinations, by the cups that are sold; the nearest first, * what no other beats in cost and distance
   *[one-each] { $drinks } drinks, { $combinations } combinations, one cup of each a week; the nearest first, * what no other beats in cost and distance
}
command-supply-more = { $count } further combinations: --json has them all
command-supply-stays = { $name } stays
command-supply-swap = { $from } → { $to }
command-supply-figures = { $week } a week, { $more } ± { $u } ({ $year } a year); on average { $mean } steps away, at most { $worst }; { $cards } cards change, { $habits } amounts move
command-supply-gained = now contains: { $what }
command-supply-lost = no longer contains: { $what }
command-supply-vegan = becomes vegan: { $what }
command-supply-no-longer-vegan = no longer surely vegan: { $what }
command-supply-no-cost = cost not known, and not in the sum: { $what }
command-supply-no-distance = distance not known on some axis: { $what }
command-supply-no-cups = cups not stated, and not in the sum: { $what }
command-supply-impossible = nothing brings back: { $what }
