const NUMBER = String.raw`\d{1,2}(?:[.,]\d{1,3})?`;
/** An amount of degrees as people write it. */
export const AMOUNT = String.raw`(?:${NUMBER}(?: \d/\d)?|\d/\d|half|quarter|one|two|three)(?: ?(?:°|deg(?:ree)?s?\b))?`;

const lieAmount = new RegExp(String.raw`\b(?:lie )?(${AMOUNT}) (?:more )?(upright|flat)(?:ter)?\b`, "gi");
const faceAmount = new RegExp(String.raw`\b(?:face )?(${AMOUNT}) (more )?(open|closed|shut)\b`, "gi");
const faceFirst = new RegExp(String.raw`\b(?:face )?(open|closed|shut) (${AMOUNT})`, "gi");

/** `1 upright` is of the lie: puts its name before it. */
export const withLieNamed = (text: string): string => text.replace(lieAmount, ", lie $1 $2, ");

/** `1 open` is the face, `1 more open` a change of it, `square` is 0: puts the name before them. */
export const withFaceNamed = (text: string): string =>
  text
    .replace(faceFirst, "$2 $1")
    .replace(
      faceAmount,
      (_whole, amount: string, more: string | undefined, way: string) => `, face${more === undefined ? "" : " by"} ${amount} ${way}, `,
    )
    .replace(/\b(?:face )?(?:is )?square\b/gi, ", face 0, ");
