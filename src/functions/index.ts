// Every sheet function, in the order of the reference.
import type { SheetFunction } from "./define.ts";
import { DOUGHFOR } from "./dough/DOUGHFOR.ts";
import { MIXES } from "./dough/MIXES.ts";
import { PIECES } from "./dough/PIECES.ts";
import { ROLLIN } from "./dough/ROLLIN.ts";
import { WEIGHTLIMITS } from "./dough/WEIGHTLIMITS.ts";
import { CONTENT } from "./enrichment/CONTENT.ts";
import { EXTRAWATER } from "./enrichment/EXTRAWATER.ts";
import { FLOURBLEND } from "./enrichment/FLOURBLEND.ts";
import { GLUTENADD } from "./enrichment/GLUTENADD.ts";
import { HYDRATION } from "./enrichment/HYDRATION.ts";
import { LABELPROTEIN } from "./enrichment/LABELPROTEIN.ts";
import { PLAINWATER } from "./enrichment/PLAINWATER.ts";
import { SWAP } from "./enrichment/SWAP.ts";
import { FILLIN } from "./formula/FILLIN.ts";
import { FLOURPCT } from "./formula/FLOURPCT.ts";
import { RESCALE } from "./formula/RESCALE.ts";
import { REVIEW } from "./formula/REVIEW.ts";
import { SCALEROUND } from "./formula/SCALEROUND.ts";
import { STAGES } from "./formula/STAGES.ts";
import { STOCKLIMIT } from "./formula/STOCKLIMIT.ts";
import { TRUEPCT } from "./formula/TRUEPCT.ts";
import { WEIGHTS } from "./formula/WEIGHTS.ts";
import { GRAMS } from "./measures/GRAMS.ts";
import { GRAMSPAN } from "./measures/GRAMSPAN.ts";
import { SPOONS } from "./measures/SPOONS.ts";
import { COSTCHANGE } from "./money/COSTCHANGE.ts";
import { COSTS } from "./money/COSTS.ts";
import { SELLPRICE } from "./money/SELLPRICE.ts";
import { UNITCOST } from "./money/UNITCOST.ts";
import { ALLERGENS } from "./planning/ALLERGENS.ts";
import { ALLERGENTABLE } from "./planning/ALLERGENTABLE.ts";
import { LABELLIST } from "./planning/LABELLIST.ts";
import { LABELSHARE } from "./planning/LABELSHARE.ts";
import { NUTRITION } from "./planning/NUTRITION.ts";
import { RAWNEEDS } from "./planning/RAWNEEDS.ts";
import { DOUGHTEMP } from "./temperature/DOUGHTEMP.ts";
import { FRICTION } from "./temperature/FRICTION.ts";
import { FRICTIONFIT } from "./temperature/FRICTIONFIT.ts";
import { FRICTIONGUIDE } from "./temperature/FRICTIONGUIDE.ts";
import { HEATBALANCE } from "./temperature/HEATBALANCE.ts";
import { ICE } from "./temperature/ICE.ts";
import { WATERNOTE } from "./temperature/WATERNOTE.ts";
import { WATERTEMP } from "./temperature/WATERTEMP.ts";
import { TINAREA } from "./tins/TINAREA.ts";
import { TINCAPACITY } from "./tins/TINCAPACITY.ts";
import { TINDOUGH } from "./tins/TINDOUGH.ts";
import { TINGUIDE } from "./tins/TINGUIDE.ts";
import { TINMATCH } from "./tins/TINMATCH.ts";
import { TINNOTE } from "./tins/TINNOTE.ts";
import { FEEDPLAN } from "./yeast/FEEDPLAN.ts";
import { PREFERMENT } from "./yeast/PREFERMENT.ts";
import { STARTERFEED } from "./yeast/STARTERFEED.ts";
import { YEASTPLAN } from "./yeast/YEASTPLAN.ts";
import { YEASTSWAP } from "./yeast/YEASTSWAP.ts";
import { YEASTTIME } from "./yeast/YEASTTIME.ts";

export const FUNCTIONS: readonly SheetFunction[] = [
  FLOURPCT,
  TRUEPCT,
  WEIGHTS,
  FILLIN,
  RESCALE,
  SCALEROUND,
  STOCKLIMIT,
  STAGES,
  REVIEW,
  DOUGHFOR,
  PIECES,
  MIXES,
  ROLLIN,
  WEIGHTLIMITS,
  TINCAPACITY,
  TINAREA,
  TINMATCH,
  TINGUIDE,
  TINDOUGH,
  TINNOTE,
  WATERTEMP,
  DOUGHTEMP,
  FRICTION,
  FRICTIONFIT,
  FRICTIONGUIDE,
  HEATBALANCE,
  ICE,
  WATERNOTE,
  YEASTSWAP,
  YEASTTIME,
  YEASTPLAN,
  PREFERMENT,
  STARTERFEED,
  FEEDPLAN,
  CONTENT,
  HYDRATION,
  PLAINWATER,
  SWAP,
  EXTRAWATER,
  GLUTENADD,
  FLOURBLEND,
  LABELPROTEIN,
  GRAMS,
  GRAMSPAN,
  SPOONS,
  UNITCOST,
  COSTS,
  COSTCHANGE,
  SELLPRICE,
  RAWNEEDS,
  LABELLIST,
  ALLERGENS,
  ALLERGENTABLE,
  LABELSHARE,
  NUTRITION,
];
