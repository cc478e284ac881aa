# A lesson on a swap: a group predicts each step, then the step is revealed.
lesson-title = Teach a swap
lesson-introduction = Choose an ingredient and its replacement. The group predicts the taste; then you reveal it step by step: first the plain swap, then each change that matches the standard again.
lesson-nothing = There is nothing to reveal: a figure that the swap needs is not known, or no line that may change brings the drink closer. Swap shows which.
lesson-see-swap = See it in Swap
# The title: which recipe, and what replaces what.
lesson-of-swap = { $recipe }: { $with } for { $replace }
lesson-begin-again = Begin again
lesson-another-swap = Another swap
lesson-exercise = Exercise on paper…
lesson-large = large type for a wall screen
# The step in hand: its number, how many there are, and what it changes.
lesson-step = { $number } of { $count }: { $does }
lesson-ask-first = How will the drink compare with the standard?
lesson-ask-next = What will this change, compared with the step before?
lesson-result = Result
# A button: an axis of taste, and what may become of it: "sweetness: sweeter".
lesson-prediction = { $axis }: { $guess }
# $moved is "sweeter by 1.9 steps", $guess "less sweet".
lesson-correct = { $moved }: correct
lesson-not-correct = { $moved } — not { $guess }
# How many predictions were correct: $right of $count.
lesson-score = { $count ->
    [one] { $right } of { $count } predicted correctly
   *[other] { $right } of { $count } predicted correctly
}
# $least is a number below 1.
lesson-same = “The same” means a difference of less than { $least } of a noticeable step. Evensip estimates; taste to be sure.
# Buttons.
lesson-back = Back
lesson-reveal = Reveal
lesson-next = Next step
lesson-last = That was the last step
# The table that is copied, and heads of its columns.
lesson-table = predictions
lesson-table-step = step
lesson-table-change = change
lesson-table-axis = axis
lesson-table-prediction = prediction
lesson-table-result = result
lesson-table-moved = change, noticeable steps
lesson-table-correct = correct
