# What a person can ask for by a button, a menu or a key: its name, and what it does.
command-new-book = New book
command-new-book-does = Begin an empty book
command-new-recipe = New recipe
command-new-recipe-does = Begin a new drink
command-look-up = Find…
command-look-up-does = Find recipes, ingredients, notes and approvals in this book
command-open-book = Open…
command-open-book-does = Open another book
command-save-as = Save as…
command-save-as-does = Save the book in another file
command-save = Save
command-save-does = Save the book
command-redo = Redo
command-redo-does = Repeat the step that was taken back
command-undo = Undo
command-undo-does = Take the last step back
command-add-instruction = Add an instruction
command-add-instruction-does = Add an instruction below the selected line
command-add-line = Add an ingredient…
command-add-line-does = Find an ingredient and add it
command-swap-line = Swap this ingredient…
command-swap-line-does = Replace this ingredient and match the taste
command-move-up = Move up
command-move-up-does = Move the line one place up
command-move-down = Move down
command-move-down-does = Move the line one place down
command-remove = Remove
command-remove-does = Remove the line from the recipe
command-line-above = Line above
command-line-above-does = Go to the line above
command-line-below = Line below
command-line-below-does = Go to the line below
command-back = Back
command-back-does = Close what is open, or return to the recipe
command-other-degrees = °C or °F
command-other-degrees-does = Show temperatures in °F or °C
command-other-volumes = ml or fl oz
command-other-volumes-does = Read volumes in US fluid ounces instead of millilitres, and back
command-show-keys = Keys…
command-show-keys-does = Show the keys
command-go-to-does = Go to this screen

# What a command does, with its keys behind it.
command-with-keys = { $what } ({ $keys })

# The screens of the window, each a tab of one word.
command-area-recipe = Recipe
command-area-swap = Swap
command-area-variations = Variations
command-area-compare = Compare
command-area-lesson = Lesson
command-area-serving = Serving
command-area-counter = Counter
command-area-cards = Cards
command-area-findings = Findings
