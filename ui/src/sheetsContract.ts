/** The third part of what the Java side sends: the sheets that can be printed and cut from. */

/** GET /api/sheets?units=metric|us: apart from the page; the files themselves lie under /sheets/. */
export interface SheetList {
  /** Of the build file that they are drawn from. */
  revision: number;
  /** What to do before anything is cut. */
  advice: string;
  sheets: SheetView[];
}

/** One sheet at true scale. */
export interface SheetView {
  /** Name of its files: KEY-a4.pdf, KEY-letter.pdf, KEY.svg, KEY.dxf. */
  key: string;
  title: string;
  /** "template" */
  use: string;
  /** How far it reaches on paper: "268 mm by 60 mm" */
  size: string;
  /** Why nothing may be cut or set from it; null when it may. */
  stamp: string | null;
}
