import type { BeltFace, PathInput, PathPulley } from '@loopwright/engine/loop';

/** The face that touches a pulley which says none: the running face lies inside the loop; crossed, it touches all. */
export function faceOf(pulley: PathPulley, turning: number): BeltFace {
  if (pulley.face !== undefined) return pulley.face;
  return turning === 0 || (pulley.turn === 'left') === turning > 0 ? 'running' : 'back';
}

/** The faces that were taken for granted, by the path of their field. */
export function facesUsed({ pulleys }: PathInput, turning: number): Record<string, BeltFace> {
  return Object.fromEntries(
    pulleys.flatMap((pulley, i) =>
      pulley.face === undefined ? [[`pulleys[${i}].face`, faceOf(pulley, turning)] as const] : [],
    ),
  );
}
