# What is said of what is brought in from elsewhere and passed on.

# What a column of a list means.
field-name = name
field-brand = brand
field-supplier = supplier
field-article = article number
field-form = form
field-role = role
field-pack-price = price of a pack
field-pack-content = content of a pack
field-waste = waste, %
field-price-date = day of the price
field-density = density, g/ml
field-energy-kcal = energy, kcal
field-sodium = sodium
field-statement = ingredient list
field-note = note

# The sign between the cells of a list.
delimiter-comma = comma
delimiter-semicolon = semicolon
delimiter-tab = tab
delimiter-bar = vertical bar

# The sign before decimals, with a number that has it.
decimal-sign-point = point (1.5)
decimal-sign-comma = comma (1,5)

# How the bytes of a list are read.
encoding-utf-8 = UTF-8
encoding-utf-16 = UTF-16
encoding-single-byte = one byte per letter (read as Windows-1252; check the accents)

# What would become of a row.
outcome-new = new
outcome-changed = changed
outcome-same = the same
outcome-skipped = skipped

# What is new or changes in an ingredient: "fat: 30 g → 32 g".
figure-new = { $figure }: { $value }
figure-changed = { $figure }: { $before } → { $after }
figure-price-changed = { $figure }: { $before } → { $after } ({ $percent } % for the same amount)
figure-sold-again = sold again
figure-density = density
figure-price = price
figure-none = no figures
figure-not-stated = not stated
# What a supplier's list calls an ingredient. { $named } is "no" where nobody knows whose list it is; { $others } had that name before.
article-remembered = { $held ->
    [0] { $named ->
        [yes] “{ $article }” of { $supplier } is recognised from now on
       *[no] “{ $article }” is recognised from now on
    }
   *[other] { $named ->
        [yes] “{ $article }” of { $supplier } is recognised from now on, and no longer as { $others }
       *[no] “{ $article }” is recognised from now on, and no longer as { $others }
    }
}

# Why a row is left out: clauses without a capital and a stop.
row-no-name-column = no column is the name: choose one above
row-no-name = the name is empty
row-left-out = left out, as you chose
row-no-price = no price is stated, so the one in the book stays
row-no-form = it is new, and nothing tells its form: choose what it is
row-nothing-read = nothing in it can be taken
row-same-ingredient = line { $line } is about the same ingredient: choose what this one is
row-again = the same brand and name are in line { $line }
row-several = it could be { $ingredients }: add a column for the brand
row-quote-not-closed = a quote is opened but never closed, from line { $from } to { $to }: close it or remove it
row-text-after-quote = there is text after a closed quote in line { $line }: end the cell there or double the quotes inside it
row-quote-not-opened = a quote is closed but never opened in line { $line }: open it or remove it
row-in-quotes = a quote contains what looks like another row, from line { $from } to { $to }: close the quote where its cell ends
row-too-wide = { $headings ->
    [one] { $cells } cells stand under 1 heading: put a text or number that contains the separator in quotes
   *[other] { $cells } cells stand under { $headings } headings: put a text or number that contains the separator in quotes
}
row-too-narrow = { $cells ->
    [one] 1 cell stands under { $headings } headings: keep the separator where a cell is empty
   *[other] { $cells } cells stand under { $headings } headings: keep the separator where a cell is empty
}

# A cell that is left out: its heading, what stands in it, and a clause that begins with "cell-".
doubt-cell = { $heading } “{ $cell }”: { $why }
doubt-ambiguous = { $heading } “{ $cell }”: { $thousands } or { $decimals }? choose the decimal sign of the list
doubt-form-by-name = no form is stated: its name says { $form }
cell-not-a-number = not a number
# { $sign } is "point" or "comma".
cell-not-a-number-with = not a number with a decimal { $sign }
cell-out-of-range = out of range: enter 0 to { $most }
cell-per-100-ml = this is per 100 ml: enter it in Counter, with the density of the ingredient
cell-bound = a bound is not a figure: enter what the maker states
cell-more-than-all = this is more than 100 g per 100 g
cell-mg-or-g = mg or g? add the unit to the heading
cell-unit-of-mass = unknown unit: use g or mg
cell-unit-of-energy = unknown unit: use kJ or kcal
cell-unit-of-share = unknown unit: use %
cell-unit-of-pack = this is not understood as a whole: enter the content as 1 kg, 750 ml, 12 x 1 kg or 6 x 750 ml
cell-no-pack-unit = no unit: add g, kg, oz, lb, ml, l or fl oz
cell-with-packing = this is the weight with the packing: enter the content
cell-letter-beside-number = there is a letter beside the number: is it a digit?
cell-no-pack-content = a price needs the content of the pack: add it to the list
cell-pack-of-book = no content is given, so the pack in the book is used
cell-price-per-amount = this is a price by weight or volume: enter the price of a pack
cell-with-sales-tax = this price includes sales tax: enter it without
cell-another-currency = this is not the currency of the book: convert it
cell-not-a-day = not a day: enter it as 2026-05-04
cell-not-a-form = not a form: enter { $words }
cell-not-a-role = not a role: enter { $words }

# Why a file can't be brought in.
table-empty = the file is empty: choose a file with a row of headings and a row for each ingredient
table-no-rows = the file has headings but no rows below them
table-not-text = the file is not text (byte { $at } is zero): save the sheet as CSV in your spreadsheet and choose that file
table-cut = the file is cut off or damaged (half a letter at byte { $at } of UTF-16): save the sheet as CSV in UTF-8 and choose that file
table-too-long = the file has more than { $most } rows: divide it
table-unreadable = line { $line } can’t be read: save the sheet as CSV again
table-headings = the headings can’t be read: { $why }
file-not-utf-8 = line { $line } is not UTF-8 text: save the file as UTF-8 and bring it in again
file-not-json = the file is not valid JSON: it can’t be read from line { $line }, letter { $column } on
file-without-recipe = the file contains no schema.org recipe: it needs a value with "@type": "Recipe"

