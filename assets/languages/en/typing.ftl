# Why what a person typed is not taken: numbers and amounts. Errors begin with a small letter and end without a full stop.

number-error-missing = a number is missing; enter, for example, 2, 7.5 or 1½
number-error-not-a-number = “{ $found }” is not a number; enter, for example, 2, 7.5 or 1½
# $thousands and $decimals are the two numbers that the text may mean, each written so that it can mean nothing else.
number-error-ambiguous = “{ $found }” can be read as { $thousands } or as { $decimals }; enter { $thousands } or { $decimals }
number-error-another-unit = “{ $found }” is not a unit of this figure; enter a number in { $unit }
number-error-out-of-range = “{ $found }” is out of range; enter a number below 1 000 000
amount-error-negative = “{ $found }” is less than nothing; enter 0 or more
amount-error-fill-target = “{ $found }” is not a fill amount; type “to 500 ml” or “to the rim”
amount-error-too-much = { $found } is more than a line can have; enter { $most } or less
# $known lists units and words of the shop's measures.
amount-error-no-measure = no measure matches “{ $word }”; use { $known }
amount-error-several-measures = “{ $word }” could be { $candidates }; type the full name
