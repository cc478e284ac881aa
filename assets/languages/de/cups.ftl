# Hundert Becher eines Getränks, wie sie an der Theke entstehen.

# Woran die Becher gemessen werden, anstelle von { $held }.
cups-the-standard = der Standard
cups-the-recipe = das Rezept, wie es geschrieben steht
cups-some = { $count ->
    [one] { $count } von 100 Bechern schmeckt wie { $held }.
   *[other] { $count } von 100 Bechern schmecken wie { $held }.
}
cups-some-off = { $count ->
    [one] { $count } von 100 Bechern schmeckt wie { $held }; { $off }.
   *[other] { $count } von 100 Bechern schmecken wie { $held }; { $off }.
}
cups-all = Alle Becher schmecken wie { $held }.
cups-nearly-all = Mehr als 99 von 100 Bechern schmecken wie { $held }.
cups-hardly-any = Weniger als 1 von 100 Bechern schmeckt wie { $held }.
cups-hardly-any-off = Weniger als 1 von 100 Bechern schmeckt wie { $held }; { $off }.
cups-none = Kein Becher schmeckt wie { $held }.
cups-none-off = Kein Becher schmeckt wie { $held }; { $off }.
cups-off = { $count ->
    [one] { $count } ist { $change }
   *[other] { $count } sind { $change }
}
cups-off-holding = { $count ->
    [one] bei { $count } { $change }
   *[other] bei { $count } { $change }
}
cups-off-nearly-all = mehr als 99 sind { $change }
cups-off-holding-nearly-all = bei mehr als 99 { $change }
cups-off-all = alle sind { $change }
cups-off-holding-all = bei allen { $change }
cups-nothing-known = Wie diese Becher schmecken, weiß niemand: Kein Merkmal ist bekannt. Tragen Sie ein, was auf den Etiketten fehlt.
cups-drawn = { $cups } Becher in { $shifts } Schichten wurden aus dem gezogen, was an der Theke schwankt: { $share } von 100 schmecken so. Die schlechteste von zehn Schichten hat { $low } oder weniger, die beste { $high } oder mehr.
cups-recipe-off = Das Rezept selbst ist { $changes }, auch wenn nichts schwankt.
cups-not-known = { $axes }: bei diesen Bechern nicht bekannt. Es können weniger so schmecken.

cups-helps-level = Das Rezept wieder dem Standard angleichen: { $share } von 100 Bechern.
cups-helps-weigh = { $grams } { $ingredient } wiegen, statt { $amount } abzumessen: { $share } von 100 Bechern.
cups-helps-smaller = { $ingredient } mit halb so großem Maß ({ $measure }) doppelt so oft abmessen: { $share } von 100 Bechern.
cups-helps-recalibrate = Täglich prüfen, was das Maß gibt ({ $measure }), und es berichtigen: { $share } von 100 Bechern.
cups-helps-thermometer = Mit einem Thermometer auf ± { $limits } halten: { $what }. Dann { $share } von 100 Bechern.
cups-helps-nothing = Nichts, was an der Theke getan werden kann, bringt merklich mehr Becher dorthin.
cups-share-all = alle
cups-share-nearly-all = mehr als 99
cups-share-hardly-any = weniger als 1
cups-share-none = keiner

cups-each-cup = Von Becher zu Becher schwankt vor allem: { $causes }.
cups-each-shift = Von Schicht zu Schicht schwankt vor allem: { $causes }.
cups-held = Was in jedem Becher gleich ist, streut nicht, wie gut es auch bekannt ist, und bleibt, wie es ist: Etiketten, andere Angaben zu Zutaten und was ein Maß im Mittel gibt.

