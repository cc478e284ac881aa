# Questions about the ingredient list of a pack, in whole sentences. $words are words of that list, as they stand there in small letters.
# $traces is "traces" where the list says that the words may be in it.
question-milk-in-dairy-free = { $ingredient } wird als milchfrei verkauft, aber das Zutatenverzeichnis nennt Milch („{ $words }“). Steht das auch so auf der Packung?
question-allergen-contradicted = { $traces ->
    [traces] Laut Zutatenverzeichnis kann { $ingredient } „{ $words }“ enthalten, aber unter den Allergenen fehlt { $allergen }. Was stimmt?
   *[contains] Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“, aber unter den Allergenen fehlt { $allergen }. Was stimmt?
}
question-allergen-not-stated = { $traces ->
    [traces] Laut Zutatenverzeichnis kann { $ingredient } „{ $words }“ enthalten. Nennt die Packung { $allergen } als Allergen?
   *[contains] Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Nennt die Packung { $allergen } als Allergen?
}
question-animal-in-vegan = { $ingredient } ist als vegan eingetragen, aber das Zutatenverzeichnis nennt etwas Tierisches („{ $words }“). Was stimmt?
question-animal = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Bezeichnet der Hersteller die Zutat als vegan?
question-perhaps-animal = „{ $words }“ in { $ingredient } kann pflanzlich oder tierisch sein. Bezeichnet der Hersteller die Zutat als vegan?
question-phenylalanine = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Für das Getränk ist möglicherweise der Hinweis „enthält eine Phenylalaninquelle“ vorgeschrieben. Ist er angebracht?
question-polyol-mention = { $ingredient } enthält mehr als 10 % mehrwertige Alkohole („{ $words }“). Für das Getränk ist möglicherweise der Hinweis „kann bei übermäßigem Verzehr abführend wirken“ vorgeschrieben. Ist er angebracht?
question-polyol-not-stated = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Wie viel Gramm mehrwertige Alkohole gibt die Packung an?
question-sweetener = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Neben der Bezeichnung des Getränks ist möglicherweise „mit Süßungsmittel(n)“ vorgeschrieben. Steht es dort?
question-children-colour = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Für das Getränk ist möglicherweise der Hinweis „kann Aktivität und Aufmerksamkeit bei Kindern beeinträchtigen“ vorgeschrieben. Ist er angebracht?
question-quinine = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Wo das Getränk verkauft wird, ist möglicherweise die Angabe von Chinin vorgeschrieben. Ist sie vorhanden?
question-caffeine-not-stated = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Wie viel Milligramm Koffein gibt die Packung an?
question-caffeine = Das Zutatenverzeichnis von { $ingredient } nennt „{ $words }“. Wo das Getränk verkauft wird, ist möglicherweise die Angabe von zugesetztem Koffein vorgeschrieben. Ist sie vorhanden?
