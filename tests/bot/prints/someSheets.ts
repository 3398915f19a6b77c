import type { Labelled, PrintedClub, PrintedStep, SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { instant } from "../../../core/kinds.ts";

const advice = "Follow the product's data sheet and local rules; if unsure ask a qualified person.";
const headings = { steps: "Steps", measure: "Measure", notes: "Notes", club: "Club" };
const printedAt = instant(Date.parse("2027-05-03T06:12:00Z"));

const labelled = (label: string, value: string): Labelled => ({ label, value });
const target = (what: string, wanted: string, tolerance: string, measured: string | null = null) => ({ what, wanted, tolerance, measured });

function step(words: string, minutes: number, cautions: readonly string[], ticks: PrintedStep["ticks"] = ["todo"]): PrintedStep {
  return { words, minutes: `${minutes} min`, cautions, ticks };
}

const buildSteps = (ticks: PrintedStep["ticks"]): readonly PrintedStep[] => [
  step(
    "Pull parts",
    2,
    [],
    ticks.map((tick) => (tick === "none" ? "none" : "done")),
  ),
  step("Trim and abrade the tip", 3, ["graphite dust: extraction and a mask", "keep it off electronics", "eye protection"], ticks),
  step("Dry fit", 1, [], ticks),
  step("Bond", 3, ["epoxy sensitises skin: gloves on", "never clean skin with solvent"], ticks),
  step("Glue sets", 6, [], ticks),
  step("Gauge the head", 2, [], ticks),
  step("Head on", 1, [], ticks),
  step("Cut the butt", 2, ["graphite dust: extraction and a mask", "never on green glue", "eye protection"], ticks),
  step("Weigh dry", 2, ["wash hands after lead"], ticks),
  step("Grip", 2, ["solvent vapour: air the truck, no sparks"], ticks),
  step("Grip sets", 4, [], ticks),
  step("Measure", 3, [], ticks),
  step("Sign", 1, [], ticks),
];

const driver: PrintedClub = {
  name: "driver",
  setting: labelled("Sleeve, first", "standard"),
  lead: [
    labelled("Bare cut", "44 3/16 in (1122 mm)"),
    labelled("Tip", "1/2 in (13 mm)"),
    labelled("Dry swing weight, head on, no grip or tape", "E2.25"),
    labelled("Logo and rib", "logo down, no rib"),
  ],
  parts: [
    labelled("Head", "0417 Cairn, stamped 9, true 9.2 / 0.4 open, 198.4 g, drawer D-7"),
    labelled("Shaft", "Dunlin 60 X, player's bin"),
    labelled("Grip", "Gorse Standard Round, 1 wrap more, main rack"),
    labelled("Weights", "1 × screw 6 g"),
  ],
  row: [],
  targets: [
    target("Loft", "9.3", "± 0.25", "9.2"),
    target("Face", "0.5 open", "± 0.5"),
    target("Length", "45 1/4", "± 1/16 in"),
    target("Swing", "D3", "± 0.5"),
  ],
};

/** One driver to be built. */
export const driverBuild: SheetPrint = {
  title: "57 OXTOBY RH driver",
  subtitle: "Bram Oxtoby, for Maren · building · printed Mon 07:12",
  hand: "RIGHT-HANDED",
  due: "by 14:30",
  printedAt,
  headings,
  first: [],
  columns: [],
  clubs: [driver],
  steps: buildSteps(["todo"]),
  notes: [labelled("Wrote", "like gamer, loft 9.25, face 0.5 open, length 45 1/4, swing d3")],
  advice,
};

const bagClubs = ["driver", "3w", "5w", "4h", "4i", "5i", "6i", "7i", "8i", "9i", "PW", "GW", "SW", "LW"];

function bagClub(name: string, index: number): PrintedClub {
  const wood = index < 4;
  return {
    name,
    setting: null,
    lead: [],
    parts: [],
    row: [
      `${44 - index} 3/8 in (${1127 - index * 25} mm)`,
      index % 2 === 0 ? "1/2" : "none",
      "D8.75",
      wood ? "standard, logo down" : "logo up",
      `0${417 + index} ${wood ? "Cairn" : "Scree"} drawer D-${index + 1}${index > 10 ? ", bent 1.0 weak, 0.5 flat" : ""}`,
      wood ? "Dunlin 60 X" : "Curlew 110 S, tipped already",
      "Gorse Standard Round",
    ],
    targets: [
      target("Loft", `${9 + index * 4}.0`, "± 0.25"),
      wood ? target("Face", "0.5 open", "± 0.5") : target("Lie", "62.0", "± 0.25"),
      target("Length", `${45 - index} 1/4`, "± 1/16"),
      target("Swing", "D3", "± 0.5"),
    ],
  };
}

/** A bag lost on the way: fourteen clubs at once. */
export const wholeBag: SheetPrint = {
  ...driverBuild,
  title: "61 QUARRIE RH driver 3w 5w 4h 4i 5i 6i 7i 8i 9i PW GW SW LW",
  subtitle: "Ysolde Quarrie, for Iver · confirmed · printed Mon 07:12",
  due: "by Tue 18:00",
  first: ["No shaft Sandpiper 70 S free here; nearest Sandpiper 70 X (main rack)", "5w: no head Cairn stamped 18 free here"],
  columns: ["Bare cut", "Tip", "Dry", "Set", "Head", "Shaft", "Grip"],
  clubs: bagClubs.map(bagClub),
  steps: buildSteps(bagClubs.map((_, index) => (index === 2 ? "none" : index < 2 ? "done" : "todo"))),
  notes: [labelled("Lost", "the bag stayed behind; balls and gloves too")],
};

/** A left-hander's wedge to be bent, with more said about it than anybody reads. */
export const leftWedge: SheetPrint = {
  ...driverBuild,
  title: "72 HALLOWAY LH bend SW",
  subtitle: "Noor Halloway, for Maren · building · printed Mon 07:12",
  hand: "LEFT-HANDED",
  due: null,
  clubs: [
    {
      name: "SW",
      setting: labelled("Bend", "true 56.0 > 54.0, lie 64.0 > 63.0"),
      lead: [labelled("That is", "2.0 strong, 1.0 flat")],
      parts: [labelled("Bounce", "10.0 > 8.0"), labelled("", "As found decides. A far bend: 3.0 in all. Look for cracks before and after")],
      row: [],
      targets: [target("Loft", "54.0", "± 0.25"), target("Lie", "63.0", "± 0.25")],
    },
  ],
  steps: [
    step("Gauge as found", 2, []),
    step("Bend", 4, ["never on green glue", "watch the hosel for cracks", "eye protection"]),
    step("Gauge as left, look for cracks", 2, []),
    step("Sign", 1, []),
  ],
  notes: [
    labelled(
      "Note",
      `“Señora Halloway” hits it fat 🙂 on the 3rd – ${"she digs and wants less of it under the ball; ".repeat(12)}call her caddie Żółć`,
    ),
  ],
};
