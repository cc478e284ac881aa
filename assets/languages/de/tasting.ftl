# Was Blindverkostungen und Refraktometer zeigen.

# Was die Leute in einer Prüfung taten.
tasting-result = { $test ->
    [triangle] { $right } von { $people } Personen wählten den abweichenden Becher.
    [duo-trio] { $right } von { $people } Personen wählten den Becher, der der Referenz gleicht.
    [pair] { $right } von { $people } Personen wählten den Becher, von dem mehr erwartet wurde.
   *[pair-either-way] { $right } von { $people } Personen wählten die erste Probe.
} Durch bloßes Raten hat ein Ergebnis, das mindestens so weit vom Zufall entfernt ist, eine Wahrscheinlichkeit von { $chance }.
tasting-needed = { $test ->
    [pair-either-way] Bei { $people } Personen müssen mindestens { $answers } dieselbe Probe wählen; Raten führt dazu mit einer Wahrscheinlichkeit von { $chance }.
   *[other] Bei { $people } Personen zeigen mindestens { $answers } richtige Antworten einen Unterschied; Raten führt dazu mit einer Wahrscheinlichkeit von { $chance }.
}
# { $least } ist die kleinste Gruppe, 0, wo keine groß genug ist.
tasting-cannot-show = { $least ->
    [0] { $people } Personen können bei { $level } keinen Unterschied zeigen, was immer sie antworten, und auch keine größere Gruppe.
   *[other] { $people } Personen können bei { $level } keinen Unterschied zeigen, was immer sie antworten. Es braucht mindestens { $least }.
}
# Ein Unterschied, als Teil eines Satzes. { $share } ist ein Prozentsatz; d′ ist das von Thurstone.
tasting-effect-share = einen Unterschied, den { $share } der Menschen schmecken,
tasting-effect-d-prime = einen Unterschied von d′ { $size }
# { $effect } ist eines der beiden.
tasting-power = { $people } Personen finden { $effect } mit einer Wahrscheinlichkeit von { $power }.
tasting-shows = Damit er mit einer Wahrscheinlichkeit von { $power } gefunden wird, müssen { $share } der Menschen einen Unterschied schmecken.
tasting-least-panel = { $people } Personen finden { $effect } mit einer Wahrscheinlichkeit von { $power }; { $answers } davon müssen richtig antworten.
tasting-no-panel = Selbst { $most } Personen finden { $effect } nicht oft genug.
# { $people } ist die Gruppe, 0, wo keine groß genug ist.
tasting-least-for-similar = { $people ->
    [0] Keine Gruppe ist groß genug, um mit { $confidence } Sicherheit zu zeigen, dass höchstens { $share } der Menschen einen Unterschied schmecken.
   *[other] Um mit { $confidence } Sicherheit zu zeigen, dass höchstens { $share } der Menschen einen Unterschied schmecken, braucht es { $people } Personen, selbst bei gleichen Bechern.
}
tasting-pair-shows-more = Wenn Sie vorher sagen können, welcher Becher mehr haben müsste, fragen Sie danach: Ein Paarvergleich findet { $effect } mit einer Wahrscheinlichkeit von { $pair }, diese Prüfung mit { $power }.
tasting-one-answer-each = Jede Person zählt einmal. Wer noch einmal verkostet, ist keine weitere Person.
tasting-hide-colour = Servieren Sie die Becher gleich in Farbe, Füllung und Temperatur, mit Deckel oder bei gedämpftem Licht, wenn sie verschieden aussehen.
tasting-found = Das ist ein Unterschied: Die Wahrscheinlichkeit liegt innerhalb der vereinbarten { $level }.
tasting-tasters = Von allen Menschen schmecken ihn nach bester Schätzung { $share }, mindestens { $least } und höchstens { $most } (jeweils mit { $confidence } Sicherheit).
tasting-not-found = Es wurde kein Unterschied gefunden. Das heißt nicht, dass es gleich schmeckt: Bis zu { $most } der Menschen schmecken vielleicht einen ({ $confidence } Sicherheit).
tasting-similar = Höchstens { $share } der Menschen schmecken einen Unterschied ({ $confidence } Sicherheit): Die Becher sind gleich, wie vereinbart.
tasting-not-similar = Die Becher sind nicht als gleich erwiesen: Bis zu { $most } der Menschen schmecken vielleicht einen Unterschied ({ $confidence } Sicherheit), vereinbart waren höchstens { $share }.
tasting-repeated = { $repeated ->
    [one] Eine weitere Antwort derselben { $people } Personen wird nicht gezählt: Sie fügt keine Person hinzu.
   *[other] { $repeated } weitere Antworten derselben { $people } Personen werden nicht gezählt: Sie fügen keine Person hinzu.
}

