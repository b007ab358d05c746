"""The program tried as a whole: the invented shop of the demo and its story."""
