// Entry of the process that opens untrusted video; bundled beside main.ts.
import '@ballfirst/media/child/child-main';
