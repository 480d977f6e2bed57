/** Who wears a badge, noted apart from the records. */
export const wearerEn = {
  'wearer.title': 'Who wears this badge',
  'wearer.about':
    'The records know the badge only, never a name. A name noted here stays on this device: sealed, in no export and in no copy.',
  'wearer.nobody-noted': 'Nobody is noted here.',
  'wearer.not-here': 'Somebody was noted, and it cannot be read on this device any more.',
  'wearer.erased': 'Who wore this badge was erased on {at}.',
  'wearer.name': 'Name',
  'wearer.note': 'Note it on this device',
  'wearer.erase': 'Erase who it is for good',
  'wearer.erase.hold': 'Hold for 1 s',
  'wearer.erase.gone':
    'Gone then: the name, its key and the link to this badge, on this device. Nothing brings them back.',
  'wearer.erase.stays':
    'What stays: the badge, all that was written with it, and that somebody was erased. The records stay whole, and can be checked as before.',
  'wearer.fault': 'It could not be written whole. {reason}',
} as const;