# Steps in the history.
step-bring-in = bring in { $name }
step-bring-in-ingredients = { $count ->
    [one] bring in an ingredient
   *[other] bring in { $count } ingredients
}

# A recipe that is brought in without a name.
recipe-without-name = Recipe without a name
# What has to be looked at in a sentence of a recipe that is brought in: clauses without a capital and a stop.
question-unclear-amount = the amount is not clear ({ $why }), so it is added as an instruction
question-no-amount = it states no amount, so it is added as an instruction
question-second-fill = another ingredient fills the cup already, so it is added as an instruction
question-too-much = the amount is more than a cup holds, so it is added as an instruction
question-new-ingredient = { $told ->
    [yes] new, and added as { $form }: its figures are not known until you enter its label in Counter
   *[no] new, and nothing tells its form: choose what it is, or it is added as { $form }
}
question-alike = the name is not quite the same: is it this one?
question-range = { $from } to { $to }: the middle is used, and the sentence is kept as a note of the line
question-household = { $legal ->
    [yes] the shop has no { $measure }: one of { $size } ml is added (21 CFR 101.9(b)(5)(viii)), with the uncertainty of a measure that has not been weighed
   *[no] the shop has no { $measure }: one of { $size } ml is added (common practice, no source), with the uncertainty of a measure that has not been weighed
}
question-not-weighed = nobody has weighed this measure: its weight is not known until you weigh it in Counter
question-not-in-file = the file does not state cup, shaker, temperatures and stages: set them
amount-two-counts = “{ $first } { $second }” can be read as { $first }{ $second } or as { $first } times { $second }
amount-too-long = the sentence is too long for an ingredient

# What a sentence of a recipe becomes.
becomes-instruction = an instruction
becomes-left-out = left out, as you chose
becomes-line = { $amount } { $ingredient }
# { $measure } is the name of a measure, which may end with its size in brackets: "½ × cup (240 ml): milk".
becomes-line-measured = { $count } × { $measure }: { $ingredient }
# Why an ingredient of the book is chosen for one that a recipe names.
alike-same-name = the same name
alike-nearly = nearly the same name
alike-chosen = chosen by you
# Measures of kitchens.
household-teaspoon = teaspoon
household-tablespoon = tablespoon
household-cup = cup
household-tasse = coffee cup
household-pinch = pinch
household-knife-tip = knife tip
household-dash = dash
household-splash = splash
# Name and note of a measure that a recipe brings along.
measure-household = { $how ->
    [heaped] { $measure }, heaped ({ $size } ml)
    [dry] { $measure }, dry ({ $size } ml)
   *[level] { $measure } ({ $size } ml)
}
measure-household-legal = Size as in 21 CFR 101.9(b)(5)(viii), not weighed here yet.
measure-household-practice = Size by common practice, no source; not weighed here yet.
measure-piece = piece
measure-piece-note = From a recipe, not weighed here yet.

# Why an ingredient of the book is chosen for one of another shop, or none is.
mapping-not-described = the file does not describe it
mapping-same-name = the same name
# { $role } is a role such as "sweetener".
mapping-same-role = also { $role }, with the same flavour
mapping-nothing-alike = no ingredient here is like it, so it is added
mapping-chosen = chosen by you

# Why a recipe can't leave or enter a shop.
exchange-no-recipe = there is no recipe `{ $id }` in the book
exchange-not-approved = “{ $recipe }” has not been approved: approve it first, so that it has a standard
exchange-no-weight = the weight of { $ingredient } is not known: weigh the measure with it, because another shop does not have your measures
exchange-beyond-measure = the weight or temperature of { $ingredient } is out of range: correct its amount, or the readings and the density that it is weighed with
exchange-not-in-grams = “{ $recipe }” has lines that are not in grams: { $lines }. Ask the other shop for the file that “Recipe for another shop” writes: it has every line in grams
exchange-not-one-recipe = { $count ->
    [0] the file contains no recipe with a cup: choose a file that “Recipe for another shop” wrote
   *[other] the file contains { $count } recipes with a cup: choose a file that “Recipe for another shop” wrote, which contains a single recipe
}
exchange-no-ingredient = there is no ingredient `{ $id }` in the book
# A line of another shop, in a list: "milk, to the rim (line `milk`): it depends on the other shop's cup".
line-without-grams = { $ingredient }, { $amount } (line `{ $line }`): { $why }
no-grams-fills = it depends on the other shop’s cup
no-grams-no-measure = its measure is not in the file
no-grams-not-weighed = the other shop has not weighed the measure with it
no-grams-no-density = the file does not state its density
no-grams-no-ingredient = the file does not describe the ingredient
no-grams-no-amount = this is not an amount
no-grams-same-id = another line has the same id

# Sentences of the note that a recipe of another shop gets. { $named } is "no" where that shop has no name.
arrival-from = { $named ->
    [yes] From { $shop }, approved there on { $day }.
   *[no] From another shop, approved there on { $day }.
}
# { $reason } is a clause that begins with "variation-" or "swap-".
arrival-left-as-it-is = The amounts were not changed: { $reason }.
# The note of a book that passes a recipe on.
recipe-passed-on = { $named ->
    [yes] One recipe of { $shop } for another shop.
   *[no] One recipe for another shop.
}
