export const recipesAddress = '/recipes';

// A tilde begins no short name, so no recipe can stand in the way of these.
const ofBelt = '~belt';
const ofPress = '~press';
const ofPosition = '~position';

/** Address of the cycle of a recipe. */
export function recipeAddress(recipe: string): string {
  return `${recipesAddress}/${encodeURIComponent(recipe)}`;
}

/** Address at which settings are looked for, for a belt, on a press, or for a position as its card presses it. */
export function trialAddress(kind: 'belt' | 'press' | 'position', id: string): string {
  return `${recipesAddress}/~${kind}/${encodeURIComponent(id)}`;
}

export function isRecipesAddress(path: string): boolean {
  return path === recipesAddress || path.startsWith(`${recipesAddress}/`);
}

/** What an address asks for. */
export type RecipesView =
  | { readonly view: 'list' }
  | { readonly view: 'recipe' | 'belt' | 'press' | 'position'; readonly id: string };

export function recipesView(path: string): RecipesView {
  const [, first = '', second = ''] = path.split('/').filter(Boolean).map(decoded);
  if (first === '') return { view: 'list' };
  if (first === ofBelt) return { view: 'belt', id: second };
  if (first === ofPress) return { view: 'press', id: second };
  if (first === ofPosition) return { view: 'position', id: second };
  return { view: 'recipe', id: first };
}

// A stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
