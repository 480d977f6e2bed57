/** What people say, rightly or wrongly, for a term; search finds the term by any of these, in every language. */
export interface SearchSynonym {
  /** Key of the term as it is used everywhere else. */
  readonly term: SearchTerm;
  /** Words people type, lower case, without accents. */
  readonly said: readonly string[];
}

export const searchTerms = [
  'splice',
  'endless length',
  'recipe',
  'hold time',
  'die',
  'press',
  'take-up',
  'set elongation',
  'pulley',
  'drive pulley',
  'snub roller',
  'release cloth',
  'revolutions',
  'lock-out',
  'under-fused',
  'void',
  'line',
] as const;
export type SearchTerm = (typeof searchTerms)[number];

export const searchSynonyms: readonly SearchSynonym[] = [
  {
    term: 'splice',
    said: [
      'splice',
      'joint',
      'join',
      'weld',
      'vulcanise',
      'vulcanize',
      'vulcanising',
      'cure',
      'verbindung',
      'fingerverbindung',
      'stoss',
      'schweissen',
      'vulkanisieren',
      'empalme',
      'union',
      'soldar',
      'vulcanizar',
      'vulcanizado',
    ],
  },
  { term: 'endless length', said: ['belt length', 'circumference', 'umfang', 'endloslange', 'perimetro', 'longitud'] },
  { term: 'recipe', said: ['recipe', 'program', 'heizprogramm', 'rezept', 'programa', 'receta'] },
  { term: 'hold time', said: ['dwell', 'curing time', 'haltezeit', 'heizzeit', 'backzeit', 'tiempo de cocido'] },
  { term: 'die', said: ['die', 'punch', 'cutter', 'stanze', 'stanzmesser', 'troquel', 'cuchilla', 'punzon'] },
  { term: 'press', said: ['press', 'vulcaniser', 'vulcanizer', 'heizpresse', 'prensa', 'vulcanizadora'] },
  { term: 'take-up', said: ['take-up', 'tensioner', 'spanner', 'spannvorrichtung', 'spannstation', 'tensor'] },
  { term: 'set elongation', said: ['tension', 'stretch', 'vorspannung', 'auflegedehnung', 'estirado', 'tensado'] },
  { term: 'pulley', said: ['pulley', 'drum', 'wheel', 'scheibe', 'trommel', 'polea', 'tambor'] },
  { term: 'drive pulley', said: ['drive', 'antrieb', 'antriebsscheibe', 'antriebstrommel', 'motriz', 'traccion'] },
  {
    term: 'snub roller',
    said: ['snub', 'deflection roller', 'einschnurrolle', 'ablenkrolle', 'desvio', 'contrarrodillo'],
  },
  { term: 'release cloth', said: ['cloth', 'foil', 'trenngewebe', 'trennfolie', 'tela', 'antiadherente'] },
  { term: 'revolutions', said: ['turns', 'cycles', 'laps', 'umlaufe', 'zyklen', 'vueltas', 'ciclos'] },
  { term: 'lock-out', said: ['lockout', 'loto', 'freischalten', 'sichern', 'bloqueo', 'consignacion'] },
  { term: 'under-fused', said: ['cold weld', 'uncured', 'kalte naht', 'soldadura fria'] },
  { term: 'void', said: ['bubble', 'blister', 'blase', 'pore', 'burbuja', 'ampolla'] },
  { term: 'line', said: ['line', 'conveyor', 'linie', 'forderer', 'bahn', 'linea', 'transportador'] },
];

/** Letters as people type them in a hurry: lower case, no accents, sharp s as ss. */
export function plainLetters(text: string): string {
  return text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss');
}

/** The terms a typed word may mean, best first: the whole word before its beginning. */
export function termsFor(typed: string): readonly SearchTerm[] {
  const word = plainLetters(typed).trim();
  if (word === '') return [];
  const whole = searchSynonyms.filter((row) => row.said.includes(word));
  const begun = searchSynonyms.filter((row) => !whole.includes(row) && row.said.some((said) => said.startsWith(word)));
  return [...whole, ...begun].map((row) => row.term);
}
