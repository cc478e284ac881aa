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
lesson-wall = Show on a wall screen
lesson-leave-wall = Leave the wall screen
# The step in hand: its number, how many there are, and what it changes.
lesson-step = { $number } of { $count }: { $does }
lesson-ask-first = How will the drink compare with the standard?
lesson-ask-next = How will it compare with the standard now?
lesson-result = Result
# A button: an axis of taste, and what may become of it: "sweetness: sweeter".
lesson-prediction = { $axis }: { $guess }
# How many predict, and the buttons that make them fewer or more.
lesson-learners = { $count ->
    [one] One prediction for the group
   *[other] { $count } learners
}
lesson-learners-fewer = One learner fewer
lesson-learners-more = One learner more
lesson-learners-what = Click once for each hand that goes up.
# Behind the words of a guess: how many learners expect it.
lesson-hands = { $guess }: { $count }
# $right of $count learners expected it.
lesson-some-correct = { $outcome }: { $right } of { $count } correct
# $outcome is "sweeter by 1.9 steps", $guess "less sweet".
lesson-correct = { $outcome }: correct
lesson-not-correct = { $outcome } — not { $guess }
# How many predictions were correct: $right of $count.
lesson-score = { $count ->
    [one] { $right } of { $count } predicted correctly
   *[other] { $right } of { $count } predicted correctly
}
# The same over all steps of the lesson.
lesson-score-in-all = { $count ->
    [one] In all steps { $right } of { $count } predicted correctly
   *[other] In all steps { $right } of { $count } predicted correctly
}
# Why: the figure of the drink, that of the standard with its unit, and what a noticeable step is.
lesson-why = { $drink } instead of { $standard }; one step is { $step }
# Which line is behind it. $now and $before are amounts with their unit, $what is "fat".
lesson-why-swap = { $with } brings { $now } of { $what }; { $replace } brought { $before }
lesson-why-line = { $ingredient } brings { $now } of { $what } instead of { $before }
lesson-why-new = { $ingredient } brings { $now } of { $what }
lesson-why-gone = { $ingredient } brought { $before } of { $what }
lesson-what-sweetness = sweetness (as sugar)
lesson-what-tea = tea solids
lesson-what-fat = fat
lesson-what-acid = acid
lesson-what-body = solids other than sugar
lesson-what-volume = liquid
lesson-what-flavour = { $flavour } flavour
# An amount of a flavour, in house units.
lesson-units = { $number } units
# Short words on the buttons of the wall screen.
lesson-less = less
lesson-more = more
lesson-same = “The same” means at most one noticeable step from the standard: the band of the level. Evensip estimates; taste to be sure.
# Buttons.
lesson-back = Back
lesson-reveal = Reveal
lesson-next = Next step
lesson-last = That was the last step
lesson-next-drink = Next drink: { $drink }
# The table that is copied, and heads of its columns.
lesson-table = predictions
lesson-table-step = step
lesson-table-change = change
lesson-table-axis = axis
lesson-table-prediction = prediction
lesson-table-result = result
lesson-table-difference = difference from the standard, noticeable steps
lesson-table-correct = correct
lesson-table-correct-of = { $right } of { $count }
