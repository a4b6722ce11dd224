// Shares and percentages, which can be typed in two ways.

import type { Fault } from "../../shared/base/refusal.ts";
import { quote, showNumber } from "../../shared/base/show.ts";
import { readNumber } from "../../shared/cells/number.ts";

const MAX_SHARE = 0.5;

/** Under a heading with a % sign a bare 11 is 11 %; a bare 0.11 could be either, and is asked about. */
export function readShare(text: string): number | Fault {
  const read = readNumber(text, { percent: true, threeDecimals: true });
  if ("says" in read) return { says: `is ${quote(text)}, which ${read.says}; enter a share such as 11 %` };
  if (!read.marked && read.value > 0 && read.value < 1) {
    return {
      says: `is ${showNumber(read.value, 4)}, which could be ${showNumber(read.value, 4)} % or ${showNumber(read.value * 100, 2)} %; enter it with its % sign`,
    };
  }
  const share = read.marked ? read.value : tidy(read.value / 100);
  if (share >= 0 && share <= MAX_SHARE) return tidy(share);
  return { says: `is ${showNumber(share * 100)} %; it lies between 0 % and ${MAX_SHARE * 100} %` };
}

/** Hydrations and the like: a bare number up to this could be a share of 1 or a percentage. */
export const UNCLEAR_UP_TO = 5;
const MAX_PROPORTION = 10;

export function readProportion(text: string): number | Fault {
  const read = readNumber(text, { percent: true, threeDecimals: true });
  if ("says" in read) return { says: `is ${quote(text)}, which ${read.says}; enter a percentage such as 65 %` };
  if (!read.marked && read.value > 0 && read.value <= UNCLEAR_UP_TO) {
    return {
      says: `is ${showNumber(read.value, 4)}, which could be ${showNumber(read.value, 4)} % or ${showNumber(read.value * 100, 2)} %; enter it with its % sign`,
    };
  }
  const share = read.marked ? read.value : read.value / 100;
  if (share >= 0 && share <= MAX_PROPORTION) return tidy(share);
  return { says: `is ${showNumber(share * 100)} %; it lies between 0 % and ${MAX_PROPORTION * 100} %` };
}

/** 2.1 ÷ 100 is 0.021, whatever binary arithmetic adds. */
export const tidy = (value: number): number => Number(value.toPrecision(12));
