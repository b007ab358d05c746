"""followup: turns a workshop's inspections into the right text at the right time, and answers into booking requests."""
