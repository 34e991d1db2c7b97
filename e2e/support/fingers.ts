/** Fingers and a pen on the glass, as the browser's own protocol puts them there. */
import type { CDPSession, Locator, Page } from '@playwright/test';
import type { Place } from '../hands';

/** Where on the screen places are, pixels from the middle of `surface`. */
async function middleOf(surface: Locator): Promise<readonly [number, number]> {
  const box = await surface.boundingBox();
  if (!box) throw new Error('there is nothing to touch');
  return [box.x + box.width / 2, box.y + box.height / 2];
}

export class Fingers {
  private constructor(
    private readonly session: CDPSession,
    private readonly surface: Locator
  ) {}

  static async on(surface: Locator, page: Page): Promise<Fingers> {
    return new Fingers(await page.context().newCDPSession(page), surface);
  }

  /** Puts all of them down, or moves those that are down; no place lifts them. */
  async #touch(
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    places: readonly Place[],
    middle?: Place
  ) {
    const [x, y] = middle ?? (await middleOf(this.surface));
    const touchPoints = places.map(([dx, dy], id) => ({ x: x + dx, y: y + dy, id }));
    await this.session.send('Input.dispatchTouchEvent', { type, touchPoints });
  }

  async tap(place: Place): Promise<void> {
    await this.#touch('touchStart', [place]);
    await this.#touch('touchEnd', []);
  }

  async rest(place: Place, milliseconds: number): Promise<void> {
    await this.#touch('touchStart', [place]);
    await this.surface.page().waitForTimeout(milliseconds);
    await this.#touch('touchEnd', []);
  }

  /** Each finger along its own straight way; `ending` is how they leave the glass. */
  async drag(
    ways: readonly (readonly [from: Place, to: Place])[],
    ending: 'touchEnd' | 'touchCancel' = 'touchEnd'
  ): Promise<void> {
    const middle = await middleOf(this.surface);
    const STEPS = 10;
    const at = (k: number) =>
      ways.map(([a, b]): Place => {
        const share = k / STEPS;
        return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
      });
    // Down and on in one breath: on a loaded machine a finger that waits for an answer rests, and asks for the menu.
    await Promise.all([this.#touch('touchStart', at(0), middle), this.#touch('touchMove', at(1), middle)]);
    for (let k = 2; k <= STEPS; k++) await this.#touch('touchMove', at(k), middle);
    await this.#touch(ending, []);
  }

  async penDrag(from: Place, to: Place): Promise<void> {
    const [x, y] = await middleOf(this.surface);
    const send = (type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', [dx, dy]: Place) =>
      this.session.send('Input.dispatchMouseEvent', {
        type,
        x: x + dx,
        y: y + dy,
        button: 'left',
        buttons: type === 'mouseReleased' ? 0 : 1,
        clickCount: 1,
        pointerType: 'pen'
      });
    await send('mousePressed', from);
    await send('mouseMoved', [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
    await send('mouseMoved', to);
    await send('mouseReleased', to);
  }
}
