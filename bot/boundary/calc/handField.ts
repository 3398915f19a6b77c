/** The hand a club is for, with or without its name before it. */
export const handField = {
  kind: "word",
  words: ["left", "right"],
  spelled: {
    lh: "left",
    lefty: "left",
    "left hand": "left",
    "left handed": "left",
    "left-handed": "left",
    rh: "right",
    righty: "right",
    "right hand": "right",
    "right handed": "right",
    "right-handed": "right",
  },
  bare: true,
} as const;
