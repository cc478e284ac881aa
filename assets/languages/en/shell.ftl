# The frame round every screen: the strip on top with its menus, the list of recipes, messages.

# The strip on top. Names without a visible word are read by a screen reader and stand under the pointer.
strip-language = Language
strip-find = Find in the book
strip-keyboard = Keyboard
strip-show-dark = Dark appearance
strip-show-contrast = Dark appearance with high contrast
strip-show-contrast-by-day = Light appearance with high contrast
strip-show-light = Light appearance
strip-hide-list = Hide the recipe list
strip-show-list = Show the list of drinks
strip-book = Book
strip-book-does = { $book } — open, save, samples
strip-samples = Samples
strip-recent = Recent books
strip-units = Units
strip-temperatures-in = temperatures in { $unit }
strip-volumes-in = volumes in { $unit }
strip-unsaved = unsaved
strip-more = More
strip-more-screens = More screens
strip-findings = Findings { $count }

# $step names what was done: “Changed the amount of …”.
strip-undo = Undo { $step } ({ $keys })
strip-redo = Redo { $step } ({ $keys })
strip-nothing-to-undo = Nothing to undo
strip-nothing-to-redo = Nothing to redo

# The title of the window.
shell-window-title = Evensip — { $book }
shell-window-title-unsaved = Evensip — { $book } (unsaved)

# The list of recipes. Rows are read by a screen reader with the state of the recipe or version.
shell-find-drink = Find a drink
shell-find-drink-hint = find a drink
shell-no-recipe-matches = No recipe matches “{ $typed }”
# Above drinks that are found by an ingredient.
shell-found-within = Made with “{ $typed }”
shell-house-made = House-made
shell-original = original
shell-recipe-row = { $recipe }, { $state }
shell-original-row = { $recipe }, original
shell-version-row = version { $version }, { $state }
shell-more = More
shell-new-version = New version
shell-new-version-does = A draft based on the selected version
shell-new-version-on-this = New version based on this
shell-delete-version = Delete this version
shell-duplicate = Duplicate the recipe
shell-delete-recipe = Delete the recipe
shell-delete-recipe-does = Deletes it with all its versions. You can undo this.

# The name that a recipe gets in the book before a person names it, and the name of a copy.
shell-new-recipe-name = New recipe
shell-copy-of = { $recipe } (copy)

# A book without recipes.
shell-no-recipes = This book has no recipes yet
shell-no-recipes-what = Add your first recipe, or open a sample book to look around.

# The column with the drawing of the level.
shell-the-standard = the standard
shell-compared-with = Compared with { $version }, approved { $date } by { $by }
shell-compared-with-original = Compared with the original recipe, approved { $date } by { $by }
# Of an approval that was made before the book kept what drinks were tasted with.
shell-standard-of-first-figures = Approved before the figures of its ingredients were kept: it takes the first ones that this book has kept.
shell-no-standard = No standard yet
shell-no-standard-empty = This drink has no ingredients yet. Write the recipe, taste it and approve it: it then becomes the standard for every version.
shell-no-standard-why = No version has been approved. Approve this one to make it the standard for the others.
shell-no-standard-marked = This version is marked approved, but no approval with a day and a person is kept, so there is no standard. Taste it and approve it to make it the standard for the others.
shell-no-standard-other-marked = A version is marked approved, but no approval with a day and a person is kept, so there is no standard. Approve it, or this one.
shell-approve-version = Approve this version…

# Cautions at the foot.
shell-cautions-empty-drink = Cautions stand here as soon as something is in the drink
shell-cautions-none = No cautions for this drink, as far as its labels say
shell-cautions-below = { $count } more below
shell-cautions-folded = { $count ->
    [one] 1 more caution: { $kinds }
   *[other] { $count } more cautions: { $kinds }
}
shell-cautions-fold = Show fewer cautions

## Drinks that have drifted

shell-drifted = Approved drinks that no longer taste as approved
shell-drifted-about = Something in them has changed since they were approved. Their standards are still what was tasted.
# $off is a sentence on how far the drink is from its standard; $causes a list of ingredients, measures, vessels or settings.
shell-drifted-why = { $off }. Changed since then: { $causes }
shell-drifted-bring-back = Bring back { $name }
shell-drifted-bring-all-back = Bring all of them back

# What is wrong with the book.
shell-findings = Findings
shell-findings-none = This book has no findings.
shell-findings-errors = Errors: figures that depend on these are not known
shell-findings-warnings = Warnings
shell-findings-table = findings
shell-column-severity = severity
shell-column-place = place
shell-column-finding = finding
shell-go-to = Go to { $name }
shell-go-to-settings = Go to the settings of the shop

# The last message.
shell-dismiss-message = Dismiss the message
shell-dismiss = Dismiss
shell-take-back = Undo that

# A field whose text can't be read. $reason is a clause without a full stop.
shell-not-changed = not changed: { $reason }

# A table that goes to a spreadsheet by the clipboard. $table says which.
shell-copy-table = Copy the table
shell-copy-table-of = Copy the table: { $table }
shell-copy-table-does = For a spreadsheet: tabs between the cells, units in the headings
shell-copied-table = Copied: paste it into a spreadsheet.
shell-not-known = not known

# While a book takes long to open.
shell-opening = Opening { $file }
shell-reading = Reading and checking it…
shell-reading-for = { $seconds ->
    [one] Reading and checking it: 1 second so far.
   *[other] Reading and checking it: { $seconds } seconds so far.
}
shell-stop-opening = Stop opening
shell-stop-opening-keys = You can also press Escape; { $book } then stays open.

# A text that is not wholly what it seems. $what names it: “the name”; $characters are their numbers: “U+202E, U+0007”.
shell-unseen-hidden = { $what } contains invisible characters: { $characters }
shell-unseen-no-font = no font here can show a part of { $what }: { $characters }
shell-unseen-directions = { $what } mixes right-to-left and left-to-right text: the window shows the parts one after another; cards print them in reading order
shell-unseen-more = { $count } more

# Why there is no window, said on the command line.
shell-no-window = no window can be opened here: { $reason }
shell-no-window-reason = the system gives no reason
