/**
 * What can be measured on a page as it stands in the browser. Each function runs inside the page, so it may use
 * nothing from outside itself; each returns one line of text for every fault it finds.
 */

/** Text that leaves the window, its block or the part that cuts off what is too wide; a page wider than the window. */
export function cutText(): string[] {
  const faults: string[] = [];
  const wide = document.scrollingElement?.scrollWidth ?? 0;
  if (wide > window.innerWidth) faults.push(`page ${wide} px wide in a window of ${window.innerWidth} px`);
  const blockOf = (element: Element): Element => {
    const parent = element.parentElement;
    return getComputedStyle(element).display === 'inline' && parent !== null ? blockOf(parent) : element;
  };
  const cutterOf = (element: Element | null): Element =>
    element === null || getComputedStyle(element).overflowX !== 'visible'
      ? (element ?? document.documentElement)
      : cutterOf(element.parentElement);
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    if (element === null || (node.textContent ?? '').trim() === '') continue;
    if (element.closest('.sr, svg, noscript, script') !== null || element.checkVisibility() === false) continue;
    const frame = blockOf(element).getBoundingClientRect();
    const cutter = cutterOf(element).getBoundingClientRect();
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const rect of range.getClientRects()) {
      const out = rect.right > frame.right + 1.5 || rect.left < frame.left - 1.5 || rect.bottom > frame.bottom + 6;
      const off =
        rect.right > Math.min(window.innerWidth, cutter.right) + 1 || rect.left < Math.max(0, cutter.left) - 1;
      if (out || off) faults.push(`text "${node.textContent}" leaves its ${out ? 'block' : 'part of the page'}`);
    }
  }
  return faults;
}

/** Words of a drawing that leave the drawing, lie on each other, or are too small to read on a phone. */
export function poorDrawings(): string[] {
  const faults: string[] = [];
  const leastHeight = 10;
  for (const drawing of document.querySelectorAll<SVGSVGElement>('.drawing svg')) {
    const frame = drawing.getBoundingClientRect();
    const scale = frame.width / drawing.viewBox.baseVal.width;
    const words = [...drawing.querySelectorAll('text')].map((text) => ({
      said: text.textContent,
      size: Number(text.getAttribute('font-size')) * scale,
      rect: text.getBoundingClientRect(),
    }));
    for (const { said, size, rect } of words) {
      if (rect.left < frame.left - 2 || rect.right > frame.right + 2) faults.push(`"${said}" leaves its drawing`);
      if (size < leastHeight) faults.push(`"${said}" is drawn ${size.toFixed(1)} px high`);
    }
    words.forEach((one, at) => {
      for (const other of words.slice(at + 1)) {
        const wide = Math.min(one.rect.right, other.rect.right) - Math.max(one.rect.left, other.rect.left);
        const high = Math.min(one.rect.bottom, other.rect.bottom) - Math.max(one.rect.top, other.rect.top);
        // A line box stands 0.42 of the size higher than its letters need.
        if (wide > 1 && high > Math.min(one.size, other.size) * 0.42)
          faults.push(`"${one.said}" lies on "${other.said}"`);
      }
    });
  }
  return faults;
}

/** Makes every sentence 40 % longer, as a translation may. Numbers stay as they are. */
export function lengthen(): void {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const nodes: Text[] = [];
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    if (element?.closest('svg, .sr, .figure-value, .figure-range, script, noscript') === null) nodes.push(node as Text);
  }
  for (const node of nodes) {
    if (!/\p{L}{2}/u.test(node.data)) continue;
    node.data += node.data.trim().slice(0, Math.ceil(node.data.trim().length * 0.4));
  }
}

/** Targets smaller than 48 px, main actions lower than 72 px, targets nearer than 12 px to each other. */
export function poorTargets(): string[] {
  const faults: string[] = [];
  const all = document.querySelectorAll<HTMLElement>('a, button, label.choice-option, label.find input, .entry');
  const seen = [...all].filter((element) => element.checkVisibility());
  const targets = seen.map((element) => ({
    element,
    rect: element.getBoundingClientRect(),
    name: (element.textContent || element.tagName).trim().slice(0, 40),
  }));
  for (const { element, rect, name } of targets) {
    const least = element.classList.contains('main-action') ? 72 : 48;
    if (rect.height < least - 0.01 || rect.width < 47.99) {
      faults.push(`target "${name}" is ${rect.width.toFixed(1)} x ${rect.height.toFixed(1)} px`);
    }
  }
  // The sticky main action lies over the list that scrolls under it.
  const lying = targets.filter(({ element }) => element.closest('.first-action, .list-action') === null);
  lying.forEach((a, at) => {
    for (const b of lying.slice(at + 1)) {
      const dx = Math.max(a.rect.left - b.rect.right, b.rect.left - a.rect.right, 0);
      const dy = Math.max(a.rect.top - b.rect.bottom, b.rect.top - a.rect.bottom, 0);
      if (Math.hypot(dx, dy) < 11.9)
        faults.push(`"${a.name}" and "${b.name}" are ${Math.hypot(dx, dy).toFixed(1)} px apart`);
    }
  });
  return faults;
}

/** Text with less contrast than 7:1 to what lies behind it (WCAG 2.2, success criterion 1.4.6), by the drawn colours. */
export function poorContrast(): string[] {
  const faults = new Set<string>();
  const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const light = (colour: string) => {
    const [r = 0, g = 0, b = 0] = channels(colour).map((c) => {
      const share = c / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const groundOf = (element: Element): string => {
    const own = getComputedStyle(element).backgroundColor;
    const clear = channels(own)[3] === 0;
    return clear && element.parentElement !== null ? groundOf(element.parentElement) : own;
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    if (element === null || (node.textContent ?? '').trim() === '') continue;
    if (element.closest('.sr, noscript, script') !== null || !element.checkVisibility()) continue;
    const style = getComputedStyle(element);
    const text = light(element instanceof SVGElement ? style.fill : style.color);
    const ground = light(groundOf(element));
    const ratio = (Math.max(text, ground) + 0.05) / (Math.min(text, ground) + 0.05);
    if (ratio < 7) faults.add(`"${(node.textContent ?? '').trim().slice(0, 40)}" stands at ${ratio.toFixed(2)}:1`);
  }
  return [...faults];
}

/** Text smaller than 18 px, captions smaller than 15 px. */
export function smallText(): string[] {
  const faults = new Set<string>();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    if (element === null || (node.textContent ?? '').trim() === '') continue;
    if (element.closest('.sr, svg, noscript, script') !== null || !element.checkVisibility()) continue;
    const size = Number.parseFloat(getComputedStyle(element).fontSize);
    const least = element.closest('.caption') === null ? 18 : 15;
    if (size < least - 0.01) faults.add(`"${(node.textContent ?? '').trim().slice(0, 40)}" is ${size} px high`);
  }
  return [...faults];
}
