/** What follows from the run that is shown, and its two figures with the leg that is being entered. */
import { useEffect, useMemo, useState } from 'react';
import { drawIsometric } from '../../../drawing/isometric/isometric.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import { render } from '../../../drawing/svg.ts';
import type { Drawing, How } from '../../../drawing/types.ts';
import { layUnfolded } from '../../../drawing/unfolded/unfolded.ts';
import type { RunFile } from '../../../run/edit/file.ts';
import { addLeg } from '../../../run/edit/legs.ts';
import type { WayOutChoice } from '../../../run/edit/ways.ts';
import type { takeoff } from '../../../run/takeoff.ts';
import type { Ticks } from '../../../trade/length.ts';
import { now } from '../../device/edge.ts';
import { tagsOf } from '../../run/said.ts';
import { type WorkedRun, type World, workOut } from '../../run/workOut.ts';
import type { Speak, Tell } from '../../speak.ts';

export interface Draft {
  readonly choice: WayOutChoice;
  readonly length: Ticks;
}

export interface Figures {
  readonly isometric: readonly Drawing[];
  readonly strip: readonly Drawing[];
}

/** How long cutting plans are looked for while a run is being built, ms. */
const PLAN_MS = 40;
const FORMS = ['phone', 'desk'] as const;

const untilLate = () => {
  const begun = now();
  return { stop: () => now() - begun > PLAN_MS };
};

export function useWorkedRun(
  shown: RunFile,
  draft: Draft | null,
  world: World,
  tell: Tell,
  speak: Speak,
): { readonly worked: WorkedRun; readonly drawn: Figures } {
  const [take, setTake] = useState<typeof takeoff | null>(null);
  useEffect(() => {
    void import('../../../run/takeoff.ts').then((part) => setTake(() => part.takeoff));
  }, []);
  const worked = useMemo(
    () => guarded(() => workOut(shown.run, world, untilLate(), take), tell),
    [shown.run, world, take, tell],
  );
  const { run, tags } = shown;
  const drawn = useMemo((): Figures => {
    const added =
      draft === null
        ? null
        : guarded(() => workOut(addLeg(run, draft.choice, draft.length), world, {}, null), tell);
    const resolved = added?.resolved ?? worked.resolved;
    if (resolved === null) return { isometric: [], strip: [] };
    const phantom = added?.resolved == null ? {} : { phantom: resolved.run.legs.at(-1)?.id };
    const findings = worked.inspected?.result.findings ?? [];
    const given = { resolved, findings, tags: tagsOf({ tags }), ...phantom };
    const drawn = (draw: (how: How) => Drawing) =>
      FORMS.map((form) => draw({ form, palette: pagePalette, speak }));
    return {
      isometric: drawn((how) => drawIsometric(given, how)),
      strip: drawn((how) => render(layUnfolded(given, how), how)),
    };
  }, [run, tags, draft, worked, world, speak, tell]);
  return { worked, drawn };
}

/** A run that trips the working itself must not take the page and all other runs with it. */
function guarded(act: () => WorkedRun, tell: Tell): WorkedRun {
  try {
    return act();
  } catch (cause) {
    const message = tell('yourRun.broke', { why: String(cause) });
    const faults = [{ field: 'run', message, todo: tell('yourRun.brokeTodo') }];
    return { resolved: null, inspected: null, takeoff: null, faults };
  }
}
