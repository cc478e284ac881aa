# A figure in a sentence: what a screen reader says of it. $figure has its unit.
value-known = { $name }: { $figure }
value-with-uncertainty = { $name }: { $figure }, ± { $u }
value-not-known = { $name }: not known
value-short-not-known = { $name } not known
value-at-most = at most { $figure }
# Why a figure is not known, or is only known in part.
value-not-stated = not stated: { $ingredients }

# In place of a number that no digits say.
value-out-of-range = (out of range)
