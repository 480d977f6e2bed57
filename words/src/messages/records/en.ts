/**
 * Sentences about the log. `at` is a line counted from 0, of a checkpoint its size; `size` and `witnessed` count events.
 */
export const recordsEn = {
  'refusal.byte-order-mark': 'the text starts with a byte-order mark. Save it as UTF-8 without one.',
  'refusal.not-utf8': 'the bytes are not UTF-8. Save the text as UTF-8.',
  'refusal.duplicate-name': 'a name stands twice in one object. Keep one of them.',
  'refusal.too-deep': 'nested too deeply: at most {max, select, none {32} other {{max}}} levels. Flatten it.',
  'refusal.number-not-finite': 'a number is not finite, or larger than a computer holds. Correct it.',
  'refusal.lone-surrogate': 'a letter is cut in half (a lone surrogate). Correct the text.',
  'refusal.not-plain-data':
    'only texts, finite numbers, true, false, null, lists and objects can be kept. Take out the rest.',
  'refusal.not-hex': 'not hex: pairs of the digits 0 to 9 and a to f are needed. Correct it.',
  'refusal.wrong-length': 'got {value}, must be {allowed}. Check that it was copied whole.',
  'refusal.not-a-hash': 'got “{value}”, a SHA-256 of 64 hex digits is needed. Check that it was copied whole.',
  'refusal.not-a-moment': 'got “{value}”, must be a moment in UTC like 2026-11-25T02:04:00Z.',
  'refusal.empty': 'is empty. Fill it in.',
  'refusal.unsafe-integer': 'got {value}: whole numbers beyond {max} are not kept exactly. Enter it as text.',
  'refusal.event-too-large': 'got {value}, at most {max} go into one event. Attach long content as a file.',
  'refusal.wrong-device': 'the checkpoint is of another device. Give the one that belongs to this log.',
  'refusal.checkpoint-behind': 'the checkpoint covers {value} events, the log has {min}. Sign a new one first.',
  'refusal.file-too-large': 'the file holds {value}, at most {max} are read. Export less at once.',
  'refusal.file-many-entries': 'the archive holds {value} files, at most {max} are read. Export less at once.',
  'refusal.file-ratio': '“{name}” unpacks to more than {max} times its size. This is no export; do not open it.',
  'refusal.file-path': '“{name}” points out of the archive. This is no export; do not open it.',
  'refusal.file-no-archive': 'this is neither an export nor a whole archive. Get the file again.',
  'refusal.file-no-log': 'the archive holds no log.jsonl. Choose a file that was exported here.',
  'refusal.no-such-event': 'there is no such event in this log. Choose one from the history.',
  'refusal.nothing-to-undo':
    'this event has nothing left to take back: it changed nothing here, or what it changed stands as before. Change the thing itself.',
  'warning.clock-back':
    'line {at} (the first is 0): the clock of the device had been set back. Do not compare times of day across this line.',
  'warning.not-witnessed':
    'from line {at} on (the first is 0) no checkpoint covers the events of this device: were some missing at the end, it would not show.',
  'warning.blob-missing': 'line {at} (the first is 0) names a picture or curve that is not in this file ({blob}…).',
  'warning.blob-unnamed': 'no event names the picture or curve {blob}… in this file. It proves nothing.',
  'warning.file-unknown': '“{name}” in this archive belongs to no export and was not looked at.',
  'warning.witness-elsewhere':
    'line {at} (the first is 0) of the countersignatures is about a log that is not in this file.',
  'verdict.ok': 'Whole: no event was changed, moved or removed after it was signed.',
  'verdict.not-canonical':
    'Line {at} (the first is 0) is not as it was written: changed, damaged or cut off. Get another copy.',
  'verdict.bad-envelope':
    'Line {at} (the first is 0) does not have the fields of this version: a newer program wrote it, or it was changed.',
  'verdict.wrong-plant': 'Line {at} (the first is 0) belongs to another plant.',
  'verdict.wrong-device': 'Line {at} (the first is 0) was written by a device that does not belong here.',
  'verdict.bad-signature': 'Line {at} (the first is 0) was changed after it was signed, or somebody else signed it.',
  'verdict.sequence-gap': 'At line {at} (the first is 0) events are missing, repeated or in another order.',
  'verdict.broken-link':
    'Line {at} (the first is 0) does not follow from what stands before it: something there was changed.',
  'verdict.bad-checkpoint':
    'The checkpoint{at, select, none {} other { of {at} events}} is missing or does not belong to this log. Get another copy.',
  'verdict.truncated':
    'The end is missing after {at}{witnessed, select, none {} other {; once there were {witnessed} events}}. Get another copy.',
  'verdict.history-rewritten':
    'Events up to number {at} were written anew after they had been vouched for. Compare with another copy.',
  'verdict.fork': 'From event {at} on the two copies say different things: one device wrote both.',
  'verdict.prefix': 'One copy ends at {at} events, the other goes on.',
  'verdict.blob-changed': 'A picture or curve named in line {at} (the first is 0) is not the one that was recorded.',
  'verdict.bad-witness':
    'Line {at} (the first is 0) of the countersignatures was changed, or is none. Get the witness’s own copy.',
  'verify.field': 'Field: {field}.',
  'verify.device': 'It is the log of device {device}.',
  'verify.blob': 'File: blobs/{blob}; {field, select, bytes {its size is another} other {its content is another}}.',
  'verify.by-witness': 'Line {witness} (the first is 0) of the countersignatures says so.',
  'verify.seen':
    '{device}: seen by {by, plural, =0 {no other device, on this device only} one {one other device} other {# other devices}}{by, plural, =0 {} other {{open, plural, =0 {} one {; the last event on this device only} other {; the last # events on this device only}}}}.',
  'witness.first-seen':
    '{device}: {size, plural, one {one event} other {# events}} countersigned, seen for the first time.',
  'witness.same':
    '{device}: {size, plural, one {one event} other {# events}} countersigned; nothing new since the last time.',
  'witness.grown':
    '{device}: {size, plural, one {one event} other {# events}} countersigned; contains what was countersigned before.',
  'witness.older':
    '{device}: this copy has {size} events, {known} were countersigned before. Not countersigned: ask for the newer copy.',
  'witness.not-proved':
    '{device}: not shown to contain the {known} events countersigned before. Not countersigned: ask for the whole log.',
  'witness.fork':
    '{device}: ALARM: two different histories of {size} events, both signed by this device. Keep both files and tell whoever looks after the records.',
  'witness.rewritten':
    '{device}: ALARM: does not contain the {known} events countersigned before; they were written anew. Keep both files and tell whoever looks after the records.',
  'witness.no-key':
    '{file} holds no Ed25519 private key in PEM form. Give another file, or one that does not exist yet.',
  'witness.new-key': 'Made a new key for this witness: {file}. Keep it to yourself.',
  'witness.locked': 'Another witness is using this file. Wait; if none is running, remove {file} and try again.',
  'witness.kept-damaged':
    '{file} is damaged: what it kept cannot be compared. Restore it from a copy; do not start anew.',
  'verify.log':
    '{device}: {size, plural, one {one event} other {# events}}, {open, plural, =0 {all covered by a checkpoint} one {one of them only in this copy} other {# of them only in this copy}}.',
  'verify.throwaway':
    'Signed with a key made for this file and thrown away: later changes show, who wrote it does not. Code: {code}',
} as const;
