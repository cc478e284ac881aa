# What keeps a shop's work safe: unsaved work that was found, files that another program changed or that would be replaced,
# earlier copies of the book, and the approvals of a recipe.

# A moment in the time of this place: "4 May 2026, 10:22".
safekeeping-moment = { $day } { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
} { $year }, { $time }
# The same with a short month and with seconds.
safekeeping-exact-moment = { $day } { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
} { $year }, { $time }
# The size of a file.
safekeeping-bytes = { $count ->
    [one] 1 byte
   *[other] { $count } bytes
}
safekeeping-kilobytes = { $size } kB
safekeeping-megabytes = { $size } MB

# Entries of the menu of the book.
safekeeping-earlier-menu = Earlier copies…
safekeeping-found-menu = Unsaved work that was found…

safekeeping-later = Later
safekeeping-close = Close
safekeeping-cancel = Cancel

## Approvals of a recipe

safekeeping-approvals = Approvals
# An entry of the list. $date is as the shop wrote it, $version the name of a version.
safekeeping-approval = { $date } — { $version }, by { $by }
safekeeping-approval-tasted = { $date } — { $version }, by { $by }, tasted at { $temperature }
# A heading over what changed since the approval of a date.
safekeeping-since = since { $date }
safekeeping-since-nothing = since { $date }: nothing changed
safekeeping-make-draft = Make a draft from this
safekeeping-make-draft-hint = Starts a draft with these lines. Approvals stay as they are.
safekeeping-make-draft-of = Go back to the approval of { $date }
# Two menus with a word before each: "What changed from" and "to". The second is read by screen readers alone.
safekeeping-changed-from = What changed from
safekeeping-to = to
safekeeping-changed-to = What changed to
safekeeping-version-in-hand = the selected version
safekeeping-numbered-approval = { $number }: { $date }, { $version }
safekeeping-nothing-changed = nothing changed

## A file that another program changed

# The strip below the top of the window. $difference is a list: "2 recipes changed (Pear Drift, Snowgate)".
safekeeping-strip-changed = Another program has changed “{ $name }”: { $difference }
# $count counts what was changed in the window as well.
safekeeping-strip-changed-both = Another program has changed “{ $name }”: { $difference }; you have changed { $count ->
    [one] one of them
   *[other] { $count } of them
}, too
safekeeping-strip-unreadable = Another program has made “{ $name }” something that is no book
safekeeping-strip-gone = “{ $name }” was deleted, renamed or moved. The book is still open but unsaved: save it again, here or elsewhere
safekeeping-decide = Decide…
safekeeping-later-changed-hint = Nothing is overwritten. Evensip asks again before it saves.
safekeeping-decide-changed-hint = See what differs, and reload, merge or keep a copy
safekeeping-later-gone-hint = The book counts as unsaved until a file holds it again; saving writes it there
safekeeping-decide-gone-hint = Save it there again, or under another name

# The titles of the sheet.
safekeeping-title-changed = “{ $name }” was changed by another program
safekeeping-title-unreadable = “{ $name }” is no book any more
safekeeping-title-gone = “{ $name }” is no longer in its folder
safekeeping-nothing-saved = Nothing was saved, and your changes are still here.
safekeeping-gone = The file was deleted, renamed or moved. The whole book is still open with all your changes, but it is unsaved. If the file was only renamed, open it under its new name, or put it back: Evensip will notice.
safekeeping-changed-both = Changed here and in the file
safekeeping-changed-in-file = Changed in the file
safekeeping-changed-here = Changed here and not saved
# What both sides have changed of an item: its kind ("ingredient") and a list of fields ("price"); the second is read by screen
# readers.
safekeeping-fields = { $kind }: { $fields }
safekeeping-fields-of = { $fields } of { $name }
# A choice for each part that both sides have changed; the longer ones are read by screen readers.
safekeeping-here = Here
safekeeping-here-of = Here: { $name }
safekeeping-in-file = In the file
safekeeping-in-file-of = In the file: { $name }
# What each side did. $change is "added", "changed" or "removed".
safekeeping-did-here = here: { $change }
safekeeping-did-in-file = in the file: { $change }
safekeeping-merge = Merge
safekeeping-use-file = Use the file
safekeeping-use-file-hint = The book of the file comes in place of what is on the screen
safekeeping-reload = Reload
safekeeping-merge-undo = Merging and using the file are one step each. You can undo either.
safekeeping-reload-undo = Reloading is one step. You can undo it.
safekeeping-keep-copy = Keep mine as a copy
safekeeping-keep-copy-hint = Save what is on the screen beside the file, under another name, and go on there
safekeeping-save-over = Save over it
safekeeping-save-over-hint = The present file is kept as an earlier copy
safekeeping-save-again = Save it there again
safekeeping-save-as = Save as…

