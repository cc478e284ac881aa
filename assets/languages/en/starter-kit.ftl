# The starter kit: what nearly every counter has, for a book that begins empty.
starter-kit = Add a starter kit
starter-kit-about = Water, ice, sugar and milk with published figures, and a scoop, pump, spoon, ice scoop, cups and a shaker of usual sizes, which are assumed. Keep, change or remove any of them; one undo takes the kit back.

# The names of its parts.
kit-water = Water
kit-ice = Ice
kit-sugar = Sugar
kit-milk = Whole milk
kit-scoop = Scoop 15 ml
kit-pump = Pump 8 ml
kit-spoon = Spoon 5 ml
kit-ice-scoop = Ice scoop 180 ml
kit-cup-500 = Cup 500 ml
kit-cup-700 = Cup 700 ml
kit-shaker = Shaker 700 ml

# The notes of its measures and vessels.
kit-assumed-measure = Assumed: a usual size. Weigh ten uses of yours.
kit-assumed-vessel = Assumed: a usual size. Fill yours to the rim, weigh it empty and enter its price.
