# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = beim Servieren { $celsius }, über { $limit }: zu heiß zum sofortigen Trinken, und Verschüttetes verbrüht die Haut; abkühlen lassen oder kaltes Wasser zugeben und örtliches Lebensmittelrecht beachten
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = beim Servieren { $celsius }, über { $limit }: zu heiß zum sofortigen Trinken, und Verschüttetes verbrüht die Haut (Verbrühung zweiten Grades oder tiefer bei Erwachsenen in { $adult }, bei kleinen Kindern { $child ->
    [sooner] noch schneller
   *[other] in { $child }
}); abkühlen lassen oder kaltes Wasser zugeben und örtliches Lebensmittelrecht beachten
caution-hot-through-wide-straw = { $celsius } durch einen dicken Trinkhalm, über { $limit }: Das Getränk gelangt heiß in den Rachen; ohne Trinkhalm oder kühler servieren und örtliches Lebensmittelrecht beachten
caution-scalds = beim Servieren { $celsius }: Verschüttetes verbrüht die Haut; Becher verschließen und örtliches Lebensmittelrecht beachten
caution-scalds-burns = beim Servieren { $celsius }: Verschüttetes verbrüht die Haut (Verbrühung zweiten Grades oder tiefer bei Erwachsenen in { $adult }, bei kleinen Kindern { $child ->
    [sooner] noch schneller
   *[other] in { $child }
}); Becher verschließen und örtliches Lebensmittelrecht beachten
scald-time-at-most = höchstens { $time }
scald-time-less-than = weniger als { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. Nur nach Zutaten: Gemeinsam benutzte Shaker, Messlöffel und Mixer können Spuren hinterlassen; örtliches Lebensmittelrecht beachten
# $named are clauses of caution-named.
caution-statements-contradict = das Zutatenverzeichnis widerspricht den Einträgen: { $named }; vor einer Auskunft an Gäste die Packung lesen
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }: „{ $words }“
caution-claims-contradicted = das Buch widerspricht sich: { $claims }; vor einer Auskunft an Gäste die Packungen lesen
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } ist { $claim ->
    [vegan] als vegan
    [dairy-free] als milchfrei
   *[allergens] mit vollständigen Allergenen
} eingetragen, aber die Allergene umfassen { $allergen }
claim-against-honey = { $ingredient } ist { $claim ->
    [vegan] als vegan
    [dairy-free] als milchfrei
   *[allergens] mit vollständigen Allergenen
} eingetragen, aber der enthaltene Zucker ist der von Honig
claim-against-milk-sugars = { $ingredient } ist { $claim ->
    [vegan] als vegan
    [dairy-free] als milchfrei
   *[allergens] mit vollständigen Allergenen
} eingetragen, aber der enthaltene Zucker ist der von Milch
claim-against-not-dairy-free = { $ingredient } ist { $claim ->
    [vegan] als vegan
    [dairy-free] als milchfrei
   *[allergens] mit vollständigen Allergenen
} und zugleich als nicht milchfrei eingetragen
claim-against-part = { $claim ->
    [vegan] { $ingredient } ist als vegan eingetragen, aber { $part } darin ist nicht vegan
    [dairy-free] { $ingredient } ist als milchfrei eingetragen, aber { $part } darin ist nicht milchfrei
   *[allergens] { $ingredient } ist mit vollständigen Allergenen eingetragen, aber die Allergene von { $part } darin sind nicht vollständig
}
claim-against-every-part = { $claim ->
    [vegan] { $ingredient } ist als nicht vegan eingetragen, aber alles darin ist vegan
    [dairy-free] { $ingredient } ist als nicht milchfrei eingetragen, aber alles darin ist milchfrei
   *[allergens] { $ingredient } ist mit unvollständigen Allergenen eingetragen, aber die Allergene von allem darin sind vollständig
}
claim-against-allergen-of-part = die Allergene von { $ingredient } nennen { $allergen } nicht, obwohl in { $part } enthalten

