export const whoEn = {
  'who.title': 'Who works here?',
  'who.nobody': 'Who works?',
  'who.none': 'No badges yet. A badge is a shape and a word, never a name.',
} as const;
