"""Entries in and scores out: CSV, TSV, JSONL, XLSX, Parquet, DOCX, VTT, SRT, a folder of TXT."""

from journal.files.load import Loaded, load_entries, read_entries
from journal.files.write import Saved, save_scores

__all__ = ["Loaded", "Saved", "load_entries", "read_entries", "save_scores"]
