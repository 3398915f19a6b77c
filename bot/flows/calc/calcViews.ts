import { aim } from "./aim.ts";
import { bend } from "./bend.ts";
import type { CalcView } from "./defineCalcView.ts";
import { gaps } from "./gaps.ts";
import { grip } from "./grip.ts";
import { headmass } from "./headmass.ts";
import { match } from "./match.ts";
import { rules } from "./rules.ts";
import { sleeve } from "./sleeve.ts";
import { swing } from "./swing.ts";
import { trim } from "./trim.ts";
import { weights } from "./weights.ts";

type CalcViewName = "swing" | "headmass" | "trim" | "sleeve" | "bend" | "aim" | "weights" | "grip" | "gaps" | "match" | "rules";

/** Every view there is, in the order they are listed: a name without its view does not compile. */
export const calcViews: { readonly [N in CalcViewName]: CalcView<N> } = {
  swing,
  headmass,
  trim,
  sleeve,
  bend,
  aim,
  weights,
  grip,
  gaps,
  match,
  rules,
};
