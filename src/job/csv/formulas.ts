/*
 * A spreadsheet takes text that begins with = + - @ for a formula and runs it when the table is opened. Such text gets an apostrophe
 * before it, which a spreadsheet takes for “this is text”; so does what follows a semicolon, a comma, a quote or a line break, for where
 * the spreadsheet's list separator is another, the text begins a cell there. Reading takes that one apostrophe away again, so that every
 * text comes back as it was: text that already has apostrophes before such a sign gets one more.
 */

/** The start of a cell, then apostrophes, then a sign that begins a formula; the last four are the wide forms that some spreadsheets take too. */
const GUARDED = /(^|[;,"\n])('*)(?=[=+\-@＝＋－＠])/g;

/** Most texts have none of these signs. */
const SIGNS = /[=+\-@＝＋－＠]/;

export const guarded = (text: string): string => (SIGNS.test(text) ? text.replace(GUARDED, "$1'$2") : text);
export const unguarded = (text: string): string => text.replace(GUARDED, (_, before: string, quotes: string) => before + quotes.slice(1));
