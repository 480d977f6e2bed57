import { describe, expect, it } from 'vitest';
import {
  type BowLayer,
  bowCurvature_1_m,
  bowHeight_m,
  layeredBow_1_m,
  sidewaysBow_1_m,
} from '../../src/fusion/index.ts';
import { checkFusion as check } from '../book.ts';

const belt = (top_mm: number, bottom_mm: number): BowLayer[] => [
  { thickness_m: top_mm / 1000, modulus_MPa: 30, expansion_1_K: 150e-6 },
  { thickness_m: 0.8e-3, modulus_MPa: 600, expansion_1_K: 20e-6 },
  { thickness_m: bottom_mm / 1000, modulus_MPa: 30, expansion_1_K: 150e-6 },
];

describe('bow', () => {
  it('[BOW-01] one material stiffened with 6 K between its faces', () => {
    const curvature = bowCurvature_1_m({ expansion_1_K: 150e-6, difference_K: 6, thickness_m: 2.4e-3 });
    check('BOW-01 curvature of one material', '150e-6 1/K, 6 K, 2.4 mm', '1/m', 0.375, curvature, 1e-12);
    check('BOW-01 height over 80 mm', '0.375 1/m', 'mm', 0.3, bowHeight_m(curvature, 0.08) * 1000, 1e-9);
  });

  it('[BOW-02] unequal covers bow, equal ones do not, and turned over the sign turns', () => {
    const curvature = layeredBow_1_m(belt(1, 0.6), 57);
    const inputs = 'covers 1.0 and 0.6 mm on a 0.8 mm ply, 30/600/30 MPa, 57 K';
    check('BOW-02 curvature of unequal covers', inputs, '1/m', 1.580706, Math.abs(curvature), 0.51e-6);
    check('BOW-02 height of unequal covers', inputs, 'mm', 1.26, Math.abs(bowHeight_m(curvature, 0.08)) * 1000, 0.0051);
    expect(layeredBow_1_m(belt(0.8, 0.8), 57)).toBeCloseTo(0, 12);
    expect(layeredBow_1_m(belt(0.6, 1), 57)).toBeCloseTo(-curvature, 9);
  });

  it('[BOW-03] heat from the side bends a splice by hundredths of a millimetre', () => {
    const height = bowHeight_m(sidewaysBow_1_m(belt(0.8, 0.8), 4, 0.05), 0.13);
    check('BOW-03 sideways height over 130 mm', '0.8/0.8/0.8 mm, 4 K over 50 mm', 'mm', 0.005, height * 1000, 0.00051);
    const alpha = sidewaysBow_1_m(belt(0.8, 0.8), 1, 1);
    check('BOW-03 expansion of the whole belt', '0.8/0.8/0.8 mm', '1e-6/K', 31.8, alpha * 1e6, 0.051);
  });
});
