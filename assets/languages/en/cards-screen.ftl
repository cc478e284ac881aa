# The screen of cards: what is printed, its pages, the files, and the review of what is brought in.

cards-screen-title = Cards
# Under the title: the drink and its version.
cards-screen-drink = { $recipe } · { $version }
cards-screen-not-known = not known

# What a card shows: headings, hints, and the names that stand before fields or are read for them.
cards-screen-beside = Beside it
cards-screen-one-version = This drink has only one version. Make another in Recipe to compare them.
cards-screen-choose-swap = Choose a swap in Lesson, then “Exercise on paper…” to come back here.
cards-screen-drinks-of = How many: { $drink }
cards-screen-drinks-remove = Remove { $drink }
cards-screen-drinks-add = Add { $drink }
cards-screen-also-unapproved = Also drinks that are not approved
cards-screen-drinks-out-of-range = enter a number of drinks from 1 to { $most }
cards-screen-test = Test
cards-screen-design = { $design ->
    [triangle] triangle
    [duo-trio] duo–trio
    [duo-trio-known] duo–trio, this drink as reference
    [pair] paired comparison
   *[ranking] ranking of three
}
cards-screen-asked = Asked
cards-screen-liked = better liked
cards-screen-tasters = Tasters
cards-screen-seed = Number
cards-screen-whole-numbers = enter whole numbers
cards-screen-paper = Paper
cards-screen-day = Day on it
cards-screen-day-field = Day on the card
# In the empty field: no day stands on the card.
cards-screen-no-day = none
cards-screen-language = Language
cards-screen-language-field = Language of the card
cards-screen-own-language = Book in
cards-screen-own-language-field = Language that the book is written in
cards-screen-no-catalogue = Evensip doesn’t speak the language “{ $language }” of this book, so cards can’t be printed in it.
# $language is called what its speakers call it: "Deutsch".
cards-screen-confirmed = Allergens and cautions in { $language }: confirmed by { $person }, { $day }
cards-screen-confirmed-withdraw = Withdraw the confirmation
cards-screen-not-confirmed = Nobody of the shop has confirmed the allergens and cautions in { $language } yet: the English stands beside them.
cards-screen-confirm-by = Who confirms the translation
cards-screen-confirm-by-hint = name
cards-screen-confirm = Confirm
cards-screen-confirm-does = You have read the allergens and cautions on the cards and found that they say the same as the English. The English goes, and your name and the day stand on the cards.
# Texts of the book that stand on the card as they are written. $language is called what its speakers call it: "Deutsch".
cards-screen-untranslated = { $count ->
    [one] 1 text has no words in { $language } and is printed as it is written
   *[other] { $count } texts have no words in { $language } and are printed as they are written
}
cards-screen-untranslated-go = Enter { $language } for “{ $text }”
cards-screen-untranslated-more = { $count ->
    [one] and 1 more
   *[other] and { $count } more
}

# Sizes of paper with a name; A4 and A5 have none.
paper-half-letter = US half letter
paper-letter = US letter
paper-wall = A4 for the wall, large type
paper-letter-wall = US letter for the wall, large type

# Characters that would be empty boxes on paper. $text is the text that has one of them.
cards-screen-no-font = Characters without a font
cards-screen-no-font-in = in { $text }
cards-screen-no-font-what = They print as empty boxes. Install a font for their script, then open Cards again.

# The pages. A screen reader reads what stands on the page below its number.
cards-screen-laying-out = Laying out the page…
cards-screen-laying-out-again = being laid out…
cards-screen-page = Page { $page } of { $count }
cards-screen-page-before = Previous page
cards-screen-page-after = Next page

# Files.
cards-screen-file = To a file
cards-screen-format = Format
cards-screen-folder = Folder
cards-screen-folder-field = Folder for the files
cards-screen-folder-choose = Choose…
cards-screen-folder-choose-field = Choose the folder for the files
cards-screen-write = Write the card
cards-screen-write-menu = Write the whole menu
cards-screen-write-menu-does = A card of every drink and version on the menu, a file each
cards-screen-to-print = To print, write a PDF and open it in your viewer.
cards-screen-written-so-far = { $done } of { $all }
cards-screen-stop = Stop
cards-screen-open-to-print = Open to print
cards-screen-open-to-print-does = Opens the file in the viewer of your system, which prints it
cards-screen-show-folder = Show the folder
# What was written. A file gets a number when another file has its name.
cards-screen-written = Written: { $name }
cards-screen-written-renamed = Written: { $name }, because there is a { $taken } already
cards-screen-files-written = { $count ->
    [one] 1 file written
   *[other] { $count } files written
}
cards-screen-files-written-renamed = { $renamed ->
    [one] { $count } files written, 1 of them with a number, because there is a file with its name already
   *[other] { $count } files written, { $renamed } of them with a number, because there are files with their names already
}

# Bringing something in: where the file is.
cards-screen-bring-in = Bring in
cards-screen-bring-in-what = A price list (CSV), a schema.org recipe (JSON) or another shop’s recipe (RON). You review it before anything changes.
cards-screen-bring-in-path = Path of what is brought in
cards-screen-bring-in-path-hint = /home/me/prices.csv
cards-screen-bring-in-review = Review
cards-screen-bring-in-choose = Choose…
cards-screen-bring-in-choose-does = Asks with the dialog of your system; without one, type the path
cards-screen-reading = Reading { $path }…
cards-screen-stop-reading = Stop reading

