/** A number as people type it: decimal comma and point both count, spaces are grouping. NaN where it is none or empty. */
export const numberTyped = (text: string): number => (text.trim() === '' ? NaN : Number(text.replace(/[\s\u00a0\u202f]/g, '').replace(',', '.')));

/** Binary arithmetic leaves 3.3000000000000003 of a step: twelve digits are more than anyone measures. */
export const tidy = (value: number): number => Number(value.toPrecision(12));
