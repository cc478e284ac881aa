# Die Bilanz: was gemessen wurde neben dem, was vorhergesagt war, und was das über die Unsicherheiten sagt (das ± jedes Werts).

record-title = Wie oft das ± hielt
record-about = Tragen Sie ein, was Sie an einem Becher messen. Das Programm behält es neben dem, was es an dem Tag sagte, und zählt, wie oft es stimmte.
record-class = { $class ->
    [dose] Dosen und Gewichte
    [temperature] Serviertemperatur
    [composition] Inhalt
    [sweetness] Süße
   *[flavour] Aromen
}
record-quantity = { $what ->
    [temperature] Temperatur
    [brix] °Brix
   *[weight] Gewicht
}
record-count = { $count ->
    [one] { $class }: { $inside } von 1 Messwert innerhalb von zwei ±.
   *[other] { $class }: { $inside } von { $count } Messwerten innerhalb von zwei ±.
}
# $times, $low, $high, $accepted sind Faktoren auf die Unsicherheiten.
record-verdict = { $verdict ->
    [too-few] Zu wenige, um es zu sagen, kleiner werden Unsicherheiten erst ab { $wanted }: Sie bleiben, wie sie sind (das { $low }- bis { $high }-Fache würde passen).
    [fits] Die Unsicherheiten passen: das { $low }- bis { $high }-Fache des Angenommenen; im Buch steht das { $accepted }-Fache.
    [too-small] Die Unsicherheiten sind zu klein: Das { $times }-Fache des Angenommenen ({ $low } bis { $high }) passt zu den Messwerten; im Buch steht das { $accepted }-Fache. Dann lägen { $inside } von { $count } innerhalb.
   *[too-large] Die Unsicherheiten sind zu groß: Das { $times }-Fache des Angenommenen ({ $low } bis { $high }) passt zu den Messwerten; im Buch steht das { $accepted }-Fache. Dann lägen { $inside } von { $count } innerhalb.
}
record-accepted = { $class }: seit { $day } mal { $times }, bei { $inside } von { $count } innerhalb.
record-accepted-by = { $class }: seit { $day } mal { $times }, übernommen von { $by } bei { $inside } von { $count } innerhalb.
record-of-cup = { $drink }, { $what }
record-reading = { $inside ->
    [yes] { $day }: { $what }: { $read }, vorhergesagt { $foretold }
   *[no] { $day }: { $what }: { $read }, vorhergesagt { $foretold }: außerhalb
}
record-tasting = { $inside ->
    [yes] { $day }: { $what }: kam heraus wie vorhergesagt
   *[no] { $day }: { $what }: kam anders heraus als vorhergesagt
}
record-file = In die Bilanz eintragen
record-file-hint = Die Messwerte oben werden bei diesem Getränk behalten, neben dem, was von ihnen vorhergesagt war.
record-not-foretold = Von diesem Getränk ist nichts vorhergesagt, woran sich diese Messwerte halten ließen.
record-filed = { $count ->
    [one] 1 Messwert dieses Getränks steht in der Bilanz.
   *[other] { $count } Messwerte dieses Getränks stehen in der Bilanz.
}
record-take-out = Den letzten herausnehmen
record-take = Diese Unsicherheiten verwenden
record-take-hint = Jedes ±, das auf ihnen beruht, wird angepasst, in allen Getränken. Kein Wert bewegt sich, und es lässt sich rückgängig machen.
record-give-up = Zurück zum Angenommenen
record-none = Noch lässt sich kein Messwert eines Bechers, kein Maß an zwei Tagen und keine Verkostung an Vorhergesagtes halten.
