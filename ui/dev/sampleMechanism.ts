/** The bar and the pedal of the invented car. */
import type { BarOutline, BarStance, BarView, PedalView, Spot } from '../src/mechanismContract.ts';

const spot = (across: number, ahead: number): Spot => ({ across_m: across / 1000, ahead_m: ahead / 1000 });

/** In mm: where front and rear clevis and piston stand, with the bearing 4 mm toward the rear. */
function outline(front: number, rear: number): BarOutline {
  const bearing = rear + (28 / 64) * (front - rear);
  return {
    bearing: spot(-4, bearing),
    bar: { front: spot(32, front), rear: spot(-32, rear) },
    front: { clevis: spot(32, front), socket: spot(32, front + 90) },
    rear: { clevis: spot(-32, rear), socket: spot(-32, rear + 90) },
    front_ahead_most: { front: spot(31, bearing + 7.5), rear: spot(-31, bearing - 5.9) },
    rear_ahead_most: { front: spot(31, bearing - 7.5), rear: spot(-31, bearing + 5.9) },
  };
}

function stance(key: BarStance['key'], title: string, sentence: string, front: number, rear: number): BarStance {
  return { key, title, sentence, outline: outline(front, rear) };
}

export const bar: BarView = {
  stances: [
    stance('rest', 'At rest', 'Both pistons home: the bar stands square.', 0, 0),
    stance('working', 'At the hard stop', 'At 0.85 g the bar is tilted by 2.1 deg, front rod ahead; the front gets 44 % of the push.', 9.4, 7.1),
    stance('front_failed', 'Front circuit failed', 'At the same push the front rod runs 20 mm ahead until the bar binds at its largest tilt. The pad is then 88 mm down.', 20.2, 6.8),
    stance('rear_failed', 'Rear circuit failed', 'At the same push the rear rod runs 22 mm ahead until the bar binds at its largest tilt. The pad is then 96 mm down.', 8.9, 22.3),
  ],
  range: {
    turns_left_to_front: 13.8,
    turns_left_to_rear: 6.2,
    to_front: '13.8 turns left toward the front, to a front share of 67 %',
    to_rear: '6.2 turns left toward the rear, to 33 %',
    now: 'As set the front gets 44 % of the push',
  },
  table: {
    caption: 'Balance bar: largest tilt 12.0 deg',
    columns: ['stance', 'tilt', 'front rod', 'rear rod'],
    rows: [
      ['at rest', 'square', '0 mm', '0 mm'],
      ['at the hard stop', '2.1 deg, front ahead', '9.4 mm', '7.1 mm'],
    ],
  },
};

const travels = [0, 20, 40, 60, 80, 100, 120, 140];

export const pedal: PedalView = {
  sentence: 'The pedal ratio is 5.20 at rest, 5.31 at the hard stop and 5.90 at the pedal\u2019s stop.',
  ratio: {
    title: 'Pedal ratio through the stroke',
    description: 'Pad travel over rod travel at each place of the pad.',
    x_label: 'pad travel, mm',
    y_label: 'pedal ratio',
    series: [{ label: 'this pedal', style: 'case_1', x: travels, y: travels.map((x) => 5.2 + (0.7 * x * x) / 19600) }],
  },
  rod_angle: {
    title: 'Angle of the rod through the stroke',
    description: 'Angle between rod and master\u2019s axis in the pedal\u2019s plane.',
    x_label: 'pad travel, mm',
    y_label: 'rod angle, deg',
    series: [{ label: 'this pedal', style: 'case_1', x: travels, y: travels.map((x) => 1.2 - x / 40) }],
  },
  hard_stop: 58,
};
