"""A provider that takes every text after so many milliseconds and tells when it came: a process beside the sender, so
that what is measured is the sender. `python -m followup.rehearsal.bench.bare_provider`; its port is its first line.
"""

from __future__ import annotations

import asyncio
import json
import sys
import time
from urllib.parse import parse_qs

LATENCY, TAKEN = "/latency/", "/taken"
_EMPTY_LINE = b"\r\n\r\n"


class _Provider:
    """Keeps when each text came (the machine's monotonic clock) and its words."""

    def __init__(self) -> None:
        self.taken: list[tuple[float, str]] = []
        self.seconds = 0.0

    async def serve(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        """Answer one connection until it is closed."""
        try:
            while True:
                head = (await reader.readuntil(_EMPTY_LINE)).decode("latin-1")
                length = next(
                    (int(line[15:]) for line in head.split("\r\n") if line[:15].lower() == "content-length:"), 0
                )
                body = (await reader.readexactly(length)).decode()
                status, answer = await self._answer(head.split(" ", 2)[1], body)
                told = json.dumps(answer).encode()
                lines = f"HTTP/1.1 {status} -\r\nContent-Type: application/json\r\nContent-Length: {len(told)}\r\n\r\n"
                writer.write(lines.encode() + told)
                await writer.drain()
        except (asyncio.IncompleteReadError, ConnectionError):
            writer.close()

    async def _answer(self, path: str, body: str) -> tuple[int, object]:
        if path.startswith(LATENCY):
            self.seconds, self.taken = int(path.removeprefix(LATENCY)) / 1000, []
            return 200, {}
        if path == TAKEN:
            return 200, self.taken
        self.taken.append((time.monotonic(), parse_qs(body)["Body"][0]))
        sid = f"SM{time.monotonic_ns():032x}"
        if self.seconds:
            await asyncio.sleep(self.seconds)
        return 201, {"sid": sid, "status": "queued"}


async def _main() -> None:
    server = await asyncio.start_server(_Provider().serve, "127.0.0.1", 0)
    print(server.sockets[0].getsockname()[1], flush=True)
    async with server:
        await server.serve_forever()


if __name__ == "__main__":
    try:
        asyncio.run(_main())
    except KeyboardInterrupt:
        sys.exit(0)