# Buttons of every review.
cards-screen-back = Back to the cards
cards-screen-leave = Leave it
cards-screen-add-recipe = Add the recipe as a draft

# A list under review: how its file is read.
cards-screen-list-looking = Looking through the list…
cards-screen-delimiter = Cell separator
cards-screen-heading-line = Headings in
cards-screen-heading-line-of = line { $line }: { $cells }
cards-screen-above-skipped = { $count ->
    [one] (1 line above is skipped)
   *[other] ({ $count } lines above are skipped)
}
cards-screen-decimal-sign = Decimal sign
cards-screen-columns = What the columns mean
# What a column means that is not taken.
cards-screen-column-left-out = left out
cards-screen-column-meaning = Meaning of { $heading }
# The columns as a table for a spreadsheet.
cards-screen-columns-table = columns
cards-screen-columns-table-column = column
cards-screen-columns-table-meaning = meaning

# What holds for all rows of the list.
cards-screen-list-supplier = Supplier of the list
cards-screen-list-supplier-hint = name
cards-screen-list-supplier-known = Known suppliers
cards-screen-list-form = Form of new ingredients
cards-screen-list-form-not-stated = not stated

# What would become of the lines of the list.
cards-screen-changes = What would change
cards-screen-changes-counted = { $new } new, { $changed } changed, { $same } the same, { $skipped } skipped
cards-screen-changes-take = Add { $count } to the book
cards-screen-changes-taking = Taking the list into the book…
cards-screen-line = line { $line }
cards-screen-line-of = { $name }, line { $line }
# $outcome is "new", "changed" or "skipped".
cards-screen-outcome = { $outcome }: { $details }
# Rows that are not ticked: read in part, of no stated form, or with a price that moves by more than a third.
cards-screen-changes-unsure = { $count ->
    [one] 1 change is not ticked, because it needs a look: tick it if it is right.
   *[other] { $count } changes are not ticked, because they need a look: tick them if they are right.
}
cards-screen-price-far = The price changes by more than a third: is it the same pack?
cards-screen-sold-again = It is marked as no longer sold: taking this line takes the mark away.
# What taking the ticked rows does to the cost of the drinks.
cards-screen-effects = What the drinks would cost
cards-screen-effects-looking = Working out the cost of the drinks…
cards-screen-effects-none = No drink would cost more or less.
cards-screen-effects-table = cost of the drinks
cards-screen-effects-drink = drink
cards-screen-effects-now = now
cards-screen-effects-then = then
cards-screen-effects-change = change
cards-screen-effects-percent = change
cards-screen-effects-more = { $count ->
    [one] Show 1 more
   *[other] Show { $count } more
}
# What something that comes in is: an ingredient of the book, a new one, or nothing.
cards-screen-match-field = What { $name } is: { $now }
cards-screen-match-find = Find an ingredient
cards-screen-match-find-hint = type to find an ingredient
cards-screen-match-none = Nothing fits.
cards-screen-match-new = a new ingredient: { $form }
cards-screen-match-left-out = leave it out
cards-screen-match-choose = choose what it is
# The lines as a table for a spreadsheet.
cards-screen-changes-table = what would change
cards-screen-changes-table-line = line
cards-screen-changes-table-ingredient = ingredient
cards-screen-changes-table-taken = taken
cards-screen-changes-table-outcome = outcome
cards-screen-changes-table-details = details
cards-screen-changes-table-doubts = doubts
cards-screen-yes = yes
cards-screen-no = no

# A schema.org recipe under review.
cards-screen-recipe-looking = Looking for its ingredients…
cards-screen-to-look-at = To look at
# A sentence's ingredient, and why: "Tap water (nearly the same name)".
cards-screen-match-why = { $ingredient } ({ $why })
# The sentences of a recipe as a table for a spreadsheet.
cards-screen-sentences-table = sentences
cards-screen-sentences-table-sentence = sentence
cards-screen-sentences-table-becomes = becomes
cards-screen-left-out = Left out: { $text }

# A recipe of another shop under review: what stands for each of its ingredients.
cards-screen-other-shop-recipe = A recipe
cards-screen-other-shop-from = from { $shop }
cards-screen-mapping-field = Use in place of { $ingredient }
cards-screen-mapping-added = added as it is
cards-screen-mappings-table = what stands for what
cards-screen-mappings-table-theirs = theirs
cards-screen-mappings-table-here = here
cards-screen-mappings-table-why = why

# What this shop makes of it, and how far that is from the standard of the other shop, in noticeable steps.
cards-screen-arrival-looking = Bringing the recipe back to its standard…
cards-screen-arrival = As this shop would make it
cards-screen-arrival-line = { $amount } { $ingredient }
cards-screen-arrival-table = lines
cards-screen-arrival-table-amount = amount
cards-screen-arrival-table-ingredient = ingredient
# $known says which of the two differences are known: both, the one of the recipe as it would be, or the one before.
cards-screen-arrival-difference = { $known ->
    [both] Overall difference from their standard: { $steps } noticeable steps ({ $before } before the amounts changed)
    [after] Overall difference from their standard: { $steps } noticeable steps (not known before the amounts changed)
    [before] Overall difference from their standard: not known ({ $before } noticeable steps before the amounts changed)
   *[neither] Overall difference from their standard: not known
}
