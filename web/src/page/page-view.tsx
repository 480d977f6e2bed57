import type { Page, Section } from '@loopwright/sheets';
import type { ReactNode } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';
import { BlockView } from './block-view.tsx';
import { FigureView } from './figure-view.tsx';
import { useHowComputed } from './how-computed.tsx';
import { keyed } from './keyed.ts';
import { Mark } from './mark.tsx';
import { PageGlance, partId } from './page-glance.tsx';

/** What a job found, on the screen: front for the doing, then drawing and reasons. A question stands under the head. */
export function PageView({ page, ask }: { readonly page: Page; readonly ask?: ReactNode }) {
  const { say } = useSpeech();
  return (
    <article className="card" lang={page.language}>
      <PageHead page={page} />
      {ask}
      <PageGlance sections={page.front} />
      {page.front.map((section) => (
        <SectionView key={section.id} section={section} />
      ))}
      {page.back.length > 0 ? <p className="back-title strong">{say('app.card.back')}</p> : null}
      {page.back.map((section) => (
        <SectionView key={section.id} section={section} />
      ))}
      <footer className="part">
        {keyed(page.footer).map(({ key, item }) => (
          <p className="caption" key={key}>
            {item}
          </p>
        ))}
        <p className="caption">{page.codeText ?? page.code}</p>
      </footer>
    </article>
  );
}

function PageHead({ page }: { readonly page: Page }) {
  const how = useHowComputed(page.time.figure.worked);
  const time = <FigureView figure={page.time.figure} />;
  return (
    <header className="card-head">
      <h1 tabIndex={-1}>{page.title}</h1>
      <p className="soft">{page.subtitle}</p>
      <div className="card-facts">
        <p className={`state state-${page.state.shape}`}>
          <Mark name={page.state.shape} />
          {page.state.word}
        </p>
        <div className="card-time">
          <span className="soft">{page.time.label} </span>
          {how ? how.button(time) : time}
        </div>
      </div>
      {how?.opened}
    </header>
  );
}

/** One part of a page. */
export function SectionView({ section }: { readonly section: Section }) {
  const id = partId(section);
  return (
    <section className="part" aria-labelledby={id}>
      <h2 id={id}>
        {section.number === undefined ? null : <span className="balloon">{section.number}</span>}
        {section.title}
      </h2>
      {keyed(section.blocks).map(({ key, item }) => (
        <BlockView key={key} block={item} />
      ))}
    </section>
  );
}
