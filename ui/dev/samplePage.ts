/** A page about an invented car with real problems, for working on the page without the server. */
import type { Page, UnitSystem } from '../src/contract.ts';
import { effortChart, feelChart, loadCase, travelChart } from './sampleCharts.ts';
import { inputs } from './sampleInputs.ts';
import { bar, pedal } from './sampleMechanism.ts';

export function samplePage(units: UnitSystem): Page {
  return {
    revision: 1,
    file: 'plum-roadster.yaml',
    demo: true,
    units,
    name: 'Plum Roadster',
    story: 'A two-seat body on a boxed frame. The pedals hang from a firewall that was never made for them.',
    can_undo: false,
    can_redo: false,
    verdict: {
      state: 'stop',
      word: 'Stop',
      sentence: 'The rear wheels lock first on a dry road, from 0.80 g: the car can swap ends. Do not drive it like this.',
      counts: { stop: 1, caution: 2, cannot_tell: 1, fine: 2 },
    },
    headline: [
      { key: 'effort', label: 'Pedal effort at 0.85 g', value: '395 N', note: 'limit 445 N, common practice', state: 'fine', working: 'effort' },
      { key: 'travel', label: 'Pedal travel at 0.85 g', value: '58 mm', note: 'aim 62 mm; 82 mm left to the stop', state: 'caution', working: 'travel' },
      { key: 'balance', label: 'Front share at 0.85 g', value: '58.2 %', note: 'ideal 68.2 %', state: 'stop', working: 'balance' },
      { key: 'margin', label: 'Margin before the rear locks first', value: '\u22120.10 g', note: 'should be over 0.05 g, estimate', state: 'stop', working: null },
    ],
    findings: [
      {
        key: 'balance.rear-locks-first', state: 'stop', word: 'Stop', title: 'Rear wheels lock first',
        sentence: 'On a dry road the rear wheels lock at 0.80 g, before the front. A car that locks its rear wheels turns round.',
        number: '0.80 g', limit: 'front first up to 0.90', whose: 'UN R13-H, annex 5', tag: 'from memory, check the clause',
        cure: {
          sentence: 'Move the bar bearing 7 mm toward the front: effort 431 N, travel 61 mm.',
          edits: [{ path: 'apply.balance_bar.offset', text: '3 mm' }],
        },
        advice: null, inputs: ['apply.balance_bar.offset', 'apply.rear_master.bore'],
      },
      {
        key: 'pedal.travel-long', state: 'caution', word: 'Caution', title: 'Pedal travel is near its aim',
        sentence: 'At a hard stop the pad moves 58 mm of the 62 mm you asked for; hot pads and soft hoses will use the rest.',
        number: '58 mm', limit: '62 mm', whose: 'your aim', tag: null,
        cure: { sentence: 'Go one bore up at the rear, to 13/16 in: travel 54 mm, effort 428 N.', edits: [{ path: 'apply.rear_master.bore', text: '13/16 in' }] },
        advice: null, inputs: ['apply.rear_master.bore'],
      },
      {
        key: 'balance.bar-not-locked', state: 'cannot_tell', word: 'Cannot tell', title: 'Is the balance bar locked for the road?',
        sentence: 'Some approvals want the adjuster disabled and labelled.', number: null, limit: 'locked', whose: 'state assessment manual', tag: 'from memory, check the clause',
        cure: null, advice: 'Look at the adjuster and answer yes or no.', inputs: ['apply.balance_bar.locked_for_road'],
      },
      {
        key: 'balance.pad-friction-unknown', state: 'caution', word: 'Caution', title: 'The verdict hangs on the pad friction',
        sentence: 'Between 0.30 and 0.45 the effort runs from 340 to 500 N.', number: '340 to 500 N', limit: '445 N', whose: 'common practice', tag: 'estimate',
        cure: null, advice: 'Gauge the front pressure in one steady stop.', inputs: ['front.pad_friction'],
      },
      {
        key: 'pressure.panic', state: 'fine', word: 'Fine', title: 'Panic push stays within the ratings',
        sentence: 'A 900 N push makes 92 bar in front; the caliper is rated at 100 bar.', number: '92 bar', limit: '100 bar', whose: 'part sheet', tag: null,
        cure: null, advice: null, inputs: ['apply.front_master.bore'],
      },
      {
        key: 'failure.one-circuit', state: 'fine', word: 'Fine', title: 'One circuit still stops the car',
        sentence: 'With the front circuit gone the rear gives 2.9 m/s² at 500 N.', number: '2.9 m/s²', limit: '2.55 m/s²', whose: 'state assessment manual', tag: 'from memory, check the clause',
        cure: null, advice: null, inputs: [],
      },
    ],
    chain: {
      apply: 'twin_masters', booster: false, valve: true, front: 'disc', rear: 'drum', bar_offset: -0.13,
      inputs: {
        foot: 'pedal.travel_to_stop', pedal: 'pedal.ratio', bar: 'apply.balance_bar.offset', booster: null,
        front_master: 'apply.front_master.bore', rear_master: 'apply.rear_master.bore', valve: 'apply.proportioning_valve.knee',
        front_line: null, rear_line: null, front_brake: 'front', rear_brake: 'rear.wheel_cylinder', front_tyre: 'car.grip', rear_tyre: 'car.grip',
      },
    },
    load_cases: [
      loadCase('driver only', '812 kg, centre of gravity 470 mm up', 1),
      loadCase('two up, full tank', '925 kg, centre of gravity 480 mm up', 1.14),
    ],
    effort_chart: effortChart,
    travel_chart: travelChart,
    feel_chart: feelChart,
    travel_budget: [
      { label: 'free play', where: 'pedal', text: '8.0 mm', share: 0.14 },
      { label: 'firewall flex', where: 'pedal', text: '9.5 mm', share: 0.16 },
      { label: 'closing the ports', where: 'pedal', text: '6.2 mm', share: 0.11 },
      { label: 'front pads and calipers', where: 'front', text: '14.1 mm', share: 0.24 },
      { label: 'front hoses', where: 'front', text: '5.0 mm', share: 0.09 },
      { label: 'rear shoes to the drum', where: 'rear', text: '12.3 mm', share: 0.21 },
      { label: 'rear hose', where: 'rear', text: '2.9 mm', share: 0.05 },
    ],
    failures: {
      caption: 'One thing fails: what is left at 500 N',
      columns: ['What fails', 'Deceleration', 'Travel', 'Verdict'],
      rows: [
        ['front circuit', '2.9 m/s²', '96 mm', 'Fine'],
        ['rear circuit', '5.8 m/s²', '88 mm', 'Fine'],
        ['one front hose swells', '7.0 m/s²', '104 mm', 'Caution'],
      ],
    },
    stops: {
      caption: 'Stops without a locked wheel, at no more than 500 N',
      columns: ['from', 'holds', 'stops in'],
      rows: [['100 km/h', '0.81 g', '58.6 m']],
    },
    balance_tables: [
      {
        caption: 'Balance in every case',
        columns: ['case', 'rear first from', 'tyres give'],
        rows: [['driver, wet pads', '0.84 g', '0.90 g']],
      },
    ],
    ledger: [
      { path: 'front.pad_friction', title: 'pad friction, front', value: '0.38', range: '0.30 to 0.45', basis: 'street pads, common practice', tag: 'common practice', by_builder: false, rank: 1, moves: ['effort 340 to 500 N', 'balance 54 to 62 %'], how: 'Gauge the line pressure in a steady stop.' },
      { path: 'car.load_cases[0].cg_height', title: 'height of the centre of gravity', value: '470 mm', range: '420 to 520 mm', basis: 'low two-seaters', tag: 'estimate', by_builder: false, rank: 2, moves: ['margin \u22120.16 to \u22120.04 g'], how: 'Weigh one axle level and again with the other axle raised.' },
      { path: 'car.grip', title: 'tyre grip', value: '0.90', range: '0.80 to 1.00', basis: 'dry road', tag: 'textbook', by_builder: true, rank: 3, moves: [], how: 'A phone log of a full stop gives it.' },
    ],
    inputs,
    workings: [
      { key: 'effort', title: 'Pedal effort', result: '395 N', steps: [
        { name: 'Front brake torque a wheel', formula: 'T = 2 · μ · p · A · r', with_numbers: '2 · 0.38 · 4.42 MPa · 2290 mm² · 112 mm', result: '861 Nm', source: 'disc brake, two rubbing faces' },
        { name: 'Effort', formula: 'F = (p_f · A_f + p_r · A_r) / (i · η)', with_numbers: '(4.42 MPa · 388 mm² + 5.44 MPa · 285 mm²) / (5.2 · 0.85)', result: '395 N', source: 'lever and piston' },
      ] },
      { key: 'travel', title: 'Pedal travel', result: '58 mm', steps: [{ name: 'Sum of the budget', formula: 's = Σ sᵢ', with_numbers: '8.0 + 9.5 + 6.2 + 14.1 + 5.0 + 12.3 + 2.9', result: '58 mm', source: 'travel budget' }] },
      { key: 'balance', title: 'Front share', result: '58.2 %', steps: [{ name: 'Front share', formula: 'F_f / (F_f + F_r)', with_numbers: '3.1 kN / 5.3 kN', result: '58.2 %', source: 'definition' }] },
    ],
    cautions: [
      'Feel, noise, pull and workmanship cannot be calculated: test on stands first, then at walking pace.',
      'Never drive with a pushrod not held, no free play, a bar or pedal that does not come back, a leak, a sinking pedal, rear wheels that lock first, or no brake lights.',
      'Local codes and licensed practice decide what may go on the road.',
    ],
    drums: {
      caption: 'Drum brakes: factor forward and backward',
      columns: ['drums', 'shoes', 'forward', 'backward'],
      rows: [['rear', 'leading trailing', '2.31', '2.31']],
    },
    parking: null,
    bar,
    pedal,
    clutch: null,
    lines: [{ caption: 'Joints', columns: ['line', 'fits'], rows: [['front tube', 'yes']] }],
    mount: {
      note: 'A foot of 500 N moves the brake pad 0.61 mm.',
      tables: [
        { caption: 'The same car with more on its panel', columns: ['panel', 'pad moves in use'], rows: [['bare, uncut', '64 mm']] },
        { caption: 'Movement under the foot', columns: ['load', 'pad'], rows: [['in use', '0.61 mm']] },
      ],
    },
    footwell: {
      note: 'The shoe is 120 mm broad.',
      tables: [{ caption: 'Gaps and steps between the pads', columns: ['pads', 'gap'], rows: [['brake and throttle', '35 mm']] }],
    },
    heat: {
      note: 'Where published branches change over they are blended.',
      table: {
        caption: 'Heat, from 20 °C',
        columns: ['schedule', 'axle', 'face', 'mean'],
        rows: [['one stop', 'front', '96 °C', '61 °C']],
      },
      charts: [
        {
          title: 'Temperatures: one stop',
          description: 'Temperature over time.',
          x_label: 'time, min',
          y_label: 'temperature, °C',
          series: [{ label: 'front rotor', style: 'front', x: [0, 0.1, 30], y: [20, 61, 34] }],
        },
      ],
    },
  };
}
