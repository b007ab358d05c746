"""The technician's pages: inspection form, top-off form, cars; no numbers, no threads."""
