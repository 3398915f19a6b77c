const lineBreaks = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
/** Controls, and marks that turn the reading direction: they could move the cursor or disguise a line. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is the purpose
const unprintable = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** Text as a terminal can show it on one line without being commanded by it. */
export function plainText(text: string): string {
  return text.replace(lineBreaks, " ").replace(unprintable, "\ufffd");
}
