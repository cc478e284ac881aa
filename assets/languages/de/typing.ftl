# Why what a person typed is not taken: numbers and amounts. Errors begin with a small letter and end without a full stop.

number-error-missing = eine Zahl fehlt; zum Beispiel 2 oder 7,5 oder 1½ eingeben
number-error-not-a-number = „{ $found }“ ist keine Zahl; zum Beispiel 2 oder 7,5 oder 1½ eingeben
# $thousands and $decimals are the two numbers that the text may mean, each written so that it can mean nothing else.
number-error-ambiguous = „{ $found }“ kann { $thousands } oder { $decimals } bedeuten; { $thousands } oder { $decimals } eingeben
number-error-another-unit = „{ $found }“ ist keine Einheit dieses Werts; eine Zahl in { $unit } eingeben
number-error-out-of-range = „{ $found }“ liegt außerhalb des Bereichs; eine Zahl unter 1 000 000 eingeben
amount-error-negative = „{ $found }“ ist weniger als nichts; 0 oder mehr eingeben
amount-error-fill-target = „{ $found }“ ist keine Füllmenge; „bis 500 ml“ oder „bis zum Rand“ eingeben
amount-error-too-much = mehr, als eine Zeile enthalten kann: { $found }; { $most } oder weniger eingeben
# $known lists units and words of the shop's measures.
amount-error-no-measure = keine Dosierhilfe passt zu „{ $word }“; { $known } verwenden
amount-error-several-measures = „{ $word }“ kann { $candidates } sein; den ganzen Namen eingeben
