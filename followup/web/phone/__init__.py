"""The test phone: a page that plays a customer's phone, and the pages a customer opens."""
