# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = { $celsius } al servir, por encima de { $limit }: demasiado caliente para beberse de inmediato, y un derrame causa quemaduras; dejar enfriar o añadir agua fría y aplicar la normativa local
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = { $celsius } al servir, por encima de { $limit }: demasiado caliente para beberse de inmediato, y un derrame causa quemaduras (de segundo grado o más profundas en la piel de adultos en { $adult }, y en la de niños pequeños { $child ->
    [sooner] aún antes
   *[other] en { $child }
}); dejar enfriar o añadir agua fría y aplicar la normativa local
caution-hot-through-wide-straw = { $celsius } por una pajita ancha, por encima de { $limit }: la bebida llega caliente a la garganta; servir sin pajita o menos caliente y aplicar la normativa local
caution-scalds = { $celsius } al servir: un derrame causa quemaduras; cerrar el vaso y aplicar la normativa local
caution-scalds-burns = { $celsius } al servir: un derrame causa quemaduras (de segundo grado o más profundas en la piel de adultos en { $adult }, y en la de niños pequeños { $child ->
    [sooner] aún antes
   *[other] en { $child }
}); cerrar el vaso y aplicar la normativa local
scald-time-at-most = como máximo { $time }
scald-time-less-than = menos de { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. Solo según los ingredientes: las cocteleras, los cacitos medidores y las batidoras de uso común pueden dejar trazas; aplicar la normativa local
# $named are clauses of caution-named.
caution-statements-contradict = la lista de ingredientes contradice lo registrado: { $named }; leer el envase antes de informar a un cliente
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }: «{ $words }»
caution-claims-contradicted = el libro se contradice: { $claims }; leer los envases antes de informar a un cliente
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } figura como { $claim ->
    [vegan] «vegano»
    [dairy-free] «sin lácteos»
   *[allergens] «alérgenos completos»
}, pero sus alérgenos incluyen { $allergen }
claim-against-honey = { $ingredient } figura como { $claim ->
    [vegan] «vegano»
    [dairy-free] «sin lácteos»
   *[allergens] «alérgenos completos»
}, pero sus azúcares son los de la miel
claim-against-milk-sugars = { $ingredient } figura como { $claim ->
    [vegan] «vegano»
    [dairy-free] «sin lácteos»
   *[allergens] «alérgenos completos»
}, pero sus azúcares son los de la leche
claim-against-not-dairy-free = { $ingredient } figura como { $claim ->
    [vegan] «vegano»
    [dairy-free] «sin lácteos»
   *[allergens] «alérgenos completos»
} y a la vez como «con lácteos»
claim-against-part = { $ingredient } figura como { $claim ->
    [vegan] «vegano»
    [dairy-free] «sin lácteos»
   *[allergens] «alérgenos completos»
}, pero su componente { $part } no
claim-against-every-part = { $claim ->
    [vegan] { $ingredient } figura como «no vegano», pero todos sus componentes son veganos
    [dairy-free] { $ingredient } figura como «con lácteos», pero ninguno de sus componentes lleva lácteos
   *[allergens] { $ingredient } figura como «alérgenos incompletos», pero los alérgenos de todos sus componentes están completos
}
claim-against-allergen-of-part = los alérgenos de { $ingredient } omiten { $allergen }, que está en su componente { $part }

caution-choking = { $ingredients }: los niños pequeños pueden aspirar hacia las vías respiratorias, a través de una pajita, trozos pequeños y gomosos (BfR 2012, hasta 4 años); avisar a los clientes y aplicar la normativa local

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }; aplicar la normativa local
kept-warm = { $ingredient } a { $celsius }: si se conserva a esa temperatura, el mantenimiento en caliente requiere al menos { $uk } (Reino Unido) o { $us } (EE. UU.)
kept-cold = { $ingredient } a { $celsius }: si se conserva a esa temperatura, el mantenimiento en frío requiere como máximo { $uk } (Reino Unido) o { $us } (EE. UU.)

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. Según las reglas del local; aplicar la normativa local
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }; aplicar la normativa local
use-within-of-brewing = { $ingredient }: usar en un plazo de { $time } tras la infusión
use-long-after-brewing = { $ingredient }: usar en un plazo de { $time } tras la infusión según la regla del local, más tiempo que las { $limit } del Tea Council of the USA conforme al memorando de los CDC de 1996
use-not-stated-after-brewing = { $ingredient }: el local no indica ninguna regla de conservación; el Tea Council of the USA señala { $limit } como máximo tras la infusión
use-within-of-making = { $ingredient }: usar en un plazo de { $time } tras la elaboración
use-not-stated-after-making = { $ingredient }: elaboración propia, no se indica cuánto se conserva
use-within-of-opening = { $ingredient }: usar en un plazo de { $time } tras la apertura
use-not-stated-after-opening = { $ingredient }: no se indica cuánto se conserva una vez abierto

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = { $acid } de ácido por 100 ml pueden cortar la leche o la soja: añadir la leche o la soja al final y en frío y servir de inmediato
caution-may-curdle = la leche o la soja pueden cortarse, porque no se indica el ácido de { $ingredients }: añadir la leche o la soja al final y en frío y servir de inmediato

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = { $caffeine } de cafeína: { $lines }
caffeine-above-single-dose = por encima de la dosis única de { $limit } para adultos (EFSA 2015); menos para embarazadas y niños
caffeine-may-disturb-sleep = { $limit } pueden alterar el sueño (EFSA 2015)
caffeine-high-content = { $caffeine }, por encima de { $limit }: salvo que su denominación incluya «té» o «café», puede ser obligatorio que la bebida lleve «Contenido elevado de cafeína» (Reglamento (UE) n.º 1169/2011, anexo III)
caution-caffeine-not-known = se desconoce la cafeína: { $ingredients }; leer las etiquetas antes de informar a un cliente
caution-caffeine-not-known-at-all = se desconoce la cafeína; leer las etiquetas antes de informar a un cliente

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = según las listas de ingredientes, puede ser obligatorio mencionar: { $mentions }; leer los envases y aplicar la normativa local
mention-phenylalanine = contiene una fuente de fenilalanina ({ $named })
mention-children-colour = colorantes que pueden tener efectos negativos sobre la actividad y la atención de los niños ({ $named })
mention-polyol = polialcoholes, cuyo consumo excesivo puede producir efectos laxantes ({ $named })
mention-quinine = quinina ({ $named })
mention-caffeine = cafeína añadida ({ $named })
mention-sweetener = con edulcorante(s) ({ $named })
mention-allergen = { $allergen } ({ $named })
mention-animal = un producto de origen animal ({ $named })
mention-perhaps-animal = un producto posiblemente de origen animal ({ $named })

caution-undissolved = { $sucrose } de sacarosa por { $whole } de sacarosa y agua, pero a { $celsius } se disuelven como máximo { $most } (Bubnik & Kadlec 1995): una parte queda en granos; usar menos azúcar o más agua
caution-runs-over = { $fill } de llenado ({ $cup }), pero solo cabe el { $most } por debajo del borde y del cierre: se desborda; usar menos cantidad o un vaso más grande
caution-not-known = se desconoce: { $gaps }; leer las etiquetas antes de informar a un cliente
gap-vegan = si es vegana

# What a caution is about; it stands before the sentence.
caution-kind-heat = calor
caution-kind-allergen = alérgeno
caution-kind-choking = atragantamiento
caution-kind-curdling = cuajado
caution-kind-caffeine = cafeína
caution-kind-additive = aditivo
caution-kind-holding = conservación
caution-kind-undissolved = sin disolver
caution-kind-fill = llenado
caution-kind-unknown = desconocido
