# A version or the original in the title of a question: “Hob & Ember, vegan”.
dialog-version = { $recipe }, { $version }
dialog-original = { $recipe }, original

# Buttons of several dialogs.
dialog-cancel = Cancel
dialog-browse = Browse…
dialog-browse-does = Ask with the dialog of the system, where there is one
dialog-save = Save

# Opening a book.
dialog-open-title = Open a book
dialog-open-path = Path of the book
dialog-path-hint = /home/me/books/winter.ron
dialog-open = Open
dialog-recent = Recent books
dialog-samples = Samples

# Saving a book under another name.
dialog-save-title = Save the book as
dialog-save-path = Path to save to
dialog-save-kind = A text file; its name ends in .ron
dialog-save-here = Save here

# Approving a version. Hints stand in empty fields.
dialog-approve-title = Approve { $drink }
dialog-approve-keeps = Evensip keeps these lines as the standard. Later changes go into a new version.
dialog-approved-by = Approved by
dialog-approved-by-hint = who tasted it
dialog-reason = Reason
dialog-reason-hint = why it is right
dialog-tasted-at = Tasted at, { $unit }
dialog-tasted-at-hint = leave empty if not measured
dialog-approve = Approve

# What is asked before another book is opened, an empty one begun or the window closed: while the book is being saved, when its file is gone, and when it has changes that no file holds.
dialog-saving-title = “{ $book }” is still being saved
dialog-saving-quit = Evensip will close the window as soon as the book is saved.
dialog-saving-new = Evensip will begin an empty book as soon as the book is saved.
dialog-saving-open = Evensip will open another book as soon as the book is saved.
dialog-gone-title = “{ $book }” is no longer in its folder
dialog-gone-quit = The file was deleted, renamed or moved, so the book is unsaved. Save it again before you close the window?
dialog-gone-new = The file was deleted, renamed or moved, so the book is unsaved. Save it again before you begin an empty book?
dialog-gone-open = The file was deleted, renamed or moved, so the book is unsaved. Save it again before you open another book?
dialog-unsaved-title = “{ $book }” has unsaved changes
dialog-unsaved-quit = Save them before you close the window?
dialog-unsaved-new = Save them before you begin an empty book?
dialog-unsaved-open = Save them before you open another book?
dialog-do-not-wait = Do not wait
dialog-do-not-wait-does = What is being saved might not reach the file
dialog-discard = Discard
dialog-discard-book-does = The whole book will be lost
dialog-discard-changes-does = The changes are lost

# Finding anything in the book.
look-up-title = Find in the book
look-up-hint = a name, a brand, an instruction, a note …
look-up-what-to-do = Type part of a name, brand, flavour, instruction, note or approval reason, in any order. Choose with Up and Down, then press Enter.
look-up-nothing = Nothing in this book matches “{ $typed }”. Try fewer words, or part of a word.
look-up-best = { $all } matches; these are the best { $best }. Add a word to narrow them down.
look-up-found = { $count ->
    [one] 1 found
   *[other] { $count } found
}

# What was found: its kind, its name and where it stands. $piece is a piece of a person's own text.
look-up-hit = { $kind }: { $name }
look-up-hit-at = { $kind }: { $name }, { $place }
look-up-piece = “{ $piece }”
look-up-place-and-piece = { $place } — “{ $piece }”
look-up-no-reason = no reason given

# Where a thing stands that was found. $drink is a recipe, or a recipe with a version behind a comma.
look-up-drink = { $recipe }, { $version }
look-up-version-of = of { $recipe }, { $state }
look-up-note-on = on { $name }
look-up-note-on-book = on the book
look-up-line-note = on { $ingredient } in { $drink }
look-up-in = in { $name }
look-up-approval-of = of { $drink }, { $date } by { $by }
look-up-tasting-of = of { $drink }, { $date }
look-up-ingredient = { $role }, { $form }
look-up-ingredient-of = { $brand }, { $role }, { $form }
# The word that the note on the book is found by.
look-up-book = the book

# What stands on the keys of a keyboard; joined by a plus sign: “Ctrl+Shift+S”.
keys-command = Cmd
keys-control = Ctrl
keys-alt = Alt
keys-shift = Shift
keys-escape = Esc
keys-enter = Enter
keys-insert = Insert
keys-delete = Delete
keys-up = Up
keys-down = Down
keys-either = { $first } or { $second }

# The sheet of the keys: which keys, and what they do.
keys-title = Keys
keys-close = Close
keys-of-book = The book
keys-of-drink = The drink
keys-of-areas = The areas of work
keys-of-window = The window
keys-enter-or-type = Enter, or just type
keys-enter-or-type-does = Change the amount of the selected line
keys-tab = Tab
keys-tab-does = Go to the next field
keys-zoom = Ctrl+Plus, Minus or 0
keys-zoom-does = Larger, smaller, as it was

# The same as a table for a spreadsheet.
keys-table = keys
keys-column = keys
keys-column-does = what they do
