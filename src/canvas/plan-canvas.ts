/** The plan on a Konva stage: five canvases on top of each other, each drawn again only when its part changed. */
import Konva from 'konva/lib/Core.js';
import type { Severity } from '#analysis/results';
import type { Place } from '#analysis/takeoff/results';
import type { Editor } from '#editor/types';
import { visibleSite } from '#plan/layers';
import type { GhostPicture } from '#scenes/designs';
import { withTextsScaled, type Drawing } from '#scenes/drawing';
import type {
  Call,
  CuttingPicture,
  FieldOverlay,
  Frame,
  MapPicture,
  Moment,
  PointedPair
} from '#scenes/frame';
import { listenToPointers } from './input/pointers';
import { watchSpace } from './input/space';
import { listenToWheel, type WheelHabit } from './input/wheel';
import { layers } from './layers/index';
import { hasChanged, type LayerDefinition } from './layers/layer';
import { watchLook } from './look';
import { paint } from './paint';
import { createTileKeeper } from './line-tiles';
import { createPictureKeeper } from './pictures';
import { watchSize, type SurfaceSize } from './size';
import type { Pictures } from '#scenes/pictures';
import type { ThemeName } from '#scenes/theme';

export interface PlanCanvasOptions {
  readonly theme?: ThemeName;
  /** What a turned wheel does without control: 'zoom' unless told. */
  readonly wheel?: WheelHabit;
  /** Whether fingers only move the view once a pen was seen: true unless told. */
  readonly penDraws?: boolean;
  /** Shows the whole plan as soon as the surface has a size; true unless told. */
  readonly fit?: boolean;
  /** Told whenever a picture of the plan is ready, turns out to be none, or is gone. */
  readonly onPictures?: (pictures: Pictures) => void;
}

export interface PlanCanvas {
  /** The live figure in each loop's label, and the worst finding about each loop; ids are loops' ids. */
  setResults(figures: ReadonlyMap<string, string>, severities: ReadonlyMap<string, Severity>): void;
  /** How each loop's circuit answers to the vehicles on the plan. */
  setCalls(calls: ReadonlyMap<string, Call>): void;
  /** Two circuits to be highlighted, or none. */
  setPointed(pair: PointedPair | null): void;
  /** Laid under the loops, or none. */
  setMap(map: MapPicture | null): void;
  /** Section and currents that are looked at, or none. */
  setField(field: FieldOverlay | null): void;
  /** Traffic at a moment, or none. */
  setMoment(moment: Moment | null): void;
  /** Places to be highlighted. */
  setMarked(places: readonly Place[]): void;
  /** Whose order of cuts is shown, or none. */
  setCutting(cutting: CuttingPicture | null): void;
  /** Another design laid over the plan, or none. */
  setGhost(ghost: GhostPicture | null): void;
  setTheme(theme: ThemeName): void;
  showLabels(shown: boolean): void;
  setWheel(habit: WheelHabit): void;
  setPenDraws(draws: boolean): void;
  /** Removes the stage and every listener. */
  destroy(): void;
}

interface Sheet {
  readonly definition: LayerDefinition;
  readonly layer: Konva.Layer;
  drawn: readonly unknown[] | null;
  drawings: readonly Drawing[];
}

function createSheet(stage: Konva.Stage, definition: LayerDefinition): Sheet {
  const layer = new Konva.Layer({ listening: false });
  const sheet: Sheet = { definition, layer, drawn: null, drawings: [] };
  layer.add(
    new Konva.Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        paint(context, sheet.drawings);
      }
    })
  );
  stage.add(layer);
  return sheet;
}

/**
 * Draws the editor's plan in the container and passes pointers on to the editor. The container must have a size and should
 * be focusable; keys are left to the page.
 */
