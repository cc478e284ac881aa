# The fold of the forms in which a text of the book gets its words in another language.

other-languages-title = In anderen Sprachen
other-languages-count = { $count ->
    [one] 1 Sprache
   *[other] { $count } Sprachen
}
other-languages-show = Wortlaut in anderen Sprachen anzeigen
other-languages-hide = Wortlaut in anderen Sprachen ausblenden
other-languages-language = Sprache des Wortlauts
other-languages-what = Karten drucken diesen Wortlaut. Ein Text, dessen Feld leer ist, wird so gedruckt, wie er geschrieben steht. Ändert sich ein Text, wird sein Wortlaut nicht mehr gedruckt: Er gehört zu dem, was vorher dastand.

# $kind is one of the kinds below.
other-languages-text = { $kind }: { $text }
# $language is called what its speakers call it: "Français".
other-languages-field = { $language } für { $kind } „{ $text }“
other-languages-lost = Für Texte, die es nicht mehr gibt

## What a text is; inside a sentence

other-languages-name = Name
other-languages-version-name = Version
other-languages-instruction = Anweisung
other-languages-line-note = Notiz zu einer Zeile
other-languages-note = Notiz
other-languages-flavour = Aroma
other-languages-level = Stufe
other-languages-was = früherer Text
