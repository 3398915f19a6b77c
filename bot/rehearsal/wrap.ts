/**
 * Breaks a text at spaces so that no line is wider; a word that is wider alone is cut. Counted in code points.
 *
 * @param indent - what each line after the first begins with
 */
export function wrap(text: string, columns: number, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  let width = 0;
  const breakLine = (): void => {
    lines.push(line);
    line = indent;
    width = indent.length;
  };
  for (const word of text.split(/(?<=\S) +/)) {
    const letters = [...word];
    if (width > 0 && line !== indent) {
      if (width + 1 + letters.length > columns) {
        breakLine();
      } else {
        line += " ";
        width += 1;
      }
    }
    for (const letter of letters) {
      if (width >= columns) breakLine();
      line += letter;
      width += 1;
    }
  }
  return [...lines, line];
}
