/** German: whether what is typed is saved, and what to do where it is not. */
export const saving: Record<string, string> = {
  'saved.full': 'Der Browser hat nicht einmal Platz, das Gespeicherte zu öffnen. Schaff auf diesem Gerät Platz und lade neu.',
  'saved.waiting':
    'Der Browser hat das Gespeicherte noch nicht geöffnet. Vielleicht ist er beschäftigt: Warte, oder schließ andere Seiten von Seam Reckoner und lade neu.',
  'saved.blocked':
    'Eine andere Seite von Seam Reckoner hält das Gespeicherte in einer älteren Version fest. Schließ die anderen Seiten; dann geht es hier von selbst weiter.',
  'saving.saved': 'Gespeichert.',
  'saving.saving': 'Wird gespeichert …',
  'saving.not-saved': 'Nicht gespeichert.',
  'saving.trouble.full': 'Das ist nicht gespeichert: Der Browser hat keinen Platz mehr. Schaff auf diesem Gerät Platz.',
  'saving.trouble.broken-off': 'Das ist nicht gespeichert: Der Browser hat abgebrochen.',
  'saving.trouble.gone': 'Das ist nicht gespeichert: Es ist inzwischen auf einer anderen Seite entfernt worden.',
  'saving.trouble.outdated':
    'Hier wird nichts mehr gespeichert: Eine andere Seite hat das Gespeicherte in einer neueren Version von Seam Reckoner geöffnet. Lade diese Seite neu.',
  'saving.trouble.deleted':
    'Was hier gespeichert war, ist gelöscht, auf einer anderen Seite oder mit den Browserdaten. Hier wird nichts mehr gespeichert.',
  'saving.trouble.misfit': 'Das ist nicht gespeichert: Es wäre nicht wieder lesbar. Das ist ein Fehler von Seam Reckoner.',
  'saving.trouble.unavailable': 'Das ist nicht gespeichert: Der Browser gibt keinen Platz zum Speichern oder hat ihn geschlossen.',
  'saving.again.how': 'Es wartet hier, solange diese Seite offen ist.',
  'saving.still-there': 'Was du eingetippt hast, steht noch in seinem Feld.',
  'saving.copy': 'Kopier, was du eingetippt hast, bevor du diese Seite neu lädst.',
  'saving.again': 'Noch einmal versuchen',
  'saving.reload': 'Diese Seite neu laden',
  'broken.part': 'Dieser Teil lässt sich nicht zeigen',
  'broken.part.what':
    'Ein Fehler von Seam Reckoner hat ihn angehalten: {detail}. Das Gespeicherte ist sicher, und die anderen Teile gehen. Lade die Seite neu; kommt es ' +
    'wieder, speichere eine Sicherung.',
  'broken.listing': 'Dieses Angebot lässt sich nicht zeigen',
  'broken.listing.what':
    'Ein Fehler von Seam Reckoner hat es angehalten: {detail}. Das Gespeicherte ist sicher, und andere Angebote gehen.',
  'broken.undo': 'Letzte Änderung zurücknehmen',
  'broken.paste': 'Oder füg den Teil mit den Maßen hier ein',
  'broken.backup': 'Sicherung speichern',
  'broken.row': '{title} lässt sich nicht zeigen: ein Fehler von Seam Reckoner. Es bleibt gespeichert, wie es ist.',
  'saving.clash': 'Das wurde inzwischen auf einer anderen Seite anders geändert. Überschrieben ist nichts: Sag, was gilt.',
  'saving.clash.both': 'hier: {mine}; dort: {theirs}',
  'saving.clash.mine': 'Was hier steht, gilt',
  'saving.clash.theirs': 'Was dort steht, gilt',
  'saving.clash.neither': 'Zurück zu dem, was ich eingetippt habe',
  'saving.field.name': 'Name',
  'saving.field.notes': 'Notizen',
  'saving.field.kind': 'Art',
  'saving.field.measures': 'ein Maß',
  'saving.field.corrections': 'was berichtigt wurde',
  'saving.field.money': 'ein Geldbetrag',
  'saving.field.status': 'Stand',
  'saving.field.tags': 'Stichwörter',
  'saving.field.means': 'was du nähen und zahlen kannst',
  'saving.field.fit': 'Passform',
  'saving.field.easeOf': 'eigene Zugabe',
  'saving.field.limits': 'eigene Grenzen',
  'saving.field.other': 'ein anderes Feld',
  'wardrobe.gone': 'Dieses Stück ist auf einer anderen Seite entfernt worden',
  'wardrobe.gone.what': 'Was du eingetippt hast, ist noch hier: Speichere es als eigenes Stück oder lass es.',
  'wishlist.gone.typed':
    'Ein Angebot, das du gerade geändert hast, ist auf einer anderen Seite entfernt worden. Deine Notizen waren: {notes}',
  'backup.too-long':
    'Diese Datei ist größer als jede Sicherung von Seam Reckoner. Geändert wurde nichts. Wähl die Datei, die „Sicherung speichern“ gemacht hat.',
  'backup.too-deep':
    'Diese Datei ist tiefer verschachtelt als jede Sicherung von Seam Reckoner. Geändert wurde nichts. Wähl die Datei, die „Sicherung speichern“ ' +
    'gemacht hat.',
  'backup.going.read': 'Die Datei wird gelesen: {done} von {of}.',
  'backup.going.bring': 'Wird übernommen: {done} von {of}. Gespeichert wird alles oder nichts.',
  'backup.going.save': 'Was gespeichert ist, wird gesammelt: {done}.',
  'backup.planned':
    'Noch ist nichts geändert. Aus dieser Datei {added|one:käme|other:kämen} {added} hinzu, {replaced} {replaced|one:würde|other:würden} ' +
    'geändert, {left} {left|one:ist|other:sind} schon hier.',
  'backup.planned.set-aside':
    '{count} {count|one:Eintrag ist|other:Einträge sind} nicht lesbar; {count|one:er bliebe|other:sie blieben} unverändert beiseitegelegt.',
  'backup.planned.conflicts':
    '{count} {count|one:Feld wurde|other:Felder wurden} hier und dort verschieden geändert: Das Spätere gälte, und beides bliebe sichtbar, bis ' +
    'du es klärst.',
  'backup.bring': 'Übernehmen',
  'backup.leave': 'Alles lassen, wie es ist',
  'backup.conflicts': '{count} {count|one:Feld wurde|other:Felder wurden} auf beiden Seiten geändert: Klär es unten.',
  'conflicts.title': 'Auf zwei Geräten geändert',
  'conflicts.what':
    '{count} {count|one:Feld hat|other:Felder haben} zwei Änderungen, die nichts voneinander wussten. Die spätere gilt, bis du sagst, welche.',
  'conflicts.of': '{table|backup.table} „{name}“:',
  'conflicts.both': '{field}. Jetzt gilt: {now}. Auf dem anderen Gerät, {date}: {other}.',
  'conflicts.removed': 'am {date} auf einem anderen Gerät entfernt und hier geändert.',
  'conflicts.now': 'was jetzt gilt',
  'conflicts.other': 'was das andere Gerät hatte',
  'conflicts.keep': 'Behalten',
  'conflicts.remove': 'Entfernen',
  'unreadable.listingsKept': '{count} {count|one:Angebot ist|other:Angebote sind} nicht lesbar und {count|one:fehlt|other:fehlen} hier.',
  'unreadable.garmentsOwned': '{count} {count|one:Stück ist|other:Stücke sind} nicht lesbar und {count|one:fehlt|other:fehlen} hier.',
  'unreadable.people': '{count} {count|one:Person ist|other:Personen sind} nicht lesbar und {count|one:fehlt|other:fehlen} hier.',
  'unreadable.bodyMeasurements': '{count} {count|one:Maß ist|other:Maße sind} nicht lesbar und {count|one:fehlt|other:fehlen} hier.',
  'unreadable.where': 'Verloren ist nichts: siehe Sicherung',
  'backup.kept-before': 'Wie es vorher war, steht unten bei den früheren Ständen.',
  'snapshots.title': 'Frühere Stände',
  'snapshots.what':
    'Seam Reckoner merkt sich von selbst, wie alles war: einmal am Tag, wenn sich etwas geändert hat, bevor eine Datei übernommen wird, bevor du ' +
    'zurückgehst und bevor das Beispiel entfernt wird. Einige bleiben, manche für Wochen. Sie stehen nur in diesem Browser, in keiner ' +
    'Sicherungsdatei, und gehen mit seinen Daten verloren.',
  'snapshots.none':
    'Noch gibt es keinen. Der erste wird gemerkt, wenn eine Seite von Seam Reckoner geöffnet wird und hier etwas gespeichert ist.',
  'snapshots.let-go':
    'Der Browser hatte keinen Platz mehr. Darum sind die früheren Stände aufgegeben und das Eingetippte gespeichert worden. Ein neuer wird gemerkt, ' +
    'sobald Platz ist.',
  'snapshots.at': '{day|date}, {time}',
  'snapshots.because.day': 'zu Beginn des Tages',
  'snapshots.because.import': 'bevor eine Datei übernommen wurde',
  'snapshots.because.restoring': 'vor einem Zurückgehen',
  'snapshots.because.removing': 'bevor das Beispiel entfernt wurde',
  'snapshots.counts':
    '{listingsKept} {listingsKept|one:Angebot|other:Angebote}, {garmentsOwned} {garmentsOwned|one:Stück|other:Stücke}, ' +
    '{people} {people|one:Person|other:Personen}',
  'snapshots.look': 'Was würde sich ändern?',
  'snapshots.look.at': 'Was würde sich ändern: zurück zum {day|date}, {time}?',
  'snapshots.planned': 'Noch ist nichts geändert. Zurück zum {day|date}, {time}:',
  'snapshots.planned.back': '{count} {count|one:Eintrag kommt|other:Einträge kommen} wieder',
  'snapshots.planned.changed': '{count} {count|one:ist|other:sind} wieder wie damals',
  'snapshots.planned.removed': '{count}, {count|one:der seitdem dazukam, wird|other:die seitdem dazukamen, werden} entfernt',
  'snapshots.planned.undo': 'Der jetzige Stand wird vorher gemerkt, damit du zu ihm zurückkannst.',
  'snapshots.same': 'Alles ist wie am {day|date}, {time}: Zurückzugehen ändert nichts.',
  'snapshots.go': 'Dorthin zurück',
  'snapshots.close': 'Schließen',
  'snapshots.went': 'Alles ist wie am {day|date}, {time}.',
  'snapshots.gone': 'Diesen früheren Stand gibt es nicht mehr.',
  'snapshots.elsewhere': 'Auf einer anderen Seite ist alles auf einen früheren Stand zurückgesetzt worden.',
  'keeping.title': 'Damit nichts verloren geht',
  'keeping.kept': 'Der Browser hat versprochen, nichts davon zu löschen, solange du es nicht tust.',
  'keeping.not-kept':
    'Wird der Platz knapp, löscht der Browser vielleicht, was hier gespeichert ist. Du kannst ihn bitten, es zu behalten.',
  'keeping.unknown': 'Der Browser sagt nicht, ob er löschen darf, was hier gespeichert ist.',
  'keeping.ask': 'Den Browser bitten, es zu behalten',
  'keeping.asks': 'Der Browser fragt dich dann, ob du es erlaubst: Sag ja. Sonst ändert sich nichts.',
  'keeping.put-off': 'Jetzt nicht',
  'keeping.refused': 'Der Browser hat es nicht versprochen. Eine Sicherungsdatei ist vor ihm sicher.',
  'keeping.never': 'Von hier ist noch keine Sicherung gespeichert.',
  'keeping.last': 'Die letzte Sicherung ist {days} {days|one:Tag|other:Tage} alt.',
  'keeping.old': 'Die letzte Sicherung ist {days} Tage alt.'
}
