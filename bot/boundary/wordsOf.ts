import { foldText } from "./foldText.ts";
import type { ReadingContext } from "./reading.ts";

/** What stands before a word: the stronger wins, from `tight` (nothing at all) to `line`. */
type Gap = "tight" | "space" | "slash" | "comma" | "line";

/** One word of a message, folded, with its place in the text. */
export interface Word {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly gap: Gap;
  /** A comma tight between digits was read as a decimal mark. */
  readonly decimalComma: boolean;
}

export interface Words {
  readonly words: readonly Word[];
  /** Some line ends in a question mark. */
  readonly asks: boolean;
}

const strength: Readonly<Record<Gap, number>> = { tight: 0, space: 1, slash: 2, comma: 3, line: 4 };
const vulgarFractions: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};
const breaks = new Set([",", ";", "(", ")", "[", "]", "!", "?", ".", "…", "•", "|", "-", "–", "—"]);
const lineBreaks = new Set(["\n", "\r", "\u2028", "\u2029"]);
const inchMarks = new Set(['"', "”", "“", "″"]);
const degreeMarks = new Set(["°", "º", "˚"]);
const dashes = new Set(["-", "–", "—", "−", "‑"]);
const apostrophes = new Set(["'", "’", "‘", "ʼ"]);
const isDigit = (mark: string): boolean => mark >= "0" && mark <= "9" && mark.length === 1;
const isLetter = (mark: string): boolean => /^[\p{L}\p{M}]$/u.test(mark);
const isWordMark = (mark: string): boolean => isDigit(mark) || isLetter(mark) || /^\p{Nd}$/u.test(mark);

class Scanner {
  readonly words: Word[] = [];
  asks = false;
  private readonly marks: readonly string[];
  private readonly offsets: number[] = [];
  private gap: Gap = "line";
  private question = false;

  constructor(private readonly text: string) {
    this.marks = [...text];
    let offset = 0;
    for (const mark of this.marks) {
      this.offsets.push(offset);
      offset += mark.length;
    }
    this.offsets.push(offset);
  }

  private at(index: number): string {
    return this.marks[index] ?? "";
  }

  private offset(index: number): number {
    return this.offsets[index] ?? this.text.length;
  }

  private loosen(gap: Gap): void {
    if (strength[gap] > strength[this.gap]) this.gap = gap;
  }

  private push(text: string, from: number, to: number, decimalComma = false): void {
    this.words.push({ text, from: this.offset(from), to: this.offset(to), gap: this.gap, decimalComma });
    this.gap = "tight";
    this.question = false;
  }

  scan(): number {
    let index = 0;
    while (index < this.marks.length) index = this.step(index);
    this.asks ||= this.question;
    return this.marks.length;
  }

  private step(index: number): number {
    const mark = this.at(index);
    if (isWordMark(mark)) return this.chunk(index);
    if (vulgarFractions[mark] !== undefined) return this.fraction(index, "");
    const sign = dashes.has(mark) ? "-" : mark === "+" ? "+" : "";
    if (sign !== "" && vulgarFractions[this.at(index + 1)] !== undefined) return this.fraction(index, sign);
    if (sign !== "" && this.startsNumber(index + 1) && !(sign === "-" && isWordMark(this.at(index - 1)))) return this.chunk(index);
    if (sign === "+") {
      this.push("+", index, index + 1);
      return index + 1;
    }
    if (mark === "." && isDigit(this.at(index + 1)) && !isWordMark(this.at(index - 1))) return this.chunk(index);
    return this.between(index, mark);
  }

  private startsNumber(index: number): boolean {
    return isDigit(this.at(index)) || (this.at(index) === "." && isDigit(this.at(index + 1)));
  }

  private fraction(index: number, sign: string): number {
    const width = sign === "" ? 1 : 2;
    if (this.gap === "tight") this.gap = "space";
    this.push(sign + (vulgarFractions[this.at(index + width - 1)] ?? ""), index, index + width);
    return index + width;
  }

