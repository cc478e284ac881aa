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
