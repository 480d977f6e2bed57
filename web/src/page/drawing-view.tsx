import { type Drawing, type Ink, type Shape, textWidth } from '@loopwright/sheets';
import { keyed } from './keyed.ts';

const lineInk = (ink: Ink | undefined) => (ink === undefined ? undefined : `line-${ink}`);
const fillInk = (fill: Ink | 'none' | undefined) => `fill-${fill ?? 'none'}`;
const classes = (...names: readonly (string | undefined)[]) => names.filter(Boolean).join(' ');

/** A drawing of the page as elements; inks are classes, so the theme and the printer choose the colours. */
export function DrawingView({ drawing }: { readonly drawing: Drawing }) {
  return (
    <figure className="drawing">
      <svg viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={drawing.alt}>
        {keyed(drawing.shapes).map(({ key, item }) => (
          <ShapeView key={key} shape={item} />
        ))}
      </svg>
    </figure>
  );
}

function ShapeView({ shape }: { readonly shape: Shape }) {
  if (shape.shape === 'text') return <TextShape shape={shape} />;
  const drawn = {
    className: classes(lineInk(shape.ink), fillInk(shape.fill)),
    strokeWidth: shape.width ?? 1,
    strokeDasharray: shape.dash?.join(' '),
    strokeLinejoin: 'round' as const,
  };
  return shape.shape === 'path' ? (
    <path d={shape.d} {...drawn} />
  ) : (
    <circle cx={shape.x} cy={shape.y} r={shape.r} {...drawn} />
  );
}

// The drawing was laid out for the typeface of the paper; words of another one must keep to that room.
function TextShape({ shape }: { readonly shape: Extract<Shape, { shape: 'text' }> }) {
  return (
    <text
      x={shape.x}
      y={shape.y}
      fontSize={shape.size}
      textAnchor={shape.anchor}
      textLength={textWidth(shape.text, shape.size, shape.bold)}
      lengthAdjust="spacingAndGlyphs"
      fontWeight={shape.bold ? 700 : 400}
      className={fillInk(shape.ink ?? 'ink')}
    >
      {shape.text}
    </text>
  );
}
