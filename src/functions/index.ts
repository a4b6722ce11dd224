// Every sheet function, in the order of the README.
import type { SheetFunction } from "../define.ts";
import { DOUGHFOR } from "./dough/DOUGHFOR.ts";
import { MIXES } from "./dough/MIXES.ts";
import { FILLIN } from "./formula/FILLIN.ts";
import { FLOURPCT } from "./formula/FLOURPCT.ts";
import { RESCALE } from "./formula/RESCALE.ts";
import { SCALEROUND } from "./formula/SCALEROUND.ts";
import { STOCKLIMIT } from "./formula/STOCKLIMIT.ts";
import { TRUEPCT } from "./formula/TRUEPCT.ts";
import { WEIGHTS } from "./formula/WEIGHTS.ts";
import { FRICTION } from "./temperature/FRICTION.ts";
import { FRICTIONGUIDE } from "./temperature/FRICTIONGUIDE.ts";
import { ICE } from "./temperature/ICE.ts";
import { WATERNOTE } from "./temperature/WATERNOTE.ts";
import { WATERTEMP } from "./temperature/WATERTEMP.ts";
import { TINAREA } from "./tins/TINAREA.ts";
import { TINCAPACITY } from "./tins/TINCAPACITY.ts";
import { TINDOUGH } from "./tins/TINDOUGH.ts";
import { TINGUIDE } from "./tins/TINGUIDE.ts";
import { TINNOTE } from "./tins/TINNOTE.ts";

export const FUNCTIONS: readonly SheetFunction[] = [
  FLOURPCT,
  TRUEPCT,
  WEIGHTS,
  FILLIN,
  RESCALE,
  SCALEROUND,
  STOCKLIMIT,
  DOUGHFOR,
  MIXES,
  TINCAPACITY,
  TINAREA,
  TINGUIDE,
  TINDOUGH,
  TINNOTE,
  WATERTEMP,
  FRICTION,
  FRICTIONGUIDE,
  ICE,
  WATERNOTE,
];
