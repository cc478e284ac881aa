# A figure in a sentence: what a screen reader says of it. $figure has its unit.
value-known = { $name }: { $figure }
value-with-uncertainty = { $name }: { $figure }, ± { $u }
value-not-known = { $name }: nicht bekannt
value-short-not-known = { $name } nicht bekannt
value-at-most = höchstens { $figure }
# Why a figure is not known, or is only known in part.
value-not-stated = nicht angegeben: { $ingredients }

# An der Stelle einer Zahl, die sich nicht in Ziffern schreiben lässt.
value-out-of-range = (außerhalb des Bereichs)
