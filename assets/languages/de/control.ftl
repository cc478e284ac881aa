# Regelkarten von Maßen: ob eine Pumpe oder ein Löffel noch so dosiert wie zuvor. „Ein Maß“ ist ein Hub einer Pumpe, ein Löffel eines Löffels.

control-title = Regelkarte
control-water = Wasser
# Wovon eine Karte ist.
control-name = { $measure }, { $ingredient }
control-limits = { $days ->
    [one] { $day }: { $mean } je Maß. Nach 1 Tag hält der Zufall es zwischen { $least } und { $most }.
   *[other] { $day }: { $mean } je Maß. Nach { $days } Tagen hält der Zufall es zwischen { $least } und { $most }.
}
control-rough = Diese Grenzen sind grob: Für feste braucht es Messwerte von { $firm } Tagen.
# Was ein Tag zeigt.
control-signal = { $signal ->
    [outside] außerhalb der Grenzen
    [one-side] { $run } Tage hintereinander auf derselben Seite des Mittels
    [trend] { $run } Tage hintereinander in dieselbe Richtung
   *[spread] Messwerte eines Tages ungewöhnlich weit auseinander oder ungewöhnlich gleich
}
control-steady = Nichts deutet darauf hin, dass es anders dosiert.
# { $reason } ist eines der Anzeichen.
control-shift = { $direction ->
    [less] Seit { $day } ist ein Maß { $now } statt { $before }, { $percent } weniger: { $reason }.
   *[more] Seit { $day } ist ein Maß { $now } statt { $before }, { $percent } mehr: { $reason }.
}
control-moved-about = Freigegebene Getränke, die sich mitbewegen, sobald es so zählt, wie es jetzt dosiert:
control-moved = { $drink }: { $steps } Schritte von dem, was freigegeben wurde
control-moved-unknown = { $drink }: wie weit von dem, was freigegeben wurde, ist nicht bekannt
control-none-moved = Kein freigegebenes Getränk bewegt sich um mehr als einen merklichen Schritt.
control-too-few = { $days ->
    [one] Bisher Messwerte von 1 Tag: Eine Regelkarte braucht { $wanted }.
   *[other] Bisher Messwerte von { $days } Tagen: Eine Regelkarte braucht { $wanted }.
}
control-keep = Nur die Messwerte seit { $day } behalten
control-keep-hint = Das Maß zählt dann so, wie es jetzt dosiert, und seine Karte beginnt neu. Sie können das rückgängig machen.
control-day = Tag
control-mean = ein Maß
control-spread = Spannweite
control-lower = untere Grenze
control-upper = obere Grenze
control-shows = zeigt
control-table = Regelkarte
# Das Bild für alle, die es nicht sehen. { $limits } ist ein Satz, { $shift } ein weiterer.
control-picture = { $name }: { $count } Tage. { $limits } { $shift }
control-legend = Linie: das Mittel. Gestrichelt: die Grenzen. Gefüllt: ein Tag, der eine Änderung zeigt.
