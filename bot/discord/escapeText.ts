/** Controls, and marks that turn the reading direction. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is the purpose
const unprintable = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]+/g;
/** Half of a character that takes two: no encoding carries it. */
const halfCharacter = /\p{Cs}/gu;
const markup = /[\\*_~`|[\]()<>#@-]/g;
/** What a link or a face spelled out is made with; before a blank it makes neither. */
const colon = /:(?!\s)/g;
const numberedItem = /^(\s*\d+)\.(?=\s|$)/;

const printable = (text: string): string => text.replace(unprintable, " ").replace(halfCharacter, "\ufffd");

/** One line that the platform shows as it is where it reads no markup: labels, footers, form titles. */
export function plainLine(text: string): string {
  return printable(text).trim();
}

/** Text that the platform shows as it is where it reads markup: no style, link, mention, list, face or timestamp is made of it. */
export function escapeText(text: string): string {
  return printable(text).replace(markup, "\\$&").replace(colon, "\\:").replace(numberedItem, "$1\\.");
}

/** At most so many UTF-16 units, a longer text ending in `…`, no character cut in two. */
export function cutText(text: string, maxLength: number): string {
  if (text.length <= maxLength) {
    return text;
  }
  const end = maxLength - 1;
  const code = text.charCodeAt(end - 1);
  const splitsPair = code >= 0xd800 && code <= 0xdbff;
  return `${text.slice(0, splitsPair ? end - 1 : end)}…`;
}

/** The same of escaped text, which is not cut between a backslash and its sign either. */
export function cutEscaped(text: string, maxLength: number): string {
  if (text.length <= maxLength) {
    return text;
  }
  const cut = cutText(text, maxLength).slice(0, -1);
  const backslashes = cut.length - cut.replace(/\\+$/, "").length;
  return `${backslashes % 2 === 1 ? cut.slice(0, -1) : cut}…`;
}
