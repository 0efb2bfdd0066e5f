/** The part of the page's contract that the charts draw. */
import type { Table } from './contract.ts';

/** A chart of curves: x ascending. */
export interface Chart {
  title: string;
  /** One sentence that says what the chart shows, for people who cannot see it. */
  description: string;
  x_label: string;
  y_label: string;
  series: Series[];
}

/** The last one or two series are the hard stop's force and the pedal's stop; marks: what ends a curve, where a booster runs out. */
export interface FeelChart {
  chart: Chart;
  marks: { kind: 'end' | 'run_out'; label: string; x: number; y: number }[];
  /** Travel at round forces. */
  table: Table;
}

export interface Series {
  label: string;
  style: 'front' | 'rear' | 'ideal' | 'limit' | 'case_1' | 'case_2' | 'case_3' | 'case_4' | 'case_5' | 'case_6';
  x: number[];
  /** null: no value there. */
  y: (number | null)[];
}

/** Rear against front brake force, both in units of the car's weight. */
export interface ForceChart {
  title: string;
  description: string;
  x_label: string;
  y_label: string;
  x_max: number;
  y_max: number;
  ideal: XY[];
  installed: XY[];
  grip_lines: { label: string; axle: 'front' | 'rear'; from: XY; to: XY }[];
  /** Lines of constant deceleration, x + y = g. */
  deceleration_lines: { label: string; g: number }[];
}

export interface XY {
  front: number;
  rear: number;
}
