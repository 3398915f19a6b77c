import type { RuleSource } from "./ruleTypes.ts";

const usga2019 = (title: string, page: string): RuleSource => ({
  title,
  address: `usga.org/equipment-standards/equipment-rules-2019/equipment-rules/${page}`,
  edition: "Equipment Rules, 2019",
  opened: true,
});
const guide = (title: string, chapter: number, section: number): RuleSource => ({
  title: `A Guide to the Rules on Clubs and Balls: ${title}`,
  address: `randa.org/en/Equipment/A-guide-to-the-rules-on-clubs-and-balls.aspx?chapter=${chapter}&section=${section}`,
  edition: "Rules of Golf, Appendix II, before 2019",
  opened: true,
});
const usgaOlder = (title: string, page: string, edition: string): RuleSource => ({
  title,
  address: `usga.org/custom-search-pages/rules/equipment-rules/${page}`,
  edition,
  opened: true,
});

/** Where the numbers of the Equipment Rules stand. The newest page that shows a number is the one cited. */
export const ruleSources = {
  design: usga2019("Clubs: interpretations", "part-2-rule-1-interpretations.html"),
  length: {
    title: "A reader's question on putters, quoting the rule on length",
    address: "golf.com/?p=15543644",
    edition: "Equipment Rules, 2019",
    opened: false,
  },
  longestClub: usga2019("Clubs for players with disabilities: length, repeating the 48 inches of Part 2, 1c", "part-7-rule-2.html"),
  localLength: {
    title: "New Model Local Rule option for limiting club length",
    address: "agif.asia/2021/10/new-model-local-rule-option-for-limiting-club-length/",
    edition: "Model Local Rule G-10, 1 January 2022",
    opened: false,
  },
  alignment: guide("Alignment", 4, 3),
  adjustability: guide("Adjustability", 4, 1),
  shaft: usga2019("Shaft", "part-2-rule-3.html"),
  grip: usga2019("The grip", "part-2-rule-4.html"),
  gripReading: usga2019("The grip: interpretations", "part-2-rule-4-interpretations.html"),
  gripSection: guide("Cross-section", 6, 1),
  twoGrips: guide("Two grips", 6, 2),
  head: usga2019("Clubhead", "part-2-rule-5.html"),
  volume: guide("Dimensions, volume and moment of inertia", 7, 1),
  inertia: {
    title: "Notice: clubhead moment of inertia test and limit",
    address: "usga.org/equipment-standards/notice-clubhead-inertia-test-and-limit.html",
    edition: "Notice in force from 1 May 2006",
    opened: true,
  },
  widerThanDeep: {
    title: "The Rules of Golf Clubs and Balls, a reader's notes on the guide",
    address: "gameimprovementgolf.blogspot.com/2009/07/rules-of-golf-clubs-and-balls.html",
    edition: "Rules of Golf, Appendix II, before 2019",
    opened: false,
  },
  putterHead: { title: "Equipment Rules, Part 2, 4b(iii)", address: "", edition: "Equipment Rules, 2019", opened: false },
  springEffect: {
    title: "Spring Effect and Dynamic Properties",
    address: "randa.org/News/2016/01/Spring-Effect-and-Dynamic-Properties",
    edition: "Interpretation in force from 1 March 2016",
    opened: true,
  },
  wear: usga2019("The player's equipment: interpretations", "part-1-rule-1-interpretations.html"),
  insert: usgaOlder("Club face", "rule-14620.html", "Rules of Golf, Appendix II, before 2019"),
  grooves: usgaOlder("Supplement D: determining the conformance status of grooves", "rule-2147483652.html", "In force from 1 January 2010"),
  grooves2010: usgaOlder("Supplement C: club face markings, addendum", "rule-2147483650.html", "In force from 1 January 2010"),
  putterFace: guide("Putter face", 8, 5),
  punchMarks: usgaOlder("2008-2009 punch mark specifications", "rule-2147483902.html", "Rules of Golf, 2008-2009"),
  markings: usga2019("Club face", "part-2-rule-6.html"),
  encroachment: guide("Decorative markings", 8, 3),
  changedInRound: {
    title: "Adjustable clubs, a thread quoting Rule 4.1a(3)",
    address: "forums.golfmonthly.com/threads/adjustable-clubs.115827",
    edition: "Rules of Golf, 2019",
    opened: false,
  },
  committee: {
    title: "Committee Procedures, 8G: restrictions on the use of specific equipment",
    address: "randa.org/Rog/2019/Rules/Committee-Procedures/8G",
    edition: "Official Guide to the Rules of Golf, 2019",
    opened: true,
  },
  clubCount: {
    title: "Rules of Golf, Rule 4.1b, page 40",
    address: "fliphtml5.com/ilswt/gtjd/2023_Rules_of_Golf/42",
    edition: "Rules of Golf, 2023",
    opened: true,
  },
} as const satisfies Readonly<Record<string, RuleSource>>;
