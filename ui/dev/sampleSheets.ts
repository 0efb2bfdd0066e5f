/** Invented sheets for the development stand-in and the tests. */
import type { SheetList } from '../src/sheetsContract.ts';

export const sampleSheets: SheetList = {
  revision: 1,
  advice: 'Print at 100 % and lay a ruler on the check bars before anything is cut. Stamped, and not to be worked from: 1 of 2.',
  sheets: [
    { key: 'brake-pedal-arm', title: 'Sample car: brake pedal arm', use: 'template', size: '320 mm by 90 mm', stamp: null },
    {
      key: 'balance-bar', title: 'Sample car: balance bar', use: 'setting sheet', size: '150 mm by 190 mm',
      stamp: 'DO NOT DRIVE SO: Rear wheels lock first',
    },
  ],
};
