/** Sentences about what is kept on the device, and about export files. */
export const storeEn = {
  'store.demo': 'Demo plant, invented.',
  'store.device': 'This device',
  'store.everything': 'Export or import everything',
  'store.plant-name': 'Name of the plant',
  'store.persist': 'Keep the records on this device',
  'store.lost.read': 'I have read this',
  'store.notice.lost':
    '{count, plural, one {# record} other {# records}} of {name} that were kept here are gone: the browser deleted or damaged its storage. Import the last export before anything is entered.',
  'store.notice.back-again':
    'The browser lost or damaged its storage. {count, plural, one {# record} other {# records}} of {name} came back from the second copy. This device signs with a new key from now on. Export everything.',
  'store.notice.broken':
    'The chain of records is broken at record {at}. Nothing more is written on it. Export everything now and show the file to whoever looks after the records.',
  'store.notice.newer':
    'A newer version is open in another tab. Load this page again; nothing is kept from here until then.',
  'store.notice.closed': 'The browser closed the storage. Load this page again; nothing is kept from here until then.',
  'store.notice.no-storage':
    'This browser forbids storage: the plant is only shown, and nothing you enter is kept. Allow storage for this page.',
  'store.notice.blocked':
    'An older version is open in another tab: the plant is only shown. Close the other tabs of this app, then load the page again.',
  'store.notice.reserve-used':
    'The disk was full and the space set aside has been used. Export everything, then make room on the device.',
  'store.notice.nearly-full':
    'Little room is left: {used} MB of {quota} MB are used. Export everything, then make room on the device.',
  'store.notice.private':
    'This looks like a private window: its records are deleted when it closes. Use an ordinary window, or export before you close it.',
  'store.notice.clock':
    'The clock of this device jumped by {seconds} s. It is written down. Check date and time in the device’s settings.',
  'store.notice.unknown-events':
    '{count, plural, one {# record was written by a newer version: it is kept, but not shown.} other {# records were written by a newer version: they are kept, but not shown.}} Update this app.',
  'store.notice.practice-only':
    'Practice only: in a tab this browser deletes all records after seven days without use. Put the page on the home screen and open it from there before the first record.',
  'store.notice.install-first':
    'Install this app before the first record: in a tab the browser may delete everything when space is short.',
  'store.notice.not-persisted':
    'The browser has not promised to keep the records when space is short. Install the app, and export everything now and then.',
  'store.notice.persisted': 'The browser promised to keep the records.',
  'store.notice.copied': 'Every record is written twice on this device.',
  'store.notice.not-copied':
    'The second copy of the records is not written: this browser has no place for it, or the disk is full. Export everything now and then.',
  'store.notice.key-copyable':
    'The key of this device can be copied: this browser cannot lock it away. A newer browser can.',
  'store.quota': 'Not saved: the disk is full. Export everything, make room on the device, then save again.',
  'store.blocked':
    'An older version is open in another tab. Close the other tabs of this app, then load the page again.',
  'store.busy': 'Not saved: another tab was writing. Save again.',
  'store.closed': 'Not saved: the browser closed the storage. Load the page again, then enter it once more.',
  'store.broken':
    'Not saved: the chain of records is broken. Export everything and show the file to whoever looks after the records.',
  'store.refused': 'Not saved: this is not a complete record ({type}). Check what was entered, then save again.',
  'store.clock': 'Not saved: the clock of this device shows an impossible date. Set date and time, then save again.',
  'store.no-storage': 'Not saved: this browser forbids storage. Allow storage for this page, then load it again.',
  'store.newer': 'Not saved: a newer version has been here. Load the page again.',
  'store.failed':
    'Not saved: the browser could not write ({reason}). Save again; if it fails again, load the page again.',
  'store.no-such-event': 'There is no such change in this plant. Load the page again.',
  'store.no-such-plant': 'There is no such plant on this device. Load the page again.',
  'store.nothing-to-undo': 'There is nothing to take back: it is already as it was before.',
  'store.file-too-large': 'Not taken: unpacked, the file has {value} MB; at most {max} MB are allowed. Export it anew.',
  'store.file-many-entries': 'Not taken: the archive holds {value} files; at most {max} are allowed. Export it anew.',
  'store.file-ratio':
    'Not taken: “{name}” would unpack to more than {max} times its size, as no export does. Export it anew.',
  'store.file-path': 'Not taken: “{name}” in the archive leads out of its folder, as no export does. Export it anew.',
  'store.file-no-archive':
    'Not taken: this is not a whole export file. Copy it once more from the other device, or export it anew.',
  'store.file-no-log': 'Not taken: the archive holds no records. Choose a file that “Export everything” made.',
  'store.file-blob':
    'Not taken: a picture in the file is not what was recorded ({name}). Copy or export the file anew.',
  'store.file-verdict':
    'Not taken: line {line} of the file {verdict, select, truncated {is missing: the file was cut off} other {is not as its device wrote it}} ({verdict}). Copy the file once more, or export it anew.',
  'store.file-newer':
    'Not taken: the file was written by a newer version of this app (form {version}; this one reads form {known}). Update this app, then import the file again.',
  'store.file-fork':
    'Not taken: at record {seq} the file says something else than this device, under the same signature. Keep both and show them to whoever looks after the records.',
  'store.file-nothing-new': 'Not taken: this device has everything in the file already.',
} as const;
