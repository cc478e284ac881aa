# Questions about the ingredient list of a pack, in whole sentences. $words are words of that list, as they stand there in small letters.
# $traces is "traces" where the list says that the words may be in it.
question-milk-in-dairy-free = { $ingredient } is sold as dairy-free, but its ingredient list names milk ({ $words }). Does the pack say so too?
question-allergen-contradicted = { $traces ->
    [traces] The ingredient list of { $ingredient } says that it may contain { $words }, but its allergens leave out { $allergen }. Which is right?
   *[contains] The ingredient list of { $ingredient } names { $words }, but its allergens leave out { $allergen }. Which is right?
}
question-allergen-not-stated = { $traces ->
    [traces] The ingredient list of { $ingredient } says that it may contain { $words }. Does the pack declare { $allergen }?
   *[contains] The ingredient list of { $ingredient } names { $words }. Does the pack declare { $allergen }?
}
question-animal-in-vegan = { $ingredient } is entered as vegan, but its ingredient list names something from an animal ({ $words }). Which is right?
question-animal = The ingredient list of { $ingredient } names { $words }. Does its maker say that it is vegan?
question-perhaps-animal = { $words } in { $ingredient } can be made from plants or animals. Does its maker say that it is vegan?
question-phenylalanine = The ingredient list of { $ingredient } names { $words }. The drink may have to bear “contains a source of phenylalanine”. Does it?
question-polyol-mention = { $ingredient } holds more than 10 % of polyols ({ $words }). The drink may have to bear “excessive consumption may produce laxative effects”. Does it?
question-polyol-not-stated = The ingredient list of { $ingredient } names { $words }. How many grams of polyols does the pack state?
question-sweetener = The ingredient list of { $ingredient } names { $words }. “With sweetener(s)” may have to stand beside the name of the drink. Does it?
question-children-colour = The ingredient list of { $ingredient } names { $words }. The drink may have to bear “may have an adverse effect on activity and attention in children”. Does it?
question-quinine = The ingredient list of { $ingredient } names { $words }. Quinine may have to be named where the drink is sold. Is it?
question-caffeine-not-stated = The ingredient list of { $ingredient } names { $words }. How many milligrams of caffeine does the pack state?
question-caffeine = The ingredient list of { $ingredient } names { $words }. Added caffeine may have to be named where the drink is sold. Is it?
