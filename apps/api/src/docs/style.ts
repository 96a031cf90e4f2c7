/** The look of the API page: the reader's own font and colours, light or dark. */
export const docsStyle = `
:root { color-scheme: light dark; font: 16px/1.5 system-ui, sans-serif }
main { max-width: 60rem; margin: 0 auto; padding: 1.5rem }
h2 { margin-top: 2.5rem; text-transform: capitalize; border-bottom: 1px solid }
h3 { margin: 1.5rem 0 .25rem; overflow-wrap: anywhere }
section { margin-bottom: 1.5rem }
table { border-collapse: collapse; width: 100%; margin: .5rem 0 }
caption { text-align: left; font-weight: 600 }
td { border-top: 1px solid color-mix(in srgb, currentColor 25%, transparent); padding: .25rem .5rem .25rem 0; vertical-align: top }
ul { margin: .25rem 0; padding-left: 1.25rem }
code { font: .9em ui-monospace, monospace }
a:focus-visible { outline: 2px solid; outline-offset: 2px }
`;
