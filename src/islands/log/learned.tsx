import { useState } from 'preact/hooks';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import { habitUnit } from '../../../calculators/core/shop-units.ts';
import { quantity } from '../../../calculators/core/quantity.ts';
import {
  fewest,
  metalOf,
  ownConstant,
  ownFilling,
  ownLoss,
  pointsOf,
  type Own,
} from '../../../calculators/pour-log/fits.ts';
import type { Pour } from '../../../calculators/pour-log/record.ts';
import { readHabit } from '../habit.ts';

export { lineOf } from './line.ts';

/** What the book says, beside which your own number always stands. */
export interface BookValues {
  /** s/m². */
  readonly constant: readonly [low: number, high: number];
  readonly loss: number;
}

/** s/m² as seconds per square millimetre, which is how a bench says it. */
const perMm = (x: number): string => `${printNumber(x * 1e-6)} s/mm²`;
const percent = (x: number): string => `${printNumber(100 * x, { figures: 2 })} %`;

/** A number as the plan takes it, with half of its interval: `1.9 s/mm² ± 0.2`. */
export function withHalf({ value, low, high }: Own, unit: string, factor: number): string {
  const text = (x: number): string => String(Number((x * factor).toPrecision(3)));
  return `${text(value)}${unit && ` ${unit}`} ± ${text((high - low) / 2)}`;
}

const more = (own: Own, what: string): string =>
  own.toHalve === undefined ? '' : `${own.toHalve} more ${what} would halve the doubt.`;

/** Your own numbers from your own pours, each with its doubt and beside the book's. */
export function Learned(props: {
  readonly pours: readonly Pour[];
  readonly book: BookValues;
  /** Into the plan that is open: texts of its inputs, what they are called, and the metal they hold for. */
  readonly onUse: (texts: Readonly<Record<string, string>>, what: string, metal?: string) => void;
}) {
  const { pours, book } = props;
  const [wanted, setWanted] = useState('');
  const metals = [...new Set(pours.map(metalOf))];
  const metal = metals.includes(wanted) ? wanted : (metals[0] ?? '');
  const { timed } = pointsOf(pours.filter((pour) => metalOf(pour) === metal));
  const { trials, losses } = pointsOf(pours);
  const constant = ownConstant(timed);
  const filling = ownFilling(trials);
  const loss = ownLoss(losses);
  return (
    <div class="learned">
      <h3>How fast does your mould freeze metal?</h3>
      {metals.length > 1 && (
        <p>
          <label>
            Of the pours in{' '}
            <select value={metal} onChange={(event) => setWanted(event.currentTarget.value)}>
              {metals.map((id) => (
                <option value={id} selected={id === metal}>
                  {id.replaceAll('-', ' ')}
                </option>
              ))}
            </select>
          </label>
        </p>
      )}
      {constant ? (
        <p>
          Your mould constant is <strong>{perMm(constant.value)}</strong> ({perMm(constant.low)} to{' '}
          {perMm(constant.high)}), from {constant.count} timed sections. Worked from the books for silicon
          bronze in clay-bonded sand it is {perMm(book.constant[0])} in a cold mould and{' '}
          {perMm(book.constant[1])} at {printQuantity(quantity('180 °C'), habitUnit('°C', readHabit()))}.{' '}
          {more(constant, 'timed sections')} Time thick and thin sections alike: if the constant drifts with
          thickness, the square does not hold for you.{' '}
          <button
            type="button"
            class="on-screen"
            onClick={() =>
              props.onUse(
                { 'own.constant': withHalf(constant, 's/mm²', 1e-6) },
                'your own mould constant',
                metal,
              )
            }
          >
            Use this constant in the open plan
          </button>
        </p>
      ) : (
        <p>Not known yet: time {fewest.constant - timed.length} more sections until they are solid.</p>
      )}
      <h3>How much margin do you need to fill?</h3>
      {filling ? (
        <p>
          Half your sections fill at a margin of <strong>{printNumber(filling.value, { figures: 2 })}</strong>{' '}
          ({printNumber(filling.low, { figures: 2 })} to {printNumber(filling.high, { figures: 2 })}), from{' '}
          {filling.count}; the plan starts from 1, with 1.5 to be safe. At 1.5 yours fill in{' '}
          {printNumber(Math.min(99, 100 * filling.chance(1.5)), { figures: 2 })} of 100.{' '}
          {more(filling, 'sections')} The one pour that would teach most has a section of margin{' '}
          <strong>{printNumber(filling.teaches, { figures: 2 })}</strong>: it may well fail, so pour it as a
          test piece.{' '}
          {Number.isFinite(filling.low) && Number.isFinite(filling.high) && (
            <button
              type="button"
              class="on-screen"
              onClick={() => props.onUse({ 'own.margin': withHalf(filling, '', 1) }, 'your own fill factor')}
            >
              Use this margin in the open plan
            </button>
          )}
        </p>
      ) : (
        <p>
          Not known yet: it takes {fewest.filling} sections with a margin, some filled and some not. You have{' '}
          {trials.length}, {trials.filter(({ filled }) => filled).length} of them filled.
        </p>
      )}
      <h3>How much metal do you lose?</h3>
      {loss ? (
        <p>
          You lose <strong>{percent(loss.value)}</strong> of the charge ({percent(loss.low)} to{' '}
          {percent(loss.high)}), from {loss.count} pours. The plan starts from {percent(book.loss)}.{' '}
          {more(loss, 'weighed pours')}{' '}
          {loss.value > 0 && (
            <button
              type="button"
              class="on-screen"
              onClick={() => props.onUse({ 'metal.loss.melting': withHalf(loss, '%', 100) }, 'your own loss')}
            >
              Use this loss in the open plan
            </button>
          )}
        </p>
      ) : (
        <p>
          Not known yet: weigh the charge, the casting and all the rest in {fewest.losses - losses.length}{' '}
          more pours.
        </p>
      )}
      <Compared pours={pours} />
    </div>
  );
}

/** Predicted against found, pour by pour. */
function Compared({ pours }: { readonly pours: readonly Pour[] }) {
  const rows = pours.filter(
    ({ predicted, found }) => predicted['part.mass'] !== undefined && found.casting !== undefined,
  );
  if (rows.length === 0) return null;
  const mass = habitUnit('g', readHabit());
  return (
    <details>
      <summary>Planned against found</summary>
      <div class="scrolls" tabIndex={0} role="group" aria-label="Planned against found">
        <table>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">Part</th>
              <th scope="col">Casting planned</th>
              <th scope="col">Found</th>
              <th scope="col">Sections filled</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, day, plan, predicted, found }) => (
              <tr key={id}>
                <td>{day}</td>
                <td>{plan.name}</td>
                <td>{printQuantity(predicted['part.mass']!, mass)}</td>
                <td>{printQuantity(found.casting!, mass)}</td>
                <td>
                  {found.sections.filter(({ filled }) => filled === 'full').length} of {found.sections.length}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
