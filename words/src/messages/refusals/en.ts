/**
 * One sentence a refusal: what, value with unit, allowed, next step. The path is put in front by `sentence`.
 * Values: those of `data`, formatted; `allowed` is made of `min`, `max` and `step` where it is not given.
 */
export const refusalsEn = {
  'limits.between': '{min} to {max}',
  'limits.whole': 'a whole number',
  'limits.finite': 'a finite number',
  'refusal.unknown': 'cannot be computed with ({details}). Check this value and try again.',
  // Reading the input.
  'refusal.not-json':
    'not JSON{line, select, none {} other {: reading stopped at line {line}, column {column}, at “{found}”}}. Correct it there.',
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
  'refusal.one-of': 'give exactly one of: {fields}.',
  'refusal.wrong-way-round': 'got {value}, must be {allowed}. The end lies beyond the start: exchange or correct them.',
  'refusal.wrong-count': 'got {value} entries, exactly {min} are expected. Give one for each.',
  // The path of the belt.
  'refusal.too-few-pulleys':
    'got {value} pulleys, must be {allowed}. Enter every pulley that the belt touches, in travel order.',
  'refusal.no-tangent':
    'no straight belt fits between pulleys {pulley} and {other}: their centres are {value} apart, must be {allowed}. Check coordinates, radii and turns.',
  'refusal.pulley-not-touched':
    'the belt does not touch pulley {pulley} on the side given{others, select, none {} other {, nor {others}}}. Check its place and its turn, or leave it out.',
  'refusal.pulleys-overlap':
    'pulleys {pulley} and {other} overlap: their centres are {value} apart, must be {allowed}. Check coordinates and radii.',
  'refusal.belt-hits-pulley':
    'the belt from pulley {other} to {otherTo} runs through pulley {pulley}: {value} from its centre, must be {allowed}. Check its place, or lead the belt round it.',
  'refusal.belt-crosses-itself':
    'the belt crosses itself at pulley {pulley}{other, select, none {} other { and {other}}}. Check order and turns; a figure-eight needs crossed: true.',
  'refusal.belt-not-crossed':
    'a crossed belt is asked for, but this one crosses nowhere. Set crossed to false, or check the turns.',
  'refusal.face-contradicts-turn':
    'pulley {pulley} turns {turn, select, left {left} right {right} other {{turn}}}, so it touches the {expected, select, running {running} back {back} other {{expected}}} face, not the {value, select, running {running} back {back} other {{value}}} face. Correct face or turn.',
  'refusal.no-direction': 'the direction is 0, 0. Enter where it points, such as 0 and -1 for downwards.',
  'refusal.take-up-shortens-loop':
    'moved this way, the take-up does not lengthen the loop ({value}, must be {allowed}). Turn the direction round, or check which pulley it is.',
  // Lengths and splices.
  'refusal.nothing-left': 'got {value}, must be {allowed}: more would leave no belt. Correct trim or length.',
  'refusal.too-few-sources': 'got {value} sources, must be {allowed}. Give at least one known length.',
  'refusal.too-many-sources': 'got {value} sources, must be {allowed}. Keep the best ones.',
  'refusal.length-mismatch': 'got {value} entries, {expected} are expected, one for each pull. Add or remove some.',
  'refusal.unknown-fabric': 'got “{value}”, allowed are: {allowed}. Use one of them.',
  'refusal.tension-too-small':
    'got {value}, must be {allowed}: below that the slack side hangs loose. Use a wider belt or less power.',
  // The survey of a line.
  'refusal.measurement-missing': 'this measurement is missing. Measure it: {question}. The layout needs it: {layout}.',
  'refusal.measurement-not-used':
    'got {value}, but this layout has no such measurement: {layout}. Remove it, or choose another layout.',
  'refusal.measurement-out-of-order':
    'with {value} pulley {pulley} stands at {reached}, must be {allowed}: it would lie before the one ahead of it. Measure both again.',
  'refusal.same-end':
    'drive and take-up cannot stand at the same end ({value, select, infeed {infeed} discharge {discharge} other {{value}}}). Correct one of the two.',
  // Notes beside a result that was computed all the same.
  'note.not-in-place':
    'the ends do not meet in place: the loop must be pulled in by {value}. Find more take-up travel, or pull with clamps.',
  'note.take-up-blocked':
    'before {value} of travel the take-up pulley runs into the belt or another pulley. Check stroke and direction.',
  'note.belt-broke':
    'in {count} of {of} pulls the belt broke, not the splice; those count as lower bounds. The true strength lies higher.',
  'note.spread-too-wide':
    'the pulls spread so widely that the characteristic strength is {value}. Pull more samples and look for the reason.',
  'note.deflection-large':
    'pushed in {value}, more than {max}: the reading counts too much stretch. Push less and measure again.',
  'note.stretch-explains-push':
    'stretch and bending alone explain the push of {value}; no tension can be told from it. Check force, deflection and stiffness.',
  'note.span-too-short':
    'the free span is {value}; below {min} the stiffness of the belt falsifies the tone. Take a longer span.',
  'note.bending-outweighs-tension':
    'with this bending stiffness ({value}) the tone comes from stiffness, not from tension. Check the value, or take a longer span.',
  'note.beyond-measured-relaxation':
    'the time of {value} lies beyond the readings, which end at {max}; the line is drawn on. Read again after a day.',
  'note.belt-goes-slack':
    'the slack side has {value}, it needs more than {min} to stay on the pulley. Tension more, or take load off.',
  'note.slip':
    'the belt slips: its grip is {value} times the pull, at least {min} is needed. Tension more, or take load off.',
  'note.take-up-on-tight-side':
    'the take-up pulley stands on the tight side; it gives way under load. Check drive, strand and direction of travel.',
} as const;
