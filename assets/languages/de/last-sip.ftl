# Ein Getränk von der Theke bis zum letzten Schluck.
last-sip-level = Es schmeckt von { $from } bis { $to } nach der Ausgabe, wie es soll: bei Temperatur, Süße und Tee innerhalb eines Schritts.
last-sip-level-once = Es schmeckt weniger als eine Minute lang, wie es soll: { $minutes } nach der Ausgabe.
last-sip-never = Es liegt nie bei Temperatur, Süße und Tee zugleich innerhalb eines Schritts.
last-sip-best = Am besten ist es nach { $minutes }, insgesamt { $steps } Schritte entfernt.
last-sip-nothing-known = Wie es schmecken soll, weiß niemand: Tragen Sie ein, was auf den Etiketten fehlt.
last-sip-end = Nach { $minutes } hat es { $temperature }.
last-sip-end-sweetness = Nach { $minutes } hat es { $temperature } und eine Süße von { $sweetness }.
last-sip-melts = { $basis ->
    [stated] Sein Eis schmilzt um { $rate }, wie der Laden angibt, und mit derselben Wärme erwärmt es sich.
   *[assumed] Sein Eis schmilzt um { $rate }, was angenommen ist, und mit derselben Wärme erwärmt es sich. Wiegen Sie das Eis eines stehenden Getränks, um es besser zu wissen.
}
last-sip-way-closure = { $closure ->
    [open] Offen
    [lid] Mit Deckel
   *[film] Mit Folie
}
last-sip-way-ice = Mit { $percent } des Eises
last-sip-other-level = { $way }: richtig von { $from } bis { $to }, am besten nach { $minutes }.
last-sip-other-never = { $way }: nie innerhalb eines Schritts, am besten nach { $minutes }, { $steps } Schritte entfernt.
last-sip-arrives = { $level ->
    [within] Nach { $minutes } unterwegs hat es { $temperature } und liegt innerhalb eines Schritts.
    [off] Nach { $minutes } unterwegs hat es { $temperature } und liegt nicht innerhalb eines Schritts.
   *[unknown] Nach { $minutes } unterwegs hat es { $temperature }.
}
last-sip-arrives-before-best = Am besten ist es später, { $best } nach der Ausgabe.
last-sip-arrives-at-best = Besser wird es danach nicht mehr.
last-sip-no-course = Wie es steht, ist nicht bekannt: ein leerer Becher, oder ein heißes Getränk, dessen Becher niemand kennt. Wählen Sie im Rezept einen Becher.
last-sip-way = unterwegs
last-sip-way-named = Minuten unterwegs zum Gast
last-sip-way-too-long = Das Bild endet nach { $minutes }: Einem Getränk, das länger unterwegs ist, wird nicht gefolgt.
last-sip-table = von der Theke bis zum letzten Schluck
last-sip-picture = { $figure } über { $minutes }: anfangs { $first }, am Ende { $last }, soll { $aim }
last-sip-picture-without-aim = { $figure } über { $minutes }: anfangs { $first }, am Ende { $last }
last-sip-legend = Linie: das Getränk, wie es steht; der Schleier darum: wo es in 95 von 100 Fällen liegt. Das Band quer: innerhalb eines Schritts von dem, was es sein soll. Senkrechte Linie: wann es am besten ist.
last-sip-legend-way = Getönt: unterwegs.
last-sip-otherwise = Auf andere Weise
last-sip-off-by = entfernt von dem, was es sein soll