  /** Marks that are no words: they only part words, or are a unit tight after a number. */
  private between(index: number, mark: string): number {
    const last = this.words.at(-1);
    const tightAfterNumber = this.gap === "tight" && last !== undefined && /\d$/.test(last.text);
    if (tightAfterNumber && (inchMarks.has(mark) || degreeMarks.has(mark))) {
      this.push(inchMarks.has(mark) ? '"' : "°", index, index + 1);
      return index + 1;
    }
    if (lineBreaks.has(mark)) {
      this.asks ||= this.question;
      this.question = false;
      this.loosen("line");
    } else if (breaks.has(mark)) this.loosen("comma");
    else this.loosen(mark === "/" ? "slash" : "space");
    if (mark === "?") this.question = true;
    return index + 1;
  }

  private chunk(start: number): number {
    let index = start + (isWordMark(this.at(start)) ? 0 : 1);
    let comma = false;
    let letters = 0;
    while (index < this.marks.length) {
      const mark = this.at(index);
      if (isLetter(mark)) letters += 1;
      else if (isDigit(mark)) {
        if (letters >= 3) break;
        letters = 0;
      } else if (mark === "," && !comma && this.isDecimalComma(start, index)) comma = true;
      else if (!isWordMark(mark) && !this.joins(index)) break;
      else letters = 0;
      index += 1;
    }
    const folded = foldText(this.text.slice(this.offset(start), this.offset(index)));
    this.push(comma ? folded.replace(",", ".") : folded, start, index, comma);
    return this.cutLongUnit(start, index);
  }

  /** `3wood`, `45inches`: a number run into a word of four letters or more is two words. */
  private cutLongUnit(start: number, end: number): number {
    const word = this.words.at(-1);
    const parts = word === undefined ? null : /^([+-]?\d[\d.]{0,7})([a-z]{4,40})$/.exec(word.text);
    const number = parts?.[1];
    const letters = parts?.[2];
    if (word === undefined || number === undefined || letters === undefined || word.to - word.from !== number.length + letters.length) return end;
    this.words.pop();
    this.gap = word.gap;
    this.push(number, start, start + number.length, word.decimalComma);
    this.push(letters, start + number.length, end);
    return end;
  }

  /** Whether a mark inside a word belongs to it. */
  private joins(index: number): boolean {
    const mark = this.at(index);
    const before = this.at(index - 1);
    const after = this.at(index + 1);
    if (mark === ".") return isDigit(after) && (isDigit(before) || !isLetter(before));
    if (mark === ":") return isDigit(before) && isDigit(after);
    if (mark === "/") return isDigit(before) && isDigit(after) && !this.decimalAround(index);
    if (apostrophes.has(mark)) return isLetter(before) && isLetter(after);
    return dashes.has(mark) && isWordMark(before) && isWordMark(after);
  }

  private decimalAround(index: number): boolean {
    const near = this.marks.slice(Math.max(0, index - 6), index + 6).join("");
    return /[.,]\d{1,4}\/|\/\d{1,3}[.,]\d/.test(near);
  }

  private isDecimalComma(start: number, index: number): boolean {
    if (index - start > 5) return false;
    const before = this.marks.slice(start, index).join("");
    const after = this.marks.slice(index, index + 12).join("");
    if (!/^[+-]?\d{1,4}$/.test(before) || !/^,\d{1,3}(?![\d/:])/.test(after)) return false;
    return !/^,[34]\d \d{1,2}\/\d/.test(after);
  }
}

/** Parts a text into folded words in one pass; each character is visited a fixed number of times. */
export function wordsOf(text: string, steps?: ReadingContext["steps"]): Words {
  const scanner = new Scanner(text);
  const visited = scanner.scan();
  if (steps !== undefined) steps.count += visited;
  return { words: scanner.words, asks: scanner.asks };
}
