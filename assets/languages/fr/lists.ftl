# Two clauses of one sentence; the second may be a pair again.
clauses = { $before } ; { $after }
# A figure of which a part is not known.
at-least = au moins { $figure }
