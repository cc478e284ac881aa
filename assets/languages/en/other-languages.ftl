# The fold of the forms in which a text of the book gets its words in another language.

other-languages-title = In other languages
other-languages-count = { $count ->
    [one] 1 language
   *[other] { $count } languages
}
other-languages-show = Show the words in other languages
other-languages-hide = Hide the words in other languages
other-languages-language = Language of the words
other-languages-what = Cards print these words. A text whose field is empty is printed as it is written. When a text changes, its words are no longer printed: they belong to what it said.

# $kind is one of the kinds below.
other-languages-text = { $kind }: { $text }
# $language is called what its speakers call it: "Deutsch".
other-languages-field = { $language } for the { $kind } “{ $text }”
other-languages-lost = For texts that are no longer there

## What a text is; inside a sentence

other-languages-name = name
other-languages-version-name = version
other-languages-instruction = instruction
other-languages-line-note = note on a line
other-languages-note = note
other-languages-flavour = flavour
other-languages-level = level
other-languages-was = former text
