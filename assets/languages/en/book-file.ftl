# Why a book or a list can't be read or saved. Errors begin with a small letter; the place or the path stands last.

## The text of a file. What stands between backticks is text of the file or of its format.

text-ended = the text ends in the middle of the book: a part of the file is missing, so open an earlier copy
text-open-string = a text in quotes is never closed; add `"` at its end
text-open-comment = a comment is never closed; add `*/` at its end
text-too-deep = brackets are nested too deeply: this is not a book
# $words lists the fields or words that can stand there.
text-unknown-field = unknown field `{ $found }`; use { $words }
text-unknown-field-near = unknown field `{ $found }` (did you mean `{ $near }`?); use { $words }
text-unknown-word = unknown word `{ $found }`; use { $words }
text-unknown-word-near = unknown word `{ $found }` (did you mean `{ $near }`?); use { $words }
text-no-words = nothing in its place
text-missing-field = the field `{ $field }` is missing before this place; add it
text-field-twice = the field `{ $field }` is stated a second time; delete one of the two
# $found and $wanted are two of the texts below.
text-wrong-kind = found { $found } instead of { $wanted }
found-text = `{ $text }`
found-values = { $count ->
        [one] 1 value in brackets
       *[other] { $count } values in brackets
    }
found-no-whole-number = a number that is negative or far too large
wanted-list = `[` at the beginning of a list
wanted-end-of-list = `,` or `]` at the end of a list
wanted-group = `(` at the beginning of a group, such as `(8.0, Label)` for a figure
wanted-end-of-group = `)` at the end of a group
wanted-colon = `:` after the name of a field
wanted-comma = `,` between two values
wanted-number = a number such as 12.5
wanted-whole-number = a whole number such as 3
wanted-count = a whole number of 0 or more
wanted-text = a text in quotes
wanted-word = a word
wanted-yes-or-no = true or false
wanted-end-of-book = the end of the book
wanted-figure = a figure such as `(8.0, Label)` or `(8.0, Measured, 0.2)`

## Why a text can't become a book

load-problem-too-long = the text has { $megabytes } MB, but at most { $most } MB can be opened; divide the book
load-problem-no-format = this is not a book; a book begins with `(format: { $format },`
load-problem-bad-format = the format is `{ $found }`; it must be the whole number { $format }
load-problem-newer-format = the book has format { $found }, but this Evensip reads only format { $format } and older; open it with a newer Evensip
load-problem-text = { $fault }, at line { $line }, column { $column }
# $first and $second are places in the file.
load-problem-duplicate-id = the { $kind } `{ $id }` is in the book twice; give one of the two another id: { $first }; { $second }
load-problem-bad-id = { $error }, in { $place }
load-problem-too-many = the list has { $count } entries; divide them among several recipes of at most { $most }, in { $place }
load-problem-not-finite = a number is { $found }; enter a finite number such as 12.5, in { $place }
load-problem-pack-content = a price states what its pack holds in neither `grams` nor `millilitres`, or in both; state one of the two, in { $place }

id-error-empty = an id is empty; enter a short name such as `pear-syrup`
id-error-too-long = the id `{ $found }…` is { $count } characters long; use at most { $most }
id-error-character = the id `{ $found }` contains { $character }; use only a–z, 0–9 and hyphens

## Places in a file

# $way is the way to the place from the beginning of the book, such as "recipe `pear-drift`, line `pear`, amount".
file-place = line { $line }, { $way }
file-place-line = line { $line }
# The items of lists, by their number or by their id.
file-place-item = { $list ->
        [entries] line { $number }
        [flavours] flavour { $number }
        [high_potency] sweetener { $number }
        [serviceware] serviceware { $number }
        [ingredients] ingredient { $number }
        [measures] measure { $number }
        [vessels] vessel { $number }
        [recipes] recipe { $number }
        [versions] version { $number }
        [changes] change { $number }
        [approvals] approval { $number }
        [readings] reading { $number }
        [closures] closure { $number }
        [steps] step { $number }
       *[other] { $list } { $number }
    }
file-place-item-called = { $list ->
        [entries] line `{ $id }`
        [flavours] flavour `{ $id }`
        [high_potency] sweetener `{ $id }`
        [serviceware] serviceware `{ $id }`
        [ingredients] ingredient `{ $id }`
        [measures] measure `{ $id }`
        [vessels] vessel `{ $id }`
        [recipes] recipe `{ $id }`
        [versions] version `{ $id }`
        [changes] change `{ $id }`
        [approvals] approval `{ $id }`
        [readings] reading `{ $id }`
        [closures] closure `{ $id }`
        [steps] step `{ $id }`
       *[other] { $list } `{ $id }`
    }

## Why a file can't be opened

# $path is the file; $reason is what the system says.
load-error-missing = this file does not exist; check its name and folder: { $path }
load-error-directory = this is a folder; choose a book file: { $path }
load-error-not-a-file = this is not an ordinary file; choose a book file: { $path }
load-error-no-permission = you don't have permission to read this file; ask its owner: { $path }
load-error-read = the file could not be read ({ $reason }); try again or choose another file: { $path }
load-error-not-utf8 = line { $line } is not UTF-8 text; save the file as UTF-8 and open it again: { $path }
load-error-problem = { $problem }: { $path }
# The problems follow, each on a line of its own, and then the path.
load-error-problems = the book has { $count } problems:
load-error-more = and { $count } more
load-error-file = file: { $path }

## Why a list can't be read

read-error-not-a-file = this is not a file; choose a CSV, JSON or RON file: { $path }
read-error-too-long = the file is longer than { $most } MB; divide it: { $path }
read-error-read = the file can't be read ({ $reason }); choose another file: { $path }

## Why a book can't be saved

save-error-directory = this is a folder; enter the name of a file: { $path }
save-error-not-a-file = this is not an ordinary file, and replacing it would take it from the program that uses it; choose another file: { $path }
save-error-no-folder = the folder does not exist; choose another folder: { $path }
save-error-no-permission = the file is read-only; save the book under another name: { $path }
save-error-no-permission-in-folder = you don't have permission to create files in this folder; choose another folder: { $path }
save-error-read-only-disk = this disk is read-only; choose another disk: { $path }
save-error-not-finite = { $count ->
        [one] a number of the book is too large to save; enter a smaller number: { $path }
       *[other] { $count } numbers of the book are too large to save; enter smaller numbers: { $path }
    }
save-error-too-long = the text of the book has { $megabytes } MB, but at most { $most } MB can be opened again; delete something from the book: { $path }
save-error-changed-on-disk = another program has changed the file since you opened it; compare the two before you save: { $path }
save-error-disk-full = the disk is full; free space for the book and its earlier copy: { $path }
save-error-write = the book could not be written ({ $reason }); save again or choose another place: { $path }

## Unsaved work that can't be read. $path is where it is kept.

set-aside = unsaved work can't be read ({ $reason }); it is kept as { $path }
work-no-whole-change = the file contains no complete change
work-ends-early = the file ends after its first line
work-no-owner = its first line does not say whose work it is
work-first-line-damaged = its first line is damaged
work-part-missing = a part of the file is missing or was changed
work-time-damaged = its time is damaged
work-change-damaged = a change in the middle is damaged, and the changes after it are left out
