/** The second part of what the Java side sends: the spread over cars built like this one. */
import type { State, Table } from './contract.ts';

/** GET /api/spread?units=metric|us: apart from the page, because it takes a moment. 204 when the file moved on. */
export interface Spread {
  /** Of the build file that it belongs to. */
  revision: number;
  sentence: string;
  /** How many cars were drawn, and of what. */
  basis: string;
  notes: string[];
  bands: Band[];
  /** How often the rear locks first, by grip and load case. */
  rear_first: Table;
}

/** One result over cars built like this. */
export interface Band {
  key: 'effort' | 'travel' | 'front_share' | 'critical';
  label: string;
  state: State;
  /** "Often over the limit" */
  word: string;
  sentence: string;
  /** Null when no car has a value. */
  marks: BandMarks | null;
  /** Largest first. */
  owners: SpreadOwner[];
  /** Share of all others and of several together; null without owners. */
  together: string | null;
}

/** Where marks stand, in SI. */
export interface BandMarks {
  p05: number;
  p25: number;
  p50: number;
  p75: number;
  p95: number;
  nominal: number | null;
  limit: number | null;
  texts: BandTexts;
}

/** The same as texts in the chosen units. */
export interface BandTexts {
  p05: string;
  p25: string;
  p50: string;
  p75: string;
  p95: string;
  nominal: string | null;
  limit: string | null;
}

/** An input that owns a part of the spread. */
export interface SpreadOwner {
  path: string;
  title: string;
  /** 0..1 */
  share: number;
  text: string;
}
