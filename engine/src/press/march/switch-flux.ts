import type { ContactSwitch } from '../stack/contact-switch.ts';
import { meltedShare, meltedSlope_1_K } from '../stack/enthalpy.ts';
import { type Cells, record } from './cells.ts';
import { halfRatio } from './flux.ts';

const { START, V, UPPER, LOWER, FLUX, BEND, HALF, CONTACT, SLOPE, STAGE, OFF, STRIDE } = record;

/** How exactly the face's temperature is found. */
const exact_K = 1e-10;
const mostTries = 60;
/** Least share of the resistance that feedback from the face leaves in the step's matrix. */
const leastLeft = 0.05;

/** What passes a contact that switches, and what it depends on; written over by each that is looked at. */
const seen = { upperHalf: 0, lowerHalf: 0, contact: 0, face_degC: 0, flux: 0 };

/** Resistance of half a cell at a temperature. */
function half(numbers: Float64Array, j: number, temperature_degC: number): number {
  return (numbers[j + HALF] as number) * halfRatio(numbers[j + SLOPE] as number, temperature_degC);
}

/**
 * Looks at a contact whose conductance rises with the melted share of the belt's face, which in turn is where the flux
 * puts it. h = h_dry + (h_wet - h_dry)*phi(T_f); T_f = T_b + r_b*(T_o - T_b)/(r_o + 1/h + r_b).
 */
function lookAt(numbers: Float64Array, one: ContactSwitch, field: number): void {
  const j = (one.upper + 1) * STRIDE;
  const k = j + STRIDE;
  const upper = numbers[j + field] as number;
  const lower = numbers[k + field] as number;
  seen.upperHalf = half(numbers, j, upper);
  seen.lowerHalf = half(numbers, k, lower);
  const belt = one.beltBelow ? lower : upper;
  const beltHalf = one.beltBelow ? seen.lowerHalf : seen.upperHalf;
  const drop = beltHalf * (one.beltBelow ? upper - lower : lower - upper);
  seen.face_degC = faceOf(one, belt, drop, seen.upperHalf + seen.lowerHalf);
  seen.contact = 1 / conductance(one, seen.face_degC);
  seen.flux = (upper - lower) / (seen.upperHalf + seen.contact + seen.lowerHalf);
}

function conductance({ dry_W_m2K, wetted_W_m2K, melt }: ContactSwitch, face_degC: number): number {
  return dry_W_m2K + (wetted_W_m2K - dry_W_m2K) * meltedShare(melt, face_degC);
}

/** Newton steps between what a dry and a wetted contact would make of the face, from the dry one. */
function faceOf(one: ContactSwitch, belt_degC: number, drop: number, halves: number): number {
  const { dry_W_m2K, wetted_W_m2K, melt } = one;
  const dry = belt_degC + drop / (halves + 1 / dry_W_m2K);
  const wetted = belt_degC + drop / (halves + 1 / wetted_W_m2K);
  let low = Math.min(dry, wetted);
  let high = Math.max(dry, wetted);
  if (high <= melt.centre_degC - 0.5 * melt.width_K) return dry;
  if (low >= melt.centre_degC + 0.5 * melt.width_K) return wetted;
  let guess = dry;
  for (let i = 0; i < mostTries; i += 1) {
    const h = conductance(one, guess);
    const whole = halves + 1 / h;
    const missing = belt_degC + drop / whole - guess;
    if (Math.abs(missing) < exact_K) break;
    if (missing > 0) low = guess;
    else high = guess;
    const rise = ((wetted_W_m2K - dry_W_m2K) * meltedSlope_1_K(melt, guess)) / (h * h);
    const next = guess + missing / (1 - (drop * rise) / (whole * whole));
    guess = next > low && next < high ? next : 0.5 * (low + high);
  }
  return guess;
}

/**
 * Slopes of the fluxes through contacts that switch, at the start of a step.
 * With a = half cells, c = 1/h and the belt below: dq*(R + q*c'*a_l) = (1 - q*a_u')*dT_u - (1 + q*a_l')*(1 + q*c')*dT_l.
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: implicit derivative of the flux and of the face's temperature that it makes
 * @verified CYCLE-18 order with a contact that switches
 */