caution-choking = { $ingredients }: Kleine Kinder können kleine, gummiartige Stücke durch einen Trinkhalm einatmen (BfR 2012, bis 4 Jahre); Gäste warnen und örtliches Lebensmittelrecht beachten

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }; örtliches Lebensmittelrecht beachten
kept-warm = { $ingredient } mit { $celsius }: Bei Aufbewahrung mit dieser Temperatur erfordert das Heißhalten mindestens { $uk } (Vereinigtes Königreich) oder { $us } (USA)
kept-cold = { $ingredient } mit { $celsius }: Bei Aufbewahrung mit dieser Temperatur erfordert das Kühlhalten höchstens { $uk } (Vereinigtes Königreich) oder { $us } (USA)

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. Nach den Regeln des Ladens; örtliches Lebensmittelrecht beachten
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }; örtliches Lebensmittelrecht beachten
use-within-of-brewing = { $ingredient }: innerhalb von { $time } nach dem Aufbrühen verbrauchen
use-long-after-brewing = { $ingredient }: nach der Regel des Ladens innerhalb von { $time } nach dem Aufbrühen verbrauchen, länger als die { $limit } des Tea Council of the USA gemäß dem CDC-Memo von 1996
use-not-stated-after-brewing = { $ingredient }: Der Laden gibt keine Regel für die Standzeit an; der Tea Council of the USA nennt höchstens { $limit } nach dem Aufbrühen
use-within-of-making = { $ingredient }: innerhalb von { $time } nach der Herstellung verbrauchen
use-not-stated-after-making = { $ingredient }: hausgemacht, Haltbarkeit nicht angegeben
use-within-of-opening = { $ingredient }: innerhalb von { $time } nach dem Öffnen verbrauchen
use-not-stated-after-opening = { $ingredient }: Haltbarkeit nach dem Öffnen nicht angegeben

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = { $acid } Säure je 100 ml können Milch oder Soja gerinnen lassen: Milch oder Soja zuletzt und kalt zugeben und sofort servieren
caution-may-curdle = Milch oder Soja kann gerinnen, weil die Säure in { $ingredients } nicht angegeben ist: Milch oder Soja zuletzt und kalt zugeben und sofort servieren

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = { $caffeine } Koffein: { $lines }
caffeine-above-single-dose = über der Einzeldosis von { $limit } für Erwachsene (EFSA 2015); für Schwangere und Kinder weniger
caffeine-may-disturb-sleep = { $limit } können den Schlaf stören (EFSA 2015)
caffeine-high-content = { $caffeine }, über { $limit }: Sofern die Bezeichnung nicht „Tee“ oder „Kaffee“ enthält, ist für das Getränk möglicherweise der Hinweis „Erhöhter Koffeingehalt“ vorgeschrieben (Verordnung (EU) Nr. 1169/2011, Anhang III)
caution-caffeine-not-known = Koffein nicht bekannt: { $ingredients }; vor einer Auskunft an Gäste die Etiketten lesen
caution-caffeine-not-known-at-all = Koffein nicht bekannt; vor einer Auskunft an Gäste die Etiketten lesen

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = nach den Zutatenverzeichnissen ist möglicherweise anzugeben: { $mentions }; Packungen lesen und örtliches Lebensmittelrecht beachten
mention-phenylalanine = enthält eine Phenylalaninquelle ({ $named })
mention-children-colour = Farbstoffe, die Aktivität und Aufmerksamkeit bei Kindern beeinträchtigen können ({ $named })
mention-polyol = mehrwertige Alkohole, die bei übermäßigem Verzehr abführend wirken können ({ $named })
mention-quinine = Chinin ({ $named })
mention-caffeine = zugesetztes Koffein ({ $named })
mention-sweetener = mit Süßungsmittel(n) ({ $named })
mention-allergen = { $allergen } ({ $named })
mention-animal = ein tierisches Erzeugnis ({ $named })
mention-perhaps-animal = ein möglicherweise tierisches Erzeugnis ({ $named })

caution-undissolved = { $sucrose } Saccharose je { $whole } Saccharose und Wasser, bei { $celsius } lösen sich aber höchstens { $most } (Bubnik & Kadlec 1995): Ein Teil bleibt körnig; weniger Zucker oder mehr Wasser verwenden
caution-runs-over = Füllgrad { $fill } ({ $cup }), aber nur { $most } passen unter Rand und Verschluss: Der Becher läuft über; weniger einfüllen oder einen größeren Becher verwenden
caution-not-known = nicht bekannt: { $gaps }; vor einer Auskunft an Gäste die Etiketten lesen
gap-vegan = ob das Getränk vegan ist

# What a caution is about; it stands before the sentence.
caution-kind-heat = Hitze
caution-kind-allergen = Allergen
caution-kind-choking = Verschlucken
caution-kind-curdling = Ausflocken
caution-kind-caffeine = Koffein
caution-kind-additive = Zusatzstoff
caution-kind-holding = Haltbarkeit
caution-kind-undissolved = ungelöst
caution-kind-fill = Füllmenge
caution-kind-unknown = unbekannt
