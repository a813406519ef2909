# One front door for every chore. The first target a newcomer wants: make demo, make test.
PYTHON ?= python3
VENV := .venv
RUN := $(VENV)/bin/python
STAMP := $(VENV)/.installed

.PHONY: demo test setup lint types check format wheel clean bench evaluate

demo: setup
	$(RUN) -m journal demo

test: setup
	$(RUN) -m pytest --cov --cov-report=term:skip-covered
	$(RUN) -m coverage report --include='journal/rubric/*,journal/evidence/*' --skip-covered --fail-under=100

setup: $(STAMP)

$(STAMP): pyproject.toml constraints.txt
	test -x $(RUN) || $(PYTHON) -m venv $(VENV)
	$(RUN) -m pip install --quiet --constraint constraints.txt --editable '.[dev]'
	touch $(STAMP)

lint: setup
	$(RUN) -m ruff check .
	$(RUN) -m ruff format --check .

types: setup
	$(RUN) -m mypy

check: test lint types

format: setup
	$(RUN) -m ruff check --fix .
	$(RUN) -m ruff format .

wheel: setup
	$(RUN) -m pip wheel --quiet --no-deps --wheel-dir dist .

clean:
	rm -rf $(VENV) build dist demo_out .pytest_cache .mypy_cache .ruff_cache

bench: setup
	$(RUN) benchmarks/speed.py

evaluate: setup
	$(RUN) -m journal evaluate --data $(DATA)
