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
  'broken.row': '{title} lässt sich nicht zeigen: ein Fehler von Seam Reckoner. Es bleibt gespeichert, wie es ist.'
}
