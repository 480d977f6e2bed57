/**
 * One sentence a refusal: what, value with unit, allowed, next step. The path is put in front by `sentence`.
 * Values: those of `data`, formatted; `allowed` is made of `min`, `max` and `step` where it is not given.
 */
export const refusalsEn = {
  'limits.between': '{min} to {max}',
  'limits.whole': 'a whole number',
  'limits.finite': 'a finite number',
  'limits.and': '{first}, {second}',
  'refusal.unknown': 'cannot be computed with ({details}). Check this value and try again.',
  // Reading the input.
  'refusal.not-json': 'not JSON: reading stopped at line {line}, column {column}, at “{found}”. Correct it there.',
  'refusal.too-large': 'got {value}, at most {max} are read. Send less at once.',
  'refusal.wrong-type':
    'got “{value}”, needed is {expected, select, object {an object} array {a list} string {a text} boolean {true or false} tuple {a list} other {{expected}}}. Correct the form.',
  'refusal.missing-field': 'this field is missing. Enter it.',
  'refusal.unknown-field':
    'field “{field}” is not known.{meant, select, none {} other { Perhaps “{meant}” is meant.}} Correct the name or remove it.',
  'refusal.not-one-of': 'got “{value}”, allowed are: {allowed}. Use one of them.',
  'refusal.not-a-number': 'got “{value}”, a number is needed. Enter digits without unit.',
  'refusal.not-finite': 'got {value}, a finite number is needed. Enter a number.',
  'refusal.out-of-range': 'got {value}, must be {allowed}. Correct the value.',
  'refusal.too-few': 'got {count} entries, must be {allowed}. Add the missing ones.',
  'refusal.too-many': 'got {count} entries, must be {allowed}. Remove some.',
  'refusal.no-result': 'these values together give no finite number. Check them for a zero or a mix-up of units.',
} as const;
