/** Words of the card and the stores that stand on the list of lines too, which comes first. */
export const placesEn = {
  'card.title': 'Splice card',
  'card.revolutions': 'Belt ran',
  'card.cut.endless': 'Endless, slack',
  'stores.title': 'Stores',
  'stores.new.badges': 'Enter a badge',
  'start.begin': 'Start my own plant',
  'start.go-on': 'Go on with my plant',
  'start.plants': 'Plants on this device',
} as const;
