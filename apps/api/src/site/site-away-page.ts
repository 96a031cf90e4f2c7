import { problems } from '@ballfirst/contracts/problems';

/** The page for a site that does not answer. It names no address, carries no script and asks for nothing else. */
export const siteAwayPage = (requestId: string, nonce: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Back in a moment</title>
<style nonce="${nonce}">
  :root { color-scheme: light dark; font: 18px/1.5 system-ui, sans-serif }
  main { max-width: 34rem; margin: 18vh auto 0; padding: 0 1.25rem }
</style>
</head>
<body>
<main>
<h1>Back in a moment</h1>
<p>${problems.busy[1]}</p>
<p>Nothing you sent was lost. Load the page again.</p>
<p><small>Request ${requestId}</small></p>
</main>
</body>
</html>
`;
