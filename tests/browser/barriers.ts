import axeCore, { type RunOptions } from 'axe-core';
import type { Page } from '@playwright/test';
import { expect } from './app.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** A theme changes colours and nothing else: all rules are tried on paper, those of contrast in the other two; in the sun 7 : 1, which holds the 4.5 : 1. */
export type Rules = 'all' | 'contrast' | 'enhanced';
const RUN: Readonly<Record<Rules, RunOptions['runOnly']>> = {
  all: { type: 'tag', values: TAGS },
  contrast: { type: 'rule', values: ['color-contrast'] },
  enhanced: { type: 'rule', values: ['color-contrast-enhanced'] }
};
const RULES: Readonly<Record<'paper' | 'shed' | 'sun', Rules>> = { paper: 'all', shed: 'contrast', sun: 'enhanced' };

/** No barrier that a machine can find, by WCAG 2.2 AA. */
export async function clean(page: Page, where: string, rules: Rules = 'all'): Promise<void> {
  // A change of theme fades the buttons: what is judged is where it ends.
  await page.evaluate(() => document.getAnimations().forEach((a) => a.finish()));
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeCore.source);
  // The page has no frames. What is in order is not described, which would cost more than the finding.
  const barriers = await page.evaluate(async (runOnly) => {
    const { violations } = await (window as unknown as { axe: typeof axeCore }).axe.run(document, { runOnly: runOnly!, resultTypes: ['violations'] });
    return violations.map((v) => `${v.id}: ${v.nodes.map((n) => `${n.target.join(' ')} ${n.any[0]?.message ?? ''}`).join('\n')}`);
  }, RUN[rules]);
  expect.soft(barriers.map((b) => `${where}: ${b}`)).toEqual([]);
}

/** The same in every theme: all rules on paper, contrast in the others, 7 : 1 in the sun. */
export async function cleanInAll(page: Page, where: string): Promise<void> {
  const kept = await page.evaluate(() => document.documentElement.dataset['theme'] ?? '');
  for (const [theme, rules] of Object.entries(RULES)) {
    await page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
    await clean(page, `${where}, ${theme}`, rules);
  }
  await page.evaluate((t) => (document.documentElement.dataset['theme'] = t), kept);
}

/** What makes the page wider than its window: nothing, or the innermost elements that stick out. */
export const wide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const most = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= most) return [];
    // What lies in a box that scrolls by itself is reached there.
    const scrolled = (e: Element) => { for (let a: Element | null = e.parentElement; a; a = a.parentElement) if (['auto', 'scroll'].includes(getComputedStyle(a).overflowX) && a !== document.body) return true; return false; };
    const out = [...document.body.querySelectorAll('*')].filter((e) => e.getBoundingClientRect().right > most + 0.5 && !scrolled(e));
    const named = out.filter((e) => !out.some((o) => o !== e && e.contains(o))).map((e) => `${e.tagName.toLowerCase()}.${(e.getAttribute('class') ?? '').replace(/ ?svelte-\w+/g, '')} in ${e.parentElement?.tagName.toLowerCase()}.${(e.parentElement?.getAttribute('class') ?? '').replace(/ ?svelte-\w+/g, '')} “${e.textContent?.trim().slice(0, 30)}”`);
    return named.length > 0 ? named : [`the page is ${document.documentElement.scrollWidth} px wide in a window of ${most} px`];
  });

/** Whatever can be pressed inside `root` and is smaller than `least` px either way; words in a sentence may be as high as the sentence. */
export const small = (page: Page, root: string, least: number): Promise<string[]> =>
  page.locator(`${root} :is(button, select, summary, a[href], input, textarea, label:has(input[type=checkbox], input[type=radio])):visible`).evaluateAll(
    (all, least) =>
      all.flatMap((e) => {
        if (getComputedStyle(e).display === 'inline' && e.matches('a, summary')) return [];
        // A box is pressed wherever its frame or its label is.
        const tick = e.matches('input[type=checkbox], input[type=radio]');
        if (tick && e.closest('label')) return [];
        const target = e.matches('input, textarea') && !tick ? (e.closest('.box') ?? e) : e;
        const { width, height } = target.getBoundingClientRect();
        return Math.min(width, height) < least - 0.5 ? [`${e.tagName.toLowerCase()} ${e.getAttribute('aria-label') ?? e.id ?? ''} ${e.textContent?.trim().slice(0, 30)}: ${Math.round(width)}×${Math.round(height)}`] : [];
      }),
    least
  );

