import { habits, type Habit } from '../../calculators/core/shop-units.ts';

const key = 'warm-mould:units';

export function readHabit(): Habit {
  try {
    const kept = localStorage.getItem(key);
    return kept !== null && kept in habits ? (kept as Habit) : 'metric';
  } catch {
    return 'metric';
  }
}

export function keepHabit(habit: Habit): void {
  try {
    if (habit === 'metric') localStorage.removeItem(key);
    else localStorage.setItem(key, habit);
  } catch {
    // Without storage the habit lasts as long as the page.
  }
}
