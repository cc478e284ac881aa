# What is said of the open book: opening, saving, what is kept against a crash, and files that are written.
# Texts that begin small are clauses, which get their capital where they are shown.

# Names of books that are in no file, of a new shop and of a new version.
new-book = New book
new-shop = My tea bar
sample-harrowmere = Harrowmere (sample)
sample-first-steps = First steps (sample)
sample-unread-labels = Unread labels (sample)
sample-changed-label = A changed label (sample)
version-name = version { $number }

# Opening.
open-stopped = { $path } was not opened
open-broke-down = reading { $path } stopped unexpectedly: open it again

# The windows of the system that ask for a file, and the kinds of files that they offer.
pick-open = Open a book
pick-list = Bring in a list or recipe
pick-save = Save the book
pick-folder = Choose a folder
pick-kind-list = list or recipe
pick-kind-book = book

# Saving.
save-done = saved to { $path }
save-without-earlier = saved to { $path }, but what it replaced could not be kept as an earlier copy ({ $error })
save-broke-down = saving stopped unexpectedly
save-left-behind = the book that was open before was not saved to { $path }: { $reason }
save-drops-comments = the file contains comments, which a save removes: move them into notes, or save again to remove them
save-over-earlier-copy = an earlier copy stays as it is: save outside the folder of earlier copies
save-still-running = still saving to { $path }: save again when that is done
save-takes-long = saving to { $path } is taking a while; carry on working, and Evensip will tell you when it is done

# A save that failed: what is wrong, where the changes are, and what a person can do, in this order.
save-failed = Not saved: { $error }
kept-here = Nothing is lost: the changes are still here.
kept-soon = Nothing is lost: the changes are still here and are being written to the recovery file.
kept-in-recovery = Nothing is lost: the changes are still here and in the recovery file.
kept-nowhere-else = Nothing is lost: the changes are still here. They are nowhere else, so do not close the window: { $reason }
way-out-again-or-elsewhere = Save again, or choose another place with “Save as…”.
way-out-elsewhere = Choose another place with “Save as…”.
way-out-permission = Choose another place with “Save as…”, or ask the person who looks after this computer for permission.
way-out-folder = Restore the folder and save again, or choose another place with “Save as…”.
way-out-room = Free some space and save again, or choose another disk with “Save as…”.
way-out-shorter = Remove something from the book and save again.
way-out-numbers = Enter numbers in their place and save again.

# What is kept against a crash.
recovery-broke-down = looking for unsaved work stopped unexpectedly
recovery-no-folder = unsaved work can’t be kept in { $folder } ({ $error }): save often
recovery-failing = Unsaved changes can’t be kept against a crash, so save often: { $reason }
recovery-unsaved-changes = the open book has unsaved changes: save or undo them, then restore the unsaved work
recovery-not-deleted = the unsaved work could not be deleted ({ $error }): { $path }

# What a merge did so that the changes of both sides fit together. $by is what needs $name; $names is a list.
merge-kept-here = “{ $name }” was removed here but stays in the book, because “{ $by }” in the file needs it.
merge-kept-in-file = “{ $name }” was removed in the file but stays in the book, because “{ $by }” needs it here.
merge-whole-here = With the changes of both sides a batch would need itself, so these are now as they were here: { $names }.
merge-whole-in-file = With the changes of both sides a batch would need itself, so these are now as they were in the file: { $names }.

# Earlier copies.
earlier-not-listed = the earlier copies can’t be read ({ $error })
earlier-not-read = that earlier copy has not been read: look at it first
earlier-broke-down = reading it stopped unexpectedly
# The name of an earlier copy that is opened by itself.
earlier-name = { $name }, earlier
earlier-name-of = { $name } of { $moment }

# A file that another program changed: the name of the file beside it that gets the person's own book.
# { $number } counts the files that were written in one second.
file-of-mine = { $number ->
    [1] { $name } (mine, { $moment })
   *[other] { $name } (mine, { $moment }, { $number })
}

# Steps in the history.
step-take-theirs = replace with the book in the file
step-merge-theirs = merge with the book in the file
step-go-back = restore an earlier copy
step-go-back-to = restore the copy of { $moment }
step-restore-work = restore the unsaved work of { $moment }

# Cards that are written and shown.
export-broke-down = the export stopped unexpectedly
export-stopped = stopped; the cards that were written stay
preview-broke-down = the preview stopped unexpectedly
file-no-viewer = no program can show { $path } ({ $error }): open it from its folder

# Lists that are brought in.
list-broke-down = { $path } could not be read
list-not-added = the list could not be added to the book
list-book-changed = the book has changed in the meantime: look through the list and add it again

# Why nothing is said of how a drink cools: clauses without a capital and a stop.
cooling-iced = it has ice: it stays near its freezing point until the ice is gone
cooling-no-warmer = it is served no warmer than the room
cooling-not-known = its serving temperature is not known
cooling-no-cup = no cup is chosen
serving-no-capacity = the capacity of the cup is not known: enter it
