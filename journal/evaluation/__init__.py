"""How well the evidence agrees with annotated text, each figure beside its baselines and size."""
