"""A week (or years) of a simulated shop: customers, phones, staff, provider and troubles around the real program."""
