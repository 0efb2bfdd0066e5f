/** The part of the page's contract that shows pedal and balance bar as mechanisms. */
import type { Chart, Table } from './contract.ts';

/** The balance bar seen from above, in each stance that the car has: at rest always, the others when there is a hard stop. */
export interface BarView {
  stances: BarStance[];
  range: BarRange;
  /** The same as a table. */
  table: Table;
}

export interface BarStance {
  key: 'rest' | 'working' | 'front_failed' | 'rear_failed';
  title: string;
  sentence: string;
  outline: BarOutline;
}

/** Points to draw: across plus toward the front master, ahead along the push, both in metres. */
export interface BarOutline {
  bearing: Spot;
  bar: SpotLine;
  front: BarRod;
  rear: BarRod;
  /** The bar's line at its largest tilt, either way. */
  front_ahead_most: SpotLine;
  rear_ahead_most: SpotLine;
}

export interface Spot {
  across_m: number;
  ahead_m: number;
}

/** From the front clevis to the rear one. */
export interface SpotLine {
  front: Spot;
  rear: Spot;
}

/** From the clevis to the piston. */
export interface BarRod {
  clevis: Spot;
  socket: Spot;
}

/** What the adjuster has left both ways, with a sentence for each and for where it stands. */
export interface BarRange {
  turns_left_to_front: number;
  turns_left_to_rear: number;
  to_front: string;
  to_rear: string;
  now: string;
}

export interface PedalView {
  sentence: string;
  /** Ratio over pad travel; null when only a ratio is given. */
  ratio: Chart | null;
  /** Rod angle over pad travel; null as above. */
  rod_angle: Chart | null;
  /** Pad travel at the hard stop, in the charts' unit; null when no push gives it. */
  hard_stop: number | null;
}