export function slopeSwitches({ numbers, switches }: Cells): void {
  for (let i = 0; i < switches.length; i += 1) {
    const one = switches[i] as ContactSwitch;
    lookAt(numbers, one, START);
    const j = (one.upper + 1) * STRIDE;
    const { flux, contact, upperHalf, lowerHalf } = seen;
    const bend = -(one.wetted_W_m2K - one.dry_W_m2K) * meltedSlope_1_K(one.melt, seen.face_degC) * contact * contact;
    const byUpper = 1 + flux * upperHalf * growth(numbers, j);
    const byLower = 1 - flux * lowerHalf * growth(numbers, j + STRIDE);
    const whole = upperHalf + contact + lowerHalf;
    const feedback = flux * bend * (one.beltBelow ? lowerHalf : -upperHalf);
    const left = Math.max(whole + feedback, leastLeft * whole);
    numbers[j + UPPER] = (byUpper * (one.beltBelow ? 1 : 1 - flux * bend)) / left;
    numbers[j + LOWER] = (byLower * (one.beltBelow ? 1 + flux * bend : 1)) / left;
  }
}

/** Relative growth of the conductivity of a record at the step's start. */
function growth(numbers: Float64Array, j: number): number {
  const slope = numbers[j + SLOPE] as number;
  return slope * halfRatio(slope, numbers[j + START] as number);
}

/**
 * Fluxes through contacts that switch at the start of a step, in the place of what dry ones would pass.
 *
 * @param cells - unknowns with the right-hand side of the first solution, changed
 * @returns nothing
 * @source derived: half cells and contact in series
 * @verified CYCLE-18 steady flux through a contact that switches
 */
export function startSwitches({ numbers, switches }: Cells): void {
  for (let i = 0; i < switches.length; i += 1) {
    const one = switches[i] as ContactSwitch;
    const j = (one.upper + 1) * STRIDE;
    const k = j + STRIDE;
    lookAt(numbers, one, START);
    const more = seen.flux - (numbers[j + FLUX] as number);
    numbers[j + FLUX] = seen.flux;
    numbers[j + V] = (numbers[j + V] as number) - more;
    numbers[k + V] = (numbers[k + V] as number) + more;
  }
}

/**
 * What a stage's fluxes through contacts that switch lie off their straight lines.
 *
 * @param cells - unknowns at the stage, changed
 * @param stage - number of the stage [1], 1 to 5
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 * @verified CYCLE-18 order with a contact that switches
 */
export function bendSwitches({ numbers, switches }: Cells, stage: number): void {
  for (let i = 0; i < switches.length; i += 1) {
    const one = switches[i] as ContactSwitch;
    const j = (one.upper + 1) * STRIDE;
    const k = j + STRIDE;
    lookAt(numbers, one, STAGE);
    const upper_K = (numbers[j + STAGE] as number) - (numbers[j + OFF] as number) - (numbers[j + START] as number);
    const lower_K = (numbers[k + STAGE] as number) - (numbers[k + OFF] as number) - (numbers[k + START] as number);
    const straight = (numbers[j + UPPER] as number) * upper_K - (numbers[j + LOWER] as number) * lower_K;
    numbers[j + BEND + stage - 1] = seen.flux - (numbers[j + FLUX] as number) - straight;
  }
}

/**
 * Weight of the lower of two unknowns beside a contact that switches at a place in one of their half cells.
 *
 * @param numbers - records [degC, m2*K/W]
 * @param one - the contact
 * @param dryShare - weight while the contact is dry [1]
 * @param field - where the temperatures stand in a record [1]
 * @returns weight now [1]
 * @validity conductivities of the half cells at 25 degC
 * @source derived: half cells and contact in series
 * @verified CYCLE-18 steady flux through a contact that switches
 */
export function shareBesideSwitch(numbers: Float64Array, one: ContactSwitch, dryShare: number, field: number): number {
  const j = (one.upper + 1) * STRIDE;
  const upperHalf = numbers[j + HALF] as number;
  const halves = upperHalf + (numbers[j + STRIDE + HALF] as number);
  const dry = halves + (numbers[j + CONTACT] as number);
  lookAt(numbers, one, field);
  const now = halves + seen.contact;
  const fromUpper = dryShare * dry;
  return fromUpper <= upperHalf * (1 + 1e-12) ? fromUpper / now : 1 - (dry - fromUpper) / now;
}
