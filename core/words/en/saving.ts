/** What is said of saving: how it stands, why it failed, and what to do. */
export const saving = {
  'saved.head': 'What is saved can’t be opened',
  'saved.newer': 'It was saved by a later version of this extension, and is left as it is. Install that version again.',
  'saved.unavailable':
    'The browser gives no place to save here: in a private window, with storage switched off, or on a full disk. Change that and open this again.',
  'saved.full': 'The browser has no room even to open what is saved. Free some space on this device, then reload.',
  'saved.opening': 'Opening what is saved.',
  'saved.waiting':
    'The browser has not opened what is saved yet. It may be busy: wait, or close other pages of Seam Reckoner, then reload.',
  'saved.blocked':
    'Another page of Seam Reckoner holds what is saved in an older version. Close its other pages; this one then goes on by itself.',
  'saving.saved': 'Saved.',
  'saving.saving': 'Saving…',
  'saving.not-saved': 'Not saved.',
  'saving.trouble.full': 'This was not saved: the browser has no room left. Free some space on this device.',
  'saving.trouble.broken-off': 'This was not saved: the browser broke it off.',
  'saving.trouble.gone': 'This was not saved: it was removed on another page meanwhile.',
  'saving.trouble.outdated':
    'Nothing is saved here any more: another page has opened what is saved in a later version of Seam Reckoner. Reload this page.',
  'saving.trouble.deleted':
    'What was saved here has been deleted, on another page or with the browser’s data. Nothing is saved here any more.',
  'saving.trouble.misfit': 'This was not saved: it would not be readable again. That is a mistake of Seam Reckoner’s.',
  'saving.trouble.unavailable': 'This was not saved: the browser gives no place to save, or has closed it.',
  'saving.again.how': 'It waits here as long as this page is open.',
  'saving.still-there': 'What you typed still stands in its field.',
  'saving.copy': 'Copy what you typed before you reload this page.',
  'saving.again': 'Try again',
  'saving.reload': 'Reload this page',
  'saving.clash': 'This was changed on another page meanwhile, to something else. Nothing was overwritten: say which counts.',
  'saving.clash.both': 'here: {mine}; there: {theirs}',
  'saving.clash.mine': 'What is here counts',
  'saving.clash.theirs': 'What is there counts',
  'saving.clash.neither': 'Back to what I typed',
  'saving.field.name': 'Name',
  'saving.field.notes': 'Notes',
  'saving.field.kind': 'Kind',
  'saving.field.measures': 'A measure',
  'saving.field.corrections': 'What was set right',
  'saving.field.money': 'A figure of money',
  'saving.field.status': 'Status',
  'saving.field.tags': 'Tags',
  'saving.field.means': 'What you can sew and pay',
  'saving.field.fit': 'Fit',
  'saving.field.easeOf': 'Own ease',
  'saving.field.limits': 'Own limits',
  'saving.field.other': 'Another field',
  'wardrobe.gone': 'This garment was removed on another page',
  'wardrobe.gone.what': 'What you typed is still here: save it as a garment of its own, or leave it.',
  'wishlist.gone.typed': 'A listing that you were changing was removed on another page. Your notes were: {notes}',
  'backup.too-long': 'This file is larger than any backup of Seam Reckoner. Nothing was changed. Choose the file that Save a backup made.',
  'backup.too-deep':
    'This file is built deeper than any backup of Seam Reckoner. Nothing was changed. Choose the file that Save a backup made.',
  'backup.planned':
    'Nothing is changed yet. From this file: {added} would be added, {replaced} changed, {left} {left|one:is|other:are} here already.',
  'backup.planned.set-aside':
    '{count} {count|one:record|other:records} can’t be read; {count|one:it|other:they} would be kept aside, whole.',
  'backup.planned.conflicts':
    '{count} {count|one:field was|other:fields were} changed here and there, each time to something else: ' +
    'the later would count, and both be shown until you settle it.',
  'backup.bring': 'Bring it in',
  'backup.leave': 'Leave everything as it is',
  'backup.conflicts': '{count} {count|one:field was|other:fields were} changed on both sides: settle it below.',
  'conflicts.title': 'Changed on two devices',
  'conflicts.what':
    '{count} {count|one:field|other:fields} had two changes that knew nothing of each other. The later counts until you say which.',
  'conflicts.of': '{table|backup.table} “{name}”:',
  'conflicts.both': '{field}. Counts now: {now}. On the other device, {date}: {other}.',
  'conflicts.removed': 'it was removed on another device on {date}, and changed here.',
  'conflicts.now': 'What counts now',
  'conflicts.other': 'What the other device had',
  'conflicts.keep': 'Keep it',
  'conflicts.remove': 'Remove it',
  'broken.part': 'This part can’t be shown',
  'broken.part.what':
    'A mistake of Seam Reckoner’s stopped it: {detail}. What is saved is safe, and the other parts work. Reload the page; save a backup if it comes back.',
  'broken.listing': 'This listing can’t be shown',
  'broken.listing.what': 'A mistake of Seam Reckoner’s stopped it: {detail}. What is saved is safe, and other listings work.',
  'broken.undo': 'Take back what was changed last',
  'broken.paste': 'Or paste the part with the measurements here',
  'broken.backup': 'Save a backup',
  'broken.row': '{title} can’t be shown: a mistake of Seam Reckoner’s. It is kept as it is.'
}
