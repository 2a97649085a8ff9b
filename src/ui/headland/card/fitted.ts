interface Fit {
  readonly asSheet: boolean;
  readonly room: number;
  readonly paper: string;
  /** What the content rests on: the sheet is measured anew when one of these changes. */
  readonly on: readonly unknown[];
}

/** Smaller than this nobody reads in a cab; a card that needs it has far more products and names than a page can carry. */
const LEAST = 0.5;
const STEP = 0.02;

/** A sheet of paper has one size: the type gives way until everything is on it, and the picture of it fills the room on the screen. */
export function fitted(sheet: HTMLElement, first: Fit): { update: (next: Fit) => void } {
  const fit = ({ asSheet, room }: Fit) => {
    sheet.style.setProperty('--shown-at', '1');
    for (let type = 1; type >= LEAST; type -= STEP) {
      sheet.style.setProperty('--type', type.toFixed(2));
      if (!asSheet || sheet.scrollHeight <= sheet.clientHeight + 1) break;
    }
    if (asSheet && room > 0) sheet.style.setProperty('--shown-at', String(Math.min(room / sheet.offsetWidth, 1)));
  };
  fit(first);
  let last = first;
  // Fonts may come after the first measuring.
  void document.fonts.ready.then(() => fit(last));
  return {
    update: (next) => {
      last = next;
      fit(next);
    }
  };
}
