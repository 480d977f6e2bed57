/**
 * One sentence a card warning: what can happen, what to do. Values come formatted with their unit; `none` stands
 * for a value nobody knows where the sentence has a variant for it. Names of the values:
 *
 * | code | values |
 * |---|---|
 * | pulley-under-limit, counter-bend-under-limit | pulley, diameter, limit |
 * | slip | pull, limit (pull at which it slips), set, needed (elongation; may be none) |
 * | slip-reserve-low | reserve, wanted, needed (elongation; may be none) |
 * | elongation-under-window, elongation-over-window | set, low, high |
 * | not-in-place | needed, available (take-up travel), pull (loop length; may be none) |
 * | sources-disagree | difference |
 * | take-up-exhausted | left |
 * | press-check-overdue | press, age, interval |
 * | press-check-unknown | press |
 * | press-check-ahead | press, days |
 * | press-too-small | press, needed, available (the first dimension that does not fit) |
 * | belt-wider-than-pulley | pulley, width, face |
 * | thin-edge-finger | score, threshold |
 * | roll-too-short | roll, left, needed |
 * | roll-not-sealed | roll, time (may be none), temperature |
 * | bag-pressure-over-press | press, needed, maximum |
 * | wet-area, antistatic-area, explosive-area, food-area, take-up-on-tight-side | none |
 */
export const warningsEn = {
  'warning.pulley-under-limit':
    'Pulley {pulley} is {diameter}, the belt needs at least {limit}. The belt cracks early there. Fit a larger pulley or a thinner belt.',
  'warning.counter-bend-under-limit':
    'Pulley {pulley} bends the belt backwards and is {diameter}; at least {limit} is needed for that. The splice cracks early there. Fit a larger one.',
  'warning.slip':
    'The belt slips: the load needs {pull}, at {set} it slips from {limit} on. {needed, select, none {Take load off or improve the grip.} other {Set {needed} or take load off.}}',
  'warning.slip-reserve-low':
    'Little grip in reserve: {reserve} times the pull, {wanted} is wanted. A wet or dirty drive pulley will make the belt slip. {needed, select, none {Clean the drive pulley.} other {Set {needed} or clean the drive pulley.}}',
  'warning.elongation-under-window':
    'Set elongation {set} is below what the belt wants ({low} to {high}). The belt may slip and wander. Check the value for this line.',
  'warning.elongation-over-window':
    'Set elongation {set} is above what the belt stands ({low} to {high}). Bearings and splice are overloaded. Check the value for this line.',
  'warning.not-in-place':
    'The ends do not meet without pull: the take-up must give {needed}, it gives {available}. {pull, select, none {Find more travel or set in a longer piece.} other {Pull in {pull} of loop with clamps, find more travel, or set in a longer piece.}}',
  'warning.sources-disagree':
    'The known lengths do not agree: they differ by {difference}, more than chance explains. Measure once more before cutting.',
  'warning.take-up-exhausted':
    'The take-up has {left} of travel left for re-tensioning. It may reach its end before the belt is tight. Check the length before cutting.',
  'warning.press-check-overdue':
    'Press {press}: last check {age} ago, due every {interval}. Temperature or pressure may be off. Take a press that is in date, or check this one first.',
  'warning.press-check-unknown':
    'Press {press}: nobody noted a check. Look for its label. Without one, press a dummy splice with a thermocouple first.',
  'warning.press-check-ahead':
    'Press {press}: its check is noted for a day that is {days} ahead. Read the label again and enter the right day, or take a press that is in date.',
  'warning.press-too-small':
    'Press {press} is too small: the splice needs {needed}, the platen is {available}. The finger ends stay cold. Take a larger press.',
  'warning.belt-wider-than-pulley':
    'The belt ({width}) is wider than the face of pulley {pulley} ({face}). The edge frays. Check both numbers on the line.',
  'warning.thin-edge-finger':
    'The thinnest edge finger is {score} wide, at least {threshold} is wanted. It lifts in the press or frays. Set the fence as drawn and look at both edges.',
  'warning.roll-too-short':
    'Roll {roll} has {left} left, {needed} is needed. Take another roll. Do not start cutting with this one.',
  'warning.roll-not-sealed':
    'Roll {roll} is not sealed. Moist belt makes voids. Take a sealed roll{time, select, none { or dry the ends as the data sheet says} other { or dry the ends {time} at {temperature}}}. Never use a heat gun.',
  'warning.bag-pressure-over-press':
    'The recipe needs {needed} on the gauge, press {press} gives {maximum} at most. With less the splice stays under-fused. Take another press.',
  'warning.wet-area':
    'Wet bed. Water makes voids in the splice and live parts dangerous. Dry the splice site, feed the press through earth-leakage protection, keep the lead out of the water.',
  'warning.antistatic-area':
    'Static-sensitive area. Only antistatic belt may run here. Measure the resistance across the splice before the line runs.',
  'warning.explosive-area':
    'Explosive area. A hot press and its switch can ignite. Get the hot-work permit of the site first, or splice outside the area.',
  'warning.food-area':
    'Food area. Trimmings and chalk get into the goods. Cover the line, count tools and cut pieces, clean as the site says.',
  'warning.take-up-on-tight-side':
    'The take-up stands on the tight side of the drive. It gives way under load and the belt slips. Check the direction of travel and the drive in the plant data.',
} as const;
