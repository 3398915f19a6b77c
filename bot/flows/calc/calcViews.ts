import { aim } from "./aim.ts";
import { bend } from "./bend.ts";
import type { CalcView } from "./defineCalcView.ts";
import { headmass } from "./headmass.ts";
import { swing } from "./swing.ts";
import { trim } from "./trim.ts";
import { weights } from "./weights.ts";

type CalcViewName = "aim" | "bend" | "swing" | "headmass" | "trim" | "weights";

/** Every view there is: a name without its view does not compile. */
export const calcViews: { readonly [N in CalcViewName]: CalcView<N> } = { aim, bend, swing, headmass, trim, weights };
