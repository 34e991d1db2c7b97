/** What a refiner of fields has to show, for a page that follows it. */
import { FieldRefiner, type Asker, type PlaneWish, type Refined } from './refining-field';

export class RefiningField {
  #state = $state.raw<Refined>({ shown: null, reason: null, isBusy: false });
  readonly #refiner: FieldRefiner;

  constructor(asker: Asker) {
    this.#refiner = new FieldRefiner(asker, (state) => {
      this.#state = state;
    });
  }

  get shown() {
    return this.#state.shown;
  }
  get reason() {
    return this.#state.reason;
  }
  get isBusy() {
    return this.#state.isBusy;
  }

  want(wish: PlaneWish, drawing: unknown): void {
    this.#refiner.want(wish, drawing);
  }

  /** Nobody looks any more. */
  stop(): void {
    this.#refiner.stop();
  }
}
