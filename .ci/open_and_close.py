"""Start the installed program on the first sample, wait until it is painted and solved, close it; fail if it cannot."""

import os
import sys
import tempfile

from PySide6.QtCore import QTimer

folder = tempfile.mkdtemp()
os.environ.update(XDG_CONFIG_HOME=folder, XDG_DATA_HOME=folder, XDG_STATE_HOME=folder)

from app.desktop import launch  # noqa: E402 - the folders are read when it starts

application, window = launch(None)
QTimer.singleShot(500, window.close)
status = application.exec()
trouble = window.banner.isVisibleTo(window)
if trouble or window.document.assessment is None or window.isVisible():
    sys.exit(f"the window did not open, solve and close: {'trouble was told' if trouble else 'no answers'}")
sys.exit(status)
