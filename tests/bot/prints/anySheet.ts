import fc from "fast-check";
import type { Labelled, PrintedClub, PrintedStep, SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { instant } from "../../../core/kinds.ts";

/** What people may write: short, very long, one endless word, other scripts, emoji, line breaks. */
const words: fc.Arbitrary<string> = fc.oneof(
  { weight: 5, arbitrary: fc.string({ unit: "grapheme", maxLength: 30 }) },
  { weight: 2, arbitrary: fc.lorem({ maxCount: 60 }) },
  fc.nat({ max: 900 }).map((length) => "W".repeat(length)),
  fc.constantFrom("", " ", "Żółć “quoted” – 9¾°", "🙂👩‍👩‍👧", "日本語", "a\nb\tc", "\u202eturned", "null\u0000byte"),
);
const labelled: fc.Arbitrary<Labelled> = fc.record({ label: words, value: words });
const few = <T>(one: fc.Arbitrary<T>, maxLength: number): fc.Arbitrary<T[]> => fc.array(one, { maxLength, size: "max" });

const club = (columns: number): fc.Arbitrary<PrintedClub> =>
  fc.record({
    name: words,
    setting: fc.option(labelled),
    lead: few(labelled, 8),
    parts: few(labelled, 20),
    row: fc.array(words, { minLength: columns, maxLength: columns }),
    targets: few(fc.record({ what: words, wanted: words, tolerance: words, measured: fc.option(words) }), 12),
  });

const step = (clubs: number): fc.Arbitrary<PrintedStep> =>
  fc.record({
    words,
    minutes: words,
    cautions: few(words, 4),
    ticks: fc.array(fc.constantFrom("todo", "done", "none"), { minLength: clubs, maxLength: clubs }),
  });

/** Any print of one to fourteen clubs, however much was written. */
export const anySheet: fc.Arbitrary<SheetPrint> = fc
  .record({ clubs: fc.oneof(fc.constant(1), fc.integer({ min: 2, max: 14 })), columns: fc.integer({ min: 0, max: 8 }) })
  .chain(({ clubs, columns }) =>
    fc.record({
      title: words,
      subtitle: words,
      hand: words,
      due: fc.option(words),
      printedAt: fc.constant(instant(Date.parse("2027-05-03T06:12:00Z"))),
      headings: fc.record({ steps: words, measure: words, notes: words, club: words }),
      first: few(words, 20),
      columns: fc.array(words, { minLength: columns, maxLength: columns }),
      clubs: fc.array(club(columns), { minLength: clubs, maxLength: clubs }),
      steps: few(step(clubs), 25),
      notes: few(labelled, 20),
      advice: words,
    }),
  );
