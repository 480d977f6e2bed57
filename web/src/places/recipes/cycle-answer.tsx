import type { Page } from '@loopwright/sheets';
import { DrawingView } from '../../page/drawing-view.tsx';
import { FigureView } from '../../page/figure-view.tsx';
import { Mark } from '../../page/mark.tsx';
import type { CycleDrawings } from './cycle-drawings.ts';

interface CycleAnswerProps {
  readonly page: Page;
  readonly drawings: CycleDrawings | undefined;
}

/** What comes of the settings, always in sight while they are moved: the grade, when to open, the curve. */
export function CycleAnswer({ page, drawings }: CycleAnswerProps) {
  return (
    <div className="cycle-answer">
      <div className="cycle-said" role="status">
        <p className={`state state-${page.state.shape}`}>
          <Mark name={page.state.shape} />
          {page.state.word}
        </p>
        {drawings === undefined ? null : (
          <p>
            <span className="soft">{page.time.label} </span>
            <FigureView figure={page.time.figure} />
          </p>
        )}
      </div>
      {drawings === undefined ? null : <DrawingView drawing={drawings.temperatures} />}
    </div>
  );
}
