import type { Page } from 'playwright-core';

/** What the player did, or found nothing to do. */
export interface Played {
  readonly did: 'tapped' | 'answered' | 'waited' | 'heard' | 'read-meanwhile' | 'over';
  /** Step of the run, where one was shown. */
  readonly step: string;
}

/** Beyond the time in which a thumb that bounces is not heard [ms]. */
const settle_ms = 500;
/** By then a tap that was heard has shown, also on a busy machine [ms]. */
const heard_ms = 5000;

/**
 * Plays a press run by touch, as somebody does who finds everything in order. The page's clock is the test's: waiting takes
 * no time.
 */
export class RunPlayer {
  readonly page: Page;
  taps = 0;

  constructor(page: Page) {
    this.page = page;
  }

  /** Begins a run at a position and waits until its first step stands. */
  async begin(address: string, position: string): Promise<void> {
    await this.page.goto(`${address}/run/new/${position}`);
    await this.page.locator('.run-start .main-action').tap();
    this.taps += 1;
    await this.page.locator('.run-step').waitFor();
  }

  /** Whoever knows the work taps once for a group of steps; said before the page reads its settings. */
  async chooseGroups(): Promise<void> {
    await this.page.addInitScript(() => {
      if (location.protocol === 'about:') return;
      const kept = JSON.parse(localStorage.getItem('loopwright.settings') ?? '{}');
      localStorage.setItem('loopwright.settings', JSON.stringify({ ...kept, pace: 'groups' }));
    });
  }

  /** Begins a run as somebody who knows the work, and goes on until the press is heating. */
  async heat(address: string, position: string): Promise<void> {
    await this.chooseGroups();
    await this.begin(address, position);
    await this.until('open');
  }

  /** Opens a run that is there. */
  async open(address: string, run: string): Promise<void> {
    await this.page.goto(`${address}/run/${run}`);
    await this.page.locator('.run').waitFor();
  }

  /** Id of the run that is shown. */
  async run(): Promise<string> {
    return (await this.page.locator('.run').getAttribute('data-run')) ?? '';
  }

  async step(): Promise<string> {
    const shown = this.page.locator('.run-step');
    return (await shown.count()) === 0 ? '' : ((await shown.getAttribute('data-step')) ?? '');
  }

  /** Does what stands there: the big action, the first answer, or waiting. */
  async next(): Promise<Played> {
    const { page } = this;
    await page.clock.runFor(settle_ms);
    const step = await this.step();
    const alarm = page.locator('.run-alarm button');
    if ((await alarm.count()) > 0) {
      await alarm.tap();
      await alarm.waitFor({ state: 'detached' });
      return { did: 'heard', step };
    }
    if (step === '') return this.#panel();
    const main = page.locator('.run-step .run-main').first();
    if ((await main.count()) === 0) {
      await page.clock.runFor(60_000);
      return { did: 'waited', step };
    }
    await main.tap();
    this.taps += 1;
    return this.#afterTap(step);
  }

  /** Plays on until a step stands there, or the run is over. */
  async until(step: string, most = 120): Promise<void> {
    for (let moves = 0; moves < most; moves += 1) {
      await this.page.clock.runFor(settle_ms);
      if ((await this.step()) === step) return;
      if ((await this.next()).did === 'over') return;
    }
    throw new Error(`the step ${step} never came`);
  }

  async #panel(): Promise<Played> {
    const { page } = this;
    if ((await page.locator('.run').getAttribute('data-phase')) === 'over') return { did: 'over', step: '' };
    await page.locator('.run-panel .run-main').tap();
    return { did: 'read-meanwhile', step: '' };
  }

  /** The tap shows when it is on the disk: another step, or the answers it asks for. */
  async #afterTap(step: string): Promise<Played> {
    const { page } = this;
    const shown = await this.#shown(step, heard_ms).catch(() => this.#tappedAgain(step));
    if ((await shown.jsonValue()) === 'step') return { did: 'tapped', step };
    const answer = page.locator('.run-panel .run-tiles .run-tile').first();
    const isOver = (await page.locator('.run').getAttribute('data-phase')) === 'over';
    if (isOver || (await answer.count()) === 0) return { did: 'tapped', step };
    await answer.tap();
    this.taps += 1;
    await page.locator('.run-step').waitFor();
    return { did: 'answered', step };
  }

  async #shown(step: string, timeout: number) {
    return this.page.waitForFunction(
      (before) => {
        const body = document.querySelector('.run-step');
        if (body === null) return 'panel';
        const isSaved = !document.querySelector<HTMLButtonElement>('.run-tile')?.disabled;
        const isWaiting = body.querySelector('.run-main') === null;
        return body.getAttribute('data-step') !== before || (isSaved && isWaiting) ? 'step' : undefined;
      },
      step,
      { polling: 20, timeout },
    );
  }

  /** A button that has just come hears no thumb; whoever sees that nothing happened taps once more. */
  async #tappedAgain(step: string) {
    const main = this.page.locator(`.run-step[data-step="${step}"] .run-main:enabled`).first();
    if ((await main.count()) > 0) {
      await this.page.clock.runFor(settle_ms);
      await main.tap();
    }
    return this.#shown(step, 30_000).catch(async (cause) => {
      const text = await this.page.locator('.run').textContent();
      throw new Error(`the tap at ${step} had no effect; there stands: ${text}`, { cause });
    });
  }
}
