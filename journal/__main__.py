"""``python -m journal`` is the command ``journal``."""

from journal.cli import main

if __name__ == "__main__":
    main()
