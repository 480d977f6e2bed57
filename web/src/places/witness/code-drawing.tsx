import { codeModules, codePicture } from '@loopwright/sheets';

interface CodeDrawingProps {
  readonly payload: string;
  /** What it holds, in words. */
  readonly label: string;
}

/** A code for the camera of another device: dark on white in any theme, as large as the page allows. */
export function CodeDrawing({ payload, label }: CodeDrawingProps) {
  const side = codeModules(payload, 'M');
  const picture = codePicture(payload, { x: 0, y: 0 }, side);
  return (
    <svg className="witness-code" viewBox={`0 0 ${side} ${side}`} role="img" aria-label={label}>
      <rect width={side} height={side} fill="#fff" />
      {picture.shape === 'path' ? <path d={picture.d} fill="#000" /> : null}
    </svg>
  );
}
