"""From an older version of the sheet file to the present one, a step for each version.

A step is a pure function on the decoded file and is keyed by the version it starts from. Version 1 is the
first, so the chain is empty until there is a version 2.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from core.errors import Problem, SheetError
from core.sentences import sentence
from core.sheet import VERSION

Tree = dict[str, Any]
Migration = Callable[[Tree], Tree]

MIGRATIONS: Mapping[int, Migration] = {}


def migrate(
    tree: Tree, version: int, migrations: Mapping[int, Migration] = MIGRATIONS, target: int = VERSION
) -> Tree:
    """The file's content as version ``target`` would hold it; ``tree`` itself is left alone.

    Raises SheetError where no step leads on from a version, or where a step cannot make sense of the content.
    """
    for step in range(version, target):
        if step not in migrations:
            raise SheetError(
                (Problem("version", sentence("version {step} of the sheet file is not known", step=step)),)
            )
        try:
            tree = {**migrations[step](tree), "version": step + 1}
        except (LookupError, TypeError, ValueError, AttributeError) as error:
            raise SheetError(
                (Problem("", sentence("This is no sheet of version {step}, though it says so", step=step)),)
            ) from error
    return tree