/** Words inside `root` that are cut, stick out of the window, or lie on other words. */
export const crowded = (page: Page, root: string): Promise<string[]> =>
  page.evaluate((selector) => {
    const out: string[] = [];
    const top = document.querySelector(selector)!;
    const seen = (e: Element) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !e.closest('.sr');
    /** A table that is wider than a phone scrolls in its own box. */
    const scrolled = (e: Element) => { for (let a: Element | null = e; a; a = a.parentElement) if (['auto', 'scroll'].includes(getComputedStyle(a).overflowX)) return true; return false; };
    const pieces: { text: string; box: DOMRect; of: Element }[] = [];
    const walker = document.createTreeWalker(top, NodeFilter.SHOW_TEXT);
    for (let n = walker.nextNode(); n; n = walker.nextNode()) {
      const e = n.parentElement!;
      if (!n.textContent!.trim() || e.closest('option, style, title') || !seen(e)) continue;
      const range = document.createRange();
      range.selectNodeContents(n);
      for (const box of range.getClientRects()) if (box.width > 0) pieces.push({ text: n.textContent!.trim().slice(0, 40), box, of: e });
      // Cut by a box of its own or one around it.
      const whole = range.getBoundingClientRect();
      for (let a: Element | null = e; a && a !== top; a = a.parentElement) {
        const style = getComputedStyle(a);
        if (style.overflowX === 'visible' && style.overflowY === 'visible') continue;
        if (style.overflowX === 'auto' || style.overflowX === 'scroll') break;
        const b = a.getBoundingClientRect();
        if (whole.right > b.right + 1 || whole.left < b.left - 1 || whole.bottom > b.bottom + 2 || whole.top < b.top - 2) out.push(`cut: ${n.textContent!.trim().slice(0, 40)}`);
      }
    }
    for (const select of top.querySelectorAll('select')) {
      if (!seen(select)) continue;
      if (select.scrollWidth > select.clientWidth + 1) out.push(`cut: ${select.selectedOptions[0]?.textContent}`);
    }
    for (const [i, a] of pieces.entries()) {
      if (!scrolled(a.of) && (a.box.left < -1 || a.box.right > document.documentElement.clientWidth + 1)) out.push(`sticks out: ${a.text}`);
      for (const b of pieces.slice(i + 1)) {
        if (a.of === b.of) continue;
        const x = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        // A font's box is higher than its letters: a fifth of it above and below is empty.
        const [inA, inB] = [a.box.height / 5, b.box.height / 5];
        const y = Math.min(a.box.bottom - inA, b.box.bottom - inB) - Math.max(a.box.top + inA, b.box.top + inB);
        if (x > 1.5 && y > 1.5) out.push(`“${a.text}” on “${b.text}”`);
      }
    }
    return out;
  }, root);

/** Figures in texts whose parts stand in another order than they are written: a sign behind its number, a unit before it, a span turned round. */
export const reversed = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const out: string[] = [];
    const box = (n: Text, from: number, to: number) => {
      const range = document.createRange();
      range.setStart(n, from);
      range.setEnd(n, to);
      return range.getClientRects()[0];
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    let last: { text: string; end: DOMRect } | null = null;
    for (let n = walker.nextNode() as Text | null; n; n = walker.nextNode() as Text | null) {
      const text = n.data;
      if (!text.trim() || n.parentElement!.closest('option, style, title, .sr') || !n.parentElement!.checkVisibility()) continue;
      for (const m of text.matchAll(/[−+±×~]?\u00a0?\d(?:[\d.\u202f]*\d)?(–\d(?:[\d.\u202f]*\d)?)?(\u00a0[%°\p{L}][^\s.,;:)]*|°)?/gu)) {
        // Single characters from left to right: each begins where the one before it ended, or on the next line.
        let before: DOMRect | undefined;
        for (let i = m.index; i < m.index + m[0].length; i++) {
          if (/[\u00a0\u202f\u2066-\u2069]/.test(text[i]!)) continue;
          const here = box(n, i, i + 1);
          if (!here || here.width === 0) continue;
          if (before && Math.abs(here.top - before.top) < 3 && here.left < before.left) {
            out.push(`${m[0]} in “${text.trim().slice(0, 60)}”`);
            break;
          }
          before = here;
        }
      }
      // A unit in an element of its own after its figure.
      const whole = box(n, 0, text.length);
      if (last && whole && n.parentElement!.classList.contains('unit') && /\d\s*$/.test(last.text) && Math.abs(whole.bottom - last.end.bottom) < 8 && whole.left < last.end.left) out.push(`${last.text.trim()} | ${text}`);
      last = whole ? { text, end: whole } : null;
    }
    return out;
  });
