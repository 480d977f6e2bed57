/** Devices that bear witness to each other's records. What came of a meeting stands with the records themselves. */
export const seenEn = {
  'seen.title': 'Who has seen the records',
  'seen.about':
    'What only this device has can be lost, or written anew without a trace. Another device that has seen the records bears witness: it shows when they are changed later.',
  'seen.nothing-kept': 'This page keeps nothing, so it bears no witness. Load it again, or allow storage for it.',
  'seen.own': 'Records of this device',
  'seen.own.nothing': 'This device has written nothing in this plant yet. Enter something first.',
  'seen.only-here':
    'On this device only: {count, plural, one {its one record} other {all of its # records}}. Let another device see them.',
  'seen.seen':
    'Seen by another device: {open, plural, =0 {all of its {count} records} one {all of its {count} records but the last one} other {all of its {count} records but the last #}}.',
  'seen.by': 'Device {device} saw {size, plural, one {one record} other {# records}} on {at}.',
  'seen.on-card': 'log of {count, plural, one {# record} other {# records}}: {code}',
  'seen.code': 'Code:',
  'seen.code.help':
    'The code of these records, as it stands on a printed report. Paper and records can be held against each other.',
  'seen.show': 'Hold this in front of the other device’s camera, on this same page:',
  'seen.show.label': 'Code with what this device says of its records',
  'seen.other': 'Records of another device',
  'seen.other.help':
    'Read the code on the other device’s screen: this device remembers what it says, and signs that it saw it. Read the answer of the other device in the same way.',
  'seen.camera.on': 'Read a code with the camera',
  'seen.camera.off': 'Switch the camera off',
  'seen.type': 'Or what a hand scanner types',
  'seen.type.take': 'Take it',
  'seen.file': 'Take a file of countersignatures',
  'seen.file.help': 'A file witnesses.jsonl from a device or a server that saw the records of this plant.',
  'seen.back': 'Now hold this in front of the other device’s camera, so that it knows:',
  'seen.back.label': 'Code with the countersignature of this device',
  'seen.unreadable.damaged':
    'This code was not read whole. Hold the camera nearer and still, or make the other screen brighter.',
  'seen.unreadable.other': 'This is no code of this page. On the other device open “Who has seen the records”.',
  'seen.not-met.own': 'This is the code of this device itself. A device is no witness of its own records.',
  'seen.not-met.other-plant': 'This code is of another plant. Show the same plant on both devices.',
  'seen.not-met.unsound': 'This code is not signed by the device it names. Nothing was countersigned.',
  'seen.taken':
    '{fresh, plural, =0 {Nothing new: } one {One countersignature is kept now. } other {# countersignatures are kept now. }}{known, plural, =0 {} one {One was known. } other {# were known. }}{elsewhere, plural, =0 {} one {One is about records that are not on this device.} other {# are about records that are not on this device.}}',
  'seen.not-taken': 'None of the countersignatures was taken.',
} as const;
