import { a1Of, type Place, placeOf } from "../engine/places.ts";
import { addMark, type Mark, type PlacedMark, removeMark } from "../engine/plugins.ts";
import { newId } from "./rules.ts";
import type { Session } from "./session.ts";

/** A Protection for scripts: kept with its cells and told to nobody but those who ask; a person may always edit. */
export function makeProtection(session: Session, place: Place, range: object, stored?: PlacedMark): object {
  const { sheetId, zone } = place;
  let mark: Mark = stored ?? { id: newId("protection"), kind: "protection", text: "", warningOnly: false, except: [] };
  const keep = (change: Partial<Mark>) => {
    mark = { ...mark, ...change };
    session.write(addMark(sheetId, zone, mark));
    return protection;
  };
  const protection: object = session.guard.made("Protection", {
    free: { getRange: () => range, getDescription: () => mark.text, isWarningOnly: () => mark.warningOnly },
    writes: {
      setWarningOnly: (only: boolean) => keep({ warningOnly: only }),
      setDescription: (text: string) => keep({ text: String(text) }),
      setUnprotectedRanges: (ranges: readonly object[]) =>
        keep({ except: Array.from(ranges, (one) => a1Of(session.engine.library, placeOf(one).zone)) }),
      remove: () => session.write(removeMark(sheetId, mark.id)),
    },
  });
  if (stored === undefined) keep({});
  return protection;
}
