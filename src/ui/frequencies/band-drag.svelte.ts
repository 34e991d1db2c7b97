/**
 * A band in the hand: it goes to the setting nearest to the pointer, and the site with it. All settings that one drag
 * crosses are one undo step; a drag that ends where it began, or is given up, is none.
 */
import { saying } from '#i18n/saying';
import type { Site } from '#plan/schema';
import type { Bench } from '../bench';
import { nameOf } from '../names';
import { putOnSetting } from './edits';
import { ladderOf, nearestRung } from './ladder';
import type { ChannelRow } from './rows';

/** Pixels that a press may wander and still be a click. */
const SLACK = 4;

interface Grip {
  readonly row: ChannelRow;
  readonly site: Site;
  readonly pressedAt: number;
  /** Hz under the pointer when it was pressed, over the band's own frequency. */
  readonly offset_Hz: number;
  readonly merge: string;
}

let drags = 0;

export class BandDrag {
  /** The circuit whose band is in the hand, and the frequency that the hand asks for. */
  held = $state.raw<{ readonly circuit: string; readonly frequency_Hz: number } | null>(null);
  readonly #bench: Bench;
  #grip: Grip | null = null;
  /** The site as this drag left it: when it is another, somebody else was at work. */
  #last: Site | null = null;

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** `x`: pixels; `pointed_Hz`: the frequency there. A band whose frequency is given stays where it is. */
  press(row: ChannelRow, x: number, pointed_Hz: number): void {
    const { site } = this.#bench.state;
    this.#grip = {
      row,
      site,
      pressedAt: x,
      offset_Hz: pointed_Hz - row.readout.sweep.rest_Hz,
      merge: `drag ${++drags} of ${row.circuit.id}`
    };
    this.#last = site;
  }

  move(x: number, pointed_Hz: number): void {
    const grip = this.#grip;
    if (!grip || grip.row.channel.frequency_Hz !== null) return;
    if (!this.held && Math.abs(x - grip.pressedAt) <= SLACK) return;
    if (this.#bench.state.site !== this.#last) return this.#drop();
    const frequency_Hz = pointed_Hz - grip.offset_Hz;
    this.held = { circuit: grip.row.circuit.id, frequency_Hz };
    const rung = nearestRung(ladderOf(grip.row.readout), frequency_Hz);
    if (!rung) return;
    if (rung.setting === grip.row.channel.frequencySetting) this.#goBack(grip);
    else putOnSetting(this.#bench, grip.row.circuit.id, rung.setting, grip.merge);
    this.#last = this.#bench.state.site;
  }

  /** The circuit whose band was clicked; null where it was dragged, or none was pressed. */
  release(): string | null {
    const clicked = this.held ? null : (this.#grip?.row.circuit.id ?? null);
    this.#drop();
    return clicked;
  }

  /** Puts everything back as it was when the band was taken; false without a band in the hand. */
  giveUp(): boolean {
    const grip = this.#grip;
    const isHeld = this.held !== null;
    if (grip && isHeld && this.#bench.state.site === this.#last) this.#goBack(grip);
    this.#drop();
    return isHeld;
  }

  #goBack({ site, row, merge }: Grip): void {
    const label = saying('step.setting', { name: nameOf(row.circuit) });
    this.#bench.editor.commit({ label, site, merge });
  }

  #drop(): void {
    this.#grip = null;
    this.held = null;
  }
}
