/**
 * What may be wrong between the fields of a plant. Numbers in `data` (`value`, `min`, `max`) are in the SI unit of
 * `data.kind`; `other` names the thing the number was held against. `error` contradicts itself or cannot be computed
 * with; `care` may really be so in a plant and deserves a look.
 */
export const checkCodes = [
  /** error, belts.neutralLine: `value` lies outside the belt's thickness `max`. */
  'neutral-line-outside-belt',
  /** error, belts.pulleyCover or .rollerCover: both covers, `value`, leave nothing of the thickness `max`. */
  'covers-over-thickness',
  /** error, belts.minElongation: `value` is not below `max`, the largest elongation. */
  'elongation-window-empty',
  /** care, dies: no belt has this `pitch` and `fingerLength`. */
  'die-fits-no-belt',
  /** care, lines.belt: no die has the `pitch` and `fingerLength` of belt `other`. */
  'line-without-die',
  /** care, lines.width: `value` is wider than the widest fitting die `other` takes, `max`. */
  'die-too-narrow',
  /** care, lines.width: no template of a fitting die has a pocket for belt `other` of width `value`. */
  'line-without-template',
  /** care, templates.pocketWidth: `value` is wider than die `other` punches, `max`. */
  'template-wider-than-die',
  /** care, templates.pocketDepth: `value` is none of the thicknesses its die is for; nearest is belt `other`, `max`. */
  'template-depth-differs',
  /** care, pulleys.faceWidth: `value` is narrower than the belt of line `other`, `min`. */
  'belt-wider-than-pulley',
  /** care, pulleys.diameter: `value` is below the limit `min` of belt `other`. */
  'pulley-under-limit',
  /** care, pulleys.diameter: touches the roller face; `value` is below the counter-bend limit `min` of belt `other`. */
  'counter-bend-under-limit',
  /** error, lines.takeUpReference: `value` is beyond the stroke `max`. */
  'take-up-reference-over-stroke',
  /** error, positions.takeUp: `value` is beyond the stroke `max` of line `other`. */
  'take-up-over-stroke',
  /** care, lines.takeUpStroke: there is a take-up and nobody has said how far it travels. */
  'take-up-stroke-missing',
  /** error, lines.takeUpX: take-up without a direction. */
  'take-up-direction-missing',
  /** care, lines.takeUpForce: a spring or gravity take-up (`value`) without its force. */
  'take-up-force-missing',
  /** error, lines: `value` drive pulleys, exactly one is expected. */
  'drives-not-one',
  /** error, lines: `value` take-up pulleys, exactly one is expected. */
  'take-ups-not-one',
  /** care, lines.takeUpKind: says `none`, yet pulley `other` is a take-up. */
  'take-up-not-expected',
  /** error, pulleys.order: `value` stands already at pulley `other` (or in row `otherRow`) of the same line. */
  'duplicate-order',
  /** care, lines: neither pulleys nor a survey, so no path can be drawn. */
  'line-without-path',
  /** error, surveys: the measurements give no pulleys; `reason` is the refusal, the field the measurement. */
  'survey-refused',
  /** error, pulleys (or lines): no belt can run here; `reason` is the refusal of the path computation. */
  'path-refused',
  /** care, lines.setElongation: `value` is outside the window `min` to `max` of belt `other`. */
  'elongation-outside-window',
  /** error, recipes.top or .bottom: `value` is not above the opening temperature `min`. */
  'recipe-not-above-opening',
  /** care, recipes.beltPressure: `value` is over what press `other` can give, `max`. */
  'recipe-over-press-pressure',
] as const;
export type CheckCode = (typeof checkCodes)[number];
