/** What the slash command and the guided form ask, each read by the message's own grammar. */
export const orderFields = [
  "kind",
  "player",
  "club",
  "like",
  "loft",
  "face",
  "length",
  "swing",
  "shaft",
  "grip",
  "head",
  "sleeve",
  "by",
  "to",
  "note",
] as const;
