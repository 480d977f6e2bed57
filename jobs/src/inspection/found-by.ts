import { defects } from './defects.ts';
import {
  type DefectCode,
  defectCodes,
  type Finding,
  type InspectionMeasure,
  type InspectionReading,
} from './inspection-codes.ts';
import { gradeOf, type InspectionLimits } from './inspection-limits.ts';

interface Found {
  readonly findings: readonly Finding[];
  /** Measures within their limits that belong to no finding. */
  readonly within: readonly { readonly measure: InspectionMeasure; readonly data: Readonly<Record<string, number>> }[];
}

/**
 * What was found by eye and by measuring, as one list: a value joins what was seen of its defect; a value beyond its limit
 * is a finding of its own; one outline on each face is an outline on both; a wrinkle along the zig-zag is an outline.
 *
 * @param seen - by eye
 * @param readings - by gauge and tape
 * @param limits - for this belt
 */
export function foundBy(
  seen: readonly Finding[],
  readings: readonly InspectionReading[],
  limits: InspectionLimits,
): Found {
  const last = new Map(readings.map((each) => [each.measure, each]));
  const joined = seen.map(asOutline).map((finding) => withValue(finding, last));
  const taken = new Set(joined.map(({ defect }) => defects[defect].measure));
  const alone = [...last.values()].filter(({ measure }) => !taken.has(measure));
  const isWithin = ({ measure, value, uncertainty }: InspectionReading): boolean =>
    gradeOf(value, limits[measure], uncertainty) === 'accept';
  return {
    findings: bothFaces([...joined, ...alone.filter((each) => !isWithin(each)).flatMap(asFinding)]),
    within: alone.filter(isWithin).map(({ measure, value }) => {
      const { accept, refuse } = limits[measure];
      return { measure, data: { value, accept, refuse } };
    }),
  };
}

function asOutline(finding: Finding): Finding {
  if (finding.defect !== 'cloth-wrinkle' || finding.answer !== 'yes') return finding;
  const { answer: _answer, value: _value, ...rest } = finding;
  return { ...rest, defect: 'outline-one-face' };
}

function withValue(finding: Finding, readings: ReadonlyMap<InspectionMeasure, InspectionReading>): Finding {
  const { measure } = defects[finding.defect];
  const reading = measure === undefined ? undefined : readings.get(measure);
  if (reading === undefined || finding.value !== undefined) return finding;
  const { value, uncertainty } = reading;
  return { ...finding, value, ...(uncertainty !== undefined && { uncertainty }) };
}

function asFinding({ measure, value, uncertainty }: InspectionReading): readonly Finding[] {
  const defect = defectCodes.find((code) => defects[code].measure === measure);
  return defect === undefined ? [] : [{ defect, value, ...(uncertainty !== undefined && { uncertainty }) }];
}

const oneFace: DefectCode = 'outline-one-face';

function bothFaces(findings: readonly Finding[]): readonly Finding[] {
  const outlines = findings.filter(({ defect }) => defect === oneFace);
  if (new Set(outlines.flatMap(({ face }) => face ?? [])).size < 2) return findings;
  const opens = outlines.some((each) => each.opens === true);
  const both: Finding = { defect: 'outline-both-faces', ...(opens && { opens }) };
  return [both, ...findings.filter(({ defect }) => defect !== oneFace && defect !== both.defect)];
}
