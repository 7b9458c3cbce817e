import type { Pour } from '../../../calculators/pour-log/record.ts';
import { dayOf } from '../again.ts';
import { loadDiary, type Diary } from './diary.ts';
import { mostPhotos, photosOf } from './photos.ts';

/** What a followed pour hands to the log. */
export interface DayDraft {
  /** Of the pour in the log: writing it down twice changes it and makes no second one. */
  readonly id: string;
  /** `2026-03-14`. */
  readonly day: string;
  /** The name of the plan. */
  readonly plan: string;
  readonly note: string;
  /** `data:` addresses. */
  readonly photos: readonly string[];
}

/** In the order of the day. */
const screens = ['before', 'charge', 'mould', 'cope', 'gauge', 'melt', 'pour', 'hold', 'leave', 'after'];

/** The notes of a diary with the seconds that were taken, as one text. */
export function noteOf({ notes, moments }: Diary): string {
  const taken = (says: string, from: string, to: string): string[] =>
    moments[from] !== undefined && moments[to] !== undefined && moments[to] > moments[from]
      ? [`${says} ${((moments[to] - moments[from]) / 1000).toFixed(1)} s.`]
      : [];
  return [
    ...screens.map((screen) => notes[screen]?.trim() ?? ''),
    ...taken('From the furnace into the mould:', 'out', 'in'),
    ...taken('Suction held:', 'in', 'released'),
  ]
    .filter((text) => text !== '')
    .join('\n');
}

/** The day of a plan as it stands on this device, ready to be written into the log. */
export async function draftOf(plan: string): Promise<DayDraft> {
  const diary = loadDiary(plan);
  return {
    id: diary.pour ?? `day-${Date.now().toString(36)}`,
    day: dayOf(new Date(diary.moments['out'] ?? Date.now())),
    plan,
    note: noteOf(diary),
    photos: (await photosOf(plan)).map(({ picture }) => picture).slice(0, mostPhotos),
  };
}

/** A pour that is in the log already, with what the day has and it has not. */
export function withDraft(pour: Pour, { note, photos }: DayDraft): Pour {
  const { found } = pour;
  const lines = note.split('\n').filter((line) => !found.note.includes(line));
  const added = photos.filter((photo) => !found.photos.includes(photo));
  return {
    ...pour,
    found: {
      ...found,
      note: [found.note, ...lines].filter((line) => line !== '').join('\n'),
      photos: [...found.photos, ...added].slice(0, mostPhotos),
    },
  };
}
