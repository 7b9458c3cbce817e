import { habits, type Habit } from '../../calculators/core/shop-units.ts';
import { keepHabit } from './habit.ts';

/** The units of a shop, kept for every page. */
export function HabitChoice(props: { readonly habit: Habit; readonly onChange: (habit: Habit) => void }) {
  return (
    <select
      aria-label="Units everywhere"
      value={props.habit}
      onChange={(event) => {
        const wanted = event.currentTarget.value as Habit;
        keepHabit(wanted);
        props.onChange(wanted);
      }}
    >
      {Object.entries(habits).map(([name, words]) => (
        <option value={name} selected={name === props.habit}>
          {words}
        </option>
      ))}
    </select>
  );
}
