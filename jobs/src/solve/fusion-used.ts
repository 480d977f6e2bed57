import { type FusionParameter, type FusionParameters, fusionParameterRows } from '@loopwright/engine/fusion';

/** The defaults of fusion that were taken, by the path of their field. */
export function fusionUsed(given: Partial<FusionParameters> = {}): Record<string, number> {
  return Object.fromEntries(
    (Object.keys(fusionParameterRows) as FusionParameter[])
      .filter((name) => given[name] === undefined)
      .map((name) => [`fusion.${name}`, fusionParameterRows[name].value]),
  );
}
