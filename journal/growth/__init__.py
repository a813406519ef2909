"""Statistics over scores: pure functions, each with the paper of its formula."""
