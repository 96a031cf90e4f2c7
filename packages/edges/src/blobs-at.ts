import type { Blobs } from '@ballfirst/services/ports';
import { blobsOnDisk } from './blobs-on-disk.ts';
import { blobsOnS3 } from './blobs-on-s3.ts';
import { s3AddressOf } from './s3-address.ts';

/** Files where the settings say: in a bucket by `mediaUrl`, else under `folder`. @throws Error naming what is wrong */
export const blobsAt = (where: { readonly folder: string; readonly mediaUrl: string | undefined }): Blobs =>
  where.mediaUrl === undefined
    ? blobsOnDisk(where.folder)
    : blobsOnS3(s3AddressOf(where.mediaUrl), where.folder);
