# What an edit does, for the undo menu; and why an edit is refused. Both begin with a small letter and end without a full stop.

## Labels: "Undo change the amount of Tambrel chestnut powder"

# $field is one of the texts of changed-…: "the amount".
edit-change-of-line = change { $field } of { $ingredient }
edit-change = change { $field }
edit-add-line = add { $ingredient }
edit-add-instruction = add an instruction
edit-remove-line = remove { $ingredient }
edit-remove-instruction = remove an instruction
edit-move-line = move { $ingredient }
edit-move-instruction = move an instruction
edit-rename-recipe = rename the recipe to { $name }
edit-file-reading = file a reading of { $recipe }
edit-remove-reading = take a reading of { $recipe } out of the record
edit-note-recipe = change the note of { $recipe }
edit-translate = change the translation of “{ $text }” ({ $language })
edit-set-state = set the state to { $state }
edit-add-version = add the version { $version }
edit-add-versions = add { $count } versions
edit-add-items = add { $count } items
edit-rename-version = rename the version to { $name }
edit-remove-version = remove the version { $version }
edit-approve = approve { $recipe }
# A recipe, an ingredient, a measure or a vessel. $fields is a list of one to three of the texts of item-field-…: "price".
edit-add = add { $name }
edit-put = change { $name }
edit-put-fields = change the { $fields } of { $name }
edit-remove-recipe = delete { $name }
edit-remove-ingredient = remove the ingredient { $name }
edit-remove-measure = remove the measure { $name }
edit-remove-vessel = remove the vessel { $name }
# $name is one of the texts of named-tasting….
edit-remove-tasting = delete { $name }
# Where an item is named and the shop has no name of its own.
named-settings = the shop's settings
# A tasting has no name: its day tells it apart, and why it was held.
named-tasting = the tasting of { $date }
named-tasting-for = the tasting of { $date } ({ $reason })
# The figures of an item were wrong, so that what was approved with it had the new ones all along.
edit-put-right = treat the change of { $name } as a correction
edit-take-tasted = take over what tastings show of { $name }
edit-drop-tasted = give up what tastings showed of { $name }
edit-date-change = say since when { $name } has been different
edit-settings = change the shop's settings
edit-settings-fields = change the { $fields } in the shop's settings

## Refusals

# $kind is ingredient, measure, vessel, recipe, version, tasting or line.
edit-error-gone = the { $kind } `{ $id }` no longer exists
edit-error-taken = there is already a { $kind } `{ $id }`; choose another id
edit-error-no-name = a { $kind } needs a name, so the old name stays
edit-error-gives-approved-cup = “{ $version }” builds on this, is approved and has no cup; choose the cup in a new version instead
edit-error-built-on = { $count ->
        [one] “{ $version }” can't be removed: { $others } builds on it; remove that version first
       *[other] “{ $version }” can't be removed: { $others } build on it; remove those versions first
    }
edit-error-nothing-kept = no earlier figures of { $name } are kept
# $first is a finding with its place.
edit-error-faulty = { $first } (and { $count } more)

## Limits of a book

limit-lines = the recipe `{ $recipe }` would have { $count } lines and instructions; divide them among several recipes of at most { $most }
limit-changes = the version `{ $version }` of the recipe `{ $recipe }` would have { $count } changes; divide them among several versions of at most { $most }
limit-approved = approval { $number } of the recipe `{ $recipe }` would have { $count } lines and instructions; divide them among several recipes of at most { $most }
limit-cups = the tasting `{ $tasting }` would have { $count } cups; divide them among several tastings of at most { $most }
limit-tasted-lines = cup { $number } of the tasting `{ $tasting }` would have { $count } lines; a cup has at most { $most }
limit-text = the book would have { $megabytes } MB, but at most { $most } MB can be opened; start a second book or delete something from this one
limit-not-finite = { $count ->
        [one] a number of the book would be too large to save; enter a smaller number
       *[other] { $count } numbers of the book would be too large to save; enter smaller numbers
    }
