'use client';
import { type ChangeEvent, useState } from 'react';

/** What a file input for videos does with a choice: a video goes on, anything else is refused at once. */
export const useVideoChoice = (onFile: (file: File) => void) => {
  const [refused, setRefused] = useState(false);
  const chosen = (event: ChangeEvent<HTMLInputElement>): void => {
    const file = event.target.files?.[0];
    event.target.value = '';
    if (file === undefined) return;
    const video = file.type.startsWith('video/') || (file.type === '' && /\.(mp4|mov|m4v)$/i.test(file.name));
    setRefused(!video);
    if (video) onFile(file);
  };
  return { refused, chosen };
};
