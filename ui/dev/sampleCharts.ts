/** Points and charts of the invented car: plausible shapes, no law behind them. */
import type { Chart, FeelChart, LoadCase, Point, Series, Table } from '../src/contract.ts';

const DECELERATIONS = Array.from({ length: 19 }, (_, i) => Math.round((0.1 + i * 0.05) * 100) / 100);

function point(g: number, heavier: number): Point {
  const effort = Math.round(8 + 455 * g * heavier);
  const travel = Math.round(14 + 52 * g * heavier);
  const front = Math.round(52 * g * heavier);
  const rear = Math.round(Math.min(64 * g, 30 + 0.35 * (64 * g - 30)) * heavier);
  return {
    deceleration_g: g,
    label: `${g.toFixed(2)} g`,
    within_travel: travel < 62,
    bar_tilt_deg: Math.round((1.5 + 4 * g) * 10) / 10,
    texts: {
      foot: [`pushes ${effort} N`, `moves ${travel} mm`],
      pedal: ['ratio 5.2', `pushrod ${Math.round(effort * 5.2 * 0.9)} N`],
      bar: ['54 % to the rear rod', `tilt ${(1.5 + 4 * g).toFixed(1)}°`],
      front_master: ['bore 7/8 in', `${front} bar`, `stroke ${(travel / 6.1).toFixed(1)} of 30 mm`],
      rear_master: ['bore 3/4 in', `${Math.round(64 * g * heavier)} bar`, `stroke ${(travel / 5).toFixed(1)} of 30 mm`],
      valve: ['knee 30 bar', 'slope 0.35'],
      front_line: [`${front} bar`, 'hoses take 0.3 cc'],
      rear_line: [`${rear} bar`, 'hose takes 0.1 cc'],
      front_brake: [`${Math.round(9.4 * front)} Nm a wheel`],
      rear_brake: [`${Math.round(6.1 * rear)} Nm a wheel`],
      front_tyre: [`brakes ${(3.1 * g * heavier).toFixed(2)} kN`, `uses ${(0.88 * g).toFixed(2)} of 0.90`],
      rear_tyre: [`brakes ${(2.2 * g * heavier).toFixed(2)} kN`, `uses ${(1.13 * g).toFixed(2)} of 0.90`],
    },
  };
}

function lockTable(): Table {
  return {
    caption: 'What locks first over grip',
    columns: ['Grip', 'First to lock', 'At', 'Other axle at'],
    rows: [
      ['0.30', 'front', '0.28 g', '0.31 g'],
      ['0.60', 'rear', '0.56 g', '0.59 g'],
      ['0.90', 'rear', '0.80 g', '0.86 g'],
    ],
  };
}

