/** Sections, beams, spans, loads. */
import {
  beamInput,
  equivalentInput,
  sectionInput,
  spanGiven,
  spanInput,
  trayFaults,
  verticalInput,
} from '../../schema/mechanicsInputs.ts';
import { beam } from '../../trade/beam/beam.ts';
import { equivalent } from '../../trade/equivalent.ts';
import { GivenError } from '../../trade/given.ts';
import { section } from '../../trade/section.ts';
import { span } from '../../trade/span.ts';
import { vertical } from '../../trade/vertical.ts';
import { type Calculator, calculator } from '../calculator.ts';

/** A tray that is not in the catalogue is a fault beside those of the other fields. */
function naming(one: Calculator): Calculator {
  return {
    ...one,
    work: (options) => {
      const answer = one.work(options);
      return (given, content) => {
        try {
          return answer(given, content);
        } catch (cause) {
          if (!(cause instanceof GivenError) || cause.faults.some(({ field }) => field === 'tray'))
            throw cause;
          throw new GivenError([...cause.faults, ...trayFaults(given, content.catalogue)]);
        }
      };
    },
  };
}

export const mechanics: readonly Calculator[] = [
  calculator(
    'section',
    "a channel's cross-section: area, stiffness, strength, weight",
    sectionInput,
    section,
    [
      ['areaIn2, iIn4', 'net of holes; about the axis through the centroid, across the channel'],
      ['sLegIn3, sWebIn3', "section moduli at the legs' edges and at the web's outer face, net"],
      ['centroidIn', "above the web's outer face, net"],
      ['weightLbPerFt', 'without regard to holes'],
    ],
  ),
  calculator(
    'beam',
    'a beam on simple supports: any spans, uniform and point loads, overhangs',
    beamInput,
    beam,
    [
      ['reactionsLb', 'one a support, up positive'],
      ['supportMomentsLbIn', 'one a support, hogging negative'],
      ['spanMaxima', 'one a span: span atIn lbIn, the greatest moment, ends included'],
      ['deflections', 'one a span: span atIn in, the greatest downward, not below 0'],
      ['tipDeflectionsIn', 'left, right; downward positive; null without an overhang'],
    ],
  ),
  naming(
    calculator(
      'span',
      'how far apart supports may stand: by the load table of a tray, or an estimate for a section',
      spanInput,
      (given, { catalogue }) => span(spanGiven(given, catalogue)),
      [
        ['maxSpanIn', 'as a simple span; null: no row of the table carries the load'],
        ['governs', '"table", "bending", "leg buckling", "deflection" or "ceiling" (144 in)'],
        [
          'acceptance',
          'true only for a table that the site has adopted, and a load not below the tray’s own weight',
        ],
        ['refer, why', 'true: ask the engineer; an estimate always says so'],
      ],
    ),
  ),
  calculator('equivalent', 'a weight at mid-span as a uniform load', equivalentInput, equivalent, [
    ['equivalentLbPerFt', '2 × staticLb / spanFt'],
    ['totalLbPerFt', 'with otherLbPerFt'],
  ]),
  calculator('vertical', 'what each load-bearing support of a drop carries', verticalInput, vertical, [
    ['lb', 'dropFt × lbPerFt / loadSupports'],
  ]),
];
