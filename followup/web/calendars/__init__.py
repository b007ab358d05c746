"""What calendars fetch: the bookings at a secret address, and a customer's one visit."""
