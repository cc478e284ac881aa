# The starter kit: what nearly every counter has, for a book that begins empty.
starter-kit = Grundausstattung hinzufügen
starter-kit-about = Wasser, Eis, Zucker und Milch mit veröffentlichten Werten sowie Messlöffel, Pumpe, Löffel, Eisschaufel, Becher und Shaker in üblichen Größen, die angenommen sind. Alles lässt sich behalten, ändern oder entfernen; einmal Rückgängig nimmt die ganze Ausstattung zurück.

# The names of its parts.
kit-water = Wasser
kit-ice = Eis
kit-sugar = Zucker
kit-milk = Vollmilch
kit-scoop = Messlöffel 15 ml
kit-pump = Pumpe 8 ml
kit-spoon = Löffel 5 ml
kit-ice-scoop = Eisschaufel 180 ml
kit-cup-500 = Becher 500 ml
kit-cup-700 = Becher 700 ml
kit-shaker = Shaker 700 ml

# The notes of its measures and vessels.
kit-assumed-measure = Angenommen: eine übliche Größe. Zehn Portionen der eigenen Dosierhilfe wiegen.
kit-assumed-vessel = Angenommen: eine übliche Größe. Das eigene Gefäß bis zum Rand füllen, leer wiegen und den Preis eingeben.
