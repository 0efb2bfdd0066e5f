/** Inputs of the invented car. */
import type { FieldView, Section } from '../src/contract.ts';

type Given = Partial<FieldView> & { path: string; label: string };

function quantity(given: Given): FieldView {
  return {
    kind: 'quantity',
    written: '',
    origin: given.written ? 'origin not said' : '',
    assumed: '',
    also: '',
    how: '',
    allowed: '',
    required: false,
    choices: [],
    units: [],
    ...given,
  };
}

const LENGTH = ['mm', 'cm', 'm', 'in', 'ft'];

export const inputs: Section[] = [
  {
    title: 'Intent',
    fields: [
      quantity({
        path: 'intent.rule_sets',
        label: 'rule sets to answer to',
        kind: 'choices',
        written: '[un_r13h, state_assessment]',
        choices: ['un_r13h', 'fmvss_135', 'state_assessment', 'student_competition'],
        how: 'Tick none to be judged by common practice alone.',
        required: true,
      }),
    ],
  },
  {
    title: 'The car',
    fields: [
      quantity({ path: 'name', label: 'name of the car', kind: 'text', written: 'Plum Roadster', required: true }),
      quantity({
        path: 'car.wheelbase',
        label: 'wheelbase',
        written: '97.5 in',
        origin: 'measured',
        also: '2477 mm',
        how: 'Measure between wheel centres, both sides, and take the mean.',
        allowed: 'between 1 m and 6 m',
        required: true,
        units: LENGTH,
      }),
      quantity({
        path: 'car.grip',
        label: 'tyre grip',
        assumed: '0.90 (0.80 to 1.00)',
        how: 'A phone log of a full stop on the road you drive gives it.',
        allowed: 'between 0.05 and 3',
      }),
      quantity({
        path: 'car.load_cases[0].cg_height',
        label: 'height of the centre of gravity',
        assumed: '470 mm (420 to 520 mm)',
        how: 'Weigh one axle level and again with the other axle raised, or leave it out and see what it moves.',
        allowed: 'between 50 mm and 2 m',
        units: LENGTH,
      }),
    ],
  },
  {
    title: 'Brake pedal',
    fields: [
      quantity({
        path: 'pedal.ratio',
        label: 'pedal ratio',
        written: '5.2',
        origin: 'measured',
        how: 'Pad travel over pushrod travel, both measured with a tape.',
        allowed: 'between 1 and 15',
      }),
      quantity({
        path: 'pedal.travel_to_stop',
        label: 'pad travel from free position to the stop',
        written: '140 mm',
        origin: 'measured',
        also: '5.5 in',
        allowed: 'between 20 mm and 400 mm',
        units: LENGTH,
      }),
    ],
  },
  {
    title: 'Apply system',
    fields: [
      quantity({
        path: 'apply.front_master.bore',
        label: 'front master cylinder, bore',
        written: '7/8 in',
        origin: 'part sheet',
        also: '22.2 mm',
        how: 'Cast or stamped on the body, often as a fraction of an inch.',
        allowed: 'between 8 mm and 60 mm',
        required: true,
        units: LENGTH,
      }),
      quantity({
        path: 'apply.rear_master.bore',
        label: 'rear master cylinder, bore',
        written: '3/4 in',
        origin: 'part sheet',
        also: '19.1 mm',
        allowed: 'between 8 mm and 60 mm',
        required: true,
        units: LENGTH,
      }),
      quantity({
        path: 'apply.balance_bar.offset',
        label: 'balance bar, bearing offset toward the front clevis',
        written: '-4 mm',
        also: '-0.16 in',
        how: 'From the middle between the clevises to the middle of the bearing; plus is toward the front master.',
        allowed: 'between -100 mm and 100 mm',
        units: LENGTH,
      }),
      quantity({
        path: 'apply.balance_bar.locked_for_road',
        label: 'balance bar, locked for the road',
        kind: 'yes_no',
        how: 'yes when the adjuster is mechanically disabled, for example lock-wired, and labelled.',
      }),
      quantity({
        path: 'apply.proportioning_valve.knee',
        label: 'proportioning valve in the rear line, knee pressure',
        written: '30 bar',
        origin: 'part sheet',
        also: '435 psi',
        allowed: 'between 0 bar and 200 bar',
        required: true,
        units: ['bar', 'kPa', 'MPa', 'psi'],
      }),
    ],
  },
  {
    title: 'Front brakes',
    fields: [
      quantity({
        path: 'front.caliper',
        label: 'caliper type',
        kind: 'choice',
        written: 'sliding',
        choices: ['fixed', 'sliding'],
        required: true,
        how: 'Fixed has pistons on both sides of the disc; sliding moves on pins.',
      }),
      quantity({
        path: 'front.pad_friction',
        label: 'pad friction',
        assumed: '0.38 (0.30 to 0.45)',
        how: 'Gauge the line pressure in a steady stop and let the tool work it out.',
        allowed: 'between 0.05 and 0.9',
      }),
    ],
  },
  {
    title: 'Rear brakes',
    fields: [
      quantity({
        path: 'rear.shoes',
        label: 'shoe arrangement',
        kind: 'choice',
        written: 'leading_trailing',
        choices: ['leading_trailing', 'two_leading', 'self_energising'],
        required: true,
      }),
      quantity({
        path: 'rear.wheel_cylinder',
        label: 'wheel cylinder bore',
        written: '13/16 in',
        origin: 'part sheet',
        also: '20.6 mm',
        allowed: 'between 10 mm and 60 mm',
        required: true,
        units: LENGTH,
      }),
    ],
  },
];
