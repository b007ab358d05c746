"""The advisor's pages: booking requests, threads, phone list, consent, calendar."""
