"""Where the program starts: a command of the command line, or the desktop program."""

from __future__ import annotations

import os
import sys


def main(arguments: list[str] | None = None) -> int:
    """Run the program; returns its exit status."""
    given = sys.argv[1:] if arguments is None else arguments
    # the systems of one sheet are small: one thread solves them two to three times faster than several
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    from app import cli  # noqa: PLC0415 - after the thread count is set

    if given and (given[0] in cli.COMMANDS or given[0] in {"-h", "--help"}):
        return _quietly(given)
    if given and given[0].startswith("-"):
        cli.parser().error(f"unknown option {given[0]}")
    if len(given) > 1:
        cli.parser().error("one SHEET at a time can be opened")
    from app.desktop import run  # noqa: PLC0415 - a screen only where one is needed

    return run(given[0] if given else None)


def _quietly(given: list[str]) -> int:
    """Run a command; a reader that closes the pipe early is no error."""
    from app import cli  # noqa: PLC0415

    try:
        return cli.run(given)
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return cli.OK


if __name__ == "__main__":
    sys.exit(main())
