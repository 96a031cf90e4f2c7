const minuteMs = 60_000;

/** A length of time in words: "25 min", "3 h 10 min", "2 days". */
export const lengthInWords = (ms: number): string => {
  const minutes = Math.max(0, Math.round(ms / minuteMs));
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 10) return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
  if (hours < 48) return `${hours} h`;
  return `${Math.round(hours / 24)} days`;
};

/** Time left until an instant, or how late it is. */
export const leftInWords = (ms: number): string =>
  ms >= 0 ? `${lengthInWords(ms)} left` : `${lengthInWords(-ms)} late`;

export const hoursInWords = (hours: number | null): string =>
  hours === null ? '–' : hours < 10 ? `${hours.toFixed(1)} h` : `${Math.round(hours)} h`;

/** Bytes in words for a progress line, decimal units. */
export const bytesInWords = (bytes: number): string =>
  bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;
