/** German: the steps of the work sheet, in the infinitive, as a craft sheet is written. */
export const worksheetSteps: Record<string, string> = {
  'step.arrive-apart':
    'In einem geschlossenen Beutel lassen, getrennt von anderer Kleidung, bis es gereinigt ist. An Nähten, unter dem Kragen und in den Taschen ' +
    'nach Motten oder Wanzen sehen.',
  'step.arrive-hot-wash':
    'Bei 60\u00a0°C waschen, wenn das Etikett es erlaubt, und ganz trocknen. Steht dort weniger, danach richten; in den Trockner, wo das Etikett es ' +
    'erlaubt.',
  'step.arrive-tumble':
    'Nach Etikett waschen, dann mindestens eine halbe Stunde über 40\u00a0°C in den Trockner, soweit das Etikett es erlaubt.',
  'step.arrive-freeze':
    'Nie bei 60\u00a0°C waschen oder heiß trocknen: Es würde verfilzen, einlaufen oder verderben. Nach Etikett reinigen oder in einem geschlossenen ' +
    'Beutel drei Tage bei −18\u00a0°C einfrieren, dann lüften und ausbürsten.',
  'step.arrive-hide':
    'Nicht waschen. Mit einem nur feuchten Tuch abwischen, im Schatten lüften und gegen Motten drei Tage in einem geschlossenen Beutel einfrieren.',
  'step.arrive-by-label':
    'Nach Etikett reinigen. Fehlt das Etikett, drei Tage in einem geschlossenen Beutel bei −18\u00a0°C einfrieren, dann lüften.',
  'step.ready-washed':
    'Jetzt waschen oder dämpfen, so wie es später gewaschen wird: Es ist nie gewaschen worden und kann noch einlaufen. Danach neu messen.',
  'step.ready-pressed': 'Ganz glatt bügeln ({press|press}). Vorher die Taschen leeren.',
  'step.ready-measured':
    'Mit dem eigenen Maßband messen und vergleichen. Weicht ein Maß von dem unten ab, den Plan neu berechnen, bevor es losgeht.',
  'step.ready-clips':
    'Nadeln und Heftstiche lassen in diesem Stoff Löcher. Wo ein Schritt stecken oder heften sagt, mit Klammern halten oder in der Nahtzugabe ' +
    'stecken; beim Anprobieren still stehen.',
  'step.ready-sample':
    'Nadel: {needleSize}, {needle|needle}. Garn: {thread|thread}. Auf einem Rest von ähnlichem Stoff, so dick gefaltet wie die Naht, zur Probe ' +
    'nähen: {stitch|stitch}, {stitchMm} mm ({spi} auf den Zoll).',
  'step.ready-tight-at-first': 'Starrer Denim gibt beim Tragen nach. Erst etwas eng anpassen.',
  'step.finish-pressed': 'Das ganze Stück bügeln ({press|press}) und hängen lassen, bis es kalt ist.',
  'step.finish-steamed': 'Das ganze Stück dämpfen ({press|press}) und flach liegen lassen, bis es kalt und trocken ist.',
  'step.finish-tried': 'Anprobieren, sitzen und greifen, dann messen. Es sollte jetzt messen, was unten steht.',
  'step.try-pinned':
    'Über dem anprobieren, was dazu getragen wird. Stehen, sitzen, bücken; umstecken, bis es richtig hängt. Wo umgesteckt ist, das eigene Maß ' +
    'neben das obige schreiben: Es gilt von hier an.',
  'step.try-basted':
    'Geheftet anprobieren. Sitzen, gehen, greifen. Neu heften, wenn es zieht; nichts wird genäht oder geschnitten, bevor es stimmt.',
  'step.try-safety-pinned': 'Die Enden mit Sicherheitsnadeln halten und eine Viertelstunde tragen, bevor etwas genäht wird.',
  'step.try-pinned-shut': 'An der neuen Stelle zustecken und anprobieren, auch im Sitzen. Nichts darf schief ziehen.',
  'step.try-length':
    'Mit den Schuhen anprobieren, die dazu getragen werden, gerade stehend, auf beiden Seiten abgesteckt. Jemand anders sieht sich den Saum an. ' +
    'Wird eine Nadel versetzt, gilt von hier an das eigene Maß.',
  'step.try-turned': 'Mit rundum hochgestecktem Saum anprobieren, bevor Stoff wegkommt.',
  'step.ease-fold':
    'Das Bein ist um das Maß unten weiter als die alte Kante: beim Heften gleichmäßig einhalten oder das Bein erst schmaler nähen.',
  'step.try-fold':
    'Mit gesteckter Falte anprobieren, die alte Kante nach unten geklappt: Sie muss vorn und hinten in der richtigen Höhe hängen.',
  'step.try-turn-up': 'Mit den Umschlägen an ihrer neuen Stelle gesteckt anprobieren.',
  'step.try-arms': 'Anprobieren und die Arme beugen: Die Kante muss noch den Handgelenkknochen bedecken oder enden, wo sie enden soll.',
  'step.try-cuffs': 'Die Manschetten geknöpft anprobieren: Offen geht die Hand hindurch, geschlossen rutscht die Manschette nicht darüber.',
  'step.try-sleeves':
    'Mit eingehefteten Ärmeln anprobieren. Sie hängen etwas nach vorn, ohne an der Ärmelkugel zu ziehen; sonst den Ärmel im Armloch drehen.',
  'step.try-sitting': 'Geheftet anprobieren und darin hinsetzen. Der Schritt wird nur so tief ausgeschnitten, wie das braucht.',
  'step.try-paper': 'Das Papier einstecken und anprobieren. Das Papier zurechtschneiden, nicht den Stoff, bis es stimmt.',
  'step.try-cord': 'Außen eine Kordel umbinden und anprobieren, um zu sehen, wie die Kräusel fallen.',
  'step.try-laced': 'Durch die gehefteten Schlaufen geschnürt anprobieren. Die Kanten laufen parallel.',
  'step.try-pads': 'Mit eingehefteten Polstern anprobieren. Beide Schultern liegen gleich hoch.',
  'step.once-more-before-cut': 'Noch einmal anprobieren. Was jetzt geschnitten wird, lässt sich nicht zurückholen.',
  'step.baste': 'Beide Lagen zusammenstecken, Punkt auf Punkt, und auf der neuen Linie mit langen Handstichen heften.',
  'step.baste-darts':
    'Jeden Abnäher in seiner Mitte falten, rechts auf rechts, Schenkel auf Schenkel stecken und auf dem Schenkel vom breiten Ende zur Spitze ' +
    'heften.',
  'step.clip': 'Die neue Linie mit Klammern neben der Naht halten; Nadeln und Heftstiche ließen Löcher.',
  'step.baste-outside': 'Auf der neuen Linie heften, zwischen alter Naht und offener Kante, solange die alte Naht noch hält.',
  'step.old-line-out': 'Die alte Naht auftrennen: jeden dritten Stich aufschneiden und den Faden herausziehen.',
  'step.mark-line-in':
    'Von innen die neue Linie anzeichnen ({seam|seam}): so weit abwärts, gemessen von {from|from}, so weit von der alten Naht, weg von der ' +
    'offenen Kante. Auf beiden Lagen, an jeder solchen Naht gleich; die Punkte glatt verbinden.',
  'step.mark-line-in-both':
    'Von innen die neue Linie anzeichnen ({seam|seam} und genauso {other|seam}): so weit abwärts, gemessen von {from|from}, so weit von der alten ' +
    'Naht, weg von der offenen Kante. Auf beiden Lagen, beide Seiten gleich; die Punkte glatt verbinden.',
  'step.mark-line-out':
    'Von innen die neue Linie anzeichnen ({seam|seam}): so weit abwärts, gemessen von {from|from}, so weit von der alten Naht, zur offenen Kante ' +
    'hin. Auf beiden Lagen, an jeder solchen Naht gleich; die Punkte glatt verbinden.',
  'step.mark-line-out-both':
    'Von innen die neue Linie anzeichnen ({seam|seam} und genauso {other|seam}): so weit abwärts, gemessen von {from|from}, so weit von der alten ' +
    'Naht, zur offenen Kante hin. Auf beiden Lagen, beide Seiten gleich; die Punkte glatt verbinden.',
  'step.sew-line':
    'Auf der neuen Linie nähen: {stitch|stitch}, {stitchMm} mm; {ends|ends}. Wo sie auf die alte Naht trifft, {run|length} auf ihr weiternähen.',
  'step.sew-line-through': 'Auf der neuen Linie von Kante zu Kante nähen: {stitch|stitch}, {stitchMm} mm; {ends|ends}.',
  'step.old-stitches-out': 'Die Heftfäden ziehen und die alte Naht auftrennen, wo die neue sie verlassen hat.',
  'step.trim-seam': 'Den Stoff zwischen neuer Naht und offener Kante auf das Maß unten zurückschneiden.',
  'step.keep-cloth': 'Den Stoff neben der neuen Naht stehen lassen, damit er sich später wieder auslassen lässt.',
  'step.finish-edges': 'Die offenen Kanten mit der Overlock oder mit Zickzack versäubern, damit sie nicht ausfransen.',
  'step.fell-again':
    'Die breitere Lage zur Hälfte einschlagen, flach über die schmale legen und mit passendem Garn zwei Reihen von 3,5 mm absteppen.',
  'step.glue-seam': 'Die Nahtzugaben dünn mit Lederkleber auseinanderkleben und unter einem Tuch flach klopfen.',
  'step.press-seam': 'Die Naht bügeln, erst wie genäht, dann auseinander oder zur Seite, wie vorher ({press|press}).',
  'step.press-old-line':
    'Alte Linie und Falte von links ausbügeln ({press|press}). Alte Löcher schließen sich unter einem feuchten Tuch ein wenig.',
  'step.press-open-flat': 'Den alten Bruch flach ausbügeln ({press|press}).',
  'step.lining-along': 'Das Futter um dieselben Maße mitnehmen, eine Spur weniger, damit es locker bleibt.',
  'step.zip-out':
    'Den Reißverschluss heraustrennen, so weit die neue Naht läuft und eine Handbreit mehr, und markieren, wo die Zähne beginnen.',
  'step.zip-in': 'Den Reißverschluss wieder einheften, oben auf beiden Seiten gleich hoch, und mit dem Reißverschlussfuß einnähen.',
  'step.paper-first': 'Das Teil nach den Maßen unten auf Papier zeichnen und ausschneiden.',
  'step.cut-panel': 'Das Teil im Fadenlauf des Stücks aus dem Stoff schneiden, zweimal gleich, wo es auf beiden Seiten sitzt.',
  'step.pin-centre-back':
    'Auf links anziehen und die hintere Mittelnaht am Bund abstecken. Auf jede Seite kommt die Hälfte, nach unten immer weniger bis zur alten Naht.',
  'step.pockets-apart':
    'Zwischen den Gesäßtaschen messen. Ist es weniger als das erste Maß unten, hier weniger wegnehmen, sodass der kleinste Abstand unten bleibt, ' +
    'und den Rest mit den Seitennähten teilen.',
  'step.check-centre-back':
    'Von hinten ansehen: keine Falte unter dem Bund, die Taschen gleich hoch, die Naht gerade. Die Gesäßnaht darf etwas weniger nehmen als der Bund.',
  'step.pin-sides-at-waist':
    'Auf links anziehen und beide Seitennähte vom Bund abwärts gleich abstecken, in jeder Lage ein Viertel der Menge.',
  'step.pocket-tops': 'Die oberen Enden der Taschen vom Bund lösen, wo sie in den Seitennähten liegen.',
  'step.pocket-tops-back': 'Die Taschen oben wieder flach mitfassen, ohne die Eingriffe aufzuziehen.',
  'step.check-side-seams-hang':
    'Von der Seite ansehen: Die Nähte hängen gerade und in der Mitte, und die Tascheneingriffe liegen geschlossen.',
  'step.pin-back-darts':
    'Die Abnäher hinten abstecken, auf halbem Weg zwischen Mitte und Seite, beide Seiten gleich. Sie zeigen auf die stärkste Stelle und enden darüber.',
  'step.pin-back-darts-four':
    'Auf jeder Seite der hinteren Mitte zwei Abnäher stecken, bei einem und bei zwei Dritteln des Wegs zur Seitennaht, beide Seiten gleich. Sie ' +
    'zeigen auf die stärkste Stelle und enden darüber.',
  'step.mark-darts':
    'Von innen jeden Abnäher anzeichnen: seine Mitte, oben die Schenkel, die Hälfte auf jeder Seite der Mitte, und seine Spitze, nach den Maßen ' +
    'unten.',
  'step.sew-darts':
    'Jeden Abnäher vom breiten Ende zur Spitze nähen, die letzten Stiche am Bruch entlang; die Fäden verknoten, nicht zurücknähen.',
  'step.press-darts': 'Die Abnäher über einem gerollten Handtuch zur Mitte bügeln ({press|press}), nie über die Spitze hinaus.',
  'step.lining-darts': 'Dieselbe Menge im Futter als lose Falten über die Abnäher legen.',
  'step.check-darts': 'Die Spitzen ansehen: keine Tüte, beide gleich. Beult ein Abnäher, ist er zu tief oder zu kurz.',
  'step.pin-yoke-darts': 'Auf beiden Seiten der hinteren Mitte gleiche Abnäher durch Bund und Passe stecken, zwischen den Schlaufen.',
  'step.pin-yoke-darts-four':
    'Auf jeder Seite der hinteren Mitte zwei Abnäher durch Bund und Passe stecken, gleich und in gleichem Abstand, zwischen den Schlaufen.',
  'step.yoke-loops-off': 'Die Gürtelschlaufen abtrennen, die über den Abnähern liegen.',
  'step.mark-yoke-darts': 'Die Abnäher innen anzeichnen, vom oberen Rand des Bunds bis zur Passennaht.',
  'step.sew-yoke-darts': 'Die Lagen flach hämmern und langsam nähen, über den Bund mit dem Handrad; oder von Hand mit Rückstichen.',
  'step.yoke-loops-on': 'Die Gürtelschlaufen wieder über oder neben die Abnäher nähen.',
  'step.check-yoke-darts': 'Den Bund ansehen: Die Kante ist gerade, und unter den Abnähern liegt die Passe flach.',
  'step.look-inside-centre-back':
    'Innen in die hintere Mittelnaht sehen. Auf jeder Seite muss der Stoff unten da sein; sonst geht diese Arbeit nur so weit, wie er reicht.',
  'step.look-inside-sides':
    'Innen in beide Seitennähte sehen. Auf jeder Seite muss der Stoff unten da sein; sonst nur so weit gehen, wie er reicht.',
  'step.check-let-out':
    'Nach der alten Linie, nach Löchern und einem dunkleren Streifen sehen. Dämpfen, und es sagen, wenn das Stück weitergegeben wird.',
  'step.measure-wedge': 'Den Keil berechnen: am Bund so breit wie die Menge, in der Naht auslaufend.',
  'step.open-for-wedge': 'Die hintere Mittelnaht öffnen, so weit der Keil reicht.',
  'step.sew-wedge': 'Den Keil von der Spitze zum Bund einnähen, erst die eine, dann die andere Seite.',
  'step.check-panel': 'Getragen ansehen: Das Teil liegt flach, die Spitze wirft keine Falten, beide Seiten sind gleich.',
  'step.look-for-old-line': 'Innen nach einer zweiten Reihe alter Löcher und eingeschlagenem Stoff sehen: Auf diese Linie geht es zurück.',
  'step.later-stitches-out': 'Nur die Naht der späteren Änderung auftrennen, und die des Bunds darüber, wo es einen gibt.',
  'step.mark-old-line': 'Die alten Löcher nachzeichnen, wo sie schlecht zu sehen sind.',
  'step.look-at-darts':
    'In die Abnäher sehen: wie viel jeder enthält und ob seine Mitte aufgeschnitten ist. Ein aufgeschnittener Abnäher wird nicht ausgelassen.',
  'step.darts-out': 'Die Abnäher auftrennen.',
  'step.mark-darts-narrower': 'Jeden Abnäher schmaler neu anzeichnen, die Spitze, wo sie war.',
  'step.measure-elastic':
    'Die hintere Hälfte des Bunds von Seitennaht zu Seitennaht markieren und das Gummiband auf die Länge unten schneiden.',
  'step.slits-in-band': 'Den Bund innen an beiden Seitennähten öffnen, gerade breit genug für das Gummiband.',
  'step.elastic-in': 'Das Gummiband mit der Durchziehnadel flach durch die hintere Hälfte ziehen und die Enden in den Seitennähten halten.',
  'step.elastic-ends': 'An den Seitennähten zweimal quer über beide Enden des Gummibands nähen.',
  'step.slits-closed': 'Die Schlitze von Hand schließen.',
  'step.measure-old-elastic': 'Das alte Gummi dehnen. Ist es schlaff oder knistert es, wird es ersetzt; sonst um die Menge gekürzt.',
  'step.casing-open': 'Den Tunnel hinten eine Handbreit öffnen und eine Schlaufe Gummiband herausziehen.',
  'step.elastic-lapped': 'Das Gummiband um die Menge übereinanderlegen und mit einer Sicherheitsnadel halten.',
  'step.elastic-cut': 'Das Gummiband so abschneiden, dass die Enden um das Maß unten übereinanderliegen.',
  'step.elastic-joined': 'Die übereinanderliegenden Enden mit Zickzack hin und zurück als Quadrat zusammennähen.',
  'step.casing-closed': 'Das Gummiband hineingleiten lassen, die Kräusel verteilen und den Tunnel bei gedehntem Gummi schließen.',
  'step.check-gathers': 'Die Kräusel gleichmäßig auf die vier Viertel der Taille verteilen.',
  'step.measure-cord': 'Eine Kordel so lang wie unten schneiden und sehen, dass Bund oder Tunnel sie durchlässt.',
  'step.mark-eyelets': 'Außen am Bund zwei Ösen anzeichnen, je {apart|length} neben der vorderen Mitte, und den Stoff dahinter verstärken.',
  'step.eyelets-in': 'Die zwei Löcher schneiden und Ösen setzen oder zwei Knopflöcher arbeiten, nur durch die äußere Lage.',
  'step.cord-in':
    'Die Kordel durchziehen, die Enden verknoten und sie in der hinteren Mitte einmal festnähen, damit sie nicht herausrutscht.',
  'step.check-cord': 'Zusammenziehen und ansehen: Die Kräusel sind gleichmäßig, und die Knoten halten.',
  'step.count-pleats':
    'Die Falten zählen: Die Menge, geteilt durch ihre Zahl und durch zwei, kommt in jede Seite jeder Falte. Das Maß unten gilt für die übliche Zahl.',
  'step.mark-pleats': 'Den neuen Bruch jeder Falte am Bund anzeichnen und an der Hüfte in den alten auslaufen lassen.',
  'step.baste-pleats': 'Alle Falten niederheften, vom Bund bis zur Hüfte.',
  'step.press-pleats': 'Die Falten bügeln ({press|press}), nur so weit, wie sie vorher gebügelt waren.',
  'step.check-pleats': 'Die Abstände ansehen: alle Falten gleich, Karos oder Streifen noch in der Ordnung.',
  'step.look-at-pleats': 'Eine Falte von Hand öffnen und nach einem verblichenen oder abgewetzten Bruch sehen: Man wird ihn sehen.',
  'step.pleats-out': 'Ein Paar Falten auftrennen, auf beiden Seiten dasselbe.',
  'step.baste-pleats-flat': 'Den Stoff flach in den Bund legen und dort heften.',
  'step.measure-gathers': 'Die neue Länge des Bunds markieren und ihn wie die Rockoberkante in Viertel teilen.',
  'step.gather-threads': 'Oben am Rock zwei Reihen mit dem längsten Stich nähen, in den Abständen unten, und lange Fadenenden lassen.',
  'step.draw-gathers': 'Die Reihen auf die neue Länge zusammenziehen, Viertel auf Viertel, und die Kräusel verteilen.',
  'step.loops-off':
    'Die Gürtelschlaufen abtrennen, die im Weg sind, etwa {loops} der üblichen {of}; jede dort anstecken, wo sie wieder hinkommt.',
  'step.band-off':
    'Den Bund von der oberen Kante trennen, so weit wie unten: Je mehr weggenommen wird, desto mehr wird geöffnet. Der Rest bleibt dran.',
  'step.band-tried':
    'Den Bund von beiden Enden der Öffnung her anstecken, was zu lang ist, dort wegfalten, wo er geschnitten wird, und geschlossen anprobieren. ' +
    'Die Kante darunter darf etwas länger sein als der Bund und wird eingehalten.',
  'step.band-cut':
    'Den Bund in der hinteren Mitte durchschneiden oder an einer Naht, die er dort hat. An beiden Enden so weit vom Schnitt wie unten quer eine ' +
    'Linie anzeichnen; Linie auf Linie rechts auf rechts nähen, inneren und äußeren Bund gleich, und auf die Zugabe unten zurückschneiden.',
  'step.band-cut-sides':
    'Den Bund über jeder Seitennaht durchschneiden. An beiden Enden jedes Schnitts so weit davon wie unten quer eine Linie anzeichnen; Linie auf ' +
    'Linie rechts auf rechts nähen, inneren und äußeren Bund gleich, und auf die Zugabe unten zurückschneiden. Endet dort ein Reißverschluss, die ' +
    'Enden um ebenso viel einschlagen.',
  'step.band-longer':
    'Den Bund an seiner eigenen Naht auslassen oder ein Stück einsetzen, wo Schlaufe oder Gürtel es verdeckt, um das Maß unten länger.',
  'step.band-on':
    'Die Stoffkante in den Bund legen, wie sie lag, und den Bund innen und außen auf seiner alten Linie wieder annähen, ohne die Kante zu dehnen.',
  'step.loops-on': 'Die Gürtelschlaufen wieder annähen, die mittlere über der Naht, die anderen gleichmäßig daneben.',
  'step.band-pressed': 'Den Bund bügeln ({press|press}).',
  'step.pin-seat': 'Auf links anziehen und die Gesäßnaht an der stärksten Stelle abstecken. Nur so viel, dass du noch sitzen kannst.',
  'step.mark-seat-in':
    'Die neue Gesäßlinie nach den Maßen unten vom Bund abwärts anzeichnen, die Schrittkurve behalten und hinten die inneren Beinnähte mitnehmen.',
  'step.check-seat': 'Sitzen und bücken. Zieht es vom Schritt nach außen, ist es zu eng; eine Falte unter dem Gesäß heißt zu lang.',
  'step.look-inside-seat': 'Innen in die Gesäßnaht und oben in die inneren Beinnähte sehen. Der Stoff unten muss da sein.',
  'step.seat-off': 'Die Gesäßnaht vom Bund bis zum Schritt öffnen.',
  'step.seat-on': 'Was von der Gesäßnaht noch offen ist, in einer Kurve schließen und den Schritt zweimal nähen.',
  'step.pin-legs':
    'Auf links anziehen und beide Beine gleich abstecken, innen so viel wie außen, damit die Bügelfalte in der Mitte bleibt.',
  'step.check-crease':
    'Das Bein Naht auf Naht legen: Die Bügelfalte liegt in der Mitte, und beide Beine sind gleich. Der Fuß geht hindurch.',
  'step.look-inside-legs': 'Innen in beide Beinnähte am Oberschenkel sehen. Auf jeder Seite muss der Stoff unten da sein.',
  'step.look-inside-calves': 'Innen unten in die inneren Beinnähte sehen. Auf jeder Seite muss der Stoff unten da sein.',
  'step.inseam-off': 'Die inneren Beinnähte vom Schritt aus öffnen, so weit die neue Linie oder das Teil es braucht.',
  'step.inseam-on': 'Was von den inneren Beinnähten noch offen ist, auf der alten Linie schließen.',
  'step.measure-gusset': 'Den Zwickel berechnen: eine Raute, am Schritt so breit wie die Menge, an den Nähten auslaufend.',
  'step.sew-gusset': 'Den Zwickel Seite für Seite einnähen und genau an jeder Ecke anhalten.',
  'step.check-gusset': 'Darin sitzen und ein Bein strecken. Die Ecken werfen keine Falten.',
  'step.pin-band-lower': 'Anziehen und ein Band stecken, wo der Bund sitzen soll. Rundum gleich tief oder vorn etwas weniger.',
  'step.zip-shorter': 'Reißverschluss und Hosenschlitz oben lösen und die Zähne über der neuen Linie mit der Zange ziehen.',
  'step.mark-band-line': 'Die neue Linie rundum unter dem Bund anzeichnen und prüfen, dass die Taschen darunterliegen.',
  'step.baste-band': 'Den Bund auf die neue Linie heften, über den Stoff, der wegkommt.',
  'step.cut-above-band-line': 'Den Stoff über der neuen Linie wegschneiden, mit einer Nahtzugabe darüber.',
  'step.zip-top': 'Das obere Ende des Reißverschlusses von Hand verriegeln und Bänder und Schlitz wieder einnähen.',
  'step.ease-into-band': 'Die Kante ist jetzt länger als der Bund: einhalten, an den Seiten am meisten.',
  'step.check-fly': 'Den Hosenschlitz öffnen und schließen: Er läuft leicht, und oben ist er verriegelt.',
  'step.measure-fork': 'Den Schritt von innen ansehen. Er wird nur sehr wenig vertieft, denn das verkürzt die Innenbeinlänge.',
  'step.mark-fork': 'Die neue Kurve im Schritt unter der alten anzeichnen, hinten und vorn auslaufend.',
  'step.sew-fork-again': 'Die Kurve ein zweites Mal auf derselben Linie nähen.',
  'step.trim-fork': 'Den Stoff in der Kurve auf das Maß unten zurückschneiden, sonst spannt sie.',
  'step.pin-length':
    'Anziehen und an einem Bein {amount|length} nach außen hochstecken; das andere Bein ebenso stecken, dann beide getragen ansehen.',
  'step.pin-hem-round': 'Anziehen und sich rundum {amount|length} hochstecken lassen, überall gleich hoch vom Boden.',
  'step.hang-a-day': 'Vor dem Messen einen Tag aushängen lassen: Schräg geschnittener Stoff hängt sich aus.',
  'step.hem-off': 'Vor dem Auftrennen anzeichnen, wo die alte Kante liegt. Den Saum rundum auftrennen, so tief wie unten.',
  'step.hem-again': 'Den Saum auf seinen alten Brüchen wieder umlegen und nähen, wie er war.',
  'step.mark-new-edge':
    'Von innen rundum die neue Kante anzeichnen, so weit über der angezeichneten alten Kante (nicht über der offenen), und unter der neuen die ' +
    'Linie, auf der geschnitten wird.',
  'step.pin-turned': 'Den Stoff auf der neuen Kante nach innen umlegen und stecken.',
  'step.cut-hem': 'Rundum auf der unteren Linie schneiden.',
  'step.ease-hem':
    'Die offene Kante ist um das Maß unten länger als die neue Kante, und doppelt so viel länger, als wo sie angenäht wird. Mit einer Reihe langer ' +
    'Stiche einhalten und dämpfen.',
  'step.hem-follows-slope':
    'Der eingeschlagene Stoff ist enger als das Stück darüber. Die Naht im Einschlag öffnen oder nach außen laufen lassen, bis er flach liegt.',
  'step.sew-hem-turned':
    'Erst die Kante ein-, dann umschlagen, nach den Maßen unten, und knapp am inneren Bruch steppen: {stitch|stitch}, {stitchMm} mm.',
  'step.sew-hem-narrow':
    'Einen schmalen Saum zweimal nach den Maßen unten einschlagen, jedes Mal bügeln, und knapp an der inneren Kante nähen: {stitch|stitch}, {stitchMm} mm.',
  'step.sew-hem-blind':
    'Die offene Kante versäubern, um das Maß unten umlegen und von Hand oder Maschine blind säumen, außen nur einen Faden fassen.',
  'step.sew-hem-stretch':
    'Einmal um das Maß unten umlegen und von rechts mit Coverstich, Zwillingsnadel oder Zickzack nähen, damit es sich dehnt.',
  'step.glue-hem': 'Um das Maß unten umlegen, mit Lederkleber kleben und flach klopfen.',
  'step.press-hem': 'Den Saum von links bügeln ({press|press}) und kalt werden lassen, bevor er hängt.',
  'step.check-legs-alike': 'Beide Seiten aufeinanderlegen: innen und außen gleich lang.',
  'step.check-hem-level': 'Getragen ansehen: Die Kante läuft rundum waagerecht oder fällt ab wie vorher.',
  'step.mark-fold':
    'Außen um das Bein zwei Linien über der Naht des alten Saums anzeichnen (von ihr gemessen, nicht von der Kante): die erste bei der Hälfte der ' +
    'Menge, dort wird gefaltet; die zweite bei der ganzen.',
  'step.pin-fold':
    'Das Bein auf der ersten Linie falten, rechts auf rechts, sodass die alte Naht auf die zweite Linie kommt; rundum stecken.',
  'step.sew-beside-edge':
    'Rundum durch beide Lagen des Beins nähen, dicht neben dem dicken alten Saum und nicht durch ihn, mit dem Reißverschlussfuß und Garn wie die ' +
    'alte Absteppung.',
  'step.trim-tuck':
    'Die Kante nach unten klappen. Innen den gefalteten Stoff so weit neben der neuen Naht abschneiden wie unten; wo er die Beinnähte kreuzt, ' +
    'diese auf das zweite Maß ausdünnen.',
  'step.tuck-edges': 'Die Schnittkanten mit Overlock oder Zickzack versäubern.',
  'step.press-tuck': 'Die alte Kante unten, die Naht nach oben bügeln ({press|press}).',
  'step.catch-tuck': 'Die Falte innen an den Beinnähten festnähen, damit sie nicht herunterfällt.',
  'step.look-inside-hem': 'Innen in den Saum sehen: wie viel Stoff da ist und wie viel bleibt, wenn er herausgelassen ist.',
  'step.pin-new-edge': 'Die neue Kante unter der alten stecken.',
  'step.sew-hem-left':
    'Was übrig ist, um das Maß unten umlegen, die offene Kante versäubert, und von Hand oder Maschine nähen, wie der alte Saum war.',
  'step.tape-on': 'Saumband rechts auf rechts an die offene Kante nähen, mit der Nahtzugabe unten.',
  'step.tape-turned': 'Das Band nach innen legen, bügeln und von Hand säumen.',
  'step.measure-band':
    'Die Blenden berechnen: doppelt so breit wie die Menge und zwei Nahtzugaben, so lang wie die Öffnung und zwei Nahtzugaben, eine für jedes Bein.',
  'step.pin-paper-band': 'An jedes Bein eine Blende aus Papier stecken.',
  'step.cut-bands': 'Zwei Blenden im Fadenlauf zuschneiden.',
  'step.sew-bands': 'Jede Blende zum Ring schließen, falten, an die Kante nähen und die Naht versäubern.',
  'step.look-in-turn-up': 'In den Umschlag sehen, ob er verblichen oder abgewetzt ist; darin liegt Stoff von seiner dreifachen Höhe.',
  'step.turn-up-open': 'Die Befestigung an den Nähten lösen und den Umschlag ausklappen.',
  'step.mark-turn-up':
    'Von dort messen, wo die offene Kante nach dem Abschneiden liegt: erst die Oberkante des Umschlags, dann die neue Kante, nach den Maßen unten.',
  'step.pin-turn-up': 'Den Umschlag falten und stecken.',
  'step.cut-below-turn-up': 'Die Menge von der offenen Kante abschneiden.',
  'step.sew-turn-up': 'Die offene Kante innen festnähen, wo der Umschlag sie verdeckt.',
  'step.catch-turn-up': 'Den Umschlag an beiden Nähten von Hand am Bein festnähen.',
  'step.look-at-roll': 'Sehen, ob die Krempe nur gelegt oder genäht ist und ob ihre Kante verblichen ist.',
  'step.roll-open': 'Die Befestigung lösen und herunterkrempeln.',
  'step.mark-tuck': 'Innen über dem Saum zwei Linien anzeichnen, so weit auseinander wie unten; die Falte knickt in der Mitte dazwischen.',
  'step.sew-growth-tuck': 'Die Falte innen von Hand mit langen Stichen nähen, damit sie sich leicht löst, wenn das Kind gewachsen ist.',
  'step.turn-all-up': 'Die ganze Menge in den Saum einschlagen. Geschnitten wird nichts.',
  'step.open-seam-in-hem': 'Die Naht im Einschlag öffnen, denn oben ist das Bein weiter.',
  'step.sew-growth-hem': 'Von Hand mit langen Stichen säumen, damit er sich wieder herauslassen lässt.',
  'step.check-growth': 'Datum und Menge innen auf ein Band schreiben: Später wird wieder herausgelassen.',
  'step.vent-open': 'Den Schlitz öffnen: Er wandert mit dem Saum nach oben und muss seine Länge behalten.',
  'step.vent-again': 'Den Schlitz um die Menge höher anzeichnen, verstärken und wieder nähen.',
  'step.lining-hem':
    'Das Futter um dieselbe Menge kürzen: seinen Saum auftrennen, um so viel höher umlegen und nähen, wie er war, damit es um das Maß unten ' +
    'kürzer bleibt als der Rock.',
  'step.lining-down': 'Sehen, dass das Futter nicht zu hoch endet; auch herauslassen, wenn es Stoff hat.',
  'step.count-layers': 'Die Lagen zählen; jede bekommt ihren eigenen Saum. Mit der innersten beginnen.',
  'step.layers-apart': 'Die anderen Lagen aus dem Weg hochstecken.',
  'step.mark-each-layer': 'Jede Lage vom Boden oder von der Lage darunter aus anzeichnen, um die Menge kürzer.',
  'step.cut-each-layer': 'Jede Lage um die Menge kürzen, mit der Saumzugabe, die sie hatte.',
  'step.sew-each-layer': 'Jede Lage säumen, wie sie gesäumt war.',
  'step.pin-skirt-up': 'Anziehen und ein Band stecken, wo der Bund sitzen soll; der Saum bleibt, wie er ist, und kommt mit hoch.',
  'step.mark-below-band': 'Die neue Linie rundum unter dem Bund anzeichnen.',
  'step.sides-to-band':
    'Die Oberkante ist jetzt um so viel weiter wie unten. An Seitennähten oder Abnähern enger nähen, bis sie zum Bund passt.',
  'step.pleats-to-band': 'Jede Falte an ihre alte Stelle am Bund stecken.',
  'step.pin-skirt-sides': 'Auf links anziehen und beide Seitennähte an Taille, Hüfte und Saum gleich abstecken.',
  'step.measure-godet':
    'Die Godets berechnen: in jeder Naht ein Keil, am Saum so breit wie unten, nach oben auslaufend. Oder einen Schlitz lassen.',
  'step.open-seam-up': 'Die Naht vom Saum aus öffnen, so weit wie unten.',
  'step.sew-godet': 'Jeden Keil von der Spitze abwärts einnähen, beide Seiten.',
  'step.pin-sides':
    'Auf links anziehen, oder gefüttert von außen stecken; beide Seitennähte gleich abstecken, in einer glatten Linie vom Armloch abwärts.',
  'step.pin-knit-sides': 'Auf links anziehen und beide Seiten gleich abstecken, ohne zu dehnen; die Bündchen auslassen.',
  'step.stitches-held-at-line':
    'Neben der neuen Linie, zur offenen Kante hin, zwei Reihen schmalen Zickzack nähen, bevor etwas geschnitten wird, sonst laufen die Maschen.',
  'step.run-into-sleeve':
    'Die Linie unter dem Arm in die Ärmelnaht weiterführen und dort nach den Maßen unten auslaufen lassen, gemessen von der Armlochnaht.',
  'step.sleeve-set-again':
    'Das Armloch ist viel enger geworden: den Ärmel in der unteren Hälfte heraustrennen, ebenso enger nähen und wieder einsetzen.',
  'step.check-sides': 'Nach vorn und nach oben greifen. Das Armloch spannt nicht, und die Nähte hängen gerade.',
  'step.sides-off': 'Die Seitennähte vom Armloch bis zum Saum öffnen.',
  'step.sides-on': 'Was von den Seitennähten noch offen ist, schließen.',
  'step.pin-long-darts':
    'Anziehen und im Rücken zwei lange Abnäher stecken, auf halbem Weg zwischen Mitte und Seite, in der Taille am breitesten.',
  'step.mark-long-darts':
    'Jeden Abnäher innen anzeichnen: seine Mitte, seine Breite in der Taille und beide Spitzen, nach den Maßen unten.',
  'step.sew-long-darts':
    'Jeden Abnäher von der Taille erst zur einen, dann zur anderen Spitze nähen, die letzten Stiche am Bruch entlang; die Fäden verknoten.',
  'step.pin-centre-back-body': 'Anziehen und die hintere Mittelnaht abstecken, in der Taille am meisten; unter dem Kragen läuft es aus.',
  'step.vent-open-back': 'Schlitz und Saum daneben öffnen, wo die Naht hineinläuft.',
  'step.vent-back': 'Den Schlitz auf seiner neuen Linie wieder falten und festnähen.',
  'step.check-centre-back-body':
    'Von hinten ansehen: Der Kragen liegt am Hals an, der Schlitz hängt geschlossen, keine Falte quer über die Taille.',
  'step.pin-waistcoat-back': 'Geknöpft anziehen und die Rückennaht abstecken, in der Taille am meisten.',
  'step.waistcoat-open': 'Das Futter am unteren Rand des Rückens öffnen und den Rücken auf links wenden.',
  'step.waistcoat-closed': 'Das Futter um dieselben Maße mitnehmen, wenden und die Kante von Hand schließen.',
  'step.check-waistcoat': 'Knöpfen und ansehen: Die Spitzen hängen gleich hoch, und der Rückenriegel liegt flach.',
  'step.measure-strips': 'Die Streifen berechnen: einer für jede Seite, vom Armloch bis zum Saum.',
  'step.sew-strips':
    'In jede Seite einen Streifen nähen, erst an den Rücken, dann an das Vorderteil, und darüber die Unterarmnaht schließen.',
  'step.tails-curved':
    'Hat das Hemd geschwungene Schöße, hat die neue Kante die Kurve der alten: an vielen Stellen von der alten Kante nach oben messen oder die ' +
    'Schablone nehmen.',
  'step.lining-hem-in': 'Den Futtersaum mit einer kleinen Bewegungsfalte von Hand an die neue Kante setzen.',
  'step.check-pockets-and-buttons': 'Vorn ansehen: Der unterste Knopf und die Taschen stehen noch deutlich über der Kante.',
  'step.pin-bust-darts': 'Anziehen und von jeder Seitennaht einen Abnäher zur stärksten Stelle stecken, der kurz davor endet.',
  'step.mark-bust-darts':
    'Beide Abnäher gleich anzeichnen. Das Vorderteil darf nicht länger sein als der Rücken: an der Seitennaht prüfen.',
  'step.pin-bodice': 'Mit geschlossenem Reißverschluss anziehen und von jemandem beide Seiten von oben her gleich abstecken lassen.',
  'step.bones-out': 'Die Tunnel oben öffnen und die Stäbchen neben der Naht herausziehen. Nummerieren.',
  'step.bones-back': 'Ein Stäbchen nur kürzen, wenn seine Naht kürzer ist, die Spitze wieder sichern und in seinen Tunnel einnähen.',
  'step.check-bodice': 'Darin die Arme heben: Es hält, und die oberen Kanten treffen sich an den Nähten.',
  'step.pin-top-edge': 'Anziehen und die obere Kante an den Seiten und im Rücken abstecken.',
  'step.top-edge-open': 'Den Besatz der oberen Kante an beiden Enden des Rückens öffnen.',
  'step.top-elastic-in': 'Hinten schmales Gummiband durch die obere Kante ziehen und innen ein rutschfestes Band annähen.',
  'step.top-edge-closed': 'Die Enden des Gummibands festnähen und den Besatz von Hand schließen.',
  'step.check-top-edge': 'Darin bewegen: Die Kante hält und schneidet nicht ein.',
  'step.measure-lacing': 'Die Schnürung berechnen: Schlaufen an beiden Rückenkanten und ein Teil dahinter.',
  'step.zip-out-for-lacing': 'Den Reißverschluss ganz heraustrennen. Aufheben: Er kann wieder hinein.',
  'step.mark-loops': 'An beiden Kanten die Schlaufen anzeichnen, so weit auseinander wie unten.',
  'step.baste-loops': 'Die Schlaufen alle gleich zwischen Kante und Besatz heften.',
  'step.lacing-loops-on': 'Die Schlaufen zweimal knapp an der Kante einnähen.',
  'step.placket-behind': 'Hinter die Öffnung ein verstärktes Teil nähen, an einer Seite befestigt.',
  'step.check-lacing': 'Schnüren: Die Kanten laufen parallel, und oben reißt nichts.',
  'step.pin-above-rib': 'Anziehen und an beiden Ärmeln über dem Bündchen eine Falte von {amount|length} stecken.',
  'step.pin-above-body-rib': 'Anziehen und über dem unteren Bündchen eine Falte von {amount|length} stecken.',
  'step.mark-above-rib': 'In der Maschenreihe, in der geschnitten wird, einen andersfarbigen Faden einziehen.',
  'step.hold-stitches': 'Die Maschen dieser Reihe auf eine Nadel nehmen oder daneben zwei Reihen Zickzack nähen, damit keine läuft.',
  'step.rib-off': 'Das Bündchen an seiner Naht abtrennen.',
  'step.baste-rib': 'Bündchen und Kante in Viertel teilen, Viertel auf Viertel stecken und mit gedehntem Bündchen heften.',
  'step.cut-above-rib': 'Das Stück dazwischen wegschneiden.',
  'step.rib-on': 'Das Bündchen Viertel auf Viertel gedehnt mit Overlock oder Zickzack annähen; oder die Maschen im Maschenstich verbinden.',
  'step.steam-rib': 'Die Naht dämpfen, ohne zu drücken, und flach trocknen lassen.',
  'step.check-rib': 'Das Bündchen dehnen: Keine Masche reißt, und es geht zurück.',
  'step.pin-shoulders': 'Anziehen und jede Ärmelnaht am Schulterende abstecken, je Seite die Hälfte der Menge.',
  'step.pads-out': 'Schulterpolster und Ärmelfische lösen und an die Seite stecken, von der sie kommen.',
  'step.mark-armhole': 'Das neue Armloch innerhalb des alten anzeichnen: am Schulterende alles, an den Passzeichen auslaufend.',
  'step.baste-sleeve-to-line': 'Den Ärmel an die neue Linie heften, Zeichen auf Zeichen, über den Stoff, der wegkommt.',
  'step.cut-armhole': 'Den Stoff jenseits der neuen Linie wegschneiden, mit einer Nahtzugabe.',
  'step.pads-back': 'Die Polster von Hand wieder einsetzen, ihre Kante an der neuen Naht.',
  'step.check-shoulders': 'Beide Schultern getragen ansehen: Die Nähte enden am Knochen, gleich hoch, und die Ärmel hängen ohne Delle.',
  'step.feel-pads': 'Durch das Futter fühlen, wie die Polster liegen und aus wie vielen Schichten sie sind.',
  'step.pad-reached': 'Die Ärmelnaht des Futters an der Schulter öffnen und die Polster lösen.',
  'step.pad-thinned': 'Von jedem Polster eine Schicht abziehen, bei beiden gleich, zu den Rändern dünner; das Abgezogene aufheben.',
  'step.pad-basted': 'Die Polster wieder einheften.',
  'step.pad-sewn': 'Die Polster von Hand locker einnähen, damit keine Delle zu sehen ist.',
  'step.pin-straps': 'Anziehen und in jeden Träger eine Falte von {amount|length} stecken. Beide müssen nicht gleich sein.',
  'step.strap-off': 'Die Träger am hinteren Ende abtrennen.',
  'step.mark-strap': 'An den Trägern die Menge markieren; das überstehende Ende innen lassen.',
  'step.strap-on': 'Die Träger an der Markierung zweimal annähen, die Enden eingeschlagen.',
  'step.check-straps': 'Die Arme heben: Der Ausschnitt hält, und die Träger schneiden nicht ein.',
  'step.pin-shoulder-seams': 'Anziehen und die Schulternähte abstecken, am Hals so viel wie am Armloch.',
  'step.mark-shoulder-line':
    'Von innen die neue Linie unter der Schulternaht anzeichnen, so weit von der alten Naht wie unten und weg von der offenen Kante, auf beiden ' +
    'Lagen, vom Hals bis zum Armloch.',
  'step.neck-edge-open': 'Besatz oder Einfassung am Hals öffnen, eine Handbreit auf jeder Seite der Schulternähte.',
  'step.neck-edge-closed': 'Den Besatz um das Maß unten kürzen und wieder schließen.',
  'step.armhole-deeper': 'Das Armloch unten um das Maß unten tiefer schneiden, damit der Ärmel noch passt.',
  'step.pin-underarm': 'Anziehen und beide Seitennähte am Armloch abstecken.',
  'step.armhole-edge-open': 'Besatz oder Einfassung des Armlochs an der Seitennaht öffnen.',
  'step.armhole-edge-closed': 'Den Besatz mitnehmen und wieder schließen.',
  'step.check-armholes': 'Die Arme bewegen: Nichts steht ab, und nichts spannt.',
  'step.pin-waist-seam': 'Anziehen und an der Taillennaht eine Falte von {amount|length} stecken, rundum oder nur, wo es nötig ist.',
  'step.look-inside-waist-seam': 'Innen in die Taillennaht sehen. Der Stoff unten muss da sein.',
  'step.waist-seam-open': 'Die Taillennaht rundum auftrennen; Seitennähte und Mitten markieren.',
  'step.mark-waist-up':
    'Von innen rundum die neue Linie auf dem Oberteil anzeichnen, so weit über seiner alten Naht wie unten. Der Rock behält seine Linie; sein ' +
    'Saum kommt mit nach oben.',
  'step.mark-waist-down':
    'Von innen rundum die neue Linie anzeichnen, so weit unter der alten Naht wie unten: am Oberteil in seine Zugabe, am Rock in den Rock hinein. ' +
    'Das Kleid bleibt so lang, wie es ist.',
  'step.match-waist-seams':
    'Den Rock ans Oberteil stecken, rechts auf rechts, die alte Nahtlinie des Rocks auf die neue des Oberteils: Mitten, Seitennähte und Abnäher ' +
    'aufeinander, die weitere Kante eingehalten.',
  'step.trim-bodice': 'Das Oberteil unter der neuen Naht auf die Zugabe unten zurückschneiden, bündig mit dem Rock.',
  'step.press-waist-seam': 'Die Taillennaht nach oben bügeln ({press|press}).',
  'step.check-waist-seam': 'Getragen ansehen: Die Naht läuft waagerecht, und der Reißverschluss gleitet frei darüber.',
  'step.pin-neckline': 'Anziehen und kleine Abnäher in den Ausschnitt stecken, wo er absteht.',
  'step.neck-facing-open': 'Besatz oder Einfassung öffnen, wo die Abnäher hinkommen.',
  'step.mark-neck-darts': 'Die Abnäher vom Hals abwärts auslaufend anzeichnen.',
  'step.neck-facing-closed': 'Den Besatz um dieselbe Menge kürzen und schließen.',
  'step.check-neckline': 'Nach vorn beugen: Nichts steht ab, und der Kopf geht noch hindurch.',
  'step.armhole-marked': 'Schulter, Passzeichen und Unterarm an Ärmel und Rumpf mit Faden markieren, und welcher Ärmel welcher ist.',
  'step.sleeve-out': 'Die Ärmel aus den Armlöchern trennen.',
  'step.sleeve-in-basted':
    'Um jede Ärmelkugel einen Einhaltefaden nähen. Den Ärmel vom Unterarm her Zeichen auf Zeichen einstecken, oben den Rest einhalten und heften.',
  'step.sleeve-in': 'Die Ärmel einnähen, die untere Hälfte zweimal, und die Kanten zusammen versäubern.',
  'step.armhole-edge-off': 'Besatz oder Einfassung der Armlöcher nahe der Schulter abtrennen.',
  'step.armhole-edge-on': 'Besatz oder Einfassung der Armlöcher wieder annähen.',
  'step.press-armhole': 'Die Naht mit der Spitze des Bügeleisens zum Ärmel bügeln ({press|press}); die Ärmelkugel rund lassen.',
  'step.pin-sleeve-tuck': 'Anziehen und über jeder Manschette eine Falte von {amount|length} stecken.',
  'step.mark-above-cuff':
    'Über der alten Manschettennaht die Schnittlinie anzeichnen und sehen, dass der Ärmelschlitz seine Mindestlänge behält.',
  'step.placket-shorter': 'Das untere Ende des Ärmelschlitzes und seinen Knopf abtrennen.',
  'step.baste-cuff': 'Die Manschette an die neue Linie heften.',
  'step.cut-above-cuff': 'Den Ärmel unter der neuen Linie abschneiden, mit einer Nahtzugabe.',
  'step.sleeve-to-cuff': 'Dort ist der Ärmel etwas weiter: seine Falten tiefer legen oder in die Manschette einhalten.',
  'step.check-sleeves': 'Beide Arme beugen: Die Kanten enden gleich.',
  'step.cuff-off': 'Die Manschetten von den Ärmeln trennen.',
  'step.cuff-on': 'Die Manschetten wieder annähen, die Enden bündig mit den Schlitzen, und absteppen wie vorher.',
  'step.sleeve-hem-off': 'Den Saum der Ärmel auftrennen.',
  'step.sleeve-hem-again': 'Die Ärmelsäume auf den alten Brüchen umlegen und nähen, wie sie waren.',
  'step.press-cuffs': 'Die Ärmelenden bügeln ({press|press}).',
  'step.pin-sleeve-head': 'Anziehen und den Ärmel unter der Schulter abstecken, bis die Manschette richtig sitzt, rund um den Arm gleich.',
  'step.mark-cap': 'Die ganze Linie der Ärmelkugel neu anzeichnen, überall um die Menge tiefer: oben, an den Passzeichen und am Unterarm.',
  'step.measure-cap':
    'Die neue Kugellinie und das Armloch mit hochkant gestelltem Maßband messen. Die Kugel ist um die Maße unten länger; den Unterarm schmaler oder ' +
    'weiter machen, bis das stimmt.',
  'step.cut-cap': 'Die Ärmelkugel auf der neuen Linie schneiden, mit einer Nahtzugabe.',
  'step.ease-cap': 'Zwischen den Passzeichen zwei Reihen langer Stiche über die Ärmelkugel nähen, um sie um die Maße unten einzuhalten.',
  'step.sham-buttons-off': 'Die Zierknöpfe abnehmen.',
  'step.sham-buttons-on': 'Die Zierknöpfe wieder annähen, den untersten so weit von der neuen Kante wie unten.',
  'step.sleeve-lining-up': 'Das Ärmelfutter um dieselbe Menge kürzen und von Hand einnähen, mit einer Bewegungsfalte über seiner Kante.',
  'step.sleeve-lining-down':
    'Das Ärmelfutter um dieselbe Menge herauslassen, wo es Stoff hat, und von Hand mit einer Bewegungsfalte einnähen.',
  'step.pin-sleeve-taper': 'Auf links anziehen und die Unterarmnaht beider Ärmel gleich abstecken, den Arm gebeugt.',
  'step.check-elbow': 'Den Ellbogen beugen: Nichts zieht, und die Hand geht hindurch.',
  'step.pin-cuffs': 'Anziehen und beide Manschetten enger stecken, an beiden Enden gleich.',
  'step.mark-cuff-ends': 'Die neuen Enden der Manschetten anzeichnen, die Nahtzugabe dahinter.',
  'step.sleeve-end-eased':
    'Die Ärmelkante einhalten, in Falten legen oder an der Naht enger nähen, bis sie um so viel schmaler ist wie unten und zur Manschette passt.',
  'step.cut-cuff-ends': 'Die Manschettenenden hinter der Nahtzugabe abschneiden.',
  'step.cuff-ends-sewn': 'Die Manschettenenden auf links nähen, wenden und die Ecken ausbügeln.',
  'step.check-cuffs': 'Beide Manschetten knöpfen: gleich, und der Schlitz liegt flach.',
  'step.lining-off':
    'Das Futter an der Kante öffnen, an der gearbeitet wird, so weit die Hand es braucht, und den Rest zulassen. Ein lose hängendes Futter ' +
    'braucht keine Öffnung.',
  'step.lining-in-too': 'Das Futter um dieselben Maße mitnehmen, eine Spur weniger, damit es locker bleibt.',
  'step.lining-closed': 'Was am Futter geöffnet ist, von Hand schließen, mit einer Bewegungsfalte am Saum.',
  'step.pin-waist-button': 'Am Körper schließen und stecken, wo es richtig sitzt; markieren, wo der Knopf dann steht.',
  'step.pin-front-buttons':
    'Am Körper schließen und vorn zustecken, um {amount|length} {way|lap} als vorher. Alle Knöpfe, in der Regel {count}, bleiben in einer Linie.',
  'step.pin-neck-button': 'Den Kragen mit einem Finger Luft schließen und stecken; der Krawattenknoten muss ihn noch verdecken.',
  'step.pin-cuff-buttons': 'Die Manschetten am Arm schließen, stecken und beide gleich markieren.',
  'step.overlap-left': 'Messen, was noch übereinanderliegt; näher als das Mindestmaß unten dürfen sich die Kanten nicht kommen.',
  'step.mark-button-in':
    'Die neue Stelle {amount|length} neben der alten markieren, auf gleicher Höhe, weg von der Kante, neben der der Knopf sitzt. Jeden Knopf der ' +
    'Reihe gleich.',
  'step.mark-button-out':
    'Die neue Stelle {amount|length} neben der alten markieren, auf gleicher Höhe, näher an der Kante, neben der der Knopf sitzt. Jeden Knopf der ' +
    'Reihe gleich.',
  'step.button-off': 'Den Knopf zwischen Knopf und Stoff abschneiden, von der Knopfseite her, und die Fäden auszupfen.',
  'step.hammered-off':
    'Ein Jeansknopf ist eingeschlagen: die Rückseite mit der Zange abhebeln, den Knopf herausziehen und das Loch stopfen oder verstärken.',
  'step.hammered-on':
    'Die neue Stelle mit der Ahle durch ein Stück Einlage stechen, den Stift durchschieben und einen Jeansknopf daraufschlagen.',
  'step.stay-behind': 'Hinter die neue Stelle ein Stück Einlage oder einen kleinen Gegenknopf nähen.',
  'step.button-on':
    'Mit doppeltem Faden zwei kleine Stiche auf dem Zeichen machen. Einen Abstandhalter auf den Knopf legen und darübernähen, drei bis sechs ' +
    'Stiche durch jedes Lochpaar. Nadeln oder ein Zahnstocher halten die Höhe.',
  'step.shank-wound':
    'Den Abstandhalter herausziehen, den Knopf anheben, den Faden zwei- oder dreimal um den Stiel wickeln und hinten vernähen.',
  'step.check-button': 'Knöpfen: Es liegt flach und zieht nicht, und die alten Spuren sind ausgedämpft.',
  'step.pin-hook': 'Am Körper schließen und stecken, wo es richtig sitzt.',
  'step.mark-hook': 'Die neue Stelle des Hakens markieren.',
  'step.hook-off': 'Den Haken abtrennen.',
  'step.hook-on': 'Den Haken durch alle Lagen außer der äußersten annähen, auch am Schaft.',
  'step.check-hook': 'Einhaken: Die Kanten treffen sich, und außen ist kein Stich zu sehen.',
  'step.pin-buckles': 'Die Riemen am Körper schließen und beide gleich markieren.',
  'step.mark-buckles': 'Die neue Stelle jeder Schnalle oder eines neuen Lochs markieren.',
  'step.buckles-off': 'Die Schnallen abtrennen.',
  'step.buckles-on': 'Die Schnallen durch alle Lagen annähen oder mit der Ahle Löcher stechen, alle {run|length} eines.',
  'step.check-buckles': 'Schließen: Die Riemen liegen flach und gleich.',
  'step.pin-tie': 'Am Körper schließen und markieren, wo Bindeband und Innenknopf richtig sitzen.',
  'step.mark-tie': 'Die neuen Stellen markieren.',
  'step.tie-off': 'Bindeband und Innenknopf abtrennen.',
  'step.tie-on': 'Bindeband und Innenknopf an den Markierungen annähen, über dem Bandende mit einem Kreuz.',
  'step.check-tie': 'Wickeln und gehen: Es bleibt geschlossen.',
  'step.mend-button-place': 'Markieren, wo der Knopf hinkommt, und in der Seitennaht nach einem Ersatzknopf sehen.',
  'step.mend-shank': 'Den losen Knopf mit Abstandhalter wieder annähen.',
  'step.mend-seam-pinned': 'Die offene Naht auf ihrer alten Linie stecken, an beiden Enden um das Maß unten darüber hinaus.',
  'step.mend-seam-sewn': 'Auf der alten Linie nähen: {stitch|stitch}, {stitchMm} mm.',
  'step.mend-pressed': 'Von links bügeln ({press|press}).',
  'step.mend-darn-laid':
    'Fäden dicht nebeneinander über das Loch spannen, bis in den festen Stoff. Ein Loch, das größer ist als unten, wird geflickt.',
  'step.mend-darn-woven': 'Quer dazu weben, drüber und drunter, ohne zusammenzuziehen.',
  'step.mend-patch-cut': 'Den Flicken im Fadenlauf schneiden, um die Maße unten größer als das Loch.',
  'step.mend-patch-pinned': 'Die Ränder einschlagen und stecken.',
  'step.mend-patch-sewn': 'Zweimal rundum festnähen. Auch ein Bügelflicken wird genäht, wo eine Naht in der Nähe ist.',
  'step.mend-zip-measured': 'Die Zähne des alten Reißverschlusses messen und einen gleich langen derselben Art kaufen.',
  'step.mend-zip-out': 'Den alten Reißverschluss heraustrennen und seine Stelle markieren.',
  'step.mend-zip-basted': 'Den neuen Reißverschluss geschlossen einheften.',
  'step.mend-zip-tried': 'Öffnen und schließen. Er läuft leicht, und beide Seiten sind gleich hoch.',
  'step.mend-zip-in': 'Mit dem Reißverschlussfuß nähen, beide Seiten von unten nach oben.',
  'step.mend-elastic-in': 'Das neue Gummiband einziehen, so lang wie unten oder wie deine Taille.',
  'step.mend-elastic-joined': 'Die Enden übereinanderlegen und mit Zickzack als Quadrat nähen.',
  'step.mend-crease':
    'Nach einer Probe innen die Falte durch ein Tuch mit hellem Essig und Wasser anfeuchten und dämpfen. Einmal reicht meist.',
  'step.mend-fade':
    'Einmal nach Etikett waschen und die helle Linie nach einer Probe innen mit Textilstift oder Farbe ausbessern. Sie kann bleiben.',
  'step.mend-pills': 'Die Knötchen flach auf dem Tisch abkämmen oder abrasieren, ohne in den Stoff zu schneiden.',
  'step.mend-pocket-pattern': 'Um den alten Taschenbeutel herum ein Muster zeichnen und einen neuen zuschneiden.',
  'step.mend-pocket-out': 'Nichts abschneiden: den alten Beutel vom Eingriff abtrennen.',
  'step.mend-pocket-sewn': 'Den neuen Beutel an den Eingriff nähen und zweimal rundum schließen.',
  'step.mend-clean-wash': 'Nach Etikett reinigen. Flecken zuerst, von links, nach einer Probe innen.',
  'step.mend-clean-delicate': 'Nach Etikett von Hand in kühlem Wasser mit Wollseife reinigen oder reinigen lassen. Nie reiben.',
  'step.mend-dye-tested': 'Die Farbe an einem Rest oder innen erproben. Polyester, Garn wie Stoff, bleibt, wie es ist.',
  'step.mend-dye': 'Nass und ohne Falten färben, immer in Bewegung, dann spülen, bis das Wasser klar ist.',
  'step.mend-proof': 'Reinigen, dann die Imprägnierung warm einreiben und, was zu viel ist, abwischen. In bewegter Luft aushängen lassen.',
  'step.mend-polish': 'Reinigen, das Leder fetten, ruhen lassen und polieren.',
  'step.mend-heel': 'Den alten Absatzfleck abhebeln, beide Seiten aufrauen, den neuen kleben und nageln und seinen Rand raspeln.',
  'step.mend-block-wet': 'In kühlem Wasser nass machen, ohne zu wringen, und in einem Handtuch ausdrücken.',
  'step.mend-block-pinned': 'Flach auslegen und auf die Maße spannen.',
  'step.mend-block-dry': 'Flach trocknen lassen, bevor die Nadeln herauskommen.',
  'step.mend-pests-bagged': 'Sofort in einen Beutel schließen, getrennt von allem anderen, und den Beutel, in dem es kam, draußen leeren.',
  'step.mend-pests-frozen':
    'Im Beutel drei Tage bei −18\u00a0°C einfrieren; heißes Waschen würde es verderben. Dann lüften und nach Etikett reinigen.',
  'step.mend-pests-hot':
    'Bei 60\u00a0°C waschen oder eine halbe Stunde über 40\u00a0°C in den Trockner, soweit das Etikett es erlaubt; sonst drei Tage einfrieren.',
  'step.mend-pests-brushed': 'Nähte und Taschen draußen ausbürsten und nach zwei Wochen noch einmal nachsehen.',
  'step.mend-collar-off': 'Den Kragen vom Steg trennen und an beiden die Mitte markieren.',
  'step.mend-collar-turned': 'Wenden, die abgewetzte Seite nach unten, und in den Steg heften.',
  'step.mend-collar-on': 'Den Steg auf der alten Linie zunähen.',
  'step.pin-sleeve-length': 'Anziehen, die Arme hängen lassen und an beiden Ärmeln {amount|length} hochstecken.',
  'step.pin-body-length': 'Anziehen und rundum gleich {amount|length} hochstecken.',
  'step.try-body-length':
    'Geschlossen über dem anprobieren, was dazu getragen wird, die Arme hängen. Von vorn, von der Seite und von hinten ansehen.',
  'step.fell-open':
    'Die Naht ist eine Kappnaht: beide Steppreihen auftrennen, so weit die neue Linie läuft und eine Handbreit mehr, und flach bügeln.',
  'step.fell-trim': 'Neben der neuen Naht die Lage, die unten liegt, auf das erste Maß zurückschneiden, die darübergelegte auf das zweite.',
  'step.check-skirt-sides': 'Von der Seite ansehen: Die Nähte hängen gerade und in der Mitte, und der Saum ist waagerecht.',
  'step.hem-off-turn-up': 'Die Stiche auftrennen, die den Saum in den Umschlägen halten.'
}