# Warum ein Becher abweicht.
why-off-reading = { $measured ->
    [weight] { $side ->
        [above] Er wiegt { $read }, mehr als die { $should }, die er wiegen soll.
        [below] Er wiegt { $read }, weniger als die { $should }, die er wiegen soll.
       *[as-expected] Er wiegt { $read }, wie er soll: { $should }.
    }
    [temperature] { $side ->
        [above] Er hat { $read }, mehr als die { $should }, die er haben soll.
        [below] Er hat { $read }, weniger als die { $should }, die er haben soll.
       *[as-expected] Er hat { $read }, wie er soll: { $should }.
    }
    [brix] { $side ->
        [above] Abgelesen sind { $read }, mehr als die { $should }, die es sein sollen.
        [below] Abgelesen sind { $read }, weniger als die { $should }, die es sein sollen.
       *[as-expected] Abgelesen sind { $read }, wie es sein soll: { $should }.
    }
   *[ice] { $side ->
        [above] Er enthält { $read } Eis, mehr als die { $should }, die es sein sollen.
        [below] Er enthält { $read } Eis, weniger als die { $should }, die es sein sollen.
       *[as-expected] Er enthält { $read } Eis, wie es sein soll: { $should }.
    }
}
why-off-not-known = { $measured ->
    [weight] Was dieses Getränk wiegen soll, ist nicht bekannt: { $read } lässt sich nicht vergleichen.
    [temperature] Wie warm dieses Getränk sein soll, ist nicht bekannt: { $read } lässt sich nicht vergleichen.
    [brix] Der °Brix-Wert dieses Getränks ist nicht bekannt: { $read } lässt sich nicht vergleichen.
   *[ice] In diesem Getränk ist kein Eis, mit dem sich { $read } vergleichen ließe.
}
why-off-nothing-to-compare = Nichts von dem, was abgelesen wurde, lässt sich mit dem Getränk vergleichen.
why-off-cause = { $cause } ({ $chance })
why-off-likely = Am wahrscheinlichsten: { $cause } ({ $chance }).
why-off-others = Weniger wahrscheinlich: { $causes }.
why-off-cannot-tell = Diese Werte sagen nicht, was es war: { $causes }.
why-off-unexplained = Keine einzelne Ursache erklärt das: Mehr als eines ging schief, oder etwas wurde falsch abgelesen.
why-off-next = { $measured ->
    [weight] Wiegen Sie als Nächstes, was im Becher ist. Die wahrscheinlichste Ursache hat dann im Mittel { $chance }.
    [temperature] Messen Sie als Nächstes die Temperatur. Die wahrscheinlichste Ursache hat dann im Mittel { $chance }.
    [brix] Lesen Sie als Nächstes den °Brix-Wert ab. Die wahrscheinlichste Ursache hat dann im Mittel { $chance }.
   *[ice] Fischen Sie als Nächstes das Eis heraus und wiegen Sie es. Die wahrscheinlichste Ursache hat dann im Mittel { $chance }.
}
why-off-over = mehr als { $percent }
why-off-under = weniger als { $percent }

fault-none = nur die übliche Streuung
fault-one-more = { $uses } { $ingredient } zu viel
fault-one-fewer = { $uses } { $ingredient } zu wenig
fault-left-out = { $ingredient } vergessen
fault-too-much = { $grams } { $ingredient } zu viel
fault-too-little = { $grams } { $ingredient } zu wenig
fault-warmer = { $what }, { $kelvin } zu warm
fault-cooler = { $what }, { $kelvin } zu kühl

# Die Becher neben dem Geschmacksbild.
cups-title = Hundert Becher
cups-show = Hundert Becher zeigen
cups-hide = Hundert Becher ausblenden
cups-drawing = Becher werden gezogen …
cups-nothing-in-it = Im Becher ist noch nichts.
cups-strip-about = Jeder Punkt ist einer von hundert Bechern, das Band ein merklicher Schritt beiderseits. Rechts: Becher von 100, die darin liegen.
cups-strip = { $axis }: { $within } von 100 Bechern innerhalb eines Schritts, { $less } { $fewer }, { $more } { $further }.
cups-what-helps = Was am meisten helfen würde
cups-help-in-place = { $place }. { $help }

# Ein Becher, der abweicht, beim Servieren.
serving-cup-about = Geben Sie ein, was Sie an einem Becher wiegen oder ablesen, gleich was davon. Das Gewicht ist das des Inhalts, ohne den Becher.
serving-cup-reading = { $measured ->
    [weight] Gewicht
    [temperature] Temperatur
    [brix] °Brix
   *[ice] Eis darin
}
serving-cup-reading-named = { $measured ->
    [weight] Gewicht des Becherinhalts
    [temperature] Temperatur des Bechers
    [brix] °Brix des Bechers
   *[ice] Gewicht des Eises im Becher
}