# Drei Becher in einer Rangordnung. Eine Rangsumme ist klein für den Becher mit dem meisten. F ist die Prüfgröße von Friedman, L die von Page.
tasting-rank-needed = Bei { $people } Personen zeigen die Rangsummen ab F = { $friedman } einen Unterschied; durch Raten kommt das mit einer Wahrscheinlichkeit von { $chance } vor.
tasting-rank-order-needed = Bei { $people } Personen ist die vorhergesagte Reihenfolge ab L = { $page } gezeigt; durch Raten kommt das mit einer Wahrscheinlichkeit von { $chance } vor.
# Ein Unterschied als Teil eines Satzes.
tasting-rank-effect-share = eine Rangordnung, die { $share } der Menschen schmecken,
tasting-rank-effect-d-prime = einen Unterschied von d′ { $size } zwischen dem ersten und dem letzten Becher, mit dem dritten in der Mitte,
# { $effect } ist eines der beiden.
tasting-rank-least-panel = { $people } Personen finden { $effect } mit einer Wahrscheinlichkeit von { $power }.
tasting-rank-shows = Damit sie mit einer Wahrscheinlichkeit von { $power } gefunden wird, müssen { $share } der Menschen die Rangordnung der Becher schmecken.
tasting-rank-predicted-shows-more = Wenn Sie die Reihenfolge vorher sagen können, tun Sie es: Mit einer vorhergesagten Reihenfolge finden Sie { $effect } mit einer Wahrscheinlichkeit von { $predicted } statt { $power }.
tasting-rank-sums = Rangsummen von { $people } Personen, je kleiner, desto mehr: A { $a }, B { $b }, C { $c }.
tasting-rank-friedman = { $counted ->
    [exact] F = { $friedman }. Durch Raten allein liegen Summen mit einer Wahrscheinlichkeit von { $chance } mindestens so weit auseinander.
   *[approximate] F = { $friedman }. Durch Raten allein liegen Summen mit einer Wahrscheinlichkeit von etwa { $chance } mindestens so weit auseinander.
}
tasting-rank-page = Vorhergesagte Reihenfolge { $order }: L = { $page }. Durch Raten allein kommt mindestens so viel mit einer Wahrscheinlichkeit von { $chance } vor.
tasting-rank-found = Die Becher unterscheiden sich: Die Wahrscheinlichkeit liegt innerhalb der { $level }, die Sie vereinbart haben.
tasting-rank-order-found = Die vorhergesagte Reihenfolge { $order } ist gezeigt: Die Wahrscheinlichkeit liegt innerhalb der { $level }, die Sie vereinbart haben. Welche Nachbarn sich unterscheiden, zeigt das nicht.
tasting-rank-not-found = Auf dem Niveau von { $level } wurde kein Unterschied gefunden. Das heißt nicht, dass die Becher gleich schmecken.
tasting-rank-least-difference = Zwei Becher unterscheiden sich, wenn ihre Rangsummen mindestens { $difference } auseinanderliegen (Niveau { $level }).
tasting-rank-apart = { $more } hat mehr als { $less }: Ihre Rangsummen liegen { $difference } auseinander.
tasting-rank-not-apart = Über { $a } und { $b } ist nichts gezeigt: Ihre Rangsummen liegen { $difference } auseinander.

# Früher aufhören.
tasting-rule = Hören Sie auf, sobald die Tabelle es sagt, und nur dann. Mit bis zu { $most } Personen gelten gleiche Becher mit einer Wahrscheinlichkeit von { $alarms } als verschieden, und der Unterschied wird mit { $power } gefunden. Im Mittel verkosten { $equal } Personen gleiche Becher und { $different } verschiedene.
tasting-no-rule = Für diese Prüfung gibt es keine Regel, um früher aufzuhören.
tasting-too-many = dreistellige Codes gibt es für höchstens { $most } Personen
tasting-unbalanced = { $people } Personen sind kein Vielfaches von { $multiple }: Manche Reihenfolgen werden einmal öfter serviert als andere.

# Ein Refraktometer.
brix-corrected = { $solids } bei { $scale }: die Anzeige { $reading }, um { $correction } korrigiert für { $temperature }.
brix-compensated = { $solids }, denn das Gerät korrigiert selbst für die Temperatur.
brix-product = Das Produkt enthält { $solids } g lösliche Feststoffe in 100 g.
# { $part } ist, womit verglichen wird: das Etikett oder das berechnete Getränk.
brix-agrees = { $part ->
    [label] Das stimmt mit den { $expected } auf dem Etikett überein.
   *[drink] Das stimmt mit den berechneten { $expected } überein.
}
brix-above = { $part ->
    [label] Das ist mehr als die { $expected } auf dem Etikett, um mehr, als beide Unsicherheiten erklären.
   *[drink] Das ist mehr als die berechneten { $expected }, um mehr, als beide Unsicherheiten erklären: weniger Wasser oder Eis oder mehr Süßung als im Rezept.
}
brix-below = { $part ->
    [label] Das ist weniger als die { $expected } auf dem Etikett, um mehr, als beide Unsicherheiten erklären.
   *[drink] Das ist weniger als die berechneten { $expected }, um mehr, als beide Unsicherheiten erklären: mehr Wasser oder Eis oder weniger Süßung als im Rezept.
}
brix-not-computed = Der °Brix-Wert dieses Getränks ist nicht bekannt: Geben Sie ein, was auf den Etiketten fehlt.
brix-misled-dairy = Milchbestandteile und Fett führen ein Refraktometer in die Irre: Vergleichen Sie damit nur Gleiches mit Gleichem.
brix-misled-fibre = Fruchtfleisch, Ballaststoffe und Stärke führen ein Refraktometer in die Irre: Seihen Sie die Probe ab, und vergleichen Sie nur Gleiches mit Gleichem.
brix-too-weak = { $solids } ist kaum mehr als die Unsicherheit. Reinen Tee kann ein Refraktometer nicht messen.
brix-more-than-all = Das ist mehr, als das Produkt selbst wiegt: Prüfen Sie die Gewichte und die Anzeige.
brix-temperature-outside = korrigiert werden kann bei Temperaturen von { $least } bis { $most }
brix-reading-outside = die Skala reicht von { $least } bis { $most }
