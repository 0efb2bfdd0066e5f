/**
 * What the Java side sends to the page and takes from it. Every number and every sentence is made in Java; the page
 * lays out, draws and sends text back. Keys are snake_case. Texts come ready in the chosen units.
 */

import type { Chart, FeelChart, ForceChart } from './chartContract.ts';
import type { BarView, PedalView } from './mechanismContract.ts';

export type { Chart, FeelChart, ForceChart, Series, XY } from './chartContract.ts';

export type State = 'stop' | 'caution' | 'fine' | 'cannot_tell';
export type UnitSystem = 'metric' | 'us';

/** GET /api/page?units=metric|us, and the answer of every edit that was taken. */
export interface Page {
  /** Counts up with every change of the build file. */
  revision: number;
  /** File name for people, without its folder. */
  file: string;
  /** True when this is the demo car, which works on a copy. */
  demo: boolean;
  units: UnitSystem;
  name: string;
  story: string | null;
  can_undo: boolean;
  can_redo: boolean;
  verdict: Verdict;
  /** Effort, travel, balance and margin: never shown apart. */
  headline: Card[];
  findings: Finding[];
  chain: Chain;
  load_cases: LoadCase[];
  /** Pedal effort and pedal travel over deceleration, one series a load case. */
  effort_chart: Chart;
  travel_chart: Chart;
  /** Pedal force over pedal travel: firm, as assumed, soft. */
  feel_chart: FeelChart;
  travel_budget: BudgetRow[];
  failures: Table;
  /** Stops from the speeds that published tests use. */
  stops: Table;
  /** The balance in every case, the best setting, and the same car with other layouts. */
  balance_tables: Table[];
  ledger: LedgerRow[];
  inputs: Section[];
  workings: Working[];
  /** What a calculation cannot show, and the cautions: sentences. */
  cautions: string[];
  /** The drums, and what lining friction does to them; null on a car without any. */
  drums: Table | null;
  /** What the parking brake holds; null when none is given. */
  parking: Table | null;
  /** How the balance bar stands; null without one. */
  bar: BarView | null;
  /** The pedal through its stroke. */
  pedal: PedalView;
  /** The clutch; null when none is given. */
  clutch: Clutch | null;
  /** How hot the brakes get; null when no schedule is given. */
  heat: OverTime | null;
  /** Tubes, bends, cuts, joints, bleeding; empty when no routes are told. */
  lines: Table[];
  /** What carries the brake pedal; null when none is told. */
  mount: Tabled | null;
  /** The pedals side by side; null when none are told. */
  footwell: Tabled | null;
}

/** Tables with what to know of them, the first to be seen first. */
export interface Tabled {
  /** Sentences. */
  note: string;
  tables: Table[];
}

/** The clutch over its pedal's travel, new and worn, and where that travel goes until a new plate is free. */
export interface Clutch {
  effort_chart: Chart;
  travel_chart: Chart;
  table: Table;
  losses: BudgetRow[];
}

/** Something followed over time: a table and charts. */
export interface OverTime {
  /** What to know about the numbers, sentences. */
  note: string;
  table: Table;
  charts: Chart[];
}

export interface Verdict {
  state: State;
  /** "Stop", "Caution", "Fine", "Cannot tell". */
  word: string;
  sentence: string;
  counts: { stop: number; caution: number; cannot_tell: number; fine: number };
}

/** One headline number with its limit. */
export interface Card {
  key: 'effort' | 'travel' | 'balance' | 'margin' | 'clutch';
  label: string;
  value: string;
  /** "limit 445 N, common practice" */
  note: string;
  state: State;
  /** Key of the working that opens this number. */
  working: string | null;
}

export interface Finding {
  key: string;
  state: State;
  word: string;
  /** Short name: "Rear wheels lock first". */
  title: string;
  /** What happens, one or two plain sentences. */
  sentence: string;
  /** "0.56 g" */
  number: string | null;
  limit: string | null;
  /** Whose limit: clause, practice or estimate. */
  whose: string | null;
  /** How well the limit is known: "from memory, check the clause". */
  tag: string | null;
  cure: Cure | null;
  /** Why there is no cure, or what to measure. */
  advice: string | null;
  /** Key paths of the inputs that matter most. */
  inputs: string[];
}

