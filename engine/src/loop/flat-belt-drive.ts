import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import { capstanRatioRow, centrifugalTensionRow, frictionNeededRow } from './slip-formulas.ts';
import { sagRow } from './tension-check-formulas.ts';

export interface TwoPulleys {
  readonly smallDiameter_m: number;
  readonly largeDiameter_m: number;
  readonly centreDistance_m: number;
  /** Default false. */
  readonly crossed?: boolean;
}

export interface TwoPulleyBelt {
  readonly smallWrap_rad: number;
  readonly largeWrap_rad: number;
  readonly length_m: number;
  /** The handbook's approximation, to see how far one may trust it. */
  readonly approximateLength_m: number;
}

/**
 * Wraps and length of a belt round two pulleys, of no thickness.
 *
 * Open: w = pi -/+ 2 asin((D - d)/2C), L = sqrt(4C^2 - (D - d)^2) + (D w_D + d w_d)/2; crossed: D + d in place of D - d.
 *
 * @param input.smallDiameter_m - smaller pulley [m], > 0, to 100
 * @param input.largeDiameter_m - larger pulley [m], smallDiameter_m to 100
 * @param input.centreDistance_m - between the axes [m], more than (D + d)/2, to 1e5
 * @param input.crossed - figure eight, default false
 * @returns wraps [rad], exact and approximate length [m]
 * @throws not-finite, out-of-range
 * @validity two pulleys that do not touch
 * @source Budynas & Nisbett, Shigley, chapter 17, eqs 17-1 and 17-2
 * @verified T1.1 wrap, T1.1 length exact, T1.1 length approximate
 */
export function twoPulleyBelt(input: TwoPulleys): TwoPulleyBelt {
  const { smallDiameter_m: d, largeDiameter_m: D, centreDistance_m: C, crossed = false } = input;
  inRange(d, 'smallDiameter_m', { min: 0, max: 100, unit: 'm', above: true });
  inRange(D, 'largeDiameter_m', { min: d, max: 100, unit: 'm' });
  inRange(C, 'centreDistance_m', { min: (D + d) / 2, max: 1e5, unit: 'm', above: true });
  const difference = crossed ? D + d : D - d;
  const slant = 2 * Math.asin(difference / (2 * C));
  const largeWrap_rad = Math.PI + slant;
  const smallWrap_rad = crossed ? largeWrap_rad : Math.PI - slant;
  return {
    smallWrap_rad,
    largeWrap_rad,
    length_m: Math.sqrt(4 * C * C - difference ** 2) + (D * largeWrap_rad + d * smallWrap_rad) / 2,
    approximateLength_m: 2 * C + (Math.PI * (D + d)) / 2 + difference ** 2 / (4 * C),
  };
}

export interface FlatBeltDriveInput extends TwoPulleys {
  /** Speed of the small pulley. */
  readonly revolutions_1_s: number;
  readonly power_W: number;
  /** Service factor times design factor on the power. */
  readonly factor: number;
  readonly beltMass_kg_m: number;
  /** Largest tension allowed on the tight side: b F_a C_p C_v. */
  readonly allowedTension_N: number;
  readonly friction: number;
}

export interface FlatBeltDrive extends TwoPulleyBelt {
  readonly speed_m_s: number;
  readonly capstanRatio: number;
  readonly centrifugalTension_N: number;
  /** On the small pulley, with the factors. */
  readonly torque_Nm: number;
  readonly tight_N: number;
  readonly slack_N: number;
  readonly difference_N: number;
  /** Initial tension F_i = (F1 + F2)/2 - Fc. */
  readonly initial_N: number;
  readonly developedFriction: number;
  readonly holds: boolean;
  /** Power that the allowed tension and the factors leave. */
  readonly allowedPower_W: number;
  readonly dip_m: number;
}

/**
 * Flat belt between two pulleys, tight side at its allowed tension: the handbook's whole procedure.
 *
 * Fc = m v^2; F1 - F2 = 2T/d; F2 = F1 - (F1 - F2); Fi = (F1 + F2)/2 - Fc; f' = ln((F1 - Fc)/(F2 - Fc))/w < f;
 * dip = m g C^2/(8 Fi).
 *
 * @param input.smallDiameter_m - smaller, driving pulley [m], > 0, to 100
 * @param input.largeDiameter_m - larger pulley [m], smallDiameter_m to 100
 * @param input.centreDistance_m - between the axes [m]
 * @param input.crossed - figure eight, default false
 * @param input.revolutions_1_s - of the small pulley [1/s], 0.001 to 1000
 * @param input.power_W - nominal power [W], 0 to 1e8
 * @param input.factor - service times design factor [1], 0.1 to 20
 * @param input.beltMass_kg_m - mass of the belt [kg/m], 0 to 1000
 * @param input.allowedTension_N - allowed on the tight side [N], > 0, to 1e7
 * @param input.friction - belt on pulley [1], 0.001 to 3
 * @returns tensions [N], speed [m/s], friction developed [1], dip [m]
 * @throws not-finite, out-of-range, tension-too-small
 * @validity two pulleys; the smaller one drives and governs the grip
 * @source Budynas & Nisbett, Shigley, chapter 17-2, eqs 17-1, 17-2, 17-7 to 17-13
 * @verified T1.1 slack side, T1.1 developed friction, T1.2 slack side, T1.2 dip
 */
export function flatBeltDrive(input: FlatBeltDriveInput): FlatBeltDrive {
  const belt = twoPulleyBelt(input);
  checkDrive(input);
  const { smallDiameter_m: d, centreDistance_m: C, beltMass_kg_m: m, allowedTension_N: tight_N } = input;
  const speed_m_s = Math.PI * d * input.revolutions_1_s;
  const torque_Nm = (input.power_W * input.factor) / (2 * Math.PI * input.revolutions_1_s);
  const difference_N = (2 * torque_Nm) / d;
  const slack_N = tight_N - difference_N;
  const Fc = centrifugalTensionRow.compute({ m, v: speed_m_s });
  if (slack_N <= Fc) {
    throw new Refusal('tension-too-small', 'allowedTension_N', {
      value: tight_N,
      min: difference_N + Fc,
      max: 1e7,
      unit: 'N',
    });
  }
  const w = belt.smallWrap_rad;
  const initial_N = (tight_N + slack_N) / 2 - Fc;
  const developedFriction = frictionNeededRow.compute({ F1: tight_N, F2: slack_N, Fc, w });
  return {
    ...belt,
    speed_m_s,
    capstanRatio: capstanRatioRow.compute({ f: input.friction, w }),
    centrifugalTension_N: Fc,
    torque_Nm,
    tight_N,
    slack_N,
    difference_N,
    initial_N,
    developedFriction,
    holds: developedFriction < input.friction,
    allowedPower_W: difference_N * speed_m_s,
    dip_m: sagRow.compute({ m, l: C, T: initial_N }),
  };
}

function checkDrive(input: FlatBeltDriveInput): void {
  inRange(input.revolutions_1_s, 'revolutions_1_s', { min: 0.001, max: 1000, unit: '1/s' });
  inRange(input.power_W, 'power_W', { min: 0, max: 1e8, unit: 'W' });
  inRange(input.factor, 'factor', { min: 0.1, max: 20, unit: '1' });
  inRange(input.beltMass_kg_m, 'beltMass_kg_m', { min: 0, max: 1000, unit: 'kg/m' });
  inRange(input.allowedTension_N, 'allowedTension_N', { min: 0, max: 1e7, unit: 'N', above: true });
  inRange(input.friction, 'friction', { min: 0.001, max: 3, unit: '1' });
}