## How two books differ, item by item

safekeeping-nothing-differs = nothing differs
safekeeping-more = { $count ->
    [one] and 1 more
   *[other] and { $count } more
}
safekeeping-hide-details = Hide details
safekeeping-show-details = What changed inside
# What happened to an item. $kind is "recipe", "ingredient" and the like.
safekeeping-item = { $kind }, { $change }
safekeeping-added = added
safekeeping-changed = changed
safekeeping-removed = removed
safekeeping-kind-settings = settings
safekeeping-kind-tasting = tasting
safekeeping-nothing-said = nothing that is said here
# Where the name of an item would stand.
safekeeping-settings = the shop’s settings
safekeeping-without-name = without a name

## Earlier copies

safekeeping-earlier = Earlier copies of the book
safekeeping-earlier-looking = Looking for them…
safekeeping-earlier-what = Each time you save, Evensip keeps the previous copy: the last ten, and the last of each day.
safekeeping-earlier-none = No earlier copies yet. Evensip keeps one each time a save changes the file.
safekeeping-earlier-no-file = This book is in no file yet. Once it is saved, each save keeps what it replaces.
safekeeping-earlier-choose = Choose a copy to see how it differs from the book on the screen.
safekeeping-earlier-reading = Reading it…
# What a copy holds: four counts, each with its noun.
safekeeping-earlier-holds = { $recipes ->
    [one] 1 recipe
   *[other] { $recipes } recipes
}, { $ingredients ->
    [one] 1 ingredient
   *[other] { $ingredients } ingredients
}, { $measures ->
    [one] 1 measure
   *[other] { $measures } measures
}, { $vessels ->
    [one] 1 vessel
   *[other] { $vessels } vessels
}
safekeeping-earlier-since = Since then, on the screen
safekeeping-earlier-restore = Restore this copy
safekeeping-earlier-restore-hint = Put this book on the screen. You can undo this.
safekeeping-earlier-open = Open as a copy
safekeeping-earlier-open-hint = Open it by itself; saving asks for a new name

## Unsaved work that was found

safekeeping-found = Unsaved work was found
safekeeping-found-what = Evensip closed unexpectedly. Your work on “{ $name }” was kept on { $moment }.
safekeeping-found-no-file = It was in no file yet.
safekeeping-found-unreadable = That file can’t be read now; all of the book is in the work.
safekeeping-found-file-changed = The file changed after you began this work. Evensip merges the two, field by field, before anything is saved.
safekeeping-found-difference = What is in it and not in the file
safekeeping-found-unsaved = Save or undo the changes in the open book first, then restore this work.
safekeeping-found-restore = Restore this work
safekeeping-found-ask-again = Ask again next time
safekeeping-found-ask-again-hint = The work is kept; it is offered from the menu of the book and at the next start
safekeeping-found-delete = Delete it…
safekeeping-found-delete-hint = Asks once more before the work is deleted
safekeeping-found-delete-whole = Delete this work of { $moment } for good? No file holds it, so the whole book is lost.
safekeeping-found-delete-part = Delete this work of { $moment } for good? The file stays as it is.
safekeeping-found-keep = Keep it
safekeeping-found-delete-now = Delete it for good
safekeeping-found-delete-now-hint = It can’t be brought back

## A file that would be replaced

safekeeping-replace = A file with this name already exists
# $size is "41 kB", $moment when the file was changed.
safekeeping-replace-changed = { $size }, changed last on { $moment }
safekeeping-replace-question = Replace it with this book? Evensip keeps the present file as an earlier copy.
safekeeping-replace-another = Another name…
safekeeping-replace-now = Replace it
safekeeping-replace-now-hint = Save this book over the file

# A draft that goes back to an approval.
version-as-approved = as approved on { $day }