export function createPlanCanvas(
  container: HTMLDivElement,
  editor: Editor,
  options: PlanCanvasOptions = {}
): PlanCanvas {
  // Otherwise every change of a node asks for a frame of its own.
  Konva.autoDrawEnabled = false;
  const stage = new Konva.Stage({ container, width: 1, height: 1, listening: false });
  const sheets = layers.map((definition) => createSheet(stage, definition));
  container.style.touchAction = 'none';
  container.style.userSelect = 'none';
  container.style.setProperty('forced-color-adjust', 'none');

  let themeName: ThemeName = options.theme ?? 'light';
  const look = watchLook(container, () => {
    change({ theme: look.themeOf(themeName) });
    drawNow();
  });

  let frame: Frame = {
    state: editor.state,
    site: visibleSite(editor.state.draft ?? editor.state.site),
    theme: look.themeOf(themeName),
    figures: new Map(),
    severities: new Map(),
    calls: new Map(),
    pointed: null,
    map: null,
    field: null,
    moment: null,
    marked: [],
    cutting: null,
    showsLabels: true,
    pictures: new Map(),
    lineTiles: new Map()
  };
  let wheel: WheelHabit = options.wheel ?? 'zoom';
  let penDraws = options.penDraws ?? true;
  let shown = editor.state.draft ?? editor.state.site;
  let request: number | null = null;
  let isPanning = false;
  let pixelRatio = 1;
  let isFitted = options.fit === false;

  function draw(): void {
    request = null;
    container.style.backgroundColor = frame.theme.paper;
    tiles.show(frame, pixelRatio);
    for (const sheet of sheets) {
      const now = sheet.definition.dependsOn(frame);
      if (!hasChanged(sheet.drawn, now)) continue;
      sheet.drawn = now;
      sheet.drawings = withTextsScaled(sheet.definition.draw(frame), frame.theme.textScale);
      sheet.layer.draw();
    }
  }

  function change(patch: Partial<Frame>): void {
    frame = { ...frame, ...patch };
    request ??= requestAnimationFrame(draw);
  }

  function drawNow(): void {
    if (request !== null) cancelAnimationFrame(request);
    draw();
  }

  const tiles = createTileKeeper((lineTiles) => {
    change({ lineTiles });
  });
  const keeper = createPictureKeeper((pictures) => {
    change({ pictures });
    options.onPictures?.(pictures);
  });
  keeper.show(editor.state.site.underlays);

  function showCursor(): void {
    const grip = isPanning ? 'grabbing' : space.isHeld ? 'grab' : null;
    container.style.cursor = grip ?? editor.state.overlay.cursor;
  }

  // The pointer that the keyboard moves presses with it, and a size that is typed may have spaces.
  const space = watchSpace(container, showCursor, () => {
    const { keyboardPoint, entry } = editor.state;
    return keyboardPoint !== null || (entry !== null && entry.active !== null);
  });

  function resize({ width, height, pixelRatio: ratio }: SurfaceSize): void {
    pixelRatio = ratio;
    stage.size({ width, height });
    for (const { layer } of sheets) layer.getCanvas().setPixelRatio(pixelRatio);
    for (const sheet of sheets) sheet.drawn = null;
    editor.setViewport({ ...editor.state.viewport, width, height });
    if (!isFitted) editor.fit('all');
    isFitted = true;
    // A canvas that was resized is blank until it is drawn, and a blank frame would be seen.
    drawNow();
  }

  const stops = [
    editor.subscribe((state) => {
      showCursor();
      const whole = state.draft ?? state.site;
      // The same object while the plan is: most changes of the state are none of it.
      if (whole !== shown) change({ state, site: visibleSite(whole) });
      else change({ state });
      shown = whole;
      keeper.show(whole.underlays);
    }),
    listenToPointers(container, editor, {
      isSpaceHeld: () => space.isHeld,
      penDraws: () => penDraws,
      panning(active) {
        isPanning = active;
        showCursor();
      }
    }),
    listenToWheel(container, editor, () => wheel),
    watchSize(container, resize),
    () => {
      space.stop();
      look.stop();
    }
  ];

  return {
    setResults: (figures, severities) => {
      change({ figures, severities });
    },
    setCalls: (calls) => {
      change({ calls });
    },
    setPointed: (pointed) => {
      change({ pointed });
    },
    setMap: (map) => {
      change({ map });
    },
    setField: (field) => {
      change({ field });
    },
    setMoment: (moment) => {
      change({ moment });
    },
    setMarked: (marked) => {
      change({ marked });
    },
    setCutting: (cutting) => {
      change({ cutting });
    },
    setGhost: (ghost) => {
      change({ ghost });
    },
    setTheme: (theme) => {
      themeName = theme;
      change({ theme: look.themeOf(theme) });
    },
    showLabels: (showsLabels) => {
      change({ showsLabels });
    },
    setWheel(habit) {
      wheel = habit;
    },
    setPenDraws(draws) {
      penDraws = draws;
    },
    destroy() {
      for (const stop of stops) stop();
      keeper.destroy();
      tiles.destroy();
      if (request !== null) cancelAnimationFrame(request);
      stage.destroy();
    }
  };
}
