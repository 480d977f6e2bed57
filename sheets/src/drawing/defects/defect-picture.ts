import type { DefectCode } from '@loopwright/jobs/inspection';
import type { Drawing } from '../../page/page.ts';
import { beltFace, room } from './belt-piece.ts';
import { faceMarks, outlineShapes } from './face-marks.ts';
import { sideShapes } from './side-marks.ts';
import { type BothFaces, twoFaces } from './two-faces.ts';

/** How a splice is looked at: on either face, from its edge lying flat, or bent over the radius of a pulley. */
export type DefectLook = 'roller' | 'pulley' | 'edge-on' | 'bent';

/** The two looks that tell each defect best, the better one first. */
export const defectLooks: Readonly<Record<DefectCode, readonly [DefectLook, DefectLook]>> = {
  'outline-one-face': ['roller', 'pulley'],
  'outline-both-faces': ['roller', 'bent'],
  'open-tip': ['roller', 'bent'],
  voids: ['roller', 'pulley'],
  scorch: ['roller', 'pulley'],
  'gloss-change': ['roller', 'pulley'],
  'edge-sliver': ['roller', 'bent'],
  'edge-step': ['roller', 'pulley'],
  kink: ['roller', 'pulley'],
  'length-error': ['roller', 'edge-on'],
  'thickness-step': ['edge-on', 'roller'],
  flash: ['roller', 'edge-on'],
  'cloth-wrinkle': ['roller', 'pulley'],
  'template-print': ['roller', 'pulley'],
  'weave-visible': ['pulley', 'bent'],
  contamination: ['roller', 'pulley'],
  delamination: ['roller', 'edge-on'],
  'cold-end': ['roller', 'pulley'],
  'skewed-mesh': ['roller', 'pulley'],
  'over-fused': ['roller', 'edge-on'],
};

/** Told apart only by both faces: drawn one above the other. */
const onBoth: Readonly<Partial<Record<DefectCode, BothFaces>>> = {
  'outline-one-face': { roller: 'bold', pulley: 'faint' },
  'outline-both-faces': { roller: 'bold', pulley: 'bold' },
};

/**
 * What a defect looks like: line art of a piece of belt with its zig-zag and the mark, without any text. It is to be
 * told apart at 120 dots and without colour.
 *
 * @param defect - of the catalogue
 * @param look - on a face, from the edge, or bent
 * @param alt - for those who cannot see it, such as the line of `inspectionWords(voice).look(defect)`
 */
export function defectPicture(defect: DefectCode, look: DefectLook, alt: string): Drawing {
  const base = { id: `defect-${defect}-${look}`, alt, ...room };
  if (look === 'edge-on' || look === 'bent') return { ...base, shapes: sideShapes(defect, look) };
  const both = onBoth[defect];
  if (both !== undefined) return { ...base, shapes: twoFaces(both, look) };
  const mark = faceMarks[defect];
  const shapes = [...beltFace(look, mark.lie?.(look)), ...outlineShapes(mark, look), ...(mark.over?.(look) ?? [])];
  return { ...base, shapes };
}
