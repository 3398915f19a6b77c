import type { Command } from "./chat/defineCommand.ts";
import { bench } from "./commands/bench.ts";
import { board } from "./commands/board.ts";
import { calc } from "./commands/calc.ts";
import { fill } from "./commands/fill.ts";
import { filled } from "./commands/filled.ts";
import { help } from "./commands/help.ts";
import { match } from "./commands/match.ts";
import { measured } from "./commands/measured.ts";
import { orderAccept } from "./commands/orderAccept.ts";
import { orderArrived } from "./commands/orderArrived.ts";
import { orderBag } from "./commands/orderBag.ts";
import { orderBring } from "./commands/orderBring.ts";
import { orderBuild } from "./commands/orderBuild.ts";
import { orderChange } from "./commands/orderChange.ts";
import { orderConfirm } from "./commands/orderConfirm.ts";
import { orderDrop } from "./commands/orderDrop.ts";
import { orderExpect } from "./commands/orderExpect.ts";
import { orderFirst } from "./commands/orderFirst.ts";
import { orderForm } from "./commands/orderForm.ts";
import { orderHandover } from "./commands/orderHandover.ts";
import { orderHeads } from "./commands/orderHeads.ts";
import { orderHold } from "./commands/orderHold.ts";
import { orderListed } from "./commands/orderListed.ts";
import { orderLooks } from "./commands/orderLooks.ts";
import { orderMend } from "./commands/orderMend.ts";
import { orderNew } from "./commands/orderNew.ts";
import { orderPrint } from "./commands/orderPrint.ts";
import { orderResume } from "./commands/orderResume.ts";
import { orderRevise } from "./commands/orderRevise.ts";
import { orderScratch } from "./commands/orderScratch.ts";
import { owed } from "./commands/owed.ts";
import { ready } from "./commands/ready.ts";
import { routes } from "./commands/routes.ts";
import { settings } from "./commands/settings.ts";
import { shiftOff } from "./commands/shiftOff.ts";
import { shiftOn } from "./commands/shiftOn.ts";
import { shiftSkills } from "./commands/shiftSkills.ts";
import { spec } from "./commands/spec.ts";
import { stamped } from "./commands/stamped.ts";
import { stepAgain } from "./commands/stepAgain.ts";
import { stepBack } from "./commands/stepBack.ts";
import { stepDone } from "./commands/stepDone.ts";
import { stepGlue } from "./commands/stepGlue.ts";
import { stepPause } from "./commands/stepPause.ts";
import { stepResume } from "./commands/stepResume.ts";
import { stepSkip } from "./commands/stepSkip.ts";
import { stepStart } from "./commands/stepStart.ts";
import { stock } from "./commands/stock.ts";
import { where } from "./commands/where.ts";

/** Everything people can do. */
export const commands: readonly Command[] = [
  orderNew,
  orderForm,
  orderMend,
  orderChange,
  orderHeads,
  orderBring,
  orderConfirm,
  orderBuild,
  orderDrop,
  orderRevise,
  orderHold,
  orderResume,
  orderScratch,
  stepStart,
  stepGlue,
  stepDone,
  stepPause,
  stepResume,
  stepBack,
  stepAgain,
  stepSkip,
  measured,
  orderLooks,
  orderAccept,
  orderArrived,
  orderExpect,
  orderFirst,
  orderHandover,
  orderListed,
  orderBag,
  orderPrint,
  where,
  ready,
  bench,
  board,
  shiftOn,
  shiftOff,
  shiftSkills,
  spec,
  fill,
  filled,
  owed,
  stamped,
  match,
  stock,
  calc,
  settings,
  routes,
  help,
];