export interface Cure {
  /** "Turn the bar 3 turns toward the front: effort 412 N, travel 61 mm." */
  sentence: string;
  edits: Edit[];
}

/** A value to write: the text as the builder would type it; empty text removes the key. */
export interface Edit {
  path: string;
  text: string;
}

/** How the picture of the chain is laid out. */
export interface Chain {
  apply: 'twin_masters' | 'tandem_master';
  booster: boolean;
  valve: boolean;
  front: 'disc' | 'drum';
  rear: 'disc' | 'drum';
  /** Bearing offset over half the clevis spacing, -1..1, plus toward the front; null without a bar. */
  bar_offset: number | null;
  /** Input paths to focus when a part of the picture is chosen, by part. */
  inputs: Record<ChainPart, string | null>;
}

export type ChainPart =
  | 'foot'
  | 'pedal'
  | 'bar'
  | 'booster'
  | 'front_master'
  | 'rear_master'
  | 'valve'
  | 'front_line'
  | 'rear_line'
  | 'front_brake'
  | 'rear_brake'
  | 'front_tyre'
  | 'rear_tyre';

export interface LoadCase {
  name: string;
  /** "640 kg, centre of gravity 410 mm up" */
  summary: string;
  /** What locks first at the car's grip, a sentence. */
  lock_sentence: string;
  points: Point[];
  force_chart: ForceChart;
  adhesion_chart: Chart;
  /** Lock order over grip. */
  lock_table: Table;
  table: Table;
}

/** The whole chain at one deceleration; texts ready to show beside the parts. */
export interface Point {
  deceleration_g: number;
  label: string;
  within_travel: boolean;
  /** Tilt of the bar in degrees, plus when the front rod is ahead. */
  bar_tilt_deg: number;
  /** Lines of text per part. */
  texts: Partial<Record<ChainPart, string[]>>;
}

export interface BudgetRow {
  /** "front hoses" */
  label: string;
  where: 'pedal' | 'front' | 'rear';
  text: string;
  /** Share of the whole travel, 0..1. */
  share: number;
}

export interface Table {
  caption: string;
  columns: string[];
  rows: string[][];
}

export interface LedgerRow {
  path: string;
  title: string;
  value: string;
  range: string;
  basis: string;
  tag: string;
  by_builder: boolean;
  /** 1 is what to measure first. */
  rank: number;
  /** How far the headline results move across the range: "effort 380 to 480 N". */
  moves: string[];
  /** How to measure it. */
  how: string;
}

export interface Section {
  title: string;
  fields: FieldView[];
}

export interface FieldView {
  path: string;
  label: string;
  /** `choices`: any number of the choices, written as a flow list, "[a, b]". */
  kind: 'quantity' | 'choice' | 'choices' | 'yes_no' | 'text';
  /** As typed by the builder, without the origin; empty when not given. */
  written: string;
  /** "measured", "part sheet", "assumed", "computed", "origin not said"; empty when not given. */
  origin: string;
  /** What is used instead when nothing is written: "0.38 (0.30 to 0.45)"; empty when not assumed. */
  assumed: string;
  /** The same value in the other system: "22.2 mm". */
  also: string;
  how: string;
  /** "between 8 mm and 60 mm" */
  allowed: string;
  required: boolean;
  choices: string[];
  /** Units to offer. */
  units: string[];
}

/** A result opened to formula, inputs and source. */
export interface Working {
  key: string;
  title: string;
  result: string;
  steps: WorkingStep[];
}

export interface WorkingStep {
  name: string;
  formula: string;
  /** The formula with numbers in it. */
  with_numbers: string;
  result: string;
  source: string;
}

/** POST /api/edit (JSON); answers Page, or 422 with Refusal, or 409 with Refusal when the revision is old. */
export interface EditRequest {
  revision: number;
  units: UnitSystem;
  edits: Edit[];
}

/** POST /api/undo and /api/redo (JSON); answers Page. */
export interface StepRequest {
  revision: number;
  units: UnitSystem;
}

export interface Refusal {
  problems: Problem[];
}

export interface Problem {
  path: string;
  value: string;
  message: string;
  allowed: string;
  line: number;
  column: number;
}
