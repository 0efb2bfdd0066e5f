/** Where the words stand beside the drawing, in the drawing's own units, and what each part is called. */
import type { Chain, ChainPart } from '../contract.ts';

export const WIDTH = 900;
/** Upper and lower edge of what is shown. */
export const TOP = 44;
export const BOTTOM = 640;
export const HEIGHT = BOTTOM - TOP;

/** Heights of pedal rod, front row and rear row. */
export const MIDDLE = 320;
export const FRONT_ROW = 150;
export const REAR_ROW = 470;

export interface Place {
  left: number;
  width: number;
  /** Upper edge of the words, or the lower edge when they stand above their part. */
  top?: number;
  bottom?: number;
}

const COMMON: Partial<Record<ChainPart, Place>> = {
  foot: { left: 0, width: 150, top: 566 },
  pedal: { left: 152, width: 150, top: 440 },
  front_line: { left: 482, width: 135, bottom: 136 },
  rear_line: { left: 482, width: 125, top: 500 },
  valve: { left: 500, width: 112, bottom: 444 },
  front_brake: { left: 610, width: 138, top: 222 },
  rear_brake: { left: 610, width: 138, top: 542 },
  front_tyre: { left: 752, width: 148, top: 232 },
  rear_tyre: { left: 752, width: 148, top: 552 },
};

const TWIN: Partial<Record<ChainPart, Place>> = {
  bar: { left: 184, width: 124, bottom: 216 },
  front_master: { left: 322, width: 158, bottom: 212 },
  rear_master: { left: 322, width: 158, top: 430 },
};

const TANDEM: Partial<Record<ChainPart, Place>> = {
  booster: { left: 200, width: 130, bottom: 246 },
  front_master: { left: 316, width: 134, bottom: 290 },
  rear_master: { left: 316, width: 134, top: 352 },
};

const NAMES: Record<ChainPart, string> = {
  foot: 'Foot',
  pedal: 'Pedal',
  bar: 'Balance bar',
  booster: 'Booster',
  front_master: 'Front master',
  rear_master: 'Rear master',
  valve: 'Valve',
  front_line: 'Front line',
  rear_line: 'Rear line',
  front_brake: 'Front brakes',
  rear_brake: 'Rear brakes',
  front_tyre: 'Front tyres',
  rear_tyre: 'Rear tyres',
};

export interface Label {
  part: ChainPart;
  name: string;
  place: Place;
  /** Number in the drawing and in the list on a narrow screen. */
  number: number;
}

const ORDER: ChainPart[] = [
  'foot',
  'pedal',
  'bar',
  'booster',
  'front_master',
  'front_line',
  'front_brake',
  'front_tyre',
  'rear_master',
  'rear_line',
  'valve',
  'rear_brake',
  'rear_tyre',
];

/** The parts this chain has, from foot to tyre, with their places. */
export function labelsOf(chain: Chain): Label[] {
  const twin = chain.apply === 'twin_masters';
  const places = { ...COMMON, ...(twin ? TWIN : TANDEM) };
  const absent = new Set<ChainPart>();
  if (!chain.valve) {
    absent.add('valve');
  }
  if (!chain.booster) {
    absent.add('booster');
  }
  return ORDER.filter((part) => places[part] !== undefined && !absent.has(part)).map((part, i) => ({
    part,
    name: nameOf(part, twin),
    place: places[part] as Place,
    number: i + 1,
  }));
}

function nameOf(part: ChainPart, twin: boolean): string {
  return !twin && part === 'front_master'
    ? 'Tandem, front'
    : !twin && part === 'rear_master'
      ? 'Tandem, rear'
      : NAMES[part];
}
