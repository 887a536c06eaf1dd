"""``python -m app`` starts the program."""

import sys

from app.main import main

sys.exit(main())
