// What the panel Plan asks of a production, and the pages that it prints.

/** A shift from one time to just before another, such as 2026-01-31T22:00; the whole production without them. */
export type ShiftAsk = { readonly sheet: string; readonly from?: string; readonly to?: string };

/** A page as rows of cells; widths are those of its columns on a sheet. */
export type NightPage = {
  readonly title: string;
  readonly widths: readonly number[];
  readonly rows: readonly (readonly NightCell[])[];
};
export type NightCell = {
  readonly text: string;
  readonly size: number;
  readonly isBold: boolean;
  readonly isRuled: boolean;
  readonly side: "left" | "right" | "center";
};

export type ProductionOrder = {
  readonly sheet: string;
  readonly size?: string;
  readonly customer?: string;
  readonly pieces: number;
  readonly day?: string;
  readonly note?: string;
};
