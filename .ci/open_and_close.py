"""Open the real window on the first sample, wait until it is painted and solved, close it; fail if it cannot."""

import sys
import tempfile
from pathlib import Path

from PySide6.QtCore import QTimer

from app.crash import Watch
from app.settings import Settings
from app.sources import open_sheet
from app.start import make_application, make_window
from core.samples import sample_names

folder = Path(tempfile.mkdtemp())
application = make_application()
watch = Watch(folder)
watch.install()
troubles: list[str] = []
watch.happened.connect(troubles.append)
window = make_window(open_sheet(sample_names()[0]), Settings(folder / "settings.ini"), watch)
window.show()
QTimer.singleShot(500, window.close)
status = application.exec()
if troubles or window.document.assessment is None or window.isVisible():
    sys.exit(f"the window did not open, solve and close: {troubles}")
sys.exit(status)
