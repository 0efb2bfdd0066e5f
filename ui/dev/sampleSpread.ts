/** An invented spread for the development stand-in and the tests; no law made it. */
import type { Spread } from '../src/spreadContract.ts';

export const sampleSpread: Spread = {
  revision: 1,
  sentence: 'In 9 of 10 cars built like this the pedal needs 348 N to 455 N for the hard stop.',
  basis: '4096 cars drawn, 23 values varied within their ± or their assumed range, seed 1. Values without a ± count as exact.',
  notes: ['Pedal or masters run out of travel before the hard stop is reached in 3 of 100 cars.'],
  bands: [
    {
      key: 'effort', label: 'Pedal effort', state: 'caution', word: 'Often over the limit',
      sentence: 'In 9 of 10 cars built like this the pedal needs 348 N to 455 N for the hard stop (395 N as the file stands).',
      marks: {
        p05: 348, p25: 375, p50: 396, p75: 420, p95: 455, nominal: 395, limit: 445,
        texts: { p05: '348 N', p25: '375 N', p50: '396 N', p75: '420 N', p95: '455 N', nominal: '395 N', limit: '445 N' },
      },
      owners: [
        { path: 'front.pad_friction', title: 'front brakes: pad friction', share: 0.62, text: '62 %' },
        { path: 'pedal.efficiency', title: 'brake pedal: efficiency', share: 0.21, text: '21 %' },
      ],
      together: '17 %',
    },
    {
      key: 'travel', label: 'Pedal travel', state: 'fine', word: 'Within the limit',
      sentence: 'In 9 of 10 cars built like this the pedal goes 49 mm to 68 mm deep in the hard stop.',
      marks: {
        p05: 0.049, p25: 0.054, p50: 0.058, p75: 0.062, p95: 0.068, nominal: 0.058, limit: 0.075,
        texts: { p05: '49 mm', p25: '54 mm', p50: '58 mm', p75: '62 mm', p95: '68 mm', nominal: '58 mm', limit: '75 mm' },
      },
      owners: [{ path: 'fluid.free_air', title: 'fluid: free air', share: 0.4, text: '40 %' }],
      together: '60 %',
    },
    {
      key: 'critical', label: 'Rear first above, driver only', state: 'cannot_tell', word: 'Front always first',
      sentence: 'In driver only the front locks first in all cars built like this.', marks: null, owners: [], together: null,
    },
  ],
  rear_first: {
    caption: 'How often the rear locks first',
    columns: ['grip', 'driver only', 'two up, full tank'],
    rows: [
      ['0.8', 'never', '12.0 ± 0.5 %'],
      ["the car's own", '3.1 ± 0.3 %', 'always'],
    ],
  },
};
