import type { DayPhoto } from './photos.ts';

export interface PhotosShownProps {
  readonly photos: readonly DayPhoto[];
  /** No more are taken. */
  readonly full: boolean;
  readonly onTake: (file: File) => void;
  readonly onRemove: (photo: DayPhoto) => void;
}

const time = (at: number): string =>
  new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

/** A press that opens the camera of a phone, and the photos taken so far. */
export function PhotosShown({ photos, full, onTake, onRemove }: PhotosShownProps) {
  return (
    <div class="day-photos">
      {full ? (
        <p>Six photos are as many as a pour keeps. Take one out for another.</p>
      ) : (
        <label class="press">
          <input
            type="file"
            class="unseen"
            accept="image/*"
            capture="environment"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              if (file) onTake(file);
              event.currentTarget.value = '';
            }}
          />
          Take a photo
        </label>
      )}
      {photos.length > 0 && (
        <ul>
          {photos.map((photo, n) => (
            <li key={photo.id}>
              <img src={photo.picture} alt={`View ${n + 1}, taken at ${time(photo.at)}`} width="160" />
              <button type="button" onClick={() => onRemove(photo)}>
                Take out<span class="unseen"> photo {n + 1}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
