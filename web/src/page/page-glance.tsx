import type { Block, Figure, Section } from '@loopwright/sheets';
import { useSpeech } from '../speech/use-speech.tsx';
import { keyed } from './keyed.ts';

/** The page in half a minute: of each step the numbers and the strong words, each line a way to its step. */
export function PageGlance({ sections }: { readonly sections: readonly Section[] }) {
  const { say } = useSpeech();
  const steps = sections
    .map((section) => ({ section, gist: section.blocks.flatMap(gistOf) }))
    .filter(({ section, gist }) => section.number !== undefined && gist.length > 0);
  if (steps.length === 0) return null;
  return (
    <nav className="glance" aria-label={say('app.glance')}>
      <ol>
        {steps.map(({ section, gist }) => (
          <li key={section.id}>
            <a href={`#${partId(section)}`}>
              <span className="balloon">{section.number}</span>
              <span>
                <span className="soft">{section.title}</span>
                {keyed(gist).map(({ key, item }) => (
                  <span className={item.number ? 'gist gist-number' : 'gist'} key={key}>
                    {item.text}
                  </span>
                ))}
              </span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** The id of a step on the page. */
export function partId(section: Section): string {
  return `part-${section.id}`;
}

interface Gist {
  readonly text: string;
  /** The one number of its step. */
  readonly number: boolean;
}

function gistOf(block: Block): readonly Gist[] {
  switch (block.kind) {
    case 'figure':
      return [{ text: `${written(block.figure)} ${block.label}`, number: true }];
    case 'figures':
      return [{ text: block.figures.map(({ figure }) => written(figure)).join(' · '), number: false }];
    case 'text':
      return block.strong === true ? [{ text: block.text, number: false }] : [];
    default:
      return [];
  }
}

function written({ value, unit }: Figure): string {
  return unit === '' ? value : `${value}\u00a0${unit}`;
}