export function loadCase(name: string, summary: string, heavier: number): LoadCase {
  const points = DECELERATIONS.map((g) => point(g, heavier));
  const share = DECELERATIONS.map((g) => g * heavier);
  return {
    name,
    summary,
    lock_sentence: 'On a dry road (grip 0.90) the rear wheels lock first, at 0.80 g.',
    points,
    force_chart: {
      title: 'Brake force, rear against front',
      description:
        'The installed curve runs above the ideal curve between 0.35 and 0.85 g, so the rear wheels are asked for more than their share.',
      x_label: 'Front brake force over weight',
      y_label: 'Rear brake force over weight',
      x_max: 0.9,
      y_max: 0.4,
      ideal: DECELERATIONS.map((g) => ({ front: g * (0.52 + 0.19 * g), rear: g * (0.48 - 0.19 * g) })),
      installed: DECELERATIONS.map((g) => ({ front: 0.58 * g + 0.06 * g * g, rear: 0.42 * g - 0.06 * g * g })),
      grip_lines: [
        { label: 'front locks, grip 0.9', axle: 'front', from: { front: 0.47, rear: 0 }, to: { front: 0.62, rear: 0.4 } },
        { label: 'rear locks, grip 0.9', axle: 'rear', from: { front: 0, rear: 0.37 }, to: { front: 0.9, rear: 0.24 } },
      ],
      deceleration_lines: [0.2, 0.4, 0.6, 0.8, 1].map((g) => ({ label: `${g} g`, g })),
    },
    adhesion_chart: {
      title: 'Grip each axle uses',
      description: 'The rear axle uses more grip than the front from 0.35 g on.',
      x_label: 'Deceleration (g)',
      y_label: 'Grip used',
      series: [
        { label: 'front axle', style: 'front', x: DECELERATIONS, y: share.map((g) => 0.88 * g + 0.02) },
        { label: 'rear axle', style: 'rear', x: DECELERATIONS, y: share.map((g) => 0.7 * g + 0.42 * g * g) },
        { label: 'as much as ideal', style: 'ideal', x: [0.1, 1], y: [0.1, 1] },
      ],
    },
    lock_table: lockTable(),
    table: {
      caption: `Effort, pressures and travel, ${name}`,
      columns: ['Deceleration', 'Effort', 'Front pressure', 'Rear pressure', 'Travel', 'Front share'],
      rows: points
        .filter((_, i) => i % 2 === 0)
        .map((p) => [
          p.label,
          p.texts.foot?.[0]?.replace('pushes ', '') ?? '',
          p.texts.front_line?.[0] ?? '',
          p.texts.rear_line?.[0] ?? '',
          p.texts.foot?.[1]?.replace('moves ', '') ?? '',
          '58 %',
        ]),
    },
  };
}

function overDeceleration(title: string, y_label: string, y: (g: number) => number, limit: number, unit: string): Chart {
  return {
    title,
    description: `${title} rises with deceleration and passes the limit of ${limit} ${unit} near 0.95 g with two people aboard.`,
    x_label: 'Deceleration (g)',
    y_label,
    series: [
      { label: 'driver only', style: 'case_1', x: DECELERATIONS, y: DECELERATIONS.map(y) },
      {
        label: 'two up, full tank',
        style: 'case_2',
        x: DECELERATIONS,
        y: DECELERATIONS.map((g) => (g > 0.93 ? null : y(g * 1.14))),
      },
      { label: `limit ${limit} ${unit}`, style: 'limit', x: [0.1, 1], y: [limit, limit] },
    ],
  };
}

export const effortChart = overDeceleration('Pedal effort', 'Effort (N)', (g) => 8 + 455 * g, 445, 'N');
export const travelChart = overDeceleration('Pedal travel', 'Travel (mm)', (g) => 14 + 52 * g, 62, 'mm');

const FORCES = Array.from({ length: 13 }, (_, i) => i * 50);

function felt(label: string, style: Series['style'], travel: (force: number) => number): Series {
  return { label, style, x: [0, ...FORCES.map(travel)], y: [0, ...FORCES] };
}

export const feelChart: FeelChart = {
  chart: {
    title: 'Force against travel',
    description: 'At the hard stop (395 N) the pedal travels 47 mm firm, 58 mm as assumed, 74 mm soft.',
    x_label: 'pedal travel, mm',
    y_label: 'pedal force, N',
    series: [
      felt('firm', 'case_2', (force) => 6 + 2.06 * force ** 0.5),
      felt('as assumed', 'case_1', (force) => 8 + 2.52 * force ** 0.5),
      felt('soft', 'case_3', (force) => 10 + 3.22 * force ** 0.5),
      { label: 'hard stop', style: 'limit', x: [0, 140], y: [395, 395] },
      { label: 'pedal’s stop', style: 'ideal', x: [140, 140], y: [0, 600] },
    ],
  },
  marks: [{ kind: 'end', label: 'the rear master bottoms', x: 88.9, y: 600 }],
  table: {
    caption: 'Pedal travel at each force',
    columns: ['force', 'firm', 'as assumed', 'soft'],
    rows: FORCES.map((force) => [
      `${force} N`,
      ...[2.06, 2.52, 3.22].map((rise, i) => `${(6 + 2 * i + rise * force ** 0.5).toFixed(0)} mm`),
    ]),
  },
};
